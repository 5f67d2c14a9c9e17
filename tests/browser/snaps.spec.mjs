// What a drawn or dragged point settles on: a named line is shown, and the plan holds its coordinates.

import { test, expect } from './page.mjs';
import { INCH, Room } from './room.mjs';

const rounded = (metres) => Number((metres / INCH).toFixed(3));
const point = ({ run }, index) => [run.points[index].x_m, run.points[index].y_m].map(rounded);
const wall = ({ walls }, index) => [walls[index].from_x_m, walls[index].from_y_m, walls[index].to_x_m, walls[index].to_y_m].map(rounded);

async function letGoWith(room, ...names) {
  for (const name of names) await expect(room.guides().filter({ hasText: name }).first()).toBeVisible();
  await room.letGo();
  await expect(room.guides(), 'nothing is left of them').toHaveCount(0);
}

test('a dragged corner settles square, at 45°, and on a wall\'s face', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.hold([48, 22], [47.3, 61]);
  await letGoWith(room, 'square');
  expect(point(await room.plan(), 2)[0]).toBe(48);
  await room.undo('move corner');

  // p3 lies between p2 at 48, 5 and the end at 114, 22: 45 deg to the right of p2.
  await room.hold([48, 22], [84.6, 41]);
  await letGoWith(room, '45°');
  const [x, y] = point(await room.plan(), 2);
  expect(x - 48).toBeCloseTo(y - 5, 3);
  await room.undo('move corner');

  // The room's face of the right wall, 6 in thick about 111.
  await room.hold([114, 22], [107.3, 60]);
  await letGoWith(room, 'wall face');
  expect(point(await room.plan(), 3)[0]).toBe(108);
});

test('a drawn wall settles on another wall\'s end, square and in line', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.take('Inside wall');
  await room.click(48, 48);
  await room.hover(110.3, 92.8);
  await expect(room.guides()).toHaveText(['wall end']);
  await room.hover(48.6, 72);
  await expect(room.guides()).toHaveText(['square']);
  await room.hover(72, 91.8);
  await expect(room.guides()).toHaveText(['in line']);
  await room.click(110.3, 92.8);
  await room.button('Done').click();
  await expect(room.guides()).toHaveCount(0);
  expect(wall(await room.plan(), 4)).toEqual([48, 48, 111, 92.25]);
});

test('a dragged wall end settles on another wall\'s end, and the walls that met it come along', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.reopen((plan) => {
    const at = (id, ...ends) => Object.fromEntries([['id', id], ...['from_x_m', 'from_y_m', 'to_x_m', 'to_y_m'].map((name, index) => [name, ends[index] * INCH]), ['thickness_m', 0.1143], ['outside', false]]);
    plan.walls.push(at('w5', 60, 48, 84, 48), at('w6', 84, 48, 84, 66), at('w7', 60, 72, 96, 72));
  });
  await room.click(72, 48);
  await expect(room.selectedName()).toHaveText('Inside wall, 2\' 0"');
  await room.hold([84, 48], [95.4, 71.2]);
  await letGoWith(room, 'wall end');
  const plan = await room.plan();
  expect(wall(plan, 4)).toEqual([60, 48, 96, 72]);
  expect(wall(plan, 5)).toEqual([96, 72, 84, 66]);
  await room.undoes('change');
});

test('a run settles midway between two members of framing', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.reopen((plan) => {
    plan.obstacles.push({ id: 'b2', name: '', kind: { framing: { members: 'along_x', spacing_m: 16 * INCH } }, level: 'ceiling_space', x_m: 54 * INCH, y_m: 30 * INCH, width_m: 48 * INCH, depth_m: 48 * INCH });
  });
  // Members at 30, 46, 62 and 78: the middle of the second bay is 54.
  await room.hold([114, 22], [90, 54.8]);
  await letGoWith(room, 'between members');
  expect(point(await room.plan(), 3)[1]).toBe(54);
  await room.undo('move termination');
  await room.take('Run');
  await room.click(24, 7);
  await room.hover(66, 39);
  await expect(room.guides().filter({ hasText: 'between members' })).toBeVisible();
  await room.click(66, 38.6);
  await room.button('Done').click();
  expect(point(await room.plan(), 1)[1]).toBe(38);
});

test('an obstacle\'s corner settles on a wall\'s faces while it is drawn and dragged', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.take('obstacle', 'cabinet');
  await room.click(84, 72);
  await room.hover(107.4, 89.6);
  await expect(room.guides()).toHaveText(['wall face', 'wall face']);
  await room.click(107.4, 89.6);
  // The lower wall is 4-1/2 in thick about 92-1/4: its face is at 90.
  const sides = ({ x_m: x, y_m: y, width_m: width, depth_m: depth }) => [x, y, x + width, y + depth].map(rounded);
  expect(sides((await room.plan()).obstacles[1])).toEqual([84, 72, 108, 90]);
  await room.hold([84, 72], [72, 60]);
  await room.letGo();
  await room.undoes('change');
  expect(sides((await room.plan()).obstacles[1])).toEqual([72, 60, 108, 90]);
});
