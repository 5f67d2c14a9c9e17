// Two runs side by side: linked drawings, one pressure axis, what differs in words and in figures, and
// which of the two is changed.

import { test, expect, open } from './page.mjs';
import { jobsStored, planFile, rename, saved, word, WORD, job, openJobs } from './keep.mjs';
import { violations } from './violations.mjs';

const begin = async (page) => {
  const more = page.locator('.head-more');
  if (await more.isVisible() && await more.getAttribute('aria-expanded') === 'false') await more.click();
  await page.getByRole('button', { name: 'Side by side', exact: true }).click();
  await expect(page.locator('.side-canvas')).toBeVisible();
};
const row = (page, name) => page.locator(`.side-table [data-side="${name}"] td`);
const count = (page) => page.getByTestId('side-count');
const kind = (page) => page.locator('.selected').getByLabel('Elbow', { exact: true });
/** Selects the second corner's elbow by keyboard. */
const takeElbow = async (page) => {
  await page.locator('.canvas').focus();
  for (let press = 0; press < 12; press += 1) {
    await page.keyboard.press('n');
    if (await page.locator('.canvas .lit[data-mark*="elbow:p2"]').count() > 0) return;
  }
  throw new Error('the elbow at p2 was not reached');
};

// Each difference is worked out by a worker that is started for it.
test.setTimeout(90_000);

test('one elbow is swapped in four actions from the first screen, and the table tells what that did', async ({ page, site }) => {
  await open(page, site);
  const totals = () => Promise.all(['Airflow', 'BackPressure'].map((name) => page.locator(`[data-total=${name}] .total-figure`).textContent()));
  const before = await totals();
  // 1: the two, one a copy of the other.
  await begin(page);
  await expect(count(page)).toContainText('Nothing differs.');
  // 2: a press on the elbow.
  const { x, y, width, height } = await page.locator('.canvas [data-mark="corner:p2"]').boundingBox();
  await page.mouse.click(x + width / 2, y + height / 2);
  // 3 and 4: its kind.
  await kind(page).selectOption('Sharp mitre');
  await expect(count(page)).toContainText('One thing differs');
  await expect(page.locator('.side-differences li')).toHaveText(['Elbow at corner 2: segmented, radius 4 in, then sharp mitre']);

  const [first, second, more] = await row(page, 'Airflow').allTextContents();
  expect(before[0].replace(/\s+/g, '')).toBe(first.replace(/\s+/g, ''));
  expect((await totals())[0].replace(/\s+/g, '')).toBe(second.replace(/\s+/g, ''));
  expect(parseFloat(second)).toBeLessThan(parseFloat(first));
  expect(more).toMatch(/^−\d+ cfm \(−\d+ %\)/);
  // How sure the difference is comes from the worker a moment later.
  await expect(row(page, 'Airflow').nth(2)).toContainText('band −');
  await expect(row(page, 'elbow:p2').nth(0)).toContainText('Segmented elbow');
  await expect(row(page, 'elbow:p2').nth(1)).toContainText('Sharp mitre elbow');
  // What is told of the elements adds up to both losses.
  const sums = await page.evaluate(() => {
    const cells = (name, at) => document.querySelectorAll(`.side-table [data-side="${name}"] td`)[at].textContent;
    const figure = (text) => parseFloat(text.split(': ').pop());
    const names = [...document.querySelectorAll('.side-table tr')].map((row) => row.dataset.side).filter((name) => name && (name.includes(':') || name === 'others'));
    return [0, 1].map((at) => [names.reduce((sum, name) => sum + figure(cells(name, at)), 0), figure(cells('Loss', at))]);
  });
  // Each row is rounded to a thousandth.
  for (const [sum, loss] of sums) expect(Math.abs(sum - loss)).toBeLessThan(0.003);
  await page.getByRole('button', { name: 'End side by side' }).click();
  await expect(page.locator('.ledger')).toBeVisible();
});

test('the two drawings have one scale and light the same element, and the plots one axis', async ({ page, site }) => {
  await open(page, site);
  await begin(page);
  const transforms = () => page.evaluate(() => ['.canvas', '.side-canvas'].map((svg) => document.querySelector(`${svg} > g`).getAttribute('transform')));
  const sameScale = async () => {
    const [open, other] = await transforms();
    return open === other;
  };
  await expect.poll(sameScale).toBe(true);
  const [before] = await transforms();
  await page.getByRole('button', { name: 'Zoom in' }).click();
  await expect.poll(async () => (await transforms())[0]).not.toBe(before);
  expect(await sameScale()).toBe(true);
  await takeElbow(page);
  await expect(page.locator('.side-canvas .lit[data-mark*="elbow:p2"]').first()).toBeAttached();
  await kind(page).selectOption('Sharp mitre');
  const axes = () => page.locator('.side-plot .plot-mark').allTextContents();
  await expect.poll(async () => {
    const marks = await axes();
    return marks.length === 8 && marks.slice(0, 4).join() === marks.slice(4).join();
  }).toBe(true);
  const lines = await page.locator('.side-plot .plot-line.total').evaluateAll((paths) => paths.map((path) => path.getAttribute('d')));
  expect(lines[0]).not.toBe(lines[1]);
});

test('either run can be the one that is changed, each stays a job of its own, and undo changes them back', async ({ page, site }) => {
  await open(page, site);
  await rename(page, 'As found');
  await saved(page);
  const found = JSON.parse(await planFile(page));
  await begin(page);
  await takeElbow(page);
  await kind(page).selectOption('Sharp mitre');
  await saved(page);
  await page.getByRole('button', { name: 'Change this one' }).click();
  await expect(job(page)).toHaveText('As found (copy)');
  await expect(word(page)).toHaveText(WORD.untouched);
  await expect(count(page)).toContainText('One thing differs');
  // The first is still the first.
  await expect(page.locator('.side-differences li')).toHaveText([/segmented, radius 4 in, then sharp mitre$/]);
  await takeElbow(page);
  await kind(page).selectOption('Smooth');
  await saved(page);
  expect(await jobsStored(page)).toBe(2);
  await page.getByRole('button', { name: 'Change this one' }).click();
  await expect(job(page)).toHaveText('As found');
  await expect(page.locator('.side-differences li')).toHaveText([/smooth, radius 4 in, then sharp mitre$/]);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(job(page)).toHaveText('As found (copy)');
  await expect(page.locator('.side-differences li')).toHaveText([/smooth, radius 4 in, then sharp mitre$/]);
  await page.getByRole('button', { name: 'Redo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(job(page)).toHaveText('As found');
  expect(JSON.parse(await planFile(page))).toEqual(found);
});

test('a kept job stands beside the open one, at one scale', async ({ page, site }) => {
  await open(page, site);
  await rename(page, 'The example, kept');
  await saved(page);
  await page.getByRole('button', { name: 'Start blank' }).click();
  await rename(page, 'A blank one');
  await saved(page);
  await begin(page);
  await page.getByText('A kept job', { exact: true }).click();
  await page.locator('.side-sources').getByRole('button', { name: 'The example, kept' }).click();
  await expect(page.locator('.side-other .side-which')).toContainText('The example, kept');
  await expect(count(page)).toContainText('things differ');
  const scales = await page.evaluate(() => ['.canvas', '.side-canvas'].map((svg) => document.querySelector(`${svg} > g`).getAttribute('transform').split('scale')[1]));
  expect(scales[0]).toBe(scales[1]);
  await page.getByRole('button', { name: 'Change this one' }).click();
  await expect(job(page)).toHaveText('The example, kept');
  await saved(page);
  expect(await jobsStored(page)).toBe(2);
  const dialog = await openJobs(page);
  await expect(dialog.getByRole('listitem')).toHaveCount(2);
});

test('a suggested run is taken beside the present one', async ({ page, site }) => {
  await open(page, site);
  await page.getByTestId('reroute-start').click();
  const first = page.getByTestId('reroute').first();
  await first.getByRole('button', { name: 'Take it beside the present run' }).click();
  await expect(page.locator('.side-other .side-which')).toContainText('(copy)');
  await expect(page.locator('.side-differences li').first()).toBeVisible();
  const [before, after] = await row(page, 'BackPressure').allTextContents();
  expect(parseFloat(after)).toBeLessThan(parseFloat(before));
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(count(page)).toContainText('Nothing differs.');
});

for (const [colorScheme, width, height] of [['light', 360, 780], ['dark', 360, 780], ['light', 1280, 800], ['dark', 2560, 1440]]) {
  test.describe(`${colorScheme}, ${width} px`, () => {
    test.setTimeout(120_000);
    test.use({ colorScheme, viewport: { width, height } });

    test('side by side fits, its targets are large, and has no violation of accessibility', async ({ page, site }) => {
      await open(page, site);
      await begin(page);
      for (const name of ['A kept job', 'A lesson', 'Make a lesson of these two']) await page.getByText(name, { exact: true }).click();
      await page.getByRole('button', { name: 'Guess first' }).click();
      await page.locator('#side-guess').fill('100');
      await page.keyboard.press('Enter');
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      const small = await page.evaluate(() => [...document.querySelectorAll(':is(.side-head, .side-caption, .side-figures) :is(button, summary, select)')]
        .map((target) => [target.textContent, target.getBoundingClientRect()])
        .filter(([, { width, height }]) => height > 0 && (height < 44 || width < 44))
        .map(([text]) => text));
      expect(small).toEqual([]);
      expect(await violations(page)).toEqual([]);
      await page.getByRole('button', { name: 'Show the figures' }).click();
      expect(await violations(page, '.side-head', '.side-figures')).toEqual([]);
    });
  });
}
