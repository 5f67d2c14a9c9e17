// The JavaScript module for other programs, as it is published: in Node and in Chromium, against each
// other, against the page's own worker and against the terminal tool.

import { execFileSync } from 'node:child_process';
import { readFileSync, readdirSync, writeFileSync, mkdtempSync, rmSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import os from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { composed } from '../bench/many_plans.mjs';
import { built } from '../build/serve.mjs';
import { test, expect } from './page.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const folder = path.join(built, 'api');
const module = await import(pathToFileURL(path.join(folder, 'elbowroom.js')));
const COUNT = 200;
const SEEDS = Array.from({ length: COUNT }, (_, seed) => seed);

/** Opens a page of the site that is not the planner, under the same policy. */
async function openBeside(page, site) {
  await page.goto(`${site}api/view.html`);
  await page.evaluate(async () => { globalThis.api = await import('./elbowroom.js'); });
}

/** Every number in `value` by its path, as the text that reads back to the same bits. */
function leaves(value, at = '', found = new Map()) {
  if (value !== null && typeof value === 'object') {
    for (const [name, inner] of Object.entries(value)) leaves(inner, `${at}.${name}`, found);
    found.set(at, Array.isArray(value) ? `list of ${value.length}` : Object.keys(value).join());
  } else {
    found.set(at, Object.is(value, -0) ? '-0' : JSON.stringify(value));
  }
  return found;
}

/** Holds two texts of JSON against each other by their letters: a number's text reads back to its bits. */
function same(what, one, other) {
  if (one === other) return;
  const [mine, its] = [one, other].map((text) => [...leaves(JSON.parse(text))].map((leaf) => leaf.join(' ')));
  expect(mine.filter((leaf) => !its.includes(leaf)).slice(0, 5), what).toEqual(its.filter((leaf) => !mine.includes(leaf)).slice(0, 5));
  expect(one, what).toBe(other);
}

test('Node and Chromium give the same figures to the last bit', async ({ page, site }) => {
  await openBeside(page, site);
  for (let first = 0; first < COUNT; first += 50) {
    const plans = SEEDS.slice(first, first + 50).map(composed);
    const texts = await page.evaluate((all) => all.map((plan) => JSON.stringify(globalThis.api.figures(plan, { bands: true }))), plans);
    texts.forEach((text, index) => same(`seed ${first + index}`, text, JSON.stringify(module.figures(plans[index], { bands: true }))));
  }
});

// The page's program hands out no figures, but its worker hands out bands, reroutes and what readings
// mean, which rest on all of the physics; the greatest and the least digit alike.
test("the module's bands, reroutes and odds are those of the page's own worker, to the last bit", async ({ page, site }) => {
  test.slow();
  await page.goto(site);
  const build = await page.locator('meta[name=elbowroom-build]').getAttribute('content');
  const options = { clearance_m: 0.00635, most_suggestions: 7, slack: 1.25, most_labels: 400000, other_outlet_sides: true, dryer_may_move: false, roof_height_m: null, closed_zones: [] };
  const ask = (plans) => page.evaluate(async ({ build, plans, options }) => {
    const worker = new Worker(`./${build}/worker-start.js`, { type: 'module' });
    const answers = [];
    for (const [index, plan] of plans.entries()) {
      const { format, version, ...inner } = plan;
      const answer = {};
      const wanted = inner.visits ? ['Bands', 'Site'] : ['Bands'];
      await new Promise((resolve) => {
        worker.onmessage = ({ data }) => {
          if (data.id !== index || data.protocol === undefined) return;
          Object.assign(answer, data.answer);
          if (wanted.every((name) => name in answer)) resolve();
        };
        worker.postMessage({ protocol: 4, id: index, plan: inner, visit: undefined });
      });
      if (index % 20 === 0) {
        await new Promise((resolve) => {
          worker.onmessage = ({ data }) => {
            if (data.search_protocol === undefined || data.id !== index) return;
            if (data.reply?.suggestions) answer.suggestions = data.reply.suggestions;
            if (data.reply?.is_done) resolve();
          };
          worker.postMessage({ search_protocol: 2, id: index, request: { plan: inner, options } });
        });
      }
      answers.push(answer);
    }
    worker.terminate();
    return answers;
  }, { build, plans, options });
  let [bands, sites, suggestions] = [0, 0, 0];
  for (let first = 0; first < COUNT; first += 50) {
    const plans = SEEDS.slice(first, first + 50).map(composed);
    for (const [index, answer] of (await ask(plans)).entries()) {
      const plan = plans[index];
      // What is not there comes as undefined from the one and as null from the other.
      const plain = (value) => JSON.stringify(value, (_, inner) => inner ?? null);
      same(plan.title, plain(answer.Bands), plain(module.figures(plan, { bands: true }).bands));
      bands += answer.Bands ? 1 : 0;
      if (plan.visits) {
        const { visit, ...meaning } = module.diagnose(plan);
        same(plan.title, plain(meaning), plain(answer.Site));
        sites += 1;
      }
      if (answer.suggestions) {
        same(plan.title, plain(module.reroute(plan).suggestions), plain(answer.suggestions));
        suggestions += answer.suggestions.length;
      }
    }
  }
  expect(bands).toBeGreaterThan(150);
  expect(sites).toBe(50);
  expect(suggestions).toBeGreaterThan(10);
});

// WebAssembly brings its own functions such as exp and pow, and the terminal tool takes those of the C
// library, which differ in their last bit; heat's march of thousands of steps lets it grow. What is
// held here is what the roots promise (1e-9 of the airflow), not that bit; nor words such as `at_edge`,
// which turn where a number passes a limit by a last bit.
test('the terminal tool gives the same within what its roots promise', async () => {
  // It may have to be built.
  test.setTimeout(600_000);
  const input = SEEDS.map((seed) => JSON.stringify(composed(seed))).join('\n');
  const lines = execFileSync('cargo', ['run', '--locked', '--quiet', '--bin', 'elbowroom', '--', 'figures', '-'], { cwd: root, input, maxBuffer: 1 << 30 }).toString().trim().split('\n');
  const apart = [];
  let [numbers, alike] = [0, 0];
  for (const seed of SEEDS) {
    const native = leaves(JSON.parse(lines[seed]).answer);
    const own = leaves(module.figures(composed(seed)));
    same(`seed ${seed}`, JSON.stringify([...native.keys()]), JSON.stringify([...own.keys()]));
    for (const [at, text] of native) {
      const other = own.get(at);
      const [one, two] = [Number(text), Number(other)];
      if (Number.isNaN(one)) continue;
      numbers += 1;
      alike += text === other ? 1 : 0;
      // Beside a nought that is a difference of two, such as a margin, a share says nothing.
      if (Math.abs(one - two) > 1e-9 * Math.max(Math.abs(one), 1e-3)) apart.push(`seed ${seed} ${at}: ${text} and ${other}`);
    }
  }
  expect(apart).toEqual([]);
  expect(numbers).toBeGreaterThan(20_000);
  console.log(`${alike} of ${numbers} numbers are the same to the last bit`);
});

test('an object and its text are one, and nothing of an object is kept or changed', () => {
  const plan = composed(4);
  const before = JSON.stringify(plan);
  same('object and text', JSON.stringify(module.figures(plan)), JSON.stringify(module.figures(before)));
  expect(JSON.stringify(plan)).toBe(before);
  same('code', JSON.stringify(module.check(plan).code), JSON.stringify(module.figures(plan).code));
  expect(module.sheet(plan, { units: 'si' })).toContain('Pa');
});

const circle = {};
circle.self = circle;
const WRONG = [
  ['nothing', undefined, undefined],
  ['no JSON', '{', undefined],
  ['a function', () => 1, undefined],
  ['a circle', circle, undefined],
  ['another thing', { format: 'picture' }, undefined],
  ['another version', { ...composed(0), version: 2 }, 'version'],
  ['a field too few', { ...composed(0), site: { altitude_m: 1 } }, 'site'],
  ['a field too many', { ...composed(0), sight: 1 }, 'sight'],
  ['a value out of range', { ...composed(0), site: { ...composed(0).site, altitude_m: 1e9 } }, 'site.altitude_m'],
  ['no number', { ...composed(0), site: { ...composed(0).site, altitude_m: NaN } }, 'site.altitude_m'],
];

test('what is no plan ends in an Error that says so, with the path, in Node and in Chromium', async ({ page, site }) => {
  const tried = (call) => {
    try {
      call();
      return 'no error';
    } catch (problem) {
      return problem;
    }
  };
  for (const [name, plan, at] of WRONG) {
    for (const ask of [module.figures, module.check, module.reroute, module.diagnose, module.sheet, module.view]) {
      const problem = tried(() => ask(plan));
      expect(problem, name).toBeInstanceOf(Error);
      expect(problem.message.length, name).toBeGreaterThan(10);
      expect(problem.path, name).toBe(at);
    }
  }
  for (const [ask, options, at] of [
    [module.figures, { bans: true }, 'bans'],
    [module.figures, 5, '.'],
    [module.reroute, { slack: 0 }, 'slack'],
    [module.reroute, { clearance_m: 'wide' }, 'clearance_m'],
    [module.view, { units: 'furlongs' }, 'units'],
  ]) {
    expect(tried(() => ask(composed(0), options)).path).toBe(at);
  }
  expect(tried(() => module.diagnose(composed(1))).message).toContain('no visit');
  expect(tried(() => module.diagnose(composed(4), { visit: 'v9' })).message).toContain('v9');
  // And it answers the next question as if nothing had been.
  expect(module.figures(composed(1)).totals).not.toBeNull();

  await openBeside(page, site);
  const told = await page.evaluate((plan) => {
    try {
      return globalThis.api.figures(plan);
    } catch (problem) {
      return [problem instanceof Error, problem.message, problem.path];
    }
  }, { ...composed(0), sight: 1 });
  expect(told).toEqual([true, expect.stringContaining('sight'), 'sight']);
});

test('the example for Node runs', () => {
  const examples = path.join(folder, 'examples');
  const run = (name) => execFileSync(process.execPath, [path.join(examples, 'figures.mjs'), name], { encoding: 'utf8', stdio: 'pipe' });
  const said = run(path.join(examples, 'house.json'));
  const { totals } = module.figures(readFileSync(path.join(examples, 'house.json'), 'utf8'));
  expect(said).toContain(`${totals.back_pressure_pa.toFixed(1)} Pa`);
  expect(() => run(path.join(folder, 'package.json'))).toThrow(/format/);
});

test('the types say what the module gives and takes', () => {
  test.slow();
  const place = mkdtempSync(path.join(os.tmpdir(), 'elbowroom-types-'));
  try {
    symlinkSync(folder, path.join(place, 'api'));
    const lines = ["import * as api from './api/elbowroom.js';", "import type { Plan } from './api/elbowroom.js';"];
    const literal = (name, type, value) => lines.push(`export const ${name}: ${type} = ${JSON.stringify(value)};`);
    for (let seed = 0; seed < 40; seed += 1) {
      const plan = composed(seed);
      literal(`plan${seed}`, 'Plan', plan);
      literal(`figures${seed}`, 'api.FiguresWithBands', module.figures(plan, { bands: true }));
      if (seed % 4 === 0) {
        literal(`check${seed}`, 'api.Check', module.check(plan));
        literal(`reroute${seed}`, 'api.Reroute', module.reroute(plan, { dryer_may_move: true }));
        literal(`meaning${seed}`, 'api.VisitMeaning', module.diagnose(plan));
        literal(`view${seed}`, 'api.View', module.view(plan));
      }
    }
    lines.push('export const airflow: number | undefined = api.figures(plan0).totals?.airflow_m3_per_s;');
    lines.push("export const paper: string = api.sheet(plan4, { units: 'si', visit: 'v1' });");
    // Each of these must be an error, or the types are no use.
    for (const wrong of ['api.figures(7)', "api.view(plan0, { units: 'furlongs' })", 'api.figures(plan0).bands', "api.reroute(plan0, { slak: 1 })", "({ ...plan0, version: 2 }) satisfies Plan"]) {
      lines.push('// @ts-expect-error', `export const wrong${lines.length} = ${wrong};`);
    }
    writeFileSync(path.join(place, 'use.mts'), lines.join('\n'));
    const compilerOptions = { noEmit: true, strict: true, target: 'es2022', module: 'nodenext', lib: ['es2022'], types: [], preserveSymlinks: true };
    writeFileSync(path.join(place, 'tsconfig.json'), JSON.stringify({ compilerOptions, files: ['use.mts'] }));
    const compiler = createRequire(import.meta.url).resolve('typescript/bin/tsc');
    const told = (() => {
      try {
        return execFileSync(process.execPath, [compiler, '--project', place], { encoding: 'utf8' });
      } catch ({ stdout }) {
        return stdout;
      }
    })();
    expect(told.slice(0, 4000)).toBe('');
  } finally {
    rmSync(place, { recursive: true });
  }
});

test('nothing of the module is fetched or kept by the page', async ({ page, site, request }) => {
  const asked = [];
  page.on('request', (each) => asked.push(each.url()));
  await page.goto(site);
  await expect(page.locator('#app > .loading')).toHaveCount(0);
  expect(asked.filter((address) => address.includes('/api/'))).toEqual([]);
  const { build, files } = await (await request.get(`${site}precache.json`)).json();
  expect(files.filter(({ name }) => name.includes('api/'))).toEqual([]);
  // What other programs call stands in the module alone.
  const exported = (file) => WebAssembly.Module.exports(new WebAssembly.Module(readFileSync(file))).map(({ name }) => name);
  expect(exported(path.join(folder, 'program_bg.wasm'))).toEqual(expect.arrayContaining(['answer', 'view']));
  for (const name of readdirSync(path.join(built, build)).filter((each) => each.endsWith('.wasm'))) {
    expect(exported(path.join(built, build, name))).not.toContain('answer');
  }
});
