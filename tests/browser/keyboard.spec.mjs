// The whole page without a pointer (WCAG 2.2: 2.1.1, 2.1.4, 2.4.7, 2.4.11, 4.1.3).

import { missed, tabRound } from './focus.mjs';
import { test, expect } from './page.mjs';
import { LEG_LENGTH, Sheet } from './sheet.mjs';

for (const element of [null, 'leg:p4', 'elbow:p1', 'elbow:p2', 'termination:p4']) {
  test(`Tab reaches everything, and the focus is seen: ${element ?? 'nothing'} selected`, async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    if (element) await sheet.select(element);
    await sheet.unfold();
    // Something to undo, so that its button counts.
    await sheet.type('Altitude', '1000 ft');
    await expect(sheet.button('Undo')).toBeEnabled();
    const stops = await tabRound(page);
    expect(stops.length).toBeGreaterThan(20);
    expect(await missed(page)).toEqual([]);
    expect(stops.filter(({ outlined }) => !outlined)).toEqual([]);
    expect(stops.filter(({ inSight }) => !inSight)).toEqual([]);
  });
}

test('N and P walk the run in order and round its ends, Escape lets go', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const order = await sheet.rows.evaluateAll((rows) => rows.map((row) => row.dataset.element));
  await sheet.canvas.focus();
  for (const element of [...order, order[0]]) {
    await page.keyboard.press('n');
    await expect(sheet.row(element)).toHaveClass(/lit/);
    await expect(page.locator('.ledger tbody .lit')).toHaveCount(1);
  }
  for (const element of [order.at(-1), order.at(-2)]) {
    await page.keyboard.press('Shift+P');
    await expect(sheet.row(element)).toHaveClass(/lit/);
  }
  await page.keyboard.press('Escape');
  await expect(page.locator('.lit')).toHaveCount(0);
  await expect(sheet.button('Undo')).toBeDisabled();
});

test('arrows move a selected corner by an inch, with Shift by a foot', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('termination:p4');
  await sheet.canvas.focus();
  const scrolled = await page.evaluate(() => scrollY);
  for (const [key, shown] of [['ArrowRight', '5\' 7"'], ['Shift+ArrowRight', '6\' 7"'], ['ArrowLeft', '6\' 6"'], ['Shift+ArrowLeft', '5\' 6"']]) {
    await page.keyboard.press(key);
    await expect(sheet.mark('length:leg:p4'), key).toHaveText(shown);
  }
  const at = await sheet.placeOf('corner:p4');
  await page.keyboard.press('ArrowDown');
  await expect.poll(() => sheet.placeOf('corner:p4')).not.toBe(at);
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => sheet.placeOf('corner:p4')).toBe(at);
  // Arrows belong to the drawing, not to the page's scrolling, while it is focused.
  expect(await page.evaluate(() => scrollY)).toBe(scrolled);
});

test('B bends a selected leg, Delete removes a selected bend, and the termination stays', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const before = await sheet.figures();
  await sheet.select('leg:p4');
  await sheet.canvas.focus();
  await page.keyboard.press('b');
  await expect(sheet.mark('corner:p5')).toHaveClass(/lit/);
  await page.keyboard.press('Shift+ArrowDown');
  await expect(sheet.row('elbow:p5')).toHaveClass(/lit/);
  await page.keyboard.press('Delete');
  await expect(sheet.mark('corner:p5')).toHaveCount(0);
  expect(await sheet.figures()).toEqual(before);
  await sheet.select('termination:p4');
  await sheet.canvas.focus();
  await page.keyboard.press('Delete');
  await expect(sheet.alert).toContainText('The run has to end somewhere');
  expect(await sheet.figures()).toEqual(before);
});

test('single keys do nothing while something else has the focus', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('elbow:p2');
  // Or the page's scrolling would bring another row under the mouse.
  await page.mouse.move(0, 0);
  const before = await sheet.figures();
  const view = await sheet.view();
  const keys = ['n', 'p', 'b', 'Delete', 'Backspace', 'Escape', '+', '-', '0'];
  for (const label of ['Centre-line radius', 'Altitude']) {
    for (const key of keys) {
      await sheet.field(label).focus();
      await page.keyboard.press(key);
      await expect(sheet.row('elbow:p2')).toHaveClass(/lit/);
    }
    await page.keyboard.press('Control+z');
    // What was typed is taken back, or the change of the field would count.
    await sheet.field(label).evaluate((field) => { field.value = field.defaultValue; });
  }
  // On a button and on the page itself neither.
  for (const focus of [() => sheet.button('Save file').focus(), () => page.evaluate(() => document.activeElement.blur())]) {
    await focus();
    for (const key of keys) await page.keyboard.press(key);
  }
  await expect(sheet.row('elbow:p2')).toHaveClass(/lit/);
  await expect(page.locator('.ledger tbody .lit')).toHaveCount(1);
  expect(await sheet.view()).toEqual(view);
  expect(await sheet.figures()).toEqual(before);
  await expect(sheet.button('Undo')).toBeDisabled();
});

test('the new totals are said after a finished change, and only then', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await expect(sheet.spoken).toHaveAttribute('aria-live', 'polite');
  await expect(sheet.spoken).toBeEmpty();
  const totals = async () => {
    const text = (name) => sheet.total(name).evaluate((element) => [...element.childNodes].map(({ textContent }) => textContent.trim()).filter(Boolean).join(' '));
    return `Airflow ${await text('Airflow')}, back pressure ${await text('BackPressure')}.`;
  };
  await sheet.select('termination:p4');
  await sheet.canvas.focus();
  await expect(sheet.spoken).toBeEmpty();
  await page.keyboard.press('Shift+ArrowRight');
  await expect(sheet.spoken).toHaveText(await totals());
  const said = await sheet.spoken.textContent();

  await sheet.pull('corner:p3', 0, 150);
  await expect(sheet.total('Airflow')).not.toHaveText(said.match(/\d+/)[0]);
  await expect(sheet.spoken).toHaveText(said);
  await sheet.letGo();
  await expect(sheet.spoken).not.toHaveText(said);
  await expect(sheet.spoken).toHaveText(await totals());

  await page.keyboard.press('Control+z');
  await expect(sheet.spoken).toHaveText(said);
});

test('a run is drawn from blank by keys alone', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const tabTo = async (locator) => {
    for (let presses = 0; presses < 80; presses += 1) {
      if (await locator.evaluate((element) => element === document.activeElement)) return;
      await page.keyboard.press('Tab');
    }
    throw new Error('Tab does not come there');
  };
  await tabTo(sheet.button('Start blank'));
  await page.keyboard.press('Enter');
  await expect(sheet.job).toHaveText('New plan');
  await tabTo(sheet.canvas);
  await page.keyboard.press('n');
  await expect(sheet.row('leg:p1')).toHaveClass(/lit/);
  await page.keyboard.press('b');
  await expect(sheet.mark('corner:p2')).toHaveClass(/lit/);
  await page.keyboard.press('p');
  // The new corner has no elbow yet: the walk starts at the run's end.
  await expect(sheet.row('termination:p1')).toHaveClass(/lit/);
  for (let feet = 0; feet < 5; feet += 1) await page.keyboard.press('Shift+ArrowRight');
  await expect(sheet.row('elbow:p2')).toBeVisible();
  await tabTo(page.locator('#leg-length'));
  await page.keyboard.press('Control+a');
  await page.keyboard.type('8 ft 3 in');
  await page.keyboard.press('Enter');
  await expect(sheet.mark('length:leg:p1')).toHaveText('8\' 3"');
  await tabTo(page.locator('#termination-kind'));
  await page.keyboard.type('Roof');
  await expect(sheet.row('termination:p1')).toContainText('Roof cap');
  await tabTo(sheet.row('elbow:p2').getByRole('button'));
  await page.keyboard.press('Space');
  await expect(sheet.row('elbow:p2')).toHaveClass(/lit/);
  await expect(sheet.field('Rise here')).toBeVisible();
  await expect(sheet.field(LEG_LENGTH)).toHaveCount(0);
});
