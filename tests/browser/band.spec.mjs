// The band, which comes from the worker, beside the figure, which comes from the page.

import { test, expect } from './page.mjs';
import { Sheet, UNITS, withEveryElement } from './sheet.mjs';

/** The numbers in a text, in order; a minus may be the typographic one. */
const numbers = (text) => text.replaceAll('\u2212', '-').match(/-?\d+(?:\.\d+)?/g).map(Number);

async function ordered(sheet) {
  await sheet.banded();
  for (const name of ['Airflow', 'BackPressure', 'Velocity']) {
    const [likely] = numbers(await sheet.total(name).textContent());
    const [low, high] = numbers(await sheet.band(name).textContent());
    expect(low, name).toBeLessThanOrEqual(likely);
    expect(likely, name).toBeLessThanOrEqual(high);
  }
}

test('low, likely and high stand in order in both systems, for a short run and a long one', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  for (const prepare of [async () => {}, () => sheet.reopen(withEveryElement), () => sheet.button('Start blank').click()]) {
    await prepare();
    for (const units of Object.values(UNITS)) {
      await sheet.units(units);
      await ordered(sheet);
    }
  }
});

test('a stated airflow is certain, and what it takes is not', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.field('What moves the air').selectOption({ label: 'An airflow that I state' });
  await sheet.type('Airflow (cfm)', '100');
  await expect(sheet.total('Airflow')).toContainText('100');
  await expect(sheet.band('Airflow')).toHaveText('100 to 100 cfm');
  await ordered(sheet);
  const [low, high] = numbers(await sheet.band('BackPressure').textContent());
  expect(low).toBeLessThan(high);
});

test('the band follows each change, and is never that of a plan before', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const first = await sheet.band('Airflow').textContent();
  await sheet.select('leg:p4');
  await sheet.type('Leg length, corner to corner', '40 ft');
  await expect(sheet.mark('length:leg:p4')).toHaveText('40\' 0"');
  await sheet.banded();
  // 35 ft more of duct cost more than the band is wide: the likely figure shows which plan it is.
  await expect(sheet.band('Airflow')).not.toHaveText(first);
  await ordered(sheet);
  await sheet.button('Undo').click();
  await expect(sheet.band('Airflow')).toHaveText(first);
});
