// How long a pointer move takes in Chromium on the built page, and the band in its worker.
//
// A corner of twenty.json's run is dragged round a circle: 300 real input events through
// the browser's protocol at 60 Hz. Each is timed from its own time stamp to the first task
// after the frame that shows the new total. Chromium hands a page its moves with the next
// frame ("Aligned input events", developer.chrome.com/blog/aligning-input-events), so up
// to 16.7 ms go by before the page hears of one: where in the frame the moves happen to
// fall would decide what is measured. They are spread evenly over the frame instead, ten
// turns of the circle with a tenth of a frame between two, and more is given beside that
// whole: the time from the first frame after the move, late or skipped frames included,
// which is what the page has in its hands; both on a page that does next to nothing,
// dragged the same way, which is what the browser itself takes here; and the main thread's
// processor time a frame, which another job on the machine does not lengthen.

import { chromium } from '@playwright/test';
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import config from '../browser/playwright.config.mjs';
import { serve } from '../build/serve.mjs';
import { percentile } from './percentile.mjs';

const plan = fileURLToPath(new URL('twenty.json', import.meta.url));
const results = fileURLToPath(new URL('../results/bench/', import.meta.url));

const SIZES = [{ width: 1280, height: 800 }, { width: 2560, height: 1440 }];
const SLOWDOWNS = [1, 4];
const EVENTS = 300;
const FRAME = 1000 / 60;
// The corner p6 of twenty.json, and the circle that it is dragged round, m: 19 cm a move, which is
// more than the grid's step at this zoom.
const CORNER = { mark: 'corner:p6', x: 5.4, y: 4.2 };
const CIRCLE = { x: 6.2, y: 4.4, radius: 0.9, moves: 30 };
const LATER_EACH_TURN = (FRAME * CIRCLE.moves) / EVENTS;
// Totals are shown rounded, so a few moves change none; more would mean that the bench
// looks at the wrong thing.
const MOST_UNSEEN = 0.1;

const BANDS_PER_SAMPLE = 5;
const BAND_SAMPLES = 200;

const { address, close } = await serve({ base: '/somewhere/below/' });
const browser = await chromium.launch(config.use.launchOptions);
try {
  const told = { browser: `Chromium ${browser.version()}`, rendering: await rendering(), moves: [] };
  console.log(`${told.browser}, ${told.rendering}`);
  for (const viewport of SIZES) {
    for (const slowdown of SLOWDOWNS) {
      const moves = { ...viewport, slowdown, page: await timedDrag(viewport, slowdown, planPage), bare: await timedDrag(viewport, slowdown, barePage) };
      told.moves.push(moves);
      console.log(line(moves));
    }
  }
  told.band = await timedBand();
  console.log(told.band.left_out ? `band: left out, ${told.band.left_out}` : `band of 512 in the worker: median ${told.band.median.toFixed(2)} ms, p95 ${told.band.p95.toFixed(2)} ms`);
  mkdirSync(results, { recursive: true });
  writeFileSync(`${results}browser.json`, `${JSON.stringify(told, null, 2)}\n`);
} finally {
  await browser.close();
  await close();
}

async function timedDrag(viewport, slowdown, open) {
  const context = await browser.newContext({ viewport });
  const page = await context.newPage();
  const toScreen = await open(page);
  const protocol = await context.newCDPSession(page);
  await protocol.send('Performance.enable', { timeDomain: 'threadTicks' });
  await protocol.send('Emulation.setCPUThrottlingRate', { rate: slowdown });
  await page.evaluate(watchMoves);

  const press = toScreen(CORNER);
  const mouse = (type, place) => protocol.send('Input.dispatchMouseEvent', { type, ...place, button: 'left', buttons: 1, clickCount: 1 });
  await mouse('mousePressed', press);
  // A press selects, which is no move: what it draws is over before the hand moves.
  await page.evaluate(() => new Promise((settled) => { requestIdleCallback(settled, { timeout: 1000 }); }));
  const grip = { x: press.x - toScreen(CORNER).x, y: press.y - toScreen(CORNER).y };
  const sent = [];
  const before = await processorTime(protocol);
  const started = performance.now();
  for (let move = 1; move <= EVENTS; move += 1) {
    const turn = Math.floor(move / CIRCLE.moves);
    await until(started + move * FRAME + turn * LATER_EACH_TURN);
    const angle = (2 * Math.PI * move) / CIRCLE.moves;
    const place = toScreen({ x: CIRCLE.x + CIRCLE.radius * Math.cos(angle), y: CIRCLE.y + CIRCLE.radius * Math.sin(angle) });
    // Not awaited: a hand does not wait for the page either.
    sent.push(mouse('mouseMoved', { x: place.x + grip.x, y: place.y + grip.y }));
  }
  await Promise.all(sent);
  const after = await processorTime(protocol);
  await protocol.send('Emulation.setCPUThrottlingRate', { rate: 1 });
  const frames = await page.evaluate(() => globalThis.watchedMoves());
  await mouse('mouseReleased', press);
  await context.close();
  return { ...summary(frames), processor: difference(before, after, frames.length) };
}

/** The page with the plan opened through its file input; gives where a place on the plan is. */
async function planPage(page) {
  await page.goto(address);
  await page.locator('#plan-file').setInputFiles(plan);
  const corner = page.locator(`[data-mark="${CORNER.mark}"]`);
  await corner.waitFor();
  // The band of the opened plan must not be under way once the drag begins.
  await page.waitForFunction(() => /\d/.test(document.querySelector('.total-band')?.textContent ?? ''));
  const ground = await page.locator('svg.canvas > g').first().evaluate((group) => {
    const { a, e, f } = group.getScreenCTM();
    return { scale: a, x: e, y: f };
  });
  const toScreen = ({ x, y }) => ({ x: ground.x + x * ground.scale, y: ground.y + y * ground.scale });
  const box = await corner.boundingBox();
  const { x, y } = toScreen(CORNER);
  if (x < box.x || x > box.x + box.width || y < box.y || y > box.y + box.height) throw new Error(`${CORNER.mark} is not where it was expected`);
  return toScreen;
}

/** A page with one circle and one figure, which follow the pointer. */
async function barePage(page) {
  const body = '<!doctype html><svg width="1000" height="700"><circle r="7"/></svg><p data-total><span class="total-figure">0</span></p>';
  await page.route('**/bare.html', (route) => route.fulfill({ contentType: 'text/html', body }));
  await page.goto(`${address}bare.html`);
  await page.evaluate(() => {
    const circle = document.querySelector('circle');
    const figure = document.querySelector('.total-figure');
    let waiting = null;
    addEventListener('pointermove', (event) => {
      if (!waiting) {
        requestAnimationFrame(() => {
          circle.setAttribute('transform', `translate(${waiting.x} ${waiting.y})`);
          figure.textContent = `${waiting.x} ${waiting.y}`;
          waiting = null;
        });
      }
      waiting = { x: event.clientX, y: event.clientY };
    });
  });
  return ({ x, y }) => ({ x: x * 80, y: y * 80 });
}

// Runs in the page. A listener on the window comes after the page's own, and so does the
// frame callback that it asks for: by then the new total stands in the document. A message
// sent from there arrives with the first task after the frame, unless frames follow one
// another so closely that the browser holds messages back: then the next move comes first,
// and that too is after the frame.
function watchMoves() {
  const figures = [...document.querySelectorAll('[data-total] .total-figure')];
  const shown = () => figures.map((figure) => figure.textContent).join('|');
  const frames = [];
  const channel = new MessageChannel();
  let current = null;
  let before = shown();
  const over = (frame, end) => {
    if (!frame.end) {
      frame.end = end;
      frames.push(frame);
    }
    if (current === frame) current = null;
  };
  const sent = [];
  channel.port1.onmessage = () => over(sent.shift(), performance.now());
  addEventListener('pointermove', (event) => {
    const events = event.getCoalescedEvents();
    const stamps = (events.length ? events : [event]).map(({ timeStamp }) => timeStamp);
    if (current?.begun) over(current, performance.now());
    if (current) {
      current.stamps.push(...stamps);
      return;
    }
    const frame = { stamps };
    current = frame;
    requestAnimationFrame((start) => {
      const after = shown();
      frame.start = start;
      frame.begun = performance.now();
      frame.seen = after !== before;
      before = after;
      sent.push(frame);
      channel.port2.postMessage(null);
    });
  });
  globalThis.watchedMoves = () => frames;
}

/** Milliseconds of the main thread so far: all of it, and what of it went where. */
async function processorTime(protocol) {
  const { metrics } = await protocol.send('Performance.getMetrics');
  const of = (name) => metrics.find((metric) => metric.name === name).value * 1000;
  return { all: of('TaskDuration'), script: of('ScriptDuration'), style: of('RecalcStyleDuration'), layout: of('LayoutDuration') };
}

function difference(before, after, frames) {
  return Object.fromEntries(Object.keys(before).map((name) => [name, (after[name] - before[name]) / frames]));
}

function summary(frames) {
  const events = frames.reduce((sum, { stamps }) => sum + stamps.length, 0);
  const seen = frames.filter((frame) => frame.seen);
  const unseen = 1 - seen.length / frames.length;
  if (events < EVENTS || unseen > MOST_UNSEEN) {
    throw new Error(`${events} of ${EVENTS} moves arrived, in ${frames.length} frames; ${(unseen * 100).toFixed(0)} % of these showed no new total`);
  }
  const whole = seen.flatMap(({ stamps, end }) => stamps.map((stamp) => end - stamp));
  const waited = ({ start }, stamp) => (start - stamp) % FRAME;
  const drawn = seen.flatMap((frame) => frame.stamps.map((stamp) => frame.end - stamp - waited(frame, stamp)));
  const both = (values) => ({ median: percentile(values, 0.5), p95: percentile(values, 0.95) });
  return { events: whole.length, frames: frames.length, unseen, whole: both(whole), drawn: both(drawn) };
}

async function timedBand() {
  const page = await browser.newPage({ viewport: SIZES[0] });
  await planPage(page);
  const [worker] = page.workers();
  // The message that asks for a band, caught as it comes by.
  const listens = await worker.evaluate(() => {
    globalThis.answer = globalThis.onmessage;
    if (typeof globalThis.answer !== 'function') return false;
    globalThis.asked = new Promise((resolve) => {
      globalThis.onmessage = (event) => {
        globalThis.answer(event);
        resolve(event);
      };
    });
    return true;
  });
  if (!listens) return { left_out: 'the worker does not listen where it can be timed from outside' };
  await page.locator('svg.canvas').focus();
  await page.locator(`[data-mark="${CORNER.mark}"]`).click();
  await page.keyboard.press('ArrowRight');
  const times = await worker.evaluate(async ([perSample, samples]) => {
    const event = await globalThis.asked;
    const times = [];
    // The first are compiled in haste and left out.
    for (let sample = -20; sample < samples; sample += 1) {
      const started = performance.now();
      for (let repeat = 0; repeat < perSample; repeat += 1) globalThis.answer(event);
      if (sample >= 0) times.push((performance.now() - started) / perSample);
    }
    return times;
  }, [BANDS_PER_SAMPLE, BAND_SAMPLES]);
  await page.close();
  return { median: percentile(times, 0.5), p95: percentile(times, 0.95) };
}

async function rendering() {
  const protocol = await browser.newBrowserCDPSession();
  const { gpu } = await protocol.send('SystemInfo.getInfo');
  const status = gpu.featureStatus?.gpu_compositing ?? 'unknown';
  return `compositing: ${status}${status.startsWith('disabled') ? ' (software rendering)' : ''}`;
}

function until(moment) {
  return new Promise((resolve) => { setTimeout(resolve, Math.max(0, moment - performance.now())); });
}

function line({ width, height, slowdown, page, bare }) {
  const both = ({ median, p95 }) => `median ${median.toFixed(1)} ms, p95 ${p95.toFixed(1)} ms`;
  const { all, script, style, layout } = page.processor;
  return [
    `${width} x ${height}, ${slowdown}x slowdown: ${both(page.whole)}`,
    `  from the next frame on ${both(page.drawn)}`,
    `  bare page ${both(bare.whole)}; from the next frame on ${both(bare.drawn)}`,
    `  processor time a frame ${all.toFixed(1)} ms: script ${script.toFixed(1)}, style ${style.toFixed(1)}, layout ${layout.toFixed(1)}; bare page ${bare.processor.all.toFixed(1)} ms`,
    `  ${page.events} moves in ${page.frames} frames, ${(page.unseen * 100).toFixed(0)} % of these without a new total`,
  ].join('\n');
}
