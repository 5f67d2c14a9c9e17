// The mouse on the drawing: what is pulled moves under the hand, and every figure with it.

import { test, expect } from './page.mjs';
import { Sheet } from './sheet.mjs';

test('airflow, loss and ledger follow a corner before it is let go; the drag is one step', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const before = await sheet.figures();
  const airflow = await sheet.total('Airflow').textContent();
  const pressure = await sheet.total('BackPressure').textContent();
  const loss = await sheet.cell('leg:p3', 'loss').textContent();
  const length = await sheet.mark('length:leg:p3').textContent();

  await sheet.pull('corner:p3', 0, 170);
  await expect(sheet.total('Airflow')).not.toHaveText(airflow);
  await expect(sheet.total('BackPressure')).not.toHaveText(pressure);
  await expect(sheet.cell('leg:p3', 'loss')).not.toHaveText(loss);
  await expect(sheet.mark('length:leg:p3')).not.toHaveText(length);
  // A band that belongs to the plan before would be a lie; the new one waits for the hand.
  await sheet.pendingBand('Airflow');
  await expect(sheet.spoken).toBeEmpty();
  await expect(sheet.button('Undo')).toBeDisabled();

  const dragged = await sheet.ledgerAtRest();
  await sheet.letGo();
  await sheet.banded();
  expect(await sheet.ledgerText()).toBe(dragged);
  const after = await sheet.figures();

  await sheet.button('Undo').click();
  expect(await sheet.figures()).toEqual(before);
  await expect(sheet.button('Undo')).toBeDisabled();
  await sheet.button('Redo').click();
  expect(await sheet.figures()).toEqual(after);
});

test('a corner in line with its neighbours makes square legs', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  // Off the line by less than it catches from.
  await sheet.pull('corner:p3', 5, 60);
  await sheet.letGo();
  await expect(sheet.row('elbow:p2')).toContainText('90°');
});

test('a click that trembles selects a corner and moves nothing', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('leg:p4');
  // Off the half-inch grid, so that a jump onto it would show.
  await sheet.type('Leg length, corner to corner', '5\' 7 3/16"');
  await expect(sheet.mark('length:leg:p4')).toHaveText('5\' 7 3/16"');
  const before = await sheet.figures();
  await sheet.pull('corner:p4', 1, 1);
  await expect(sheet.row('termination:p4')).toHaveClass(/lit/);
  await sheet.letGo();
  await expect(sheet.field('Leg length, corner to corner')).toHaveValue('5\' 7 3/16"');
  expect(await sheet.figures()).toEqual(before);
});

test('a new bend is pulled out of a diamond', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const rows = await sheet.rows.count();
  await sheet.pull('new-bend:p4', 20, 110);
  // While it is pulled: one more leg, and the turns that it makes.
  await expect(sheet.mark('corner:p5')).toBeVisible();
  await expect.poll(() => sheet.rows.count()).toBeGreaterThan(rows + 1);
  await sheet.letGo();
  await expect(sheet.row('elbow:p5')).toHaveClass(/lit/);
  await expect(sheet.button('Undo')).toHaveAttribute('title', 'make bend');
  await sheet.button('Undo').click();
  await expect(sheet.mark('corner:p5')).toHaveCount(0);
  await expect(sheet.rows).toHaveCount(rows);
});

test('a press on a diamond alone selects its leg and makes no bend', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.pull('new-bend:p4', 0, 0);
  await sheet.letGo();
  await expect(sheet.row('leg:p4')).toHaveClass(/lit/);
  await expect(sheet.button('Undo')).toBeDisabled();
});

test('the termination is dragged', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const length = await sheet.mark('length:leg:p4').textContent();
  const airflow = await sheet.total('Airflow').textContent();
  await sheet.pull('corner:p4', -150, 0);
  await expect(sheet.mark('length:leg:p4')).not.toHaveText(length);
  await expect(sheet.total('Airflow')).not.toHaveText(airflow);
  await sheet.letGo();
  await expect(sheet.row('termination:p4')).toHaveClass(/lit/);
  await expect(sheet.button('Undo')).toHaveAttribute('title', 'move termination');
});

test('a drag beside the run moves the paper, the wheel zooms it, and neither changes the plan', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const before = await sheet.figures();
  const first = await sheet.view();
  const { x, y } = await sheet.middle('dryer');
  // Below the dryer, where nothing is.
  await page.mouse.move(x, y + 120);
  await page.mouse.down();
  await page.mouse.move(x + 40, y + 150, { steps: 4 });
  await page.mouse.up();
  await expect.poll(async () => (await sheet.view()).x - first.x).toBeCloseTo(40, 1);
  expect((await sheet.view()).y - first.y).toBeCloseTo(30, 1);
  await page.mouse.wheel(0, -400);
  // 400 px of the wheel are a doubling.
  await expect.poll(async () => (await sheet.view()).scale / first.scale).toBeCloseTo(2, 2);
  await sheet.button('Show all').click();
  await expect.poll(async () => (await sheet.view()).scale).toBeCloseTo(first.scale, 3);
  expect(await sheet.figures()).toEqual(before);
});

test('ledger, drawing and pressure line light one another', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  for (const element of ['leg:p4', 'elbow:p3', 'termination:p4']) {
    await sheet.row(element).hover();
    await expect(sheet.mark(`casing:${element}`)).toHaveClass(/lit/);
    await expect(page.locator(`.pressure [data-span="${element}"]`)).toHaveClass(/lit/);
  }
  await page.getByRole('heading', { name: 'Cautions' }).hover();
  await expect(page.locator('.lit')).toHaveCount(0);

  await sheet.canvas.scrollIntoViewIfNeeded();
  const { x, y, width, height } = await sheet.mark('core:leg:p4').boundingBox();
  // Clear of the diamond in its middle.
  await page.mouse.move(x + width / 4, y + height / 2);
  await expect(sheet.row('leg:p4')).toHaveClass(/lit/);
  await expect(page.locator('.ledger tbody .lit')).toHaveCount(1);
  await page.locator('.pressure [data-span="elbow:p2"]').hover();
  await expect(sheet.row('elbow:p2')).toHaveClass(/lit/);
  await expect(sheet.mark('casing:elbow:p2')).toHaveClass(/lit/);
});
