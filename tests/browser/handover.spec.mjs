// The handover: the sheet agrees with the page, is inert, prints on both papers with nothing cut, and
// every file that is saved is what it says. The second renderer is resvg.

import { readFile } from 'node:fs/promises';
import { Resvg } from '@resvg/resvg-js';
import { test, expect } from './page.mjs';
import { PHONE, Sheet, UNITS } from './sheet.mjs';
import { violations } from './violations.mjs';

const HOSTILE = '<script>globalThis.pwned = 1</script>"><img src=x onerror="pwned=1"> =cmd \u202Eabc \u{1F525}';
const FILES = ['Sheet, one HTML file', 'Drawing, SVG', 'Drawing, PNG', 'Pressure line, SVG', 'Temperature line, SVG', 'Ledger, CSV', 'Cut list, CSV'];

class Handover extends Sheet {
  constructor(page) {
    super(page);
    this.panel = page.getByRole('region', { name: 'Handover', exact: true });
    this.paper = page.getByTestId('handover-sheet');
  }

  async make() {
    await this.panel.getByRole('button', { name: 'Make the sheet' }).click();
    await expect(this.paper).toBeVisible();
  }

  async wish(name) { await this.panel.getByText(name, { exact: true }).click(); }

  /** The bytes of a file, by the button that saves it. */
  async save(name) {
    const download = this.page.waitForEvent('download');
    await this.panel.getByRole('button', { name, exact: true }).click();
    return readFile(await (await download).path());
  }

  /** Presses the button that prints, and gives what the style sheet was told. */
  async print() {
    await this.page.evaluate(() => {
      globalThis.printed = new Promise((resolve) => { globalThis.print = () => resolve(document.documentElement.dataset.print); });
    });
    await this.panel.getByRole('button', { name: 'Print or save as PDF' }).click();
    return this.page.evaluate(() => globalThis.printed);
  }
}

for (const units of Object.values(UNITS)) {
  test(`the sheet says what the page says (${units})`, async ({ page, site }) => {
    const it = await Handover.open(page, site);
    await it.units(units);
    await it.banded();
    await it.wish('the trade, in full');
    await it.make();
    const figures = it.paper.locator('table').first().locator('tbody tr');
    for (const [index, name] of ['Airflow', 'BackPressure', 'Velocity', 'CodeLength'].entries()) {
      // A figure and its unit stand apart by style on the page and by a space on paper.
      const tight = (text) => text.replace(/\s/g, '');
      const cell = (column) => figures.nth(index).locator('td').nth(column).textContent();
      expect(tight(await cell(1)), name).toBe(tight(await it.total(name).textContent()));
      if (name === 'CodeLength') continue;
      expect(tight(await cell(2)), name).toBe(tight(await it.band(name).textContent()));
    }
    // Each row of the ledger, on paper, in its file and on the page.
    const csv = (await it.save('Ledger, CSV')).toString('utf8').trim().split('\r\n').slice(1);
    const rows = await it.rows.count();
    expect(csv.length).toBe(rows);
    const ledger = it.paper.locator('table', { hasText: 'Rank' }).locator('tbody tr');
    for (let index = 0; index < rows; index += 1) {
      const element = await it.rows.nth(index).getAttribute('data-element');
      const loss = (await it.cell(element, 'loss').innerText()).trim();
      await expect(ledger.nth(index).locator('td').nth(4)).toHaveText(loss);
      expect(csv[index]).toContain(`,${loss.replace('\u2212', '-')},`);
    }
  });
}

test('what is typed goes on the sheet as text, with undo, and follows the plan', async ({ page, site }) => {
  const it = await Handover.open(page, site);
  await it.make();
  for (const label of ['Date', 'For', 'By', 'Remarks']) {
    await it.panel.getByLabel(label, { exact: true }).fill(HOSTILE);
    await it.panel.getByLabel(label, { exact: true }).blur();
  }
  await expect(it.paper.getByText('<script>globalThis.pwned = 1</script>')).toHaveCount(4);
  await expect(it.paper.locator('script, img, iframe')).toHaveCount(0);
  expect(await page.evaluate(() => globalThis.pwned)).toBeUndefined();
  await expect(it.button('Undo')).toHaveAttribute('title', 'change the handover sheet');
  await it.tool('Undo');
  await expect(it.panel.getByLabel('Remarks', { exact: true })).toHaveValue('');
  await expect(it.paper.getByText('<script>globalThis.pwned = 1</script>')).toHaveCount(3);

  const stock = it.panel.getByLabel('Pipe is bought in lengths of');
  await stock.fill('4 ft, six ft');
  await stock.blur();
  await expect(stock).toHaveAttribute('aria-invalid', 'true');
  await expect(it.paper).not.toContainText('4 in by 4\' 0"');
  await stock.fill('4 ft; 6\'');
  await stock.blur();
  await expect(stock).toHaveValue('4\' 0", 6\' 0"');
  await expect(it.paper).toContainText('4 in by 6\' 0"');
});

test('each file is what it says, and stands by itself', async ({ page, site, context }) => {
  const it = await Handover.open(page, site);
  await it.panel.getByLabel('Remarks', { exact: true }).fill(HOSTILE);
  await it.panel.getByLabel('Remarks', { exact: true }).blur();
  const files = new Map();
  for (const name of FILES) files.set(name, await it.save(name));
  const html = files.get('Sheet, one HTML file').toString('utf8');
  expect(html).toMatch(/^<!DOCTYPE html>/);
  expect(html).not.toContain('<script');
  const other = await context.newPage();
  await other.setContent(html);
  await expect(other.getByText('<script>globalThis.pwned = 1</script>')).toHaveCount(1);
  expect(await other.evaluate(() => globalThis.pwned)).toBeUndefined();
  await other.close();
  const png = files.get('Drawing, PNG');
  expect(png.subarray(1, 4).toString('latin1')).toBe('PNG');
  expect(png.readUInt32BE(16)).toBeGreaterThan(800);
  for (const name of FILES.filter((each) => each.endsWith('CSV'))) {
    const lines = files.get(name).toString('utf8').split('\r\n');
    expect(lines.length).toBeGreaterThan(5);
    expect(lines.at(-1)).toBe('');
  }
  for (const name of FILES.filter((each) => each.endsWith('SVG'))) {
    const svg = files.get(name).toString('utf8');
    const fault = await page.evaluate((text) => new DOMParser().parseFromString(text, 'image/svg+xml').querySelector('parsererror')?.textContent, svg);
    expect(fault, name).toBeUndefined();
    const { apart, ink } = await compared(page, svg);
    // Something is drawn, and both draw the same: letters differ by their smoothing alone, which no square
    // of 4 px shows by a quarter. A line of a plot that is missing leaves about a hundredth of the paper
    // apart, a wall more.
    expect(ink, name).toBeGreaterThan(0.02);
    expect(apart, name).toBeLessThan(0.001);
  }
});

/**
 * The share of the paper on which Chromium and resvg differ, in squares of 4 px whose mean ink differs by
 * over a quarter, and the share that has ink at all.
 */
async function compared(page, svg) {
  const font = { loadSystemFonts: true, sansSerifFamily: 'Liberation Sans', defaultFontFamily: 'Liberation Sans' };
  const rendered = new Resvg(svg, { fitTo: { mode: 'width', value: 1200 }, font, background: '#ffffff' }).render();
  const other = `data:image/png;base64,${rendered.asPng().toString('base64')}`;
  return page.evaluate(async ([own, second, width, height]) => {
    const ink = async (address) => {
      const image = new Image();
      image.src = address;
      await image.decode();
      const canvas = new OffscreenCanvas(width, height);
      const context = canvas.getContext('2d');
      context.fillStyle = '#ffffff';
      context.fillRect(0, 0, width, height);
      context.drawImage(image, 0, 0, width, height);
      const { data } = context.getImageData(0, 0, width, height);
      const squares = [];
      for (let top = 0; top + 4 <= height; top += 4) {
        for (let left = 0; left + 4 <= width; left += 4) {
          let sum = 0;
          for (let down = 0; down < 4; down += 1) {
            for (let right = 0; right < 4; right += 1) {
              const at = 4 * ((top + down) * width + left + right);
              sum += 1 - (data[at] + data[at + 1] + data[at + 2]) / 765;
            }
          }
          squares.push(sum / 16);
        }
      }
      return squares;
    };
    const first = await ink(own);
    const also = await ink(second);
    const share = (is) => first.filter(is).length / first.length;
    return {
      apart: share((square, index) => Math.abs(square - also[index]) > 0.25),
      ink: share((square) => square > 0.05),
    };
  }, [`data:image/svg+xml,${encodeURIComponent(svg)}`, other, rendered.width, rendered.height]);
}

for (const [paper, format] of [['Letter', [612, 792]], ['A4', [594.96, 841.92]]]) {
  test(`prints on ${paper}: one page for a customer, nothing cut, the page itself again`, async ({ page, site }) => {
    const it = await Handover.open(page, site);
    await it.wish(paper);
    for (const [reading, most] of [['the customer, in plain words', 1], ['the trade, in full', 4]]) {
      await page.emulateMedia({ media: 'screen' });
      await it.wish(reading);
      expect(await it.print()).toBe('handover');
      await page.emulateMedia({ media: 'print' });
      const sheet = page.locator('.print-sheet');
      await expect(sheet).toBeVisible();
      await expect(page.locator('#app > .sheet')).toBeHidden();
      const screen = page.viewportSize();
      await page.setViewportSize({ width: Math.floor(180 / 25.4 * 96), height: 1000 });
      expect(await sheet.evaluate((each) => each.scrollWidth - each.clientWidth)).toBeLessThanOrEqual(0);
      await page.setViewportSize(screen);
      const pdf = (await page.pdf({ preferCSSPageSize: true, path: test.info().outputPath(`${paper}.pdf`) })).toString('latin1');
      const boxes = [...pdf.matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)/g)].map(([, width, height]) => [Number(width), Number(height)]);
      const pages = pdf.match(/\/Type\s*\/Page\b(?!s)/g).length;
      expect(pages, reading).toBeLessThanOrEqual(most);
      for (const box of boxes) {
        expect(Math.abs(box[0] - format[0])).toBeLessThan(1.5);
        expect(Math.abs(box[1] - format[1])).toBeLessThan(1.5);
      }
      expect(boxes.length).toBeGreaterThan(0);
      await expect(sheet).toHaveCount(0);
      expect(await page.evaluate(() => document.documentElement.dataset.print)).toBeUndefined();
    }
  });
}

for (const colorScheme of ['light', 'dark']) {
  test(`on a phone, ${colorScheme}: room for a thumb, nothing aside, no violation`, async ({ browser, site }) => {
    const context = await browser.newContext({ viewport: PHONE, hasTouch: true, isMobile: true, colorScheme, serviceWorkers: 'block' });
    const page = await context.newPage();
    const it = await Handover.open(page, site);
    await it.wish('the trade, in full');
    await it.make();
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
    for (const button of await it.panel.getByRole('button').all()) {
      expect((await button.boundingBox()).height).toBeGreaterThanOrEqual(44);
    }
    expect(await violations(page, '.handover')).toEqual([]);
    await context.close();
  });
}

test('by keyboard alone, and in forced colours the sheet can be read', async ({ page, site }) => {
  await page.emulateMedia({ forcedColors: 'active' });
  const it = await Handover.open(page, site);
  await it.panel.getByRole('radio', { name: 'the customer, in plain words' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(it.panel.getByRole('radio', { name: 'the trade, in full' })).toBeChecked();
  await it.panel.getByRole('button', { name: 'Make the sheet' }).focus();
  await page.keyboard.press('Enter');
  await expect(it.paper).toContainText('How the pipe is cut');
  // The sheet itself scrolls under the keys.
  await page.getByRole('region', { name: 'Dryer exhaust: handover' }).focus();
  await page.keyboard.press('End');
  await expect.poll(() => page.locator('.handover-preview').evaluate((each) => each.scrollTop)).toBeGreaterThan(100);
});
