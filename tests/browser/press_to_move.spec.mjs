// What a drag does, done by two presses (WCAG 2.2, 2.5.7), and lengths typed where they stand.

import { test, expect } from './page.mjs';
import { PHONE } from './sheet.mjs';
import { INCH, Room } from './room.mjs';

const at = ({ x_m: x, y_m: y }) => [x, y].map((metres) => Number((metres / INCH).toFixed(3)));
const points = ({ run }) => run.points.map(at);
const LABEL = 'length:leg:p4';

/** The field that opens on the drawing. */
const typed = (page) => page.locator('.length-on-drawing');

async function openOnLabel(room) {
  const { x, y } = await room.middle(LABEL);
  await room.page.mouse.click(x, y);
  await expect(typed(room.page)).toBeFocused();
}

for (const [hand, options] of [['a click', {}], ['a tap', { viewport: PHONE, hasTouch: true, isMobile: true }]]) {
  test.describe(hand, () => {
    test.use(options);
    const press = (room, x, y) => (options.hasTouch ? room.tap(x, y) : room.click(x, y));

    test('a corner, the termination and a thing go where the next press is', async ({ page, site }) => {
      const room = await Room.open(page, site);
      const file = await room.file();
      await press(room, 48, 22);
      await room.button('Move by pressing').click();
      await expect(page.getByTestId('tool-hint')).toHaveText('Press where the selected part is to go.');
      // A little off the square corner, which catches it as it would catch a drag.
      await press(room, 48.7, 48);
      await room.undoes('move corner');
      expect(points(await room.plan())[2]).toEqual([48, 48]);
      await expect(room.row('elbow:p3')).toHaveClass(/lit/);
      await press(room, 114, 22);
      await room.button('Move by pressing').click();
      await press(room, 114, 48.7);
      await room.undoes('move termination');
      expect(points(await room.plan())[3]).toEqual([114, 48]);
      await press(room, 66, 7);
      await room.button('Move by pressing').click();
      await press(room, 84, 72);
      await room.undoes('move');
      expect(at((await room.plan()).obstacles[0])).toEqual([76, 65]);
      for (const name of ['move', 'move termination', 'move corner']) await room.undo(name);
      expect(await room.file()).toBe(file);
    });
  });
}

test('a length is typed at its leg; Enter takes it, Escape and a wrong one leave all as it was', async ({ page, site }) => {
  const room = await Room.open(page, site);
  const file = await room.file();
  await openOnLabel(room);
  await expect(typed(page)).toHaveValue('5\' 6"');
  await expect(typed(page)).toHaveAccessibleName('Leg length, corner to corner');
  await typed(page).fill('6 furlongs');
  await page.keyboard.press('Enter');
  await expect(room.alert).toContainText('“furlongs” was not understood. Write it like 12\' 6"');
  // It stays to be mended.
  await expect(typed(page)).toBeFocused();
  await expect(typed(page)).toHaveAttribute('aria-invalid', 'true');
  await expect(typed(page)).toHaveValue('6 furlongs');
  await page.keyboard.press('Escape');
  await expect(typed(page)).toHaveCount(0);
  await expect(room.canvas).toBeFocused();
  await expect(room.alert).toBeEmpty();
  expect(await room.file()).toBe(file);

  await openOnLabel(room);
  await typed(page).fill('1 in');
  await page.keyboard.press('Enter');
  await expect(room.alert).toContainText('shorter than 2 in (50 mm)');
  expect(await room.file()).toBe(file);

  await openOnLabel(room);
  await typed(page).fill('4 ft 3 in');
  await page.keyboard.press('Enter');
  await expect(room.mark(LABEL)).toHaveText('4\' 3"');
  await expect(room.canvas).toBeFocused();
  await room.undoes('set leg length');
  expect(points(await room.plan())[3]).toEqual([99, 22]);
  await room.undo('set leg length');
  expect(await room.file()).toBe(file);
});

test('a leg\'s and a riser\'s length are typed by keys alone', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.select('leg:p4');
  await room.keys('l');
  await expect(typed(page)).toBeFocused();
  await page.keyboard.type('1.2 m');
  await page.keyboard.press('Enter');
  await expect(room.mark(LABEL)).toHaveText('3\' 11 1/4"');
  await room.select('riser:p1');
  await room.keys('l');
  await page.keyboard.type('6 ft');
  await page.keyboard.press('Enter');
  await room.undoes('set rise');
  expect((await room.plan()).run.points[0].riser.rise_m).toBeCloseTo(72 * INCH, 6);
});

test('a length is typed while drawing, and a wrong one gets its message', async ({ page, site }) => {
  const room = await Room.open(page, site);
  const file = await room.file();
  await room.take('Inside wall');
  await room.click(48, 48);
  await room.hover(84, 48.5);
  await expect(page.locator('.canvas [data-mark="draft:length"]')).toHaveText('3\' 0"');
  await room.keys('4', ' ', 'x', 'Enter');
  const field = room.field('Length from the last point');
  await expect(field).toBeFocused();
  await expect(page.locator('#draw-length-note')).toContainText('“x” was not understood. Write it like');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.locator('#draw-length-note')).toBeInViewport();
  await page.keyboard.press('Escape');
  await expect(field).toHaveValue('');
  expect(await room.file()).toBe(file);

  // The way that the line points; then by an arrow key.
  await room.keys('4', '0', ' ', 'i', 'n', 'Enter');
  await room.keys('2', "'", 'ArrowDown', 'Escape');
  const walls = (await room.plan()).walls.slice(4);
  expect(walls.map((wall) => [wall.from_x_m, wall.from_y_m, wall.to_x_m, wall.to_y_m].map((metres) => Number((metres / INCH).toFixed(3)))))
    .toEqual([[48, 48, 88, 48], [88, 48, 88, 72]]);
  await room.undo('draw');
  await room.undo('draw');
  expect(await room.file()).toBe(file);
});

test('a run is drawn by typed lengths with Enter after the pointer', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.take('Run');
  await room.hover(24.5, 6);
  await room.keys('8', ' ', 'i', 'n', 'Enter');
  await room.hover(60, 5.4);
  await room.keys('7', "'", '6', '"', 'Enter', 'Escape');
  const plan = await room.plan();
  // The outlet is behind the dryer's middle, at 24, 13.
  expect(points(plan)).toEqual([[24, 5], [114, 5]]);
  await room.undoes('draw leg');
  await expect(room.row('termination:p2')).toHaveClass(/lit/);
});
