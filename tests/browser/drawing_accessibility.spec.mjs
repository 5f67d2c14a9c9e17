// The checker of accessibility while things are drawn, selected and typed; and the focus is seen.

import { test, expect } from './page.mjs';
import { missed, tabRound } from './focus.mjs';
import { Room } from './room.mjs';
import { violations } from './violations.mjs';

const PLAIN = ['Select', 'Run', 'Outside wall', 'Inside wall', 'Window', 'Door', 'Air intake', 'Scale the picture'];
const LISTS = [['obstacle', 'framing_along_x'], ['zone', 'attic']];
const THINGS = ['wall:w1', 'opening:o1', 'obstacle:b1', 'obstacle:b2', 'zone:z1', 'picture', 'dryer', 'run'];
// One white pixel as PNG.
const PIXEL = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGP4DwABAQEAsTj2FAAAAABJRU5ErkJggg==';

async function furnished(page, site) {
  const room = await Room.open(page, site);
  await room.reopen((plan) => {
    plan.obstacles.push({ id: 'b2', name: '', kind: { framing: { members: 'along_x', spacing_m: 0.4 } }, x_m: 1.4, y_m: 1.2, width_m: 0.8, depth_m: 0.8 });
    plan.zones = [{ id: 'z1', kind: 'garage', temperature_degc: 5, x_m: 1.3, y_m: 1.1, width_m: 1, depth_m: 1 }];
    plan.picture = { coding: 'png', data_base64: PIXEL, x_m: -0.5, y_m: -0.5, width_m: 4, depth_m: 3 };
  });
  return room;
}

// Each theme and each width with everything; crosswise without each tool and thing, which takes the
// checker long.
for (const [colorScheme, width, all] of [['light', 360, true], ['light', 1280, false], ['dark', 360, false], ['dark', 1280, true]]) {
  test(`no violation while drawing, with each kind of thing, a length and the keys: ${colorScheme}, ${width} px`, async ({ page, site }) => {
    test.setTimeout(60_000);
    await page.setViewportSize({ width, height: 800 });
    await page.emulateMedia({ colorScheme });
    const room = await furnished(page, site);
    for (const tool of all ? PLAIN : ['Outside wall']) {
      await room.take(tool);
      if (tool === 'Outside wall') await room.click(48, 48);
      await expect(page.getByRole('toolbar').getByRole('button', { name: tool, exact: true })).toHaveAttribute('aria-pressed', 'true');
      // Drawn lines are looked at once; of the rest the tools and the hint change with the tool.
      const parts = tool === 'Outside wall' ? ['.drawing'] : ['.tool-bar', '[data-testid=tool-hint]'];
      expect(await violations(page, ...parts), tool).toEqual([]);
    }
    for (const [list, kind] of all ? LISTS : []) {
      await room.take(list, kind);
      expect(await violations(page, '.tool-bar', '[data-testid=tool-hint]'), kind).toEqual([]);
    }
    await room.keys('Escape', 'Escape');
    const seen = [];
    // The walls and openings are several of a kind: one of each is looked at.
    for (const [steps, thing] of [[1, THINGS[0]], [4, THINGS[1]], [2, THINGS[2]], [1, THINGS[3]], [1, THINGS[4]], [1, THINGS[5]], [1, THINGS[6]], [1, THINGS[7]]]) {
      await room.keys(...Array(steps).fill('t'));
      seen.push(await room.selectedName().textContent());
      if (all || thing === 'obstacle:b2') expect(await violations(page, '.panel.selected'), thing).toEqual([]);
    }
    expect(seen.map((name) => name.split(',')[0])).toEqual(['Outside wall', 'Window', 'Chimney', 'Framing', 'Garage', 'Picture to trace', 'Dryer', 'The whole run']);
    await room.keys('Escape');
    await room.select('leg:p4');
    await room.keys('l');
    await expect(page.locator('.length-on-drawing')).toBeFocused();
    await page.locator('.length-on-drawing').fill('far');
    await page.keyboard.press('Enter');
    await expect(room.alert).not.toBeEmpty();
    expect(await violations(page, '.canvas-place', '.trouble'), 'typed on the drawing').toEqual([]);
    await page.keyboard.press('Escape');
    await room.keys('?');
    await expect(page.locator('.keys-help')).toBeVisible();
    expect(await violations(page, '.keys-help'), 'keys').toEqual([]);
    await page.keyboard.press('Escape');
    await expect(room.canvas).toBeFocused();
  });
}

for (const [what, prepare] of [
  ['a wall is drawn', async (room) => { await room.take('Outside wall'); await room.click(48, 48); }],
  ['an obstacle is selected', async (room) => room.click(90, 70)],
]) {
  test(`Tab reaches everything and the focus is seen while ${what}`, async ({ page, site }) => {
    const room = await furnished(page, site);
    await room.click(72, 60);
    await prepare(room);
    const stops = await tabRound(page);
    expect(await missed(page)).toEqual([]);
    expect(stops.filter(({ outlined, inSight }) => !outlined || !inSight)).toEqual([]);
  });
}
