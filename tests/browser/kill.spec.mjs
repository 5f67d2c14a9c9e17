// The process that draws the page is killed in the middle of editing, as a crash or a full memory
// does it, and in every other pair of kills the whole browser with it: whatever was committed more
// than a second before is there when the page opens again in the same profile.

import { createHash } from 'node:crypto';
import { rm } from 'node:fs/promises';
import { test, expect, open } from './page.mjs';
import { planFile, saved, takeTermination } from './keep.mjs';
import { Sheet } from './sheet.mjs';

const KILLS = process.env.ELBOWROOM_FULL ? 100 : 5;
/** What was committed longer ago than this, ms, must not be lost. */
const MAY_BE_LOST = 1000;
/** The kill comes between these, ms after the first edit. */
const EARLIEST = 1500;
const LATEST = 4500;
const INCH = 0.0254;
/** Far below what an edit moves and above what another order of additions changes, m. */
const SAME_PLACE = 1e-9;

// What a kill leaves out of a trace is the kill.
test.use({ trace: 'off' });

/** Numbers from 0 to 1 that hang on the seed alone, so that a seed names a kill. */
function seeded(seed) {
  let count = 0;
  return () => {
    count += 1;
    return createHash('sha256').update(`${seed} ${count}`).digest().readUInt32BE() / 2 ** 32;
  };
}

/** What differs between the states of one test: where the run ends. */
const end = (plan) => {
  const { x_m: x, y_m: y } = plan.run.points.at(-1);
  return { x, y };
};

/** The plan without that. */
function butForItsEnd(plan) {
  const rest = structuredClone(plan);
  Object.assign(rest.run.points.at(-1), { x_m: 0, y_m: 0 });
  return rest;
}

const readPlan = async (page) => JSON.parse((await planFile(page)).toString());

/** Two ways to edit: each gives the place where the next edit ends the run, and the edit itself. No
 * two end it at the same place, so the place tells which edit it was. */
const ways = {
  'nudges by keyboard': async (page) => {
    await takeTermination(page);
    return ({ x, y }, random) => {
      const right = random() < 0.5;
      return {
        place: right ? { x: x + INCH, y } : { x, y: y + INCH },
        act: () => page.keyboard.press(right ? 'ArrowRight' : 'ArrowDown'),
      };
    };
  },
  'typed lengths': async (page, plan) => {
    const [before, last] = plan.run.points.slice(-2);
    // The example's last leg runs along the sheet's width.
    expect(last.y_m).toBe(before.y_m);
    await page.locator(`tr[data-element="leg:${last.id}"] button`).click();
    const field = page.getByLabel('Leg length, corner to corner');
    let eighths = 400;
    return ({ y }, random) => {
      eighths += 1 + Math.floor(random() * 8);
      const length = `${Math.floor(eighths / 8)} ${eighths % 8}/8 in`;
      return {
        place: { x: before.x_m + (eighths / 8) * INCH, y },
        act: async () => {
          await field.fill(length);
          await field.press('Enter');
        },
      };
    };
  },
};

/** The processes of these kinds that a browser runs. */
async function processes(browser, kinds) {
  const devtools = await browser.newBrowserCDPSession();
  const { processInfo } = await devtools.send('SystemInfo.getProcessInfo');
  await devtools.detach();
  return processInfo.filter(({ type }) => kinds.includes(type)).map(({ id }) => id);
}

/** Edits on and on until the page is gone. Gives each edit's place and when it was committed; of the
 * very last one it may be unknown, for its answer died with the page. */
async function editUntilTheEnd(page, next, start, random) {
  const edits = [{ at: -Infinity, ...start }];
  for (;;) {
    const { place, act } = next(edits.at(-1), random);
    edits.push({ at: Infinity, ...place });
    try {
      await act();
      edits.at(-1).at = await page.evaluate(() => globalThis.committedAt);
    } catch (problem) {
      return { edits, problem };
    }
  }
}

for (let seed = 1; seed <= KILLS; seed += 1) {
  const way = Object.keys(ways)[seed % 2];
  const wholeBrowser = seed % 4 >= 2;
  const what = wholeBrowser ? 'the whole browser' : 'the page\'s process';

  test(`kill ${seed}, ${what} under ${way}`, async ({ playwright, launchOptions, site }, testInfo) => {
    // Two starts of a browser of its own.
    test.slow();
    const profile = testInfo.outputPath('profile');
    const launch = () => playwright.chromium.launchPersistentContext(profile, { ...launchOptions, headless: true });
    let context = await launch();
    try {
      const [page] = context.pages();
      await page.addInitScript(() => {
        // Heard after the program has heard it, so not before the edit is committed.
        for (const name of ['keydown', 'change']) {
          addEventListener(name, () => { globalThis.committedAt = Date.now(); });
        }
      });
      await open(page, site);
      // A job, stored as it is, to begin with.
      await new Sheet(page).choose(JSON.stringify({ ...await readPlan(page), title: `Killed ${seed}` }));
      await saved(page);
      const start = await readPlan(page);
      const next = await ways[way](page, start);

      const random = seeded(seed);
      const delay = EARLIEST + random() * (LATEST - EARLIEST);
      const pids = await processes(context.browser(), wholeBrowser ? ['renderer', 'browser'] : ['renderer']);
      expect(pids.length).toBeGreaterThan(0);
      const gone = wholeBrowser ? context.waitForEvent('close') : page.waitForEvent('crash');
      let killedAt;
      setTimeout(() => {
        killedAt = Date.now();
        for (const pid of pids) process.kill(pid, 'SIGKILL');
      }, delay);
      const { edits, problem } = await editUntilTheEnd(page, next, end(start), random);
      // It was the kill that ended the loop, and not another fault.
      expect(killedAt, problem.message).toBeDefined();
      await gone;

      await context.close();
      context = await launch();
      const [again] = context.pages();
      await open(again, site);
      const plan = await readPlan(again);
      expect(butForItsEnd(plan)).toEqual(butForItsEnd(start));
      const found = end(plan);
      const kept = edits.findIndex(({ x, y }) => Math.hypot(x - found.x, y - found.y) < SAME_PLACE);
      const owed = edits.findLastIndex(({ at }) => at < killedAt - MAY_BE_LOST);
      const lost = edits.slice(kept + 1).filter(({ at }) => at <= killedAt);
      testInfo.annotations.push({
        type: 'kill',
        description: `after ${Math.round(delay)} ms and ${edits.length - 1} edits; lost ${lost.length}`
          + (lost.length > 0 ? `, the oldest ${killedAt - lost[0].at} ms old` : ''),
      });
      expect(owed, 'edits old enough to be owed').toBeGreaterThan(0);
      // Minus one where the plan is that of no edit at all.
      expect(kept, 'the edit whose plan is there').toBeGreaterThanOrEqual(owed);
    } finally {
      await context.close();
      await rm(profile, { recursive: true, force: true });
    }
  });
}
