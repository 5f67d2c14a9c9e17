// What a checker of accessibility finds (axe-core), and what the accessibility tree reads of the run.

import { test, expect } from './page.mjs';
import { EVERY_ELEMENT, LEG_LENGTH, Sheet, UNITS, withEveryElement } from './sheet.mjs';
import { violations } from './violations.mjs';

for (const colorScheme of ['light', 'dark']) {
  for (const width of [360, 1280]) {
    test.describe(`${colorScheme}, ${width} px`, () => {
      // A look at the whole page takes the checker seconds.
      test.setTimeout(120_000);
      test.use({ colorScheme, viewport: { width, height: 800 } });

      test('no violation with nothing and with each kind of element selected', async ({ page, site }) => {
        const sheet = await Sheet.open(page, site);
        expect(await violations(page), 'nothing selected').toEqual([]);
        await sheet.reopen(withEveryElement);
        for (const element of EVERY_ELEMENT) {
          await sheet.select(element);
          await sheet.unfold();
          // Nothing else of the page changes with it.
          expect(await violations(page, '.panel.selected', '.ledger .lit'), element).toEqual([]);
        }
        expect(await violations(page), 'everything').toEqual([]);
      });

      test('no violation in trouble, in a blank plan, in SI, costliest first, hovered and focused', async ({ page, site }) => {
        const sheet = await Sheet.open(page, site);
        await sheet.select('leg:p4');
        await sheet.type(LEG_LENGTH, '6 furlongs');
        await sheet.choose('no plan');
        await expect(sheet.alert).toContainText('not complete JSON');
        expect(await violations(page), 'in trouble').toEqual([]);
        await sheet.units(UNITS.si);
        await page.getByText('Costliest first', { exact: true }).click();
        await sheet.row('elbow:p2').hover();
        await sheet.canvas.focus();
        await page.keyboard.press('n');
        expect(await violations(page), 'SI, costliest first').toEqual([]);
        await sheet.tool('Start blank');
        await expect(sheet.job).toHaveText('New plan');
        expect(await violations(page), 'blank').toEqual([]);
      });
    });
  }
}

// The checker cannot tell what lies behind a text of a drawing: the sheet does, by its halo or its
// ring. WCAG 2.2, 1.4.3 asks for 4.5 to 1; luminance as WCAG defines it.
for (const colorScheme of ['light', 'dark']) {
  test(`the texts of drawing and plot stand out from the sheet, ${colorScheme}`, async ({ page, site }) => {
    await page.emulateMedia({ colorScheme });
    const sheet = await Sheet.open(page, site);
    await sheet.select('leg:p4');
    const contrasts = await page.evaluate(() => {
      const luminance = (colour) => {
        const [red, green, blue] = colour.match(/[\d.]+/g).slice(0, 3).map((channel) => {
          const share = channel / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
      };
      const behind = luminance(getComputedStyle(document.querySelector('.canvas')).backgroundColor);
      return [...document.querySelectorAll('.canvas text, .plot text')].map((text) => {
        const ink = luminance(getComputedStyle(text).fill);
        return [text.textContent, (Math.max(ink, behind) + 0.05) / (Math.min(ink, behind) + 0.05)];
      });
    });
    expect(contrasts.length).toBeGreaterThan(10);
    expect(contrasts.filter(([, contrast]) => contrast < 4.5)).toEqual([]);
  });
}

test('the tree reads the run in order: rank, kind, size, loss', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const ledger = page.locator('.ledger').getByRole('table');
  await expect(ledger.getByRole('columnheader', { name: /^Rank/ })).toBeVisible();
  await expect(ledger.locator('tbody').first()).toMatchAriaSnapshot(`
    - rowgroup:
      - row /^\\d+ Straight, rigid duct 0' 4" 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ –/:
        - rowheader:
          - button /^Straight, rigid duct 0' 4"$/
      - row /^\\d+ Segmented elbow 90°, radius 4 in assumption 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ 5\\.0/:
        - rowheader:
          - button /^Segmented elbow 90°, radius 4 in$/
      - row /^\\d+ Straight, rigid duct 4' 2" 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ –/:
        - rowheader:
          - button /^Straight, rigid duct 4' 2"$/
      - row /^\\d+ Segmented elbow 90°, radius 4 in assumption 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ 5\\.0/:
        - rowheader:
          - button /^Segmented elbow 90°, radius 4 in$/
      - row /^\\d+ Straight, rigid duct 1' 4" 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ –/:
        - rowheader:
          - button /^Straight, rigid duct 1' 4"$/
      - row /^\\d+ Segmented elbow 90°, radius 4 in assumption 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ 5\\.0/:
        - rowheader:
          - button /^Segmented elbow 90°, radius 4 in$/
      - row /^\\d+ Straight, rigid duct 0' 9" 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ –/:
        - rowheader:
          - button /^Straight, rigid duct 0' 9"$/
      - row /^\\d+ Segmented elbow 90°, radius 4 in assumption 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ 5\\.0/:
        - rowheader:
          - button /^Segmented elbow 90°, radius 4 in$/
      - row /^\\d+ Straight, rigid duct 5' 2" 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ –/:
        - rowheader:
          - button /^Straight, rigid duct 5' 2"$/
      - row /^1 Wall hood assumption 0\\.\\d{3} 0\\.\\d{3} to 0\\.\\d{3} \\d+ % [\\d.]+ [\\d.]+ to [\\d.]+ –/:
        - rowheader:
          - button /^Wall hood$/
  `);
});

test('at twice the size nothing is cut off sideways', async ({ page, site }) => {
  // 1280 px at 200 % are 640 px of the page.
  await page.setViewportSize({ width: 640, height: 400 });
  const sheet = await Sheet.open(page, site);
  await sheet.select('elbow:p1');
  expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
});
