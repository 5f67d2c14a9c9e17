// How long a search for reroutes takes in Chromium's worker on the built page, from the message
// that asks to the first suggestion, to the end, and from a stop to its answer: an invented house of
// 40 x 30 ft with 60 obstacles on two levels, and smaller ones for the growth.
//
//   node tests/bench/search.mjs [repeats]

import { chromium } from '@playwright/test';
import { readFileSync } from 'node:fs';
import config from '../browser/playwright.config.mjs';
import { serve } from '../build/serve.mjs';
import { percentile } from './percentile.mjs';

const repeats = Number(process.argv[2] ?? 9);
const FOOT = 0.3048;
const OPTIONS = {
  clearance_m: 0.00635, most_suggestions: 7, slack: 1.25, most_labels: 400000, other_outlet_sides: true,
  dryer_may_move: false, roof_height_m: null, closed_zones: [],
};
const HOUSES = [[20, 15, 20], [20, 15, 60], [40, 30, 20], [40, 30, 40], [40, 30, 60]];

/** A house with obstacles placed by a sequence of its own, clear of the dryer. */
function house(feetAcross, feetDown, obstacles) {
  const { format, version, ...plan } = JSON.parse(readFileSync(new URL('twenty.json', import.meta.url)));
  const [across, down] = [feetAcross * FOOT, feetDown * FOOT];
  const corners = [[0, 0], [across, 0], [across, down], [0, down]];
  plan.walls = corners.map(([x, y], side) => {
    const [toX, toY] = corners[(side + 1) % 4];
    return { id: `w${side}`, from_x_m: x, from_y_m: y, to_x_m: toX, to_y_m: toY, thickness_m: 0.15, outside: true };
  });
  plan.openings = [{ id: 'o1', wall: 'w0', kind: 'window', offset_m: across / 3, width_m: 1 }];
  let seed = 12345;
  const share = () => {
    seed = (seed * 1103515245 + 12345) % 2147483648;
    return seed / 2147483648;
  };
  const dryer = [across / 2, down / 2];
  plan.dryer = { ...plan.dryer, x_m: dryer[0], y_m: dryer[1], turned_deg: 0 };
  plan.obstacles = [];
  while (plan.obstacles.length < obstacles) {
    const index = plan.obstacles.length;
    const box = { id: `b${index}`, name: '', level: index % 3 === 0 ? 'ceiling_space' : 'room', x_m: share() * (across - 1), y_m: share() * (down - 1), width_m: 0.2 + share() * 0.8, depth_m: 0.2 + share() * 0.8 };
    if (Math.hypot(box.x_m - dryer[0], box.y_m - dryer[1]) > 1.5) plan.obstacles.push(box);
  }
  const top = dryer[1] - plan.dryer.depth_m / 2;
  const template = plan.run.points[0];
  const point = (id, x, y) => ({ ...template, id, x_m: x, y_m: y, riser: null });
  plan.run.points = [point('p1', dryer[0], top - 0.3), point('p2', dryer[0] + 1, top - 0.3), point('p3', dryer[0] + 1, -0.075)];
  return plan;
}

const { address, close } = await serve({ base: '/somewhere/below/' });
const browser = await chromium.launch(config.use.launchOptions);
try {
  const page = await browser.newPage();
  await page.goto(address);
  await page.locator('.canvas').waitFor();
  console.log(`Chromium ${browser.version()}; ${repeats} repeats each; medians, ms`);
  for (const [across, down, obstacles] of HOUSES) {
    const plan = house(across, down, obstacles);
    const told = await page.evaluate(async ({ plan, options, repeats }) => {
      const build = document.querySelector('meta[name=elbowroom-build]').content;
      const worker = new Worker(`./${build}/worker-start.js`, { type: 'module' });
      let id = 0;
      const told = { first: [], whole: [], stop: [], looked_at: 0, suggestions: 0 };
      const ask = (request) => worker.postMessage({ search_protocol: 2, id: (id += 1), request });
      const listen = (take) => new Promise((resolve) => {
        worker.onmessage = ({ data }) => { if (data.id === id && take(data.reply)) resolve(); };
      });
      for (let repeat = 0; repeat <= repeats; repeat += 1) {
        const start = performance.now();
        let first;
        const done = listen((reply) => {
          if (reply.suggestions?.length && first === undefined) first = performance.now() - start;
          if (reply.is_done) {
            told.looked_at = reply.progress.looked_at;
            told.suggestions = reply.suggestions?.length;
          }
          return reply.is_done;
        });
        ask({ plan, options });
        await done;
        const whole = performance.now() - start;
        const under_way = listen((reply) => reply);
        ask({ plan, options });
        await under_way;
        const stopping = performance.now();
        const stopped = listen((reply) => !reply);
        ask(undefined);
        await stopped;
        // The first one compiles.
        if (repeat > 0) {
          told.first.push(first ?? Infinity);
          told.whole.push(whole);
          told.stop.push(performance.now() - stopping);
        }
      }
      worker.terminate();
      return told;
    }, { plan, options: OPTIONS, repeats });
    const middle = (list) => percentile(list, 0.5).toFixed(1);
    console.log(`${across} x ${down} ft, ${obstacles} obstacles: first ${middle(told.first)}, whole ${middle(told.whole)}, stop ${middle(told.stop)} (${told.looked_at} partial routes, ${told.suggestions} suggestions)`);
  }
} finally {
  await browser.close();
  await close();
}
