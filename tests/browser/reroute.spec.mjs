// Reroutes: looked for in a worker of their own, shown as a ghost, taken as one step.

import { test, expect } from './page.mjs';
import { Sheet } from './sheet.mjs';
import { violations } from './violations.mjs';

const FULL = process.env.ELBOWROOM_FULL === '1';
const ghosts = (page) => page.locator('.canvas .ghost');
const suggestions = (page) => page.getByTestId('reroute');

async function searched(page) {
  await page.getByRole('button', { name: 'Look for reroutes' }).click();
  await expect(page.getByTestId('reroute-status')).toContainText(/suggestion/, { timeout: 20_000 });
}

test('a suggestion is shown as a ghost, taken as one step, and undone', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const before = await sheet.total('BackPressure').textContent();
  await searched(page);
  await expect(suggestions(page).first()).toBeVisible();
  await expect(ghosts(page)).toHaveCount(0);
  const show = suggestions(page).first().getByRole('button', { name: 'Show on the drawing' });
  await show.press('Enter');
  await expect(show).toHaveAttribute('aria-pressed', 'true');
  await expect(ghosts(page).first()).toBeAttached();
  expect(await violations(page, '.reroutes')).toEqual([]);
  const promised = await suggestions(page).first().locator('tbody tr').first().locator('td').nth(1).textContent();
  await suggestions(page).first().getByRole('button', { name: 'Take this run' }).press('Enter');
  await expect(sheet.total('BackPressure')).toContainText(promised.split(' ')[0]);
  await expect(ghosts(page)).toHaveCount(0);
  await expect(suggestions(page)).toHaveCount(0);
  await sheet.button('Undo').click();
  await expect(sheet.total('BackPressure')).toHaveText(before);
});

test('where the wall is wet, the insulation that dries it is offered after the reroutes', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.reopen((plan) => {
    plan.exhaust = { ...plan.exhaust, along_run: 'cools', relative_humidity: 0.8 };
    // The room between its walls: a run that ended in a zone would not end outdoors.
    plan.zones = [{ id: 'cold', kind: 'garage', level: 'room', temperature_degc: -20, x_m: 0, y_m: 0, width_m: 2.74, depth_m: 2.28 }];
  });
  await searched(page);
  const offer = page.getByTestId('reroute-insulation');
  await expect(offer).toContainText('about the whole run would keep its wall above the dew point');
  await offer.getByRole('button').press('Enter');
  await expect(page.locator('.heat-upgrade')).toContainText('no insulation is needed');
  await expect(offer).toHaveCount(0);
  await sheet.button('Undo').click();
  await expect(page.locator('.heat-upgrade')).toContainText('would keep its wall above');
});

/** Ends the worker of the search, the last that was started, once it has answered. */
async function kill(page) {
  await expect(page.getByTestId('reroute-status')).toContainText(/Stage|suggestion/, { timeout: 20_000 });
  const worker = page.workers().at(-1);
  const gone = worker.waitForEvent('close');
  await worker.evaluate(() => self.close()).catch(() => {});
  await gone;
}

test('searches killed, stopped and superseded while editing leave no ghost and lose no edit', async ({ page, site }) => {
  // Every third search is killed, and the next notices it after a second and a half.
  test.setTimeout(FULL ? 3_600_000 : 240_000);
  const sheet = await Sheet.open(page, site);
  await searched(page);
  const start = page.getByTestId('reroute-start');
  const rounds = FULL ? 1000 : 30;
  let killed = 0;
  for (let round = 0; round < rounds; round += 1) {
    await start.evaluate((button) => button.click());
    if (round % 3 === 0) await start.evaluate((button) => button.click());
    if (round % 3 === 1) {
      const show = suggestions(page).first().getByRole('button', { name: 'Show on the drawing' });
      if (await show.count()) await show.evaluate((button) => button.click()).catch(() => {});
    }
    if (round % 3 === 2) {
      await kill(page);
      killed += 1;
    }
    await sheet.select('leg:p4');
    const inches = 60 + (round % 12);
    await sheet.type('Leg length, corner to corner', `${inches} in`);
    await expect(sheet.mark('length:leg:p4')).toHaveText(`${Math.floor(inches / 12)}' ${inches % 12}"`);
    await expect(ghosts(page)).toHaveCount(0);
    await expect(suggestions(page)).toHaveCount(0);
  }
  console.log(`${rounds} rounds, ${killed} workers killed`);
  await searched(page);
  await expect(suggestions(page).first()).toBeVisible();
});
