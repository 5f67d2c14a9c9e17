// By keyboard, by touch, and with nothing that a checker of accessibility finds wrong.

import AxeBuilder from '@axe-core/playwright';
import { test, expect, open } from './page.mjs';

test('the drawing is worked by keys, and only while it is focused', async ({ page, site }) => {
  await open(page, site);
  const rows = page.locator('tbody tr');
  await page.locator('.canvas').focus();
  await page.keyboard.press('n');
  await expect(rows.first()).toHaveClass(/lit/);
  await page.keyboard.press('p');
  await expect(page.locator('tr[data-element="termination:p4"]')).toHaveClass(/lit/);
  await page.keyboard.press('p');
  await expect(page.locator('tr[data-element="leg:p4"]')).toHaveClass(/lit/);
  await page.keyboard.press('b');
  await expect(page.getByRole('button', { name: 'Remove this bend' })).toBeVisible();
  await page.keyboard.press('Shift+ArrowDown');
  await expect(rows).not.toHaveCount(10);
  await expect(page.locator('[role="status"]').filter({ hasText: 'Airflow' })).toContainText('back pressure');
  await page.keyboard.press('Delete');
  await expect(rows).toHaveCount(10);
  await page.keyboard.press('Control+z');
  await expect(rows).not.toHaveCount(10);
  // The same letter in a field is a letter.
  const altitude = page.locator('#altitude');
  await altitude.focus();
  const count = await rows.count();
  await altitude.pressSequentially('b');
  await expect(rows).toHaveCount(count);
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true });

  test('one finger drags a corner, two move the paper and leave the plan alone', async ({ page, site }) => {
    await open(page, site);
    const scrolled = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(scrolled, 'sideways scroll').toBeLessThanOrEqual(0);
    await page.locator('.canvas').scrollIntoViewIfNeeded();
    const box = await page.locator('[data-mark="corner:p3"]').boundingBox();
    const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
    const devtools = await page.context().newCDPSession(page);
    const touch = (type, ...touchPoints) => devtools.send('Input.dispatchTouchEvent', { type, touchPoints });
    const ledger = () => page.locator('.ledger table').innerText();
    const before = await ledger();
    await touch('touchStart', { ...at, id: 0 });
    await touch('touchMove', { x: at.x, y: at.y + 40, id: 0 });
    await touch('touchEnd');
    await expect.poll(ledger).not.toBe(before);
    const after = await ledger();
    const transform = () => page.locator('.canvas > g').first().getAttribute('transform');
    const view = await transform();
    await touch('touchStart', { x: at.x, y: at.y + 40, id: 0 }, { x: at.x + 40, y: at.y + 100, id: 1 });
    await touch('touchMove', { x: at.x - 30, y: at.y, id: 0 }, { x: at.x + 70, y: at.y + 140, id: 1 });
    await touch('touchEnd');
    await expect.poll(transform).not.toBe(view);
    expect(await ledger()).toBe(after);
  });
});

for (const colorScheme of ['light', 'dark']) {
  for (const width of [360, 1280]) {
    test(`no accessibility violation, ${colorScheme}, ${width} px`, async ({ page, site }) => {
      await page.emulateMedia({ colorScheme });
      await page.setViewportSize({ width, height: 800 });
      await open(page, site);
      for (const element of [null, 'leg:p4', 'elbow:p1', 'termination:p4']) {
        if (element) await page.locator(`tr[data-element="${element}"] button`).click();
        const { violations } = await new AxeBuilder({ page }).analyze();
        const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join(' ')}`);
        expect(found, element ?? 'nothing selected').toEqual([]);
      }
    });
  }
}
