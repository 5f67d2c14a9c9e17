// The dryer in its panel, where the run ends, and what has no room: said, tied to its element, and
// gone when it is mended.

import { test, expect } from './page.mjs';
import { Sheet } from './sheet.mjs';
import { INCH, Room } from './room.mjs';

const near = (inches) => expect.closeTo(inches * INCH, 6);

async function dryer(page, site) {
  const room = await Room.open(page, site);
  await room.click(24, 30);
  await expect(room.selectedName()).toHaveText('Dryer');
  return room;
}

test('outlet, turn, place on the washer and heat are set in the panel', async ({ page, site }) => {
  const room = await dryer(page, site);
  const file = await room.file();
  const cautions = page.locator('.cautions li');
  await expect(cautions.filter({ hasText: 'carbon monoxide' })).toHaveCount(0);
  await room.field('Heats by').selectOption('gas');
  await expect(cautions.filter({ hasText: 'carbon monoxide' })).toHaveCount(1);
  await room.field('Stands on the washer').check();
  await room.type('Outlet height above the floor', '3\' 2"');
  await room.type('Turned clockwise (deg)', '90');
  await room.type('Width, left to right', '24 in');
  await room.field('Outlet on its').selectOption('left');
  const set = (await room.plan()).dryer;
  expect(set).toEqual({ x_m: near(24), y_m: near(28), width_m: near(24), depth_m: near(30), turned_deg: 90, outlet_height_m: near(38), outlet_side: 'left', stacked: true, energy: 'gas' });
  // Turned by a quarter its back is to the right and its left side up the sheet: the outlet is there.
  await expect(room.mark('length:leg:p1')).toHaveText('0\' 11"');
  for (const [label, typed, said] of [
    ['Turned clockwise (deg)', '400', 'The turn would be 400°; it can be from -360° to 360°.'],
    ['Outlet height above the floor', '-1 in', 'The height would be \u22120\' 1"; it can be from 0\' 0" to'],
  ]) {
    await room.type(label, typed);
    await expect(room.alert).toContainText(said);
  }
  expect((await room.plan()).dryer).toEqual(set);
  for (let step = 0; step < 6; step += 1) await room.undo('change');
  expect(await room.file()).toBe(file);
});

test('a higher outlet is seen from the side, and M and Q put the dryer another way round', async ({ page, site }) => {
  const room = await dryer(page, site);
  await room.type('Outlet height above the floor', '40 in');
  await expect(page.locator('[data-mark="elevation:height:outlet"]')).toHaveText('3\' 4"');
  await room.field('Outlet on its').selectOption('right');
  await room.keys('m');
  await room.undoes('mirror');
  await expect(room.field('Outlet on its')).toHaveValue('left');
  await room.keys('q', 'q');
  await room.undoes('quarter turn');
  await expect(room.field('Turned clockwise (deg)')).toHaveValue('180');
});

test('a run ends at the roof or at the wall', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.select('termination:p4');
  await room.field('Termination').selectOption('roof_cap');
  await room.type('Rise here', '9 ft');
  await expect(room.row('termination:p4')).toContainText('Roof cap');
  await expect(page.locator('[data-mark="elevation:height:termination"]')).toHaveText('14\' 3"');
  const { run } = await room.plan();
  expect(run.termination.kind).toBe('roof_cap');
  expect(run.points[3].riser.rise_m).toBeCloseTo(108 * INCH, 6);
  await room.undo('set rise');
  await room.undo('change termination');
  // The hood is outside the wall, whose faces are at 108 and 114.
  await expect(room.row('termination:p4')).toContainText('Wall hood');
  expect((await room.plan()).run.points[3].x_m).toBeCloseTo(114 * INCH, 6);
});

const remarks = (page, element) => page.locator(`.remarks [data-remark="${element}"]`);

/** A remark is there, leads to its element by keys, and the element's panel says it too. */
async function leadsTo(room, element, said) {
  const remark = remarks(room.page, element).filter({ hasText: said });
  await expect(remark).toHaveCount(1);
  await remark.getByRole('button').focus();
  await room.page.keyboard.press('Enter');
  await expect(room.row(element)).toHaveClass(/lit/);
  await expect(remark).toHaveClass(/lit/);
  await expect(room.page.locator('.panel.selected .remark')).toContainText(said);
}

test('a run through a beam says so until the beam is gone', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await expect(page.locator('.remarks', { hasText: 'cuts' })).toHaveCount(0);
  await room.take('obstacle', 'beam');
  await room.drag([78, 12], [84, 42]);
  // Over the ceiling it is in nobody's way.
  await expect(remarks(page, 'leg:p4').filter({ hasText: 'cuts' })).toHaveCount(0);
  await room.field('Level').selectOption('room');
  // Half of 4 in duct on either side of its centre line, which goes through.
  await leadsTo(room, 'leg:p4', 'A leg cuts 0\' 2" into “Beam”. Lead it round.');
  await room.keys('Shift+T', 'Shift+T', 'Shift+T');
  await expect(room.selectedName()).toContainText('Beam');
  await room.keys('Delete');
  await expect(remarks(page, 'leg:p4').filter({ hasText: 'cuts' })).toHaveCount(0);
});

test('a run across framing says so until it runs the members\' way', async ({ page, site }) => {
  const room = await Room.open(page, site);
  await room.take('obstacle', 'framing_along_y');
  await room.drag([60, 14], [102, 46]);
  await room.field('Level').selectOption('room');
  const said = 'into studs or joists. Run it between them, the way they run.';
  await leadsTo(room, 'leg:p4', said);
  await room.click(81, 40);
  await room.field('What it is').selectOption('framing_along_x');
  // Members at 14, 30 and 46: the leg at 22 lies midway.
  await expect(remarks(page, 'leg:p4').filter({ hasText: said })).toHaveCount(0);
});

test('elbows too large for their leg say so until the radius fits', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('elbow:p2');
  await sheet.type('Centre-line radius', '14 in');
  // Two quarter bends take their radii off the leg between them: 17 in less 14 and 4 is 1 in short.
  await leadsTo(sheet, 'leg:p3', 'Two fittings need 0\' 1" more room than there is between them.');
  await sheet.select('elbow:p2');
  await sheet.type('Centre-line radius', '6 in');
  await expect(remarks(page, 'leg:p3')).toHaveCount(0);
});
