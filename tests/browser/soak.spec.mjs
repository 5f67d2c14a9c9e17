// Hours at the drawing: thousands of edits in one tab must not fill it. What the page holds is measured
// after a forced collection: JavaScript's heap, the document's nodes, the program's memory and the
// workers'.

import { test, expect } from './page.mjs';
import { saved } from './keep.mjs';
import { LEG_LENGTH, Sheet } from './sheet.mjs';

const EDITS = process.env.ELBOWROOM_FULL ? 20_000 : 1_200;
/** From here on it may grow by no more than this. Below it history and caches still fill. */
const FILLED = process.env.ELBOWROOM_FULL ? 1_000 : 900;
const MOST_GROWTH = 1.1;
/** Edits between two looks. */
const A_ROUND = 50;

test.use({ trace: 'off' });

/** All but one edit of a round, one a frame, from inside the page: a driver's own calls would take longer
 * than the edits. Typed lengths, nudges, undo and redo. */
const typed = (page, count) => page.evaluate(async ([name, count, edits]) => {
  const canvas = document.querySelector('.canvas');
  const [length] = [...document.querySelectorAll('label')]
    .filter((label) => label.textContent.includes(name)).map((label) => label.control ?? label.querySelector('input'));
  const [undo, redo] = ['Undo', 'Redo'].map((word) =>
    [...document.querySelectorAll('button')].find((button) => button.textContent.trim() === word));
  const key = (at, key) => at.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
  const acts = [
    (each) => {
      length.value = `${30 + (each % 19)} in`;
      for (const kind of ['input', 'change']) length.dispatchEvent(new Event(kind, { bubbles: true }));
    },
    () => key(canvas, 'ArrowRight'),
    () => undo.click(),
    () => redo.click(),
    () => key(canvas, 'ArrowLeft'),
  ];
  for (let each = 0; each < edits; each += 1) {
    acts[each % acts.length](count + each);
    await new Promise(requestAnimationFrame);
  }
}, [LEG_LENGTH, count, A_ROUND - 1]);

async function held(page, devtools) {
  await devtools.send('HeapProfiler.collectGarbage');
  const { usedSize } = await devtools.send('Runtime.getHeapUsage');
  const { nodes } = await devtools.send('Memory.getDOMCounters');
  const memoryOf = async (where, name) => where.evaluate(async (address) => {
    const { default: instance } = await import(address);
    return (await instance()).memory.buffer.byteLength;
  }, name);
  const build = await page.locator('meta[name=elbowroom-build]').getAttribute('content');
  const at = (name) => new URL(`${build}/${name}`, page.url()).href;
  const workers = await Promise.all(page.workers().map((worker) => memoryOf(worker, at('worker.js'))));
  const program = await memoryOf(page, at('app.js'));
  return { heap: usedSize, nodes, program, workers: workers.reduce((sum, each) => sum + each, 0) };
}

test(`${EDITS} edits in one tab leave no more behind than ${FILLED}`, async ({ page, site }) => {
  test.setTimeout(60_000 + EDITS * 150);
  const sheet = await Sheet.open(page, site);
  const devtools = await page.context().newCDPSession(page);

  let first;
  for (let count = 0; count < EDITS; count += A_ROUND) {
    if (count === FILLED) {
      await sheet.banded();
      first = await held(page, devtools);
    }
    await sheet.row('leg:p4').getByRole('button').click();
    await typed(page, count);
    await sheet.pull('corner:p4', 0, count % (2 * A_ROUND) ? 24 : -24);
    await sheet.letGo();
  }
  await sheet.banded();
  await saved(page);
  const last = await held(page, devtools);
  const grown = Object.fromEntries(Object.keys(last).map((what) => [what, last[what] / first[what]]));
  const line = Object.keys(last).map((what) => `${what} ${first[what]} to ${last[what]} (${((grown[what] - 1) * 100).toFixed(1)} %)`);
  console.log(`after ${FILLED} and ${EDITS} edits: ${line.join(', ')}`);
  const all = ({ heap, program, workers }) => heap + program + workers;
  expect(all(last) / all(first)).toBeLessThan(MOST_GROWTH);
  expect(grown.nodes).toBeLessThan(MOST_GROWTH);
});
