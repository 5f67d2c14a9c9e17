// Several things at once: selected, moved, copied, mirrored, turned, removed; each a named step, and
// every step back ends in the same file.

import { test, expect } from './page.mjs';
import { PHONE } from './sheet.mjs';
import { INCH, Room, inches } from './room.mjs';

/** The example with a cabinet and a beam in its free quarter. */
async function furnished(page, site) {
  const room = await Room.open(page, site);
  await room.reopen((plan) => {
    const box = ([x, y, width, depth]) => ({ x_m: x * INCH, y_m: y * INCH, width_m: width * INCH, depth_m: depth * INCH });
    plan.obstacles = [
      { id: 'b1', name: 'Cabinet, invented', kind: 'cabinet', ...box([48, 48, 24, 12]) },
      { id: 'b2', name: '', kind: { framing: { members: 'along_x', spacing_m: 0.4064 } }, ...box([84, 54, 12, 24]) },
    ];
    plan.zones = [{ id: 'z1', kind: 'garage', temperature_degc: 5, ...box([54, 72, 18, 12]) }];
  });
  return room;
}

const boxes = ({ obstacles, zones }) => [...obstacles, ...zones].map(inches);

test('Shift adds to what is selected and takes from it', async ({ page, site }) => {
  const room = await furnished(page, site);
  await room.click(60, 54);
  await expect(room.selectedName()).toHaveText('Cabinet, invented, 2\' 0" by 1\' 0"');
  await room.click(90, 72, ['Shift']);
  await room.click(54, 80, ['Shift']);
  await expect(room.selectedName()).toHaveText('3 things are selected');
  for (const mark of ['obstacle:b1', 'obstacle:b2', 'zone:z1']) await expect(room.mark(mark)).toHaveClass(/lit/);
  await room.click(90, 72, ['Shift']);
  await expect(room.selectedName()).toHaveText('2 things are selected');
  await expect(room.mark('obstacle:b2')).not.toHaveClass(/lit/);
  // A press that misses with Shift held loses nothing; without it everything is let go.
  await room.click(102, 48, ['Shift']);
  await expect(room.selectedName()).toHaveText('2 things are selected');
  await room.click(102, 48);
  await expect(page.locator('.canvas .lit')).toHaveCount(0);
});

test('what is selected is moved, copied, mirrored, turned and removed, each a step by its name', async ({ page, site }) => {
  const room = await furnished(page, site);
  const files = [await room.file()];
  const [cabinet, framing] = [[48, 48, 24, 12], [84, 54, 12, 24]];
  await room.click(60, 54);
  await room.click(90, 72, ['Shift']);
  const step = async (name, expected) => {
    await room.undoes(name);
    files.push(await room.file());
    expect(boxes(JSON.parse(files.at(-1))).slice(0, -1), name).toEqual(expected);
  };
  await room.drag([60, 54], [60, 60]);
  await step('move', [[48, 54, 24, 12], [84, 60, 12, 24]]);
  await room.keys('ArrowUp', 'Shift+ArrowUp', 'Shift+ArrowDown');
  await step('move', [[48, 53, 24, 12], [84, 59, 12, 24]]);
  // The copies lie a foot aside and are selected in place of the first ones.
  await room.button('Copy').click();
  const copied = [[48, 53, 24, 12], [84, 59, 12, 24], [60, 65, 24, 12], [96, 71, 12, 24]];
  await step('copy', copied);
  await room.button('Remove').click();
  await step('remove', copied.slice(0, 2));
  await room.click(60, 58);
  await room.click(90, 72, ['Shift']);
  // The middles lie at 60, 59 and at 90, 71: everything turns about 75, 65.
  await room.button('Mirror').click();
  await step('mirror', [[78, 53, 24, 12], [54, 59, 12, 24]]);
  await room.button('Quarter turn').click();
  await step('quarter turn', [[75, 68, 12, 24], [57, 44, 24, 12]]);
  expect(JSON.parse(files.at(-1)).obstacles[1].kind.framing.members).toBe('along_y');

  // The arrow keys were three steps, of which only the last file was looked at.
  const names = ['quarter turn', 'mirror', 'remove', 'copy', 'move', 'move'];
  for (const name of names.slice(0, 4)) {
    await room.undo(name);
    files.pop();
    expect(await room.file()).toBe(files.at(-1));
  }
  for (let back = 0; back < 4; back += 1) await room.undo('move');
  expect(await room.file()).toBe(files[0]);
});

test('everything is selected, copied, mirrored, turned and removed by keys alone', async ({ page, site }) => {
  const room = await furnished(page, site);
  const file = await room.file();
  const figures = await room.figures();
  await room.keys('Control+a');
  // Four walls, two openings, two obstacles, a zone, the dryer and the run.
  await expect(room.selectedName()).toHaveText('11 things are selected');
  for (const [key, name] of [['m', 'mirror'], ['q', 'quarter turn'], ['Shift+ArrowRight', 'move']]) {
    await room.keys(key);
    await room.undoes(name);
    // Turned as a whole, a house breathes as before.
    expect(await room.figures(), name).toEqual(figures);
  }
  await room.keys('Delete');
  await expect(room.alert).toContainText('The dryer and its run cannot be removed.');
  await room.keys('c');
  await room.undoes('copy');
  await expect(room.selectedName()).toHaveText('7 things are selected');
  await room.keys('Delete');
  await room.undoes('remove');
  await room.keys(...Array(5).fill('Control+z'));
  await expect(room.button('Undo')).toHaveAttribute('title', 'open plan');
  expect(await room.file()).toBe(file);
});

test('single things are put together by keys alone', async ({ page, site }) => {
  const room = await furnished(page, site);
  const walk = Array(7).fill('t');
  await room.keys(...walk);
  await expect(room.selectedName()).toHaveText('Cabinet, invented, 2\' 0" by 1\' 0"');
  // Walls and openings come first, then the cabinet, the framing, the zone.
  await room.keys('x', 't', 't', 'x');
  await expect(room.selectedName()).toHaveText('2 things are selected');
  for (const mark of ['obstacle:b1', 'zone:z1']) await expect(room.mark(mark)).toHaveClass(/lit/);
  await expect(room.mark('obstacle:b2')).not.toHaveClass(/lit/);
  await room.keys('ArrowRight');
  expect(boxes(await room.plan())).toEqual([[49, 48, 24, 12], [84, 54, 12, 24], [55, 72, 18, 12]]);
});

test.describe('on a phone', () => {
  test.use({ viewport: PHONE, hasTouch: true, isMobile: true });

  test('several things are selected by taps and moved by a tap', async ({ page, site }) => {
    const room = await furnished(page, site);
    await room.tap(60, 54);
    await room.button('Select more').tap();
    await expect(room.button('Select more')).toHaveAttribute('aria-pressed', 'true');
    await room.tap(90, 66);
    await expect(room.selectedName()).toHaveText('2 things are selected');
    await room.button('Move by pressing').tap();
    // Their middles' middle, 75, 60, goes where the tap is.
    await room.tap(75, 72);
    await room.undoes('move');
    expect(boxes(await room.plan()).slice(0, 2)).toEqual([[48, 60, 24, 12], [84, 66, 12, 24]]);
    await expect(room.selectedName()).toHaveText('2 things are selected');
  });
});
