// What stands in the way, zones and openings: drawn by mouse and by two taps, changed in the panel of
// the selected thing. Common spacings and widths are common practice, no source.

import { test, expect } from './page.mjs';
import { PHONE } from './sheet.mjs';
import { INCH, Room, inches } from './room.mjs';

const OBSTACLES = [
  ['closed_area', undefined, undefined, [48, 48, 60, 60]],
  ['cabinet', 'cabinet', undefined, [72, 48, 96, 60]],
  ['beam', 'beam', 'ceiling_space', [48, 72, 96, 78]],
  ['stack', 'stack', undefined, [84, 60, 90, 66]],
  ['framing_along_x', { framing: { members: 'along_x', spacing_m: 16 * INCH } }, 'ceiling_space', [48, 48, 84, 84]],
  ['framing_along_y', { framing: { members: 'along_y', spacing_m: 16 * INCH } }, 'ceiling_space', [54, 48, 96, 84]],
];
// The example's outdoors has 10 degC; heated rooms are assumed to have 20.
const ZONES = [
  ['heated', undefined, 20, [48, 48, 60, 60]],
  ['garage', undefined, 10, [72, 48, 96, 60]],
  ['attic', 'ceiling_space', 10, [48, 72, 96, 84]],
  ['crawl_space', 'crawl_space', 10, [84, 60, 96, 66]],
  ['outdoors', undefined, 10, [54, 54, 84, 78]],
];
const OPENINGS = [['Window', 'window', 36, 'w2', [111, 60]], ['Door', 'door', 32, 'w4', [-3, 60]], ['Air intake', 'air_intake', 8, 'w1', [84, -3]]];

const sides = ([left, top, right, foot]) => [left, top, right - left, foot - top];

/** Draws every kind by `draw(from, to)` and `put(at)`, and compares the plan's file. */
async function drawAll(room, draw, put) {
  for (const [kind, , , [left, top, right, foot]] of OBSTACLES) {
    await room.take('obstacle', kind);
    await draw([left, top], [right, foot]);
    await expect(room.selectedName()).toBeVisible();
  }
  for (const [kind, , , [left, top, right, foot]] of ZONES) {
    await room.take('zone', kind);
    // From the other corner: any two opposite ones do.
    await draw([right, foot], [left, top]);
  }
  for (const [tool, , , , at] of OPENINGS) {
    await room.take(tool);
    await put(at);
  }
  await room.undoes('draw');
  const plan = await room.plan();
  expect(plan.obstacles.slice(1).map((it) => [it.kind, it.level, inches(it)]))
    .toEqual(OBSTACLES.map(([, kind, level, corners]) => [kind, level, sides(corners)]));
  expect(plan.zones.map((it) => [it.kind, it.level, it.temperature_degc, inches(it)]))
    .toEqual(ZONES.map(([kind, level, temperature, corners]) => [kind, level, temperature, sides(corners)]));
  const openings = plan.openings.slice(2);
  expect(openings.map(({ kind, wall, width_m: width }) => [kind, Number((width / INCH).toFixed(3)), wall]))
    .toEqual(OPENINGS.map(([, kind, width, wall]) => [kind, width, wall]));
  for (const [index, { offset_m: offset, width_m: width, wall }] of openings.entries()) {
    const { from_x_m: fromX, from_y_m: fromY } = plan.walls.find(({ id }) => id === wall);
    const [x, y] = OPENINGS[index].at(-1);
    const pressed = Math.hypot(x - fromX / INCH, y - fromY / INCH);
    expect(Math.abs((offset + width / 2) / INCH - pressed), 'its middle is where it was pressed').toBeLessThanOrEqual(3);
  }
}

test('every kind is drawn by mouse, by a drag or by two clicks', async ({ page, site }) => {
  const room = await Room.open(page, site);
  const file = await room.file();
  let drags = false;
  const draw = async (from, to) => {
    drags = !drags;
    if (drags) return room.drag(from, to);
    await room.click(...from);
    return room.click(...to);
  };
  await drawAll(room, draw, (at) => room.click(...at));
  for (let step = OBSTACLES.length + ZONES.length + OPENINGS.length; step > 0; step -= 1) await room.undo('draw');
  expect(await room.file()).toBe(file);
});

test.describe('on a phone', () => {
  test.use({ viewport: PHONE, hasTouch: true, isMobile: true });

  test('every kind is drawn by a tap and then a tap', async ({ page, site }) => {
    const room = await Room.open(page, site);
    const draw = async (from, to) => {
      await room.tap(...from);
      await room.tap(...to);
    };
    await drawAll(room, draw, (at) => room.tap(...at));
  });

  test('what was drawn low on the sheet is not covered by its own panel', async ({ page, site }) => {
    const room = await Room.open(page, site);
    await room.take('obstacle', 'cabinet');
    await room.tap(60, 72);
    await room.tap(84, 84);
    await expect(room.selectedName()).toHaveText('Cabinet, 2\' 0" by 1\' 0"');
    await expect.poll(async () => {
      const { y, height } = await room.mark('obstacle:b2').boundingBox();
      return y + height <= (await page.locator('.selected-sheet').boundingBox()).y;
    }).toBe(true);
  });
});

test('an obstacle is changed in its panel, and what cannot be is refused in words', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.take('obstacle', 'framing_along_x');
  await room.drag([48, 48], [96, 84]);
  await room.type('Name', 'Joists, invented');
  await expect(room.selectedName()).toHaveText('Joists, invented, 4\' 0" by 3\' 0"');
  await room.field('What it is').selectOption('framing_along_y');
  await room.type('Spacing, centre to centre', '2 ft');
  await room.field('Level').selectOption('crawl_space');
  await room.type('Width, left to right', '3\' 6"');
  await room.type('Depth, up and down', '40 in');
  const file = await room.file();
  expect(JSON.parse(file).obstacles[1]).toEqual({
    id: 'b2', name: 'Joists, invented', kind: { framing: { members: 'along_y', spacing_m: expect.closeTo(24 * INCH, 6) } }, level: 'crawl_space',
    x_m: expect.closeTo(48 * INCH, 6), y_m: expect.closeTo(48 * INCH, 6), width_m: expect.closeTo(42 * INCH, 6), depth_m: expect.closeTo(40 * INCH, 6),
  });
  for (const [label, typed, said, stays] of [
    ['Width, left to right', '0', 'The width would be 0\' 0"; it can be from 0\' 0 7/16" to 328\' 1"', '3\' 6"'],
    ['Depth, up and down', '400 ft', 'The depth would be 400\' 0"; it can be from', '3\' 4"'],
    ['Spacing, centre to centre', '1 in', 'The spacing would be 0\' 1"; it can be from 0\' 3 15/16" to 9\' 10 1/16"', '2\' 0"'],
  ]) {
    await room.type(label, typed);
    await expect(room.alert, label).toContainText(said);
    await expect(room.alert).toContainText('The open plan is as it was');
    await expect(room.field(label)).toHaveValue(stays);
  }
  await room.type('Spacing, centre to centre', 'wide');
  await expect(page.locator('#framing-spacing-note')).toContainText('“wide” was not understood. Write it like');
  expect(await room.file()).toBe(file);
  // What was offered is taken.
  await room.type('Width, left to right', '7/16 in');
  await expect(room.field('Width, left to right')).toHaveValue('0\' 0 7/16"');
});

test('a zone takes a temperature in the page\'s units, and refuses what is none', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.take('zone', 'garage');
  await room.drag([48, 48], [96, 84]);
  await room.type('Temperature (°F)', '23');
  await expect(room.selectedName()).toHaveText('Garage, 23 °F');
  expect((await room.plan()).zones[0].temperature_degc).toBeCloseTo(-5, 9);
  await room.type('Temperature (°F)', '500');
  await expect(room.alert).toContainText('The temperature would be 500 °F; it can be from \u221258 °F to 158 °F.');
  await room.type('Temperature (°F)', 'warm');
  await expect(page.locator('#zone-temperature-note')).toContainText('“warm” was not understood as a number. Write it');
  await room.field('What it is').selectOption('attic');
  await room.field('Level').selectOption('ceiling_space');
  const [zone] = (await room.plan()).zones;
  expect([zone.kind, zone.level]).toEqual(['attic', 'ceiling_space']);
  expect(zone.temperature_degc).toBeCloseTo(-5, 9);
});

test('an opening is changed in its panel, and needs a wall', async ({ page, site }) => {
  const room = await Room.open(page, site);
  const file = await room.file();
  await room.take('Window');
  await room.click(72, 48);
  await expect(room.alert).toContainText('There is no wall here. Draw one first, or press nearer to one.');
  expect(await room.file()).toBe(file);
  // The tool is still in hand.
  await room.click(111, 60);
  await expect(room.selectedName()).toHaveText('Window, 3\' 0"');
  await room.field('Opening').selectOption('air_intake');
  await room.type('Width along the wall', '10 in');
  await room.type('From the wall\'s start', '5 ft');
  await expect(room.selectedName()).toHaveText('Air intake, 0\' 10"');
  expect((await room.plan()).openings[2]).toEqual({ id: 'o3', wall: 'w2', kind: 'air_intake', offset_m: expect.closeTo(60 * INCH, 6), width_m: expect.closeTo(10 * INCH, 6) });
  await room.type('From the wall\'s start', '-3 ft');
  await expect(room.alert).toContainText('The distance from the wall\'s start would be \u22123\' 0"; it can be from 0\' 0"');
  // An opening past the end of its wall would hang in the air.
  await room.type('From the wall\'s start', '9 ft');
  await expect(room.alert).toContainText('The opening would reach past the end of its wall');
  await expect(room.field('From the wall\'s start')).toHaveValue('5\' 0"');
});

test('an obstacle, a zone and an opening are drawn by keys alone', async ({ page, site }) => {
  const room = await Room.open(page, site);
  const far = (key, times) => Array(times).fill(`Shift+${key}`);
  // The keys' cursor begins at the end of the newest wall, the room's top left corner.
  await room.keys('o', ...far('ArrowRight', 6), ...far('ArrowDown', 5), 'Enter', ...far('ArrowRight', 2), ...far('ArrowDown', 1), 'Enter');
  await expect(room.selectedName()).toHaveText('Closed area, 2\' 0" by 1\' 0"');
  await room.keys('z', ...far('ArrowRight', 5), ...far('ArrowDown', 4), 'Enter', ...far('ArrowRight', 1), ...far('ArrowDown', 3), 'Enter');
  await expect(room.selectedName()).toHaveText('Heated room, 68 °F');
  await room.keys('a', 'Enter');
  await expect(room.selectedName()).toHaveText('Air intake, 0\' 8"');
  const plan = await room.plan();
  expect(inches(plan.obstacles[1])).toEqual([69, 57, 24, 12]);
  expect(inches(plan.zones[0])).toEqual([57, 45, 12, 36]);
  expect(plan.openings[2].wall).toBe('w4');
});
