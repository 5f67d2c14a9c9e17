// Temperature and moisture: the line, the hatching, the fields, and what is said of them.

import { test, expect } from './page.mjs';
import { Sheet } from './sheet.mjs';
import { violations } from './violations.mjs';

const panel = (page) => page.locator('.panel.heat');

/** The open example with everything in the cold. */
async function inTheCold(sheet) {
  await sheet.reopen((plan) => {
    plan.exhaust = { ...plan.exhaust, along_run: 'cools', relative_humidity: 0.6 };
    plan.zones = ['crawl_space', 'room', 'ceiling_space'].map((level) => ({
      id: level, kind: 'attic', level, temperature_degc: -10, x_m: -20, y_m: -20, width_m: 40, depth_m: 40,
    }));
    return plan;
  });
}

test('a wet wall is hatched on plot and drawing, and remarked on', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await expect(page.locator('[data-mark^="wet:"]')).toHaveCount(0);
  await inTheCold(sheet);
  await expect(sheet.mark('wet:leg:p4')).toHaveAttribute('d', /M.*L/);
  await expect(panel(page).locator('[data-plot=wet]')).toHaveAttribute('d', /M.*Z/);
  for (const line of ['air', 'wall', 'dew-point']) {
    await expect(panel(page).locator(`[data-plot=${line}]`)).toHaveAttribute('d', /M.*L/);
  }
  await expect(page.locator('.remarks')).toContainText('colder than the dew point');
  await expect(panel(page).locator('.heat-upgrade')).toContainText('Insulation of R-');
});

test('a figure of heat says where it comes from', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await inTheCold(sheet);
  for (const [name, said] of [
    ['Air at the termination', /kg\/s of dry air .* W through the walls.*°F/],
    ['Coldest wall', /lowest of all cells is -?\d+ °F/],
    ['Dew point at the dryer', /is saturated: \d+ °F/],
    ['Condenses', /Le 0\.85.*fl oz of water an hour/],
  ]) {
    const ask = panel(page).getByRole('button', { name });
    await ask.click();
    await expect(ask).toHaveAttribute('aria-expanded', 'true');
    await expect(page.locator(`#${await ask.getAttribute('aria-controls')}`)).toHaveText(said);
  }
  expect(await violations(page, '.panel.heat')).toEqual([]);
});

test('insulation as solved for dries the wall', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await inTheCold(sheet);
  const said = await panel(page).locator('.heat-upgrade').textContent();
  const [, resistance] = said.match(/R-([\d.]+)/);
  for (const leg of ['leg:p1', 'leg:p2', 'leg:p3', 'leg:p4']) {
    await sheet.select(leg);
    await sheet.unfold();
    // A tenth more than what was rounded to a tenth.
    await sheet.type('Insulation (h·ft²·°F/Btu)', String(Number(resistance) + 0.1));
  }
  await expect(page.locator('[data-mark^="wet:"]')).toHaveCount(0);
  await expect(panel(page).locator('.heat-upgrade')).toContainText('no insulation is needed');
});

test('a phase puts its air in, and the air may keep its temperature', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.field('Phase of the cycle').selectOption({ label: 'End of drying' });
  await expect(sheet.field('Exhaust temperature (°F)')).toHaveValue('149');
  await expect(sheet.field('Exhaust humidity, %')).toHaveValue('10');
  await sheet.field('Along the run').selectOption({ label: 'The air keeps its temperature' });
  await expect(panel(page).locator('.plot')).toHaveCount(0);
  await expect(panel(page)).toContainText('keep its temperature');
});

for (const colorScheme of ['light', 'dark']) {
  test(`no violation with a wet run, ${colorScheme}`, async ({ page, site }) => {
    test.setTimeout(120_000);
    await page.emulateMedia({ colorScheme });
    const sheet = await Sheet.open(page, site);
    await inTheCold(sheet);
    await sheet.select('leg:p4');
    await sheet.unfold();
    expect(await violations(page, '.panel.heat', '.panel.selected')).toEqual([]);
  });
}
