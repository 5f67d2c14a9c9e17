// The main path in the built page: load, drag, type a length, undo, save, reopen.

import { readFile } from 'node:fs/promises';
import { test, expect, open } from './page.mjs';
import { Sheet } from './sheet.mjs';

/** Everything that the totals and the ledger say. */
const figures = async (page) => [
  await page.locator('.totals').innerText(),
  await new Sheet(page).ledgerText(),
];

/** The band has come and belongs to the plan shown. */
const banded = (page) => expect(page.locator('.totals')).not.toContainText('working out');

const total = (page, name) => page.locator(`[data-total="${name}"] .total-figure`);

async function middle(page, mark) {
  const box = await page.locator(`[data-mark="${mark}"]`).boundingBox();
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function save(page) {
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save file' }).click();
  return readFile(await (await downloading).path());
}

const reopen = (page, bytes) =>
  page.locator('#plan-file').setInputFiles({ name: 'plan.json', mimeType: 'application/json', buffer: bytes });

test('the finished example is there with its bands', async ({ page, site }) => {
  await open(page, site);
  await banded(page);
  const [low, likely, high] = (await page.locator('[data-total="Airflow"]').innerText())
    .match(/\d+/g)
    .map(Number)
    .sort((a, b) => a - b);
  expect(low).toBeLessThanOrEqual(likely);
  expect(likely).toBeLessThanOrEqual(high);
  await expect(page.locator('tbody tr')).toHaveCount(10);
  await expect(page.getByTestId('dominant')).toContainText('Wall hood');
});

test('figures follow a dragged corner before it is let go, and undo puts it back', async ({ page, site }) => {
  await open(page, site);
  await banded(page);
  const before = await figures(page);
  const from = await middle(page, 'corner:p3');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x + 10, from.y + 120, { steps: 6 });
  const ledger = () => new Sheet(page).ledgerText();
  await expect.poll(ledger).not.toBe(before[1]);
  const held = await new Sheet(page).ledgerAtRest();
  await page.mouse.up();
  expect(await ledger()).toBe(held);
  await banded(page);
  await page.getByRole('button', { name: 'Undo' }).click();
  await banded(page);
  expect(await figures(page)).toEqual(before);
});

test('a new bend is pulled out of a leg and removed again', async ({ page, site }) => {
  await open(page, site);
  const rows = page.locator('tbody tr');
  await expect(rows).toHaveCount(10);
  const from = await middle(page, 'new-bend:p4');
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x, from.y + 90, { steps: 5 });
  await page.mouse.up();
  // A leg and two more elbows, since the pulled corner turns three of them.
  await expect(rows).not.toHaveCount(10);
  await page.getByRole('button', { name: 'Remove this bend' }).click();
  await expect(rows).toHaveCount(10);
});

test('a typed length moves the run; a wrong one says what would work and changes nothing', async ({ page, site }) => {
  await open(page, site);
  await page.locator('tr[data-element="leg:p4"] button').click();
  const length = page.getByLabel('Leg length, corner to corner');
  await length.fill('7ft 3 1/2in');
  await length.press('Enter');
  await expect(length).toHaveValue('7\' 3 1/2"');
  await expect(page.locator('[data-mark="length:leg:p4"]')).toHaveText('7\' 3 1/2"');
  const sheet = new Sheet(page);
  const before = await sheet.ledgerAtRest();
  await length.fill('7 furlongs');
  await length.press('Enter');
  await expect(page.locator('#leg-length-note')).toContainText('“furlongs” was not understood');
  await expect(page.locator('#leg-length-note')).toContainText('12\' 6"');
  await expect(length).toHaveValue('7 furlongs');
  expect(await sheet.ledgerAtRest()).toBe(before);
});

test('rise, elbow and termination are changed by their fields', async ({ page, site }) => {
  await open(page, site);
  await page.locator('tr[data-element="elbow:p2"] button').click();
  const loss = page.locator('tr[data-element="elbow:p2"] [data-cell="loss"] .likely');
  const segmented = Number(await loss.innerText());
  await page.locator('#elbow-kind').selectOption('smooth');
  await page.locator('#elbow-radius').fill('8 in');
  await page.locator('#elbow-radius').press('Enter');
  await expect.poll(async () => Number(await loss.innerText())).toBeLessThan(segmented * 0.7);
  await expect(page.locator('tr[data-element="elbow:p2"] [data-cell="code-deduction"]')).toContainText('1.6');
  await page.locator('#rise').fill('2\'');
  await page.locator('#rise').press('Enter');
  await expect(page.locator('tr[data-element="riser:p2"]')).toBeVisible();
  await page.locator('tr[data-element="termination:p4"] button').click();
  await page.locator('#termination-kind').selectOption('louvred_hood');
  await expect(page.locator('tr[data-element="termination:p4"]')).toContainText('Louvred hood');
});

test('saved, changed and opened again: the same figures to the last digit, the same file to the last byte', async ({ page, site }) => {
  await open(page, site);
  await page.locator('tr[data-element="leg:p2"] button').click();
  await page.getByLabel('Leg length, corner to corner').fill('31 5/16 in');
  await page.getByLabel('Leg length, corner to corner').press('Enter');
  await page.getByText('m, Pa, L/s').click();
  await banded(page);
  const before = await figures(page);
  const bytes = await save(page);
  await page.getByRole('button', { name: 'Start blank' }).click();
  await expect(page.locator('tbody tr')).toHaveCount(2);
  await reopen(page, bytes);
  await expect(page.locator('tbody tr')).toHaveCount(10);
  await banded(page);
  expect(await figures(page)).toEqual(before);
  expect(await save(page)).toEqual(bytes);
});

test('a broken file says why and leaves the plan alone', async ({ page, site }) => {
  await open(page, site);
  const before = await figures(page);
  const bytes = await save(page);
  const plan = JSON.parse(bytes);
  plan.run.points[1].x_m = 1e9;
  await reopen(page, Buffer.from(JSON.stringify(plan)));
  await expect(page.getByRole('alert')).toContainText('run.points[1].x_m is 1000000000; it can be from -500 to 500');
  await expect(page.getByRole('alert')).toContainText('The open plan is as it was');
  expect((await figures(page))[1]).toBe(before[1]);
});

test('names typed by people are inert on the page and in the exported drawing', async ({ page, site }) => {
  await open(page, site);
  const plan = JSON.parse(await save(page));
  plan.title = '<img src=x onerror=alert(1)>"\'&=1+1';
  plan.obstacles[0].name = '</text><script>alert(1)</script><image href="x"/>';
  await reopen(page, Buffer.from(JSON.stringify(plan)));
  await expect(page.locator('.head-job')).toHaveText(plan.title);
  await expect(page.locator('[data-mark="obstacle:b1:name"]')).toHaveText(plan.obstacles[0].name);
  await expect(page.locator('#app img, #app script, #app image')).toHaveCount(0);
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save drawing' }).click();
  const drawing = (await readFile(await (await downloading).path())).toString();
  const kinds = await page.evaluate((text) => {
    const parsed = new DOMParser().parseFromString(text, 'image/svg+xml');
    return [...new Set([...parsed.querySelectorAll('*')].map((element) => element.localName))].sort();
  }, drawing);
  expect(kinds).toEqual(['circle', 'g', 'path', 'rect', 'svg', 'text']);
});

test('drawing, ledger and pressure line light one another', async ({ page, site }) => {
  await open(page, site);
  await page.locator('tr[data-element="leg:p4"]').hover();
  await expect(page.locator('[data-mark="casing:leg:p4"]')).toHaveClass(/lit/);
  await expect(page.locator('.pressure [data-span="leg:p4"]')).toHaveClass(/lit/);
  await page.locator('.pressure [data-span="termination:p4"]').hover();
  await expect(page.locator('tr[data-element="termination:p4"]')).toHaveClass(/lit/);
});
