// What the bands hang on, and where the figures come from.

import { test, expect } from './page.mjs';
import { Sheet } from './sheet.mjs';
import { violations } from './violations.mjs';

const shares = (page, heading) => page.locator('.shares h3', { hasText: heading }).locator('+ ol li');
const percents = async (rows) => (await rows.locator('.share-of').allTextContents()).map((text) => Number.parseInt(text, 10));

test('the shares stand most first, and the sentence names the one that leads', async ({ page, site }) => {
  await Sheet.open(page, site);
  const rows = shares(page, 'Back pressure');
  await expect(rows.first()).toBeVisible();
  const shown = await percents(rows);
  expect(shown).toEqual([...shown].sort((a, b) => b - a));
  expect(shown.reduce((sum, share) => sum + share)).toBeLessThanOrEqual(103);
  expect(shown.at(-1)).toBeGreaterThanOrEqual(1);
  const name = await rows.first().locator('span').nth(1).evaluate((element) => element.firstChild.textContent);
  await expect(page.getByTestId('leading-input')).toContainText(`${name} moves the back pressure most`);
});

test('a stated airflow has no band of its own, and the blower no share', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.field('What moves the air').selectOption({ label: 'An airflow that I state' });
  await sheet.type('Airflow (cfm)', '100');
  await sheet.banded();
  await expect(shares(page, 'Airflow')).toHaveCount(0);
  await expect(page.locator('.shares')).toContainText('Nothing uncertain moves it.');
  await expect(page.locator('.shares [data-input^=blower]')).toHaveCount(0);
  await expect(shares(page, 'Back pressure').first()).toBeVisible();
});

test('a value of one\'s own that is sure takes its share away', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await expect(page.locator('.shares [data-input=wall_hood]')).toHaveCount(2);
  await sheet.reopen((plan) => {
    plan.overrides = [{ input: 'wall_hood', low: 2, likely: 2, high: 2, note: 'invented' }];
  });
  await expect(page.locator('.shares [data-input=wall_hood]')).toHaveCount(0);
});

test('what rests on an assumption says so without a click', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  for (const element of ['elbow:p2', 'termination:p4']) await expect(sheet.row(element)).toContainText('assumption');
  await expect(sheet.row('leg:p4')).not.toContainText('assumption');
  await expect(page.locator('main, #app').first()).toContainText('Hood and blower are assumptions');
});

test('an element and its band stand together, and a drag shows no band of another plan', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const band = sheet.cellBand('elbow:p2', 'loss');
  await expect(band).toHaveText(/ to /);
  const likely = Number(await sheet.cell('elbow:p2', 'loss').textContent());
  const [low, high] = (await band.textContent()).match(/[\d.]+/g).map(Number);
  expect(low).toBeLessThanOrEqual(likely);
  expect(likely).toBeLessThanOrEqual(high);
  await sheet.pull('corner:p4', 0, 30);
  await expect(band).toHaveText('');
  await sheet.letGo();
  await expect(band).toHaveText(/ to /);
});

test('a total and an element show their formula with the numbers of the page', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const formulas = page.locator('.sources > dl .formula');
  await expect(formulas).toHaveCount(4);
  const figure = (await sheet.total('BackPressure').innerText()).match(/[\d.]+/)[0];
  await expect(formulas.last()).toContainText(`= ${figure} in. w.c.`);
  await sheet.select('elbow:p2');
  const loss = await sheet.cell('elbow:p2', 'loss').textContent();
  await expect(page.locator('.selected .formula')).toHaveText(new RegExp(`^Δp = K · q = .* = ${loss} in\\. w\\.c\\.$`));
  await sheet.units('m, Pa, L/s');
  await expect(page.locator('.selected .formula')).toContainText('Pa');
});

for (const colorScheme of ['light', 'dark']) {
  test(`no violation with all sources unfolded, ${colorScheme}`, async ({ page, site }) => {
    await page.emulateMedia({ colorScheme });
    const sheet = await Sheet.open(page, site);
    await sheet.unfold();
    await expect(page.locator('.sources details dd').first()).toBeVisible();
    for (const standing of ['assumption', 'published', 'from memory']) await expect(page.locator('.sources details')).toContainText(standing);
    expect(await violations(page)).toEqual([]);
  });
}
