// How long a search for reroutes takes in Chromium's worker on the built page, from the message
// that asks to the first suggestion, to the end, and from a stop to its answer: an invented house of
// 40 x 30 ft with 60 obstacles on two levels, and others for the growth with area and obstacles.
//
//   node tests/bench/search.mjs [repeats]

import { chromium } from '@playwright/test';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import config from '../browser/playwright.config.mjs';
import { serve } from '../build/serve.mjs';
import { percentile } from './percentile.mjs';

const repeats = Number(process.argv[2] ?? 9);
const FOOT = 0.3048;
const OPTIONS = {
  clearance_m: 0.00635, most_suggestions: 7, slack: 1.25, most_labels: 400000, other_outlet_sides: true,
  dryer_may_move: false, roof_height_m: null, closed_zones: [],
};
const results = fileURLToPath(new URL('../results/bench/', import.meta.url));
const HOUSES = [[20, 15, 60], [40, 30, 15], [40, 30, 30], [40, 30, 60], [40, 30, 120], [80, 60, 60]];

/** The room of `reroutes.rs`: boxes on two levels, outdoors to the left and right alone, and a run that
 * climbs and winds; the dryer's back faces a wall that leads nowhere. */
function house(feetAcross, feetDown, obstacles) {
  const { format, version, ...plan } = JSON.parse(readFileSync(new URL('twenty.json', import.meta.url)));
  const [across, down] = [feetAcross * FOOT, feetDown * FOOT];
  const corners = [[0, 0], [across, 0], [across, down], [0, down]];
  plan.walls = corners.map(([x, y], side) => {
    const [toX, toY] = corners[(side + 1) % 4];
    return { id: `w${side + 1}`, from_x_m: x, from_y_m: y, to_x_m: toX, to_y_m: toY, thickness_m: 0.1524, outside: side % 2 === 1 };
  });
  plan.openings = [];
  plan.zones = [];
  plan.visits = [];
  plan.exhaust = { ...plan.exhaust, along_run: 'cools' };
  delete plan.ceiling_height_m;
  plan.dryer = { ...plan.dryer, x_m: across / 2, y_m: down * 0.55, turned_deg: 0 };
  delete plan.dryer.outlet_side;
  const outlet = [plan.dryer.x_m, plan.dryer.y_m - plan.dryer.depth_m / 2];
  const share = (index, step) => (index * step) % 1;
  plan.obstacles = [];
  for (let index = 1; plan.obstacles.length < obstacles; index += 1) {
    const [x, y] = [share(index, 0.754877666) * across, share(index, 0.569840291) * down];
    if (Math.abs(x - outlet[0]) < 1.2 && Math.abs(y - outlet[1]) < 1.6) continue;
    plan.obstacles.push({ id: `b${index}`, name: '', level: index % 2 === 0 ? 'ceiling_space' : 'room', x_m: x, y_m: y, width_m: 0.2 + share(index, 0.31) * 0.5, depth_m: 0.2 + share(index, 0.47) * 0.5 });
  }
  const elbow = { kind: 'segmented', centre_line_radius_m: 4 * 0.0254 };
  const point = (id, x, y, rise) => ({ id, x_m: x, y_m: y, duct: 'rigid', elbow, riser: rise ? { rise_m: rise, elbow } : null });
  plan.run = {
    diameter_m: 4 * 0.0254,
    outlet: { elbow, riser: null },
    points: [
      point('p1', outlet[0], outlet[1] - 0.4, 8.5 * FOOT),
      point('p2', outlet[0], outlet[1] - 1.5),
      point('p3', outlet[0] + 1.5, outlet[1] - 1.5),
      point('p4', outlet[0] + 1.5, outlet[1] - 2.5),
      point('p5', across + 0.0762, outlet[1] - 2.5),
    ],
    termination: { kind: 'wall_hood' },
  };
  return plan;
}

/** The slope of log y over log x, by least squares. */
function exponent(points) {
  const logs = points.map(([x, y]) => [Math.log(x), Math.log(y)]);
  const mean = (at) => logs.reduce((sum, each) => sum + each[at], 0) / logs.length;
  const [x, y] = [mean(0), mean(1)];
  const over = logs.reduce((sum, each) => sum + (each[0] - x) * (each[1] - y), 0);
  return over / logs.reduce((sum, each) => sum + (each[0] - x) ** 2, 0);
}

const { address, close } = await serve({ base: '/somewhere/below/' });
const browser = await chromium.launch(config.use.launchOptions);
try {
  const page = await browser.newPage();
  await page.goto(address);
  await page.locator('.canvas').waitFor();
  console.log(`Chromium ${browser.version()}; ${repeats} repeats each; medians, ms`);
  const wholes = [];
  const houses = [];
  for (const [across, down, obstacles] of HOUSES) {
    const plan = house(across, down, obstacles);
    const told = await page.evaluate(async ({ plan, options, repeats }) => {
      const build = document.querySelector('meta[name=elbowroom-build]').content;
      const worker = new Worker(`./${build}/worker-start.js`, { type: 'module' });
      let id = 0;
      const told = { first: [], whole: [], stop: [], looked_at: 0, suggestions: 0 };
      const ask = (request) => worker.postMessage({ search_protocol: 2, id: (id += 1), request });
      const listen = (take) => new Promise((resolve, reject) => {
        // A plan that the worker cannot read is answered by nothing.
        setTimeout(() => reject(new Error('no answer')), 60_000);
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
        // Stopped after the first answer, after the second, and so on.
        let answers = 0;
        const under_way = listen((reply) => (answers += 1) > repeat || reply.is_done);
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
    wholes.push([across * down, obstacles, percentile(told.whole, 0.5)]);
    const summed = (list) => ({ median: percentile(list, 0.5), p95: percentile(list, 0.95) });
    houses.push({ across, down, obstacles, first: summed(told.first), whole: summed(told.whole), stop: summed(told.stop) });
    const middle = (list) => percentile(list, 0.5).toFixed(1);
    console.log(`${across} x ${down} ft, ${obstacles} obstacles: first ${middle(told.first)}, whole ${middle(told.whole)}, stop ${middle(told.stop)}, at most ${Math.max(...told.stop).toFixed(1)} (${told.looked_at} partial routes, ${told.suggestions} suggestions)`);
  }
  const by_area = wholes.filter((each) => each[1] === 60).map(([area, , whole]) => [area, whole]);
  const by_obstacles = wholes.filter((each) => each[0] === 1200).map(([, count, whole]) => [count, whole]);
  const growth = { area: exponent(by_area), obstacles: exponent(by_obstacles) };
  console.log(`growth of the whole set, exponent: ${growth.area.toFixed(2)} with area, ${growth.obstacles.toFixed(2)} with obstacles`);
  mkdirSync(results, { recursive: true });
  writeFileSync(`${results}search.json`, `${JSON.stringify({ houses, growth })}\n`);
} finally {
  await browser.close();
  await close();
}
