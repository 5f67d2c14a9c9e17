// What is typed, chosen and pressed beside the drawing.

import { test, expect } from './page.mjs';
import { LEG_LENGTH, Sheet, UNITS } from './sheet.mjs';

test('the finished example is there, with a band from the worker', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await expect(sheet.job).toContainText('Example');
  for (const name of ['Airflow', 'BackPressure', 'Velocity', 'CodeLength']) await expect(sheet.total(name)).toHaveText(/\d/);
  await expect(sheet.band('Airflow')).toHaveText(/^\d+ to \d+ cfm$/);
  await expect(sheet.rows).not.toHaveCount(0);
  await expect(page.getByTestId('dominant')).toContainText('Costliest: ');
  await expect(page.getByTestId('code-verdict')).toContainText('Meets');
  await expect(sheet.button('Undo')).toBeDisabled();
  await expect(sheet.button('Redo')).toBeDisabled();
});

test('a length is typed as a tape reads it', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('leg:p4');
  const loss = await sheet.cell('leg:p4', 'loss').textContent();
  await sheet.type(LEG_LENGTH, '6\' 3"');
  await expect(sheet.mark('length:leg:p4')).toHaveText('6\' 3"');
  await expect(sheet.cell('leg:p4', 'loss')).not.toHaveText(loss);
  for (const [typed, shown] of [['75 in', '6\' 3"'], ['6.25ft', '6\' 3"'], ['6\u20323\u00bd\u2033', '6\' 3 1/2"'], ['2 m', '6\' 6 3/4"'], ['1905mm', '6\' 3"']]) {
    await sheet.type(LEG_LENGTH, typed);
    await expect(sheet.field(LEG_LENGTH), typed).toHaveValue(shown);
    await expect(sheet.mark('length:leg:p4'), typed).toHaveText(shown);
  }
});

test('what cannot be read is answered beside the field and changes nothing', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('leg:p4');
  const before = await sheet.figures();
  const field = sheet.field(LEG_LENGTH);
  const note = page.locator('#leg-length-note');
  for (const [typed, said] of [['6 furlongs', '“furlongs” was not understood'], ['', 'Nothing was typed'], ['1,250', 'could be thousands or decimals'], ['3/0 in', 'cannot have 0 below its line'], ['6" 3\'', 'write feet before inches']]) {
    await sheet.type(LEG_LENGTH, typed);
    await expect(note, typed).toContainText(said);
    // It says what would work, and leaves what was typed to be mended.
    await expect(note).toContainText('Write it like');
    await expect(field).toHaveValue(typed);
    await expect(field).toHaveAttribute('aria-invalid', 'true');
  }
  expect(await sheet.figures()).toEqual(before);
  await expect(sheet.button('Undo')).toBeDisabled();
  await sheet.type(LEG_LENGTH, '5\' 6"');
  await expect(field).toHaveAttribute('aria-invalid', 'false');
  await expect(note).not.toContainText('Write it like');
});

test('what cannot be built is refused, and the field shows the plan again', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('leg:p4');
  const before = await sheet.figures();
  for (const [typed, said] of [['1 in', 'shorter than 2 in'], ['3000 ft', 'can be from']]) {
    await sheet.type(LEG_LENGTH, typed);
    await expect(sheet.alert, typed).toContainText(said);
    await expect(sheet.alert).toContainText('The open plan is as it was');
    await expect(sheet.field(LEG_LENGTH)).toHaveValue('5\' 6"');
  }
  expect(await sheet.figures()).toEqual(before);
  await sheet.button('Close').press('Enter');
  await expect(sheet.alert).toBeEmpty();
  // What was closed had the focus.
  await expect(page.locator('.drawing .canvas')).toBeFocused();
});

test('a count is a whole number from nought on', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('leg:p4');
  await sheet.unfold();
  const most = sheet.field('Concealed elbows, at most');
  const note = page.locator('#concealed-most-note');
  for (const typed of ['-2', '1.5', 'two', '']) {
    await sheet.type('Concealed elbows, at most', typed);
    await expect(note, typed).toContainText('Write a whole number from 0 on, like 2');
    await expect(most).toHaveValue(typed);
  }
  await expect(sheet.button('Undo')).toBeDisabled();
  await sheet.type('Concealed elbows, at most', '300');
  await expect(sheet.alert).toContainText('can be from');
  await sheet.type('Concealed elbows, at most', '2');
  await expect(most).toHaveValue('2');
  await expect(most).toHaveAttribute('aria-invalid', 'false');
  await expect(sheet.button('Undo')).toBeEnabled();
});

test('a rise makes a riser and its elbow, a minus a drop, nought none', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('elbow:p3');
  const loss = await page.locator('.ledger tfoot').textContent();
  await sheet.type('Rise here', '2\' 6"');
  await expect(sheet.row('riser:p3')).toBeVisible();
  await expect(sheet.row('elbow-after-riser:p3')).toBeVisible();
  await expect(sheet.mark('length:riser:p3')).toHaveText('up 2\' 6"');
  await sheet.type('Rise here', '-1 ft');
  await expect(sheet.mark('length:riser:p3')).toHaveText('down 1\' 0"');
  await sheet.type('Rise here', '0');
  await expect(sheet.row('riser:p3')).toHaveCount(0);
  await expect(page.locator('.ledger tfoot')).toHaveText(loss);
});

test('a run that ends upward is drawn to its end', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const size = async () => {
    const { width, height } = await sheet.mark('core:termination:p4').boundingBox();
    return Math.min(width, height);
  };
  expect(await size()).toBeGreaterThan(4);
  await sheet.select('termination:p4');
  await sheet.type('Rise here', '3 ft');
  await expect(sheet.row('riser:p4')).toBeVisible();
  await expect.poll(size).toBeGreaterThan(4);
  await sheet.button('Undo').click();
  await expect(sheet.row('riser:p4')).toHaveCount(0);
  await expect.poll(size).toBeGreaterThan(4);
});

test('kind and radius of an elbow', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('elbow:p2');
  const loss = async () => Number(await sheet.cell('elbow:p2', 'loss').textContent());
  const segmented = await loss();
  await sheet.field('Elbow').selectOption({ label: 'Smooth' });
  await expect(sheet.row('elbow:p2')).toContainText('Smooth elbow');
  // A curve loses less than straight pieces at an angle, and a wide one less than a tight one.
  await expect.poll(loss).toBeLessThan(segmented);
  const tight = await loss();
  await sheet.type('Centre-line radius', '8 in');
  await expect(sheet.row('elbow:p2')).toContainText('radius 8 in');
  await expect.poll(loss).toBeLessThan(tight);
  await sheet.field('Elbow').selectOption({ label: 'Sharp mitre' });
  await expect.poll(loss).toBeGreaterThan(segmented);
  await expect(sheet.button('Undo')).toHaveAttribute('title', 'change elbow');
});

test('a bend is made and removed by buttons', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const before = await sheet.figures();
  await sheet.select('leg:p4');
  await sheet.button('Make a bend in this leg').click();
  await expect(sheet.mark('corner:p5')).toHaveClass(/lit/);
  await expect(sheet.row('leg:p5')).toBeVisible();
  await sheet.button('Remove this bend').click();
  await expect(sheet.mark('corner:p5')).toHaveCount(0);
  expect(await sheet.figures()).toEqual(before);
});

test('undo and redo, by button and with the drawing focused by keys', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const steps = [await sheet.figures()];
  await sheet.select('leg:p4');
  for (const length of ['6 ft', '7 ft', '8 ft']) {
    await sheet.type(LEG_LENGTH, length);
    await expect(sheet.mark('length:leg:p4')).toHaveText(length.replace(' ft', '\' 0"'));
    steps.push(await sheet.figures());
  }
  const shows = async (step) => expect.poll(() => sheet.figures()).toEqual(steps[step]);
  await sheet.button('Undo').click();
  await shows(2);
  await sheet.canvas.focus();
  await page.keyboard.press('Control+z');
  await shows(1);
  await page.keyboard.press('Control+z');
  await shows(0);
  await page.keyboard.press('Control+Shift+z');
  await shows(1);
  await page.keyboard.press('Control+y');
  await shows(2);
  await sheet.button('Redo').click();
  await shows(3);
  await expect(sheet.button('Redo')).toBeDisabled();
  // In a field the same keys belong to the field.
  await sheet.field(LEG_LENGTH).press('Control+z');
  await shows(3);
});

test('all figures change to SI and come back the same', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const before = await sheet.figures();
  await sheet.units(UNITS.si);
  for (const [name, unit] of [['Airflow', 'L/s'], ['BackPressure', 'Pa'], ['Velocity', 'm/s'], ['CodeLength', 'm']]) {
    await expect(sheet.total(name).locator('small')).toHaveText(unit);
  }
  await expect(sheet.band('Airflow')).toHaveText(/^[\d.]+ to [\d.]+ L\/s$/);
  await expect(sheet.mark('length:leg:p4')).toHaveText('1.676 m');
  await expect(page.locator('.ledger thead')).toContainText('Pa');
  // No figure in the other units is left anywhere, words about the code's own table apart.
  const printed = `${await page.locator('.totals').textContent()} ${await page.locator('.ledger').textContent()}`;
  expect(printed).not.toMatch(/cfm|fpm|w\.c\.|\d'|\bft\b/);
  await sheet.units(UNITS.usCustomary);
  expect(await sheet.figures()).toEqual(before);
  await expect(sheet.button('Undo')).toBeDisabled();
});

test('costliest first, and back to run order', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const order = () => sheet.rows.evaluateAll((rows) => rows.map((row) => row.dataset.element));
  const ranks = async () => (await page.locator('[data-cell=rank]').allTextContents()).map(Number);
  const losses = async () => (await page.locator('.ledger tbody [data-cell=loss] .likely').allTextContents()).map(Number);
  const run = await order();
  await page.getByText('Costliest first', { exact: true }).click();
  await expect.poll(ranks).toEqual(run.map((_, index) => index + 1));
  const sorted = await losses();
  expect(sorted).toEqual([...sorted].sort((a, b) => b - a));
  expect(sorted[0]).toBeGreaterThan(sorted.at(-1));
  await page.getByText('Run order', { exact: true }).click();
  await expect.poll(order).toEqual(run);
});

test('the shares of the ledger make the whole', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const shares = await page.locator('[data-cell=share]').allTextContents();
  const sum = shares.map((share) => Number.parseInt(share, 10)).reduce((total, share) => total + share, 0);
  // Each is rounded to a whole percent.
  expect(Math.abs(sum - 100)).toBeLessThanOrEqual((await sheet.rows.count()) / 2);
});
