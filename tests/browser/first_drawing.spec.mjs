// A whole laundry drawn from nothing, by pointer and by keys alone: 10 by 8 ft, two walls, a window,
// the dryer put in its place, a run with three bends and a hood through the wall. Both end in the
// same file.

import { test, expect, open } from './page.mjs';
import { planFile } from './keep.mjs';

const MOST_POINTER_ACTIONS = 25;
const MOST_KEY_PRESSES = 80;

/** A hand with a pointer, and how often it acted. */
class Hand {
  actions = 0;

  constructor(page) {
    this.page = page;
  }

  async press(name) {
    this.actions += 1;
    await this.page.getByRole('button', { name, exact: true }).click();
  }

  /** Where a place of the plan, inches, is on the screen now. */
  place(x, y) {
    return this.page.locator('.canvas').evaluate((canvas, [x, y]) => {
      const at = new DOMPoint(x * 0.0254, y * 0.0254).matrixTransform(canvas.querySelector('g').getScreenCTM());
      return [at.x, at.y];
    }, [x, y]);
  }

  async click(x, y) {
    this.actions += 1;
    await this.page.mouse.click(...await this.place(x, y));
  }

  async drag(from, to) {
    this.actions += 1;
    await this.page.mouse.move(...await this.place(...from));
    await this.page.mouse.down();
    await this.page.mouse.move(...await this.place(...to), { steps: 4 });
    await this.page.mouse.up();
  }
}

async function byPointer(page) {
  const hand = new Hand(page);
  await hand.press('Start blank');
  await page.locator('.canvas').scrollIntoViewIfNeeded();
  await hand.press('Outside wall');
  await hand.click(0, 0);
  await hand.click(120, 0);
  await hand.click(120, 96);
  await hand.press('Window');
  await hand.click(120, 48);
  await hand.drag([48, 72], [60, 72]);
  await hand.press('Run');
  for (const corner of [[60, 27], [72, 27], [72, 9], [123, 9]]) await hand.click(...corner);
  await hand.press('Done');
  return hand.actions;
}

async function byKeys(page) {
  let presses = 0;
  const type = async (...keys) => {
    for (const key of keys) {
      presses += 1;
      await page.keyboard.press(key);
    }
  };
  await page.getByRole('button', { name: 'Start blank' }).focus();
  await type('Enter');
  await page.locator('.canvas').focus();
  await type('w', 'Enter', '1', '0', "'", 'ArrowRight', '8', "'", 'ArrowDown', 'Escape');
  await type('g', 'Enter');
  await type('t', 'Shift+ArrowRight');
  await type('r', '2', "'", 'ArrowUp', '1', "'", 'ArrowRight', '1', "'", '6', '"', 'ArrowUp');
  await type('5', '1', '"', 'ArrowRight', 'Escape');
  return presses;
}

test('a laundry is drawn by pointer and by keys alone, and the files are equal', async ({ page, site, context }) => {
  await open(page, site);
  const actions = await byPointer(page);
  const drawn = (await planFile(page)).toString();

  const other = await context.newPage();
  await open(other, `${site}?`);
  const presses = await byKeys(other);
  const typed = (await planFile(other)).toString();

  console.log(`${actions} pointer actions, ${presses} key presses`);
  expect(JSON.parse(typed)).toEqual(JSON.parse(drawn));
  const plan = JSON.parse(drawn);
  expect(plan.walls).toHaveLength(2);
  expect(plan.openings.map(({ kind, wall }) => [kind, wall])).toEqual([['window', 'w2']]);
  expect(plan.run.points).toHaveLength(4);
  expect(plan.run.termination.kind).toBe('wall_hood');
  expect(actions).toBeLessThanOrEqual(MOST_POINTER_ACTIONS);
  expect(presses).toBeLessThanOrEqual(MOST_KEY_PRESSES);
});
