// The elevation: the run from the side lights with the rest of the sheet, and a corner's rise is
// dragged, keyed or typed there.

import AxeBuilder from '@axe-core/playwright';
import { test, expect } from './page.mjs';
import { Sheet, UNITS, withEveryElement } from './sheet.mjs';

class Elevation {
  constructor(page) {
    this.page = page;
    this.canvas = page.locator('.elevation-canvas');
  }

  static async open(page, site) {
    const sheet = await Sheet.open(page, site);
    const side = new Elevation(page);
    await side.canvas.scrollIntoViewIfNeeded();
    return { sheet, side };
  }

  mark(id) { return this.canvas.locator(`[data-mark="elevation:${id}"]`); }

  /** The middle of a corner's handle, px of the page. */
  async handle(node) {
    const { x, y, width, height } = await this.mark(`corner:${node}`).locator('.grip').boundingBox();
    return { x: x + width / 2, y: y + height / 2 };
  }

  /** Presses on a handle and moves the mouse down by so many px, without letting go. */
  async pull(node, down) {
    const { x, y } = await this.handle(node);
    await this.page.mouse.move(x, y);
    await this.page.mouse.down();
    await this.page.mouse.move(x, y + down, { steps: 5 });
  }
}

const RISE = 'Rise here';

test('a handle dragged up raises the run: the figures follow, and one undo returns the same file', async ({ page, site }) => {
  const { sheet, side } = await Elevation.open(page, site);
  const file = String(await sheet.download('Save file'));
  const before = await sheet.figures();
  const loss = await sheet.cell('riser:p1', 'loss').textContent();
  const codeLength = await sheet.total('CodeLength').textContent();
  await expect(side.mark('length:riser:p1')).toHaveText('up 4\' 10"');

  await side.pull('p1', -20);
  await expect(sheet.cell('riser:p1', 'loss')).not.toHaveText(loss);
  await expect(sheet.total('CodeLength')).not.toHaveText(codeLength);
  await expect(side.mark('length:riser:p1')).not.toHaveText('up 4\' 10"');
  await sheet.pendingBand('Airflow');
  await expect(sheet.button('Undo')).toBeDisabled();
  await page.mouse.up();
  await expect(sheet.row('elbow:p1')).toHaveClass(/lit/);
  await expect(sheet.button('Undo')).toHaveAttribute('title', 'set rise');
  await expect(sheet.field(RISE)).toHaveValue(/^[56]' \d+"$/);
  const saved = JSON.parse(await sheet.download('Save file'));
  const inches = saved.run.points[0].riser.rise_m / 0.0254;
  expect(inches).toBeGreaterThan(58);
  expect(Math.abs(inches - Math.round(inches))).toBeLessThan(1e-4);

  await sheet.button('Undo').click();
  await expect(sheet.button('Undo')).toBeDisabled();
  expect(await sheet.figures()).toEqual(before);
  expect(String(await sheet.download('Save file'))).toBe(file);
});

test('the handle goes with the pointer, and a corner without a riser gets one', async ({ page, site }) => {
  const { sheet, side } = await Elevation.open(page, site);
  await sheet.units(UNITS.si);
  await side.canvas.scrollIntoViewIfNeeded();
  const { y } = await side.handle('p3');
  await side.pull('p3', 40);
  // A centimetre is a pixel or two there.
  expect(Math.abs((await side.handle('p3')).y - y - 40)).toBeLessThan(2);
  await page.mouse.up();
  await expect(sheet.row('riser:p3')).toBeVisible();
  await expect(sheet.field(RISE)).toHaveValue(/^\u22120\.\d\d0 m$/);
  // And back to nought takes it away.
  await sheet.type(RISE, '0');
  await expect(sheet.row('riser:p3')).toHaveCount(0);
});

test('the outlet has a handle, and a drag that trembles only selects', async ({ page, site }) => {
  const { sheet, side } = await Elevation.open(page, site);
  await side.pull('@outlet', -2);
  await page.mouse.up();
  await expect(side.mark('corner:@outlet')).toHaveClass(/lit/);
  await expect(sheet.field(RISE)).toHaveValue('0\' 0"');
  await expect(sheet.button('Undo')).toBeDisabled();
  await side.pull('@outlet', -40);
  await page.mouse.up();
  await expect(sheet.row('riser:@outlet')).toBeVisible();
});

test('without a drag: a press selects the corner, and its rise is typed', async ({ page, site }) => {
  const { sheet, side } = await Elevation.open(page, site);
  const { x, y } = await side.handle('p4');
  await page.mouse.click(x, y);
  await expect(sheet.row('termination:p4')).toHaveClass(/lit/);
  await sheet.type(RISE, '1 ft 6 in');
  await expect(side.mark('length:riser:p4')).toHaveText('up 1\' 6"');
  await expect(side.mark('height:termination')).toHaveText('6\' 9"');
});

test('keys step through the run and raise and lower the selected corner', async ({ page, site }) => {
  const { sheet, side } = await Elevation.open(page, site);
  const file = String(await sheet.download('Save file'));
  const order = await sheet.rows.evaluateAll((rows) => rows.map((row) => row.dataset.element));
  await side.canvas.focus();
  for (const element of order.slice(0, 2)) {
    await page.keyboard.press('n');
    await expect(sheet.row(element)).toHaveClass(/lit/);
    await expect(side.mark(`casing:${element}`)).toHaveClass(/lit/);
  }
  await expect(page.locator('#elevation-keys')).toBeVisible();
  const scrolled = await page.evaluate(() => scrollY);
  for (const [key, shown] of [['PageUp', '4\' 11"'], ['Shift+PageUp', '5\' 11"'], ['PageDown', '5\' 10"'], ['Shift+PageDown', '4\' 10"'], ['PageDown', '4\' 9"']]) {
    await page.keyboard.press(key);
    await expect(side.mark('length:riser:p1'), key).toHaveText(`up ${shown}`);
  }
  await sheet.units(UNITS.si);
  await side.canvas.focus();
  for (const [key, shown] of [['PageUp', '1.458 m'], ['Shift+PageDown', '1.358 m']]) {
    await page.keyboard.press(key);
    await expect(side.mark('length:riser:p1'), key).toHaveText(`up ${shown}`);
  }
  expect(await page.evaluate(() => scrollY)).toBe(scrolled);
  for (let step = 0; step < 7; step += 1) await page.keyboard.press('Control+z');
  await expect(sheet.button('Undo')).toBeDisabled();
  await sheet.units(UNITS.usCustomary);
  expect(String(await sheet.download('Save file'))).toBe(file);
  await side.canvas.focus();
  await page.keyboard.press('p');
  await expect(sheet.row(order[0])).toHaveClass(/lit/);
  await page.keyboard.press('Escape');
  await expect(page.locator('.lit')).toHaveCount(0);
});

test('its keys do nothing while something else has the focus, and on a leg nothing is raised', async ({ page, site }) => {
  const { sheet, side } = await Elevation.open(page, site);
  await sheet.select('elbow:p1');
  await sheet.field(RISE).focus();
  for (const key of ['n', 'p', 'PageUp', 'PageDown']) await page.keyboard.press(key);
  await expect(sheet.row('elbow:p1')).toHaveClass(/lit/);
  await sheet.canvas.focus();
  await page.keyboard.press('PageUp');
  await sheet.select('leg:p4');
  await side.canvas.focus();
  await page.keyboard.press('PageUp');
  await expect(side.mark('length:riser:p1')).toHaveText('up 4\' 10"');
  await expect(sheet.button('Undo')).toBeDisabled();
});

test('ledger, drawing, pressure line and elevation light one another, and a press selects', async ({ page, site }) => {
  const { sheet, side } = await Elevation.open(page, site);
  for (const element of ['riser:p1', 'elbow:p2', 'leg:p4', 'termination:p4']) {
    await sheet.row(element).hover();
    await expect(side.mark(`casing:${element}`)).toHaveClass(/lit/);
    await expect(sheet.mark(`casing:${element}`)).toHaveClass(/lit/);
  }
  await side.canvas.scrollIntoViewIfNeeded();
  const { x, y, width, height } = await side.mark('core:riser:p1').boundingBox();
  await page.mouse.move(x + width / 2, y + height / 2);
  await expect(sheet.row('riser:p1')).toHaveClass(/lit/);
  await expect(page.locator('.pressure [data-span="riser:p1"]')).toHaveClass(/lit/);
  // A press may be a little off.
  await page.mouse.click(x + width / 2 + 9, y + height / 2);
  await expect(sheet.field(RISE)).toHaveValue('4\' 10"');
  await page.mouse.click(x + width / 2 + 60, y + height / 2 + 20);
  await expect(page.locator('.ledger tbody .lit')).toHaveCount(0);
});

test('every leg and every rise has its measure, to the file\'s own points', async ({ page, site }) => {
  const { sheet, side } = await Elevation.open(page, site);
  await sheet.units(UNITS.si);
  const plan = JSON.parse(await sheet.download('Save file'));
  const { dryer, run } = plan;
  // The example's dryer faces the top of the sheet.
  expect(dryer.turned_deg).toBe(0);
  let [x, y, height] = [dryer.x_m, dryer.y_m - dryer.depth_m / 2, dryer.outlet_height_m];
  await expect(side.mark('height:outlet')).toHaveText(`${height.toFixed(3)} m`);
  for (const point of run.points) {
    const length = Math.hypot(point.x_m - x, point.y_m - y);
    await expect(side.mark(`length:leg:${point.id}`)).toHaveText(`${length.toFixed(3)} m`);
    if (point.riser) await expect(side.mark(`length:riser:${point.id}`)).toHaveText(`up ${point.riser.rise_m.toFixed(3)} m`);
    [x, y, height] = [point.x_m, point.y_m, height + (point.riser?.rise_m ?? 0)];
  }
  await expect(side.mark('height:termination')).toHaveText(`${height.toFixed(3)} m`);
  // Its scale bar is as long as it says.
  const bar = await side.canvas.locator('.scale-bar path').evaluate((path) => path.getBBox().width);
  const metres = Number.parseFloat(await side.canvas.locator('.scale-bar text').textContent());
  const leg = await side.mark('dimension:leg:p4').boundingBox();
  const legMetres = Number.parseFloat(await side.mark('length:leg:p4').textContent());
  // A centimetre of the leg is rounded away, and the strokes at its ends are a pixel wide.
  expect(bar / metres / (leg.width / legMetres)).toBeCloseTo(1, 1);
});

test('the tree names it and says the run in order', async ({ page, site }) => {
  const { side } = await Elevation.open(page, site);
  await expect(page.getByRole('application', { name: 'Elevation, unrolled' })).toHaveCount(1);
  await expect(side.canvas).toHaveAccessibleDescription(new RegExp(
    '^The run in order, from the dryer\'s outlet at 0\' 5" above the floor: Straight, rigid duct, 0\' 4"; '
    + 'Segmented elbow, 90°, radius 4 in; Straight, rigid duct, up 4\' 10"; .*; Wall hood\\. It ends at 5\' 3" above the floor\\.'));
});

for (const colorScheme of ['light', 'dark']) {
  for (const width of [360, 1280]) {
    test.describe(`${colorScheme}, ${width} px`, () => {
      test.use({ colorScheme, viewport: { width, height: 800 } });

      test('no violation, with every kind of element, selected and focused', async ({ page, site }) => {
        const { sheet, side } = await Elevation.open(page, site);
        const violations = async () => {
          const builder = new AxeBuilder({ page }).options({ rules: { 'target-size': { enabled: true } } });
          const { violations: found } = await builder.include('.elevation').analyze();
          return found.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target).join('; ')}`);
        };
        expect(await violations()).toEqual([]);
        await sheet.reopen(withEveryElement);
        await sheet.select('riser:p1');
        await side.canvas.focus();
        expect(await violations()).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth)).toBe(0);
      });
    });
  }
}

test.describe('on a phone', () => {
  test.use({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true });

  /** A finger on the glass, through the browser's own protocol. */
  async function finger(page) {
    const protocol = await page.context().newCDPSession(page);
    const send = (type, touchPoints) => protocol.send('Input.dispatchTouchEvent', { type, touchPoints });
    return {
      down: (x, y) => send('touchStart', [{ x, y }]),
      move: (x, y) => send('touchMove', [{ x, y }]),
      up: () => send('touchEnd', []),
      lost: () => send('touchCancel', []),
    };
  }

  test('a finger near a handle drags the rise and the page stays; elsewhere it scrolls the page', async ({ page, site }) => {
    const { sheet, side } = await Elevation.open(page, site);
    await side.canvas.evaluate((canvas) => canvas.scrollIntoView({ block: 'center' }));
    const touch = await finger(page);
    const scrolled = await page.evaluate(() => scrollY);
    const { x, y } = await side.handle('p1');
    // A finger is not exact: this one comes down 20 px off.
    await touch.down(x - 14, y - 14);
    for (const step of [8, 16, 24]) await touch.move(x - 14, y - 14 - step);
    await expect(side.mark('length:riser:p1')).not.toHaveText('up 4\' 10"');
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
    await touch.up();
    await expect(sheet.button('Undo')).toHaveAttribute('title', 'set rise');
    // What was dragged is selected: it stands clear of the sheet that comes from below.
    await expect(page.locator('.selected-sheet')).toBeVisible();
    await expect.poll(async () => {
      const sheetTop = (await page.locator('.selected-sheet').boundingBox()).y;
      return (await side.handle('p1')).y < sheetTop;
    }).toBe(true);
    await sheet.button('Undo').click();
    await expect(sheet.button('Undo')).toBeDisabled();

    await side.canvas.evaluate((canvas) => canvas.scrollIntoView({ block: 'center' }));
    const start = await page.evaluate(() => scrollY);
    const box = await side.canvas.boundingBox();
    // Clear of every handle.
    const [left, top] = [box.x + 30, box.y + 60];
    await touch.down(left, top);
    for (const step of [20, 40, 60, 80]) await touch.move(left, top - step);
    await expect.poll(async () => await page.evaluate(() => scrollY) - start).toBeGreaterThan(30);
    await touch.up();
    await expect(sheet.button('Undo')).toBeDisabled();
    await expect(page.locator('.ledger tbody .lit')).toHaveCount(1);
  });

  test('a drag that the system takes away leaves the rise as it was', async ({ page, site }) => {
    const { sheet, side } = await Elevation.open(page, site);
    await side.canvas.evaluate((canvas) => canvas.scrollIntoView({ block: 'center' }));
    const touch = await finger(page);
    const { x, y } = await side.handle('p1');
    await touch.down(x, y);
    for (const step of [8, 16, 24]) await touch.move(x, y - step);
    await expect(side.mark('length:riser:p1')).not.toHaveText('up 4\' 10"');
    await touch.lost();
    await expect(side.mark('length:riser:p1')).toHaveText('up 4\' 10"');
    await expect(sheet.button('Undo')).toBeDisabled();
  });

  test('a tap selects, a handle has 44 px', async ({ page, site }) => {
    const { sheet, side } = await Elevation.open(page, site);
    const { x, y } = await side.handle('p4');
    await page.touchscreen.tap(x + 12, y - 12);
    await expect(sheet.row('termination:p4')).toHaveClass(/lit/);
    const { width, height } = await side.mark('corner:p4').locator('.finger').boundingBox();
    expect(Math.min(width, height)).toBeGreaterThanOrEqual(43.9);
  });
});
