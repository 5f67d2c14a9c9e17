// The shell at work: the strip of totals, the sheet from below, the list of keys, what is read aloud.

import { missed, tabRound } from './focus.mjs';
import { test, expect } from './page.mjs';
import { PHONE, Sheet, overhang } from './sheet.mjs';

const focusIn = (page, selector) => page.evaluate((inside) => Boolean(document.activeElement?.closest(inside)), selector);

/** The sheet from below and where it leaves the page free. */
class Below {
  constructor(sheet) {
    this.sheet = sheet;
    this.panel = sheet.page.locator('.selected-sheet');
    this.close = sheet.button('Close what is selected');
  }

  /** Waits until a mark stands between the strip and the sheet. */
  async clear(mark) {
    await expect.poll(async () => {
      const strip = await this.sheet.page.locator('.totals').boundingBox();
      const below = await this.panel.boundingBox();
      const { y, height } = await this.sheet.mark(mark).boundingBox();
      return y >= strip.y + strip.height && y + height <= below.y;
    }, `${mark} between strip and sheet`).toBe(true);
  }
}

test.describe('on a phone', () => {
  test.use({ viewport: PHONE, hasTouch: true, isMobile: true });

  test('head, totals and the whole drawing are on the first screen', async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    const head = await page.locator('.head').boundingBox();
    const strip = await page.locator('.totals').boundingBox();
    const canvas = await sheet.canvas.boundingBox();
    expect(head.height, 'a sixth of the screen').toBeLessThan(PHONE.height / 6);
    expect(strip.height, 'an eighth of it').toBeLessThan(PHONE.height / 8);
    expect(canvas.y + canvas.height).toBeLessThan(PHONE.height);
    expect(canvas.height).toBeGreaterThan(300);
    await expect(sheet.button('Undo')).toBeVisible();
    await expect(sheet.button('Redo')).toBeVisible();
    await expect(sheet.button('Save file')).toBeHidden();
    await sheet.button('More').tap();
    await expect(sheet.button('More')).toHaveAttribute('aria-expanded', 'true');
    await expect(sheet.button('Save file')).toBeVisible();
    expect(await overhang(page)).toBe(0);
  });

  test('the totals stay in view down to the foot of the page', async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    await page.locator('.cautions').evaluate((last) => last.scrollIntoView({ block: 'end' }));
    expect(await page.evaluate(() => scrollY)).toBeGreaterThan(PHONE.height);
    expect((await page.locator('.totals').boundingBox()).y).toBeCloseTo(0, 0);
    for (const name of ['Airflow', 'BackPressure', 'Velocity', 'CodeLength']) await expect(sheet.total(name)).toBeInViewport();
  });

  test('a tap brings the sheet, which covers half at most and never what is selected', async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    const below = new Below(sheet);
    await expect(below.panel).toBeHidden();
    for (const [corner, element] of [['corner:p2', 'elbow:p2'], ['corner:p3', 'elbow:p3'], ['corner:p4', 'termination:p4']]) {
      const { x, y } = await sheet.middle(corner);
      await page.touchscreen.tap(x, y);
      await expect(sheet.row(element)).toHaveClass(/lit/);
      await expect(below.panel).toBeVisible();
      await below.clear(corner);
      expect((await below.panel.boundingBox()).height).toBeLessThanOrEqual(PHONE.height / 2 + 1);
    }
    const { width, height } = await below.close.boundingBox();
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(44);
    await below.close.tap();
    await expect(below.panel).toBeHidden();
    await expect(page.locator('.lit')).toHaveCount(0);
  });

  test('the drawing stays in use above the sheet', async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    const below = new Below(sheet);
    const tap = async (mark) => {
      const { x, y } = await sheet.middle(mark);
      await page.touchscreen.tap(x, y);
    };
    await tap('corner:p3');
    await below.clear('corner:p3');
    await tap('corner:p2');
    await expect(sheet.row('elbow:p2')).toHaveClass(/lit/);
    await below.clear('corner:p2');
    await page.locator('#elbow-kind').selectOption('smooth');
    await expect(sheet.row('elbow:p2')).toContainText('Smooth elbow');
  });

  test('a row of the ledger that is pressed is not covered by what it brings', async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    const below = new Below(sheet);
    const button = sheet.row('termination:p4').getByRole('button');
    await button.tap();
    await expect(below.panel).toBeVisible();
    await expect.poll(async () => {
      const { y, height } = await button.boundingBox();
      return y + height <= (await below.panel.boundingBox()).y;
    }).toBe(true);
  });
});

test.describe('on a narrow page, by keys', () => {
  test.use({ viewport: PHONE });

  test('the sheet leaves the focus on the drawing; Tab goes in, Escape closes it and goes back', async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    const below = new Below(sheet);
    await sheet.canvas.focus();
    await page.keyboard.press('n');
    await expect(below.panel).toBeVisible();
    await expect(sheet.canvas).toBeFocused();
    // The last stop before the sheet.
    const before = page.locator('.sheet-drawing').locator('button, [tabindex="0"]').filter({ visible: true }).last();
    await before.focus();
    await page.keyboard.press('Tab');
    await expect(below.close).toBeFocused();
    await page.keyboard.press('Tab');
    expect(await focusIn(page, '.selected-sheet .selected')).toBe(true);
    await page.keyboard.press('Escape');
    await expect(below.panel).toBeHidden();
    await expect(before).toBeFocused();
  });

  test('Escape closes it from the ledger too, and the button gives the focus back to its row', async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    const below = new Below(sheet);
    const row = sheet.row('elbow:p2').getByRole('button');
    await row.focus();
    await page.keyboard.press('Enter');
    await expect(below.panel).toBeVisible();
    await page.keyboard.press('Escape');
    await expect(below.panel).toBeHidden();
    await expect(row).toBeFocused();
    await page.keyboard.press('Enter');
    await below.close.click();
    await expect(below.panel).toBeHidden();
    await expect(row).toBeFocused();
  });

  test('the sheet keeps out of the way of a corner that is dragged', async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    const below = new Below(sheet);
    await sheet.pull('corner:p3', 0, 40);
    await expect(sheet.mark('corner:p3')).toHaveClass(/lit/);
    await expect(below.panel).toBeHidden();
    await sheet.letGo();
    await expect(below.panel).toBeVisible();
    await below.clear('corner:p3');
  });

  for (const element of [null, 'leg:p4', 'elbow:p2']) {
    test(`the focus is never hidden: ${element ?? 'nothing'} selected`, async ({ page, site }) => {
      const sheet = await Sheet.open(page, site);
      if (element) await sheet.select(element);
      await sheet.unfold();
      await sheet.unfoldHead();
      const stops = await tabRound(page);
      expect(stops.length).toBeGreaterThan(20);
      expect(await missed(page)).toEqual([]);
      expect(stops.filter(({ outlined }) => !outlined)).toEqual([]);
      expect(stops.filter(({ inSight }) => !inSight)).toEqual([]);
    });
  }
});

test('on a wide page the panel stands in its column, and Escape elsewhere changes nothing', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const panel = page.locator('.selected-sheet');
  await expect(panel).toContainText('Select a leg');
  await sheet.select('elbow:p2');
  await expect(new Below(sheet).close).toBeHidden();
  expect(await panel.evaluate((element) => getComputedStyle(element).position)).toBe('static');
});

// Keys

test('? opens the list of keys on the drawing, Escape closes it and goes back', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const dialog = page.getByRole('dialog', { name: 'Keys' });
  await sheet.button('Undo').or(sheet.button('Save file')).last().focus();
  await page.keyboard.press('?');
  await expect(dialog).toBeHidden();
  await sheet.canvas.focus();
  await page.keyboard.press('?');
  await expect(dialog).toBeVisible();
  expect(await focusIn(page, 'dialog')).toBe(true);
  await expect(dialog.getByRole('row', { name: 'N Select the next element' })).toBeVisible();
  await expect(dialog.getByRole('table', { name: 'Everywhere' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(sheet.canvas).toBeFocused();
});

test('the button opens it too; its own button closes it, and what is selected stays so', async ({ page, site }) => {
  await page.setViewportSize(PHONE);
  const sheet = await Sheet.open(page, site);
  await sheet.select('elbow:p2');
  await sheet.tool('Keys');
  const dialog = page.getByRole('dialog', { name: 'Keys' });
  await expect(dialog).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(sheet.row('elbow:p2')).toHaveClass(/lit/);
  await sheet.button('Keys').click();
  await dialog.getByRole('button', { name: 'Close' }).click();
  await expect(dialog).toBeHidden();
  await expect(sheet.button('Keys')).toBeFocused();
});

// What is read aloud

test('the same totals are said again after a change that leaves them as they were', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.spoken.evaluate((region) => {
    globalThis.said = [];
    new MutationObserver((changes) => {
      for (const { addedNodes } of changes) for (const { textContent } of addedNodes) if (textContent) globalThis.said.push(textContent);
    }).observe(region, { childList: true, subtree: true, characterData: true });
  });
  const counts = page.getByRole('checkbox', { name: /path through elbows/ });
  await counts.click();
  await expect(sheet.spoken).toContainText('Airflow');
  await expect.poll(() => page.evaluate(() => globalThis.said.length)).toBe(1);
  await counts.click();
  await expect.poll(() => page.evaluate(() => globalThis.said.length)).toBe(2);
  const [first, second] = await page.evaluate(() => globalThis.said);
  expect(second).toBe(first);
});
