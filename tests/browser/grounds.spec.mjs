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
  await expect(page.locator('.sheet-drawing > .fine')).toContainText('No published measurement stands behind: Blower (assumption), Segmented elbow (assumption), Hoods and cap (assumption).');
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
  await expect(formulas).toHaveCount(8);
  const figure = (await sheet.total('BackPressure').innerText()).match(/[\d.]+/)[0];
  await expect(formulas.filter({ hasText: 'p = losses' })).toContainText(`= ${figure} in. w.c.`);
  await sheet.select('elbow:p2');
  const loss = await sheet.cell('elbow:p2', 'loss').textContent();
  const own = page.locator('.selected .formula');
  await expect(own.first()).toHaveText(new RegExp(`^Δp = K · q = .* = ${loss} in\\. w\\.c\\.$`));
  const length = await sheet.cell('elbow:p2', 'equivalent-length').textContent();
  await expect(own.last()).toHaveText(new RegExp(`^Lₑ = D · Δp / .* = ${length} ft$`));
  await sheet.units('m, Pa, L/s');
  await expect(own.first()).toContainText('Pa');
});

const unitsOf = { Airflow: ' cfm', BackPressure: ' in. w.c.', Velocity: ' fpm' };

for (const [name, unit] of Object.entries(unitsOf)) {
  test(`pressed on its name, ${name} says where it comes from`, async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    const figure = (await sheet.total(name).innerText()).match(/[\d.]+/)[0];
    const ask = page.locator(`[data-total=${name}] .ask`);
    await ask.focus();
    await page.keyboard.press('Enter');
    const answer = page.locator('.asked');
    await expect(answer.locator('.formula')).toContainText(`${figure}${unit}`);
    await expect(answer).toContainText('10th to the 90th percentile of 512 runs');
    await expect(answer).toContainText(/Moved most by: .* % of the spread/);
    await expect(answer).toContainText('Blower (assumption)');
    await expect(ask).toHaveAttribute('aria-expanded', 'true');
    await page.keyboard.press('Enter');
    await expect(answer).toHaveCount(0);
  });
}

test('the code length shows its sum, its source, and what an estimate does to it', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await page.locator('[data-total=CodeLength] .ask').click();
  const answer = page.locator('.asked');
  const figure = (await sheet.total('CodeLength').innerText()).trim();
  await expect(answer.locator('.formula')).toContainText(`= ${figure}; limit 35' 0"`);
  await expect(answer).toContainText('M1502.4.6.1');
  await expect(answer).toContainText('No length in it is estimated.');
  await expect(page.locator('.total-span')).toHaveCount(0);
  await sheet.reopen((plan) => {
    plan.run.points.at(-1).estimate = { less_m: 0.3048, more_m: 0.6096 };
  });
  await expect(page.locator('.total-span')).toHaveText(`32' 10 1/8" to 35' 10 1/8"`);
  await expect(page.getByTestId('code-span')).toContainText(`32' 10 1/8" to 35' 10 1/8"`);
  await expect(page.getByTestId('code-verdict')).toContainText('Cannot tell');
});

test('closed, the answer gives the focus back to the name that was pressed', async ({ page, site }) => {
  await Sheet.open(page, site);
  const ask = page.locator('[data-total=BackPressure] .ask');
  await ask.click();
  await page.locator('.asked').getByRole('button').press('Enter');
  await expect(page.locator('.asked')).toHaveCount(0);
  await expect(ask).toBeFocused();
});

for (const colorScheme of ['light', 'dark']) {
  test(`no violation with all sources unfolded, ${colorScheme}`, async ({ page, site }) => {
    await page.emulateMedia({ colorScheme });
    const sheet = await Sheet.open(page, site);
    await sheet.unfold();
    await page.locator('[data-total=BackPressure] .ask').click();
    await expect(page.locator('.sources details dd').first()).toBeVisible();
    for (const standing of ['assumption', 'published', 'from memory']) await expect(page.locator('.sources details')).toContainText(standing);
    expect(await violations(page)).toEqual([]);
  });
}
