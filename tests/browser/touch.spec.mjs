// A phone: one finger draws, two move and zoom the paper.

import { test, expect } from './page.mjs';
import { Sheet, UNITS, withEveryElement, EVERY_ELEMENT } from './sheet.mjs';

test.use({ viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true });

/** Fingers on the glass, through the browser's own protocol; each call says where all of them are. */
async function glass(page) {
  const protocol = await page.context().newCDPSession(page);
  const send = (type, touchPoints) => protocol.send('Input.dispatchTouchEvent', { type, touchPoints });
  const numbered = (fingers) => fingers.map(([x, y], id) => ({ x, y, id }));
  return {
    down: (...fingers) => send('touchStart', numbered(fingers)),
    move: (...fingers) => send('touchMove', numbered(fingers)),
    /** Lifts the second finger, or all. */
    secondUp: ([x, y]) => send('touchEnd', [{ x, y, id: 1 }]),
    up: () => send('touchEnd', []),
    lost: () => send('touchCancel', []),
  };
}

async function openOnPhone(page, site) {
  const sheet = await Sheet.open(page, site);
  await sheet.canvas.scrollIntoViewIfNeeded();
  return { sheet, fingers: await glass(page) };
}

test('one finger drags a corner, and the figures follow', async ({ page, site }) => {
  const { sheet, fingers } = await openOnPhone(page, site);
  const { x, y } = await sheet.middle('corner:p3');
  const loss = await sheet.cell('leg:p3', 'loss').textContent();
  const { y: top } = await sheet.canvas.boundingBox();
  // A finger is not exact: this one comes down 14 px off.
  await fingers.down([x - 10, y + 10]);
  for (const step of [15, 30, 45, 60]) await fingers.move([x - 10, y + 10 + step]);
  await expect(sheet.cell('leg:p3', 'loss')).not.toHaveText(loss);
  // The drawing takes the finger: the page does not scroll away under it.
  expect(Math.abs((await sheet.canvas.boundingBox()).y - top)).toBeLessThan(1);
  await fingers.up();
  await expect(sheet.button('Undo')).toHaveAttribute('title', 'move corner');
  await sheet.button('Undo').click();
  await expect(sheet.cell('leg:p3', 'loss')).toHaveText(loss);
  await expect(sheet.button('Undo')).toBeDisabled();
});

test('a drag that the system takes away leaves the plan as it was', async ({ page, site }) => {
  const { sheet, fingers } = await openOnPhone(page, site);
  const before = await sheet.figures();
  const place = await sheet.placeOf('corner:p3');
  const { x, y } = await sheet.middle('corner:p3');
  await fingers.down([x, y]);
  for (const step of [20, 40, 60]) await fingers.move([x, y + step]);
  await expect.poll(() => sheet.placeOf('corner:p3')).not.toBe(place);
  await fingers.lost();
  await expect.poll(() => sheet.placeOf('corner:p3')).toBe(place);
  expect(await sheet.figures()).toEqual(before);
  await expect(sheet.button('Undo')).toBeDisabled();
});

test('two fingers zoom and move the paper, and never a corner', async ({ page, site }) => {
  const { sheet, fingers } = await openOnPhone(page, site);
  const before = await sheet.figures();
  const first = await sheet.view();
  // The first finger comes down on a corner and pulls it before the second one lands.
  const scrolled = () => page.evaluate(() => scrollY);
  const corner = await sheet.middle('corner:p3');
  const on = await scrolled();
  const { x, y } = corner;
  await fingers.down([x, y]);
  for (const step of [10, 20, 30]) await fingers.move([x, y + step]);
  await fingers.down([x, y + 30], [x, y + 130]);
  // From 100 px to 200 px apart: twice as near.
  for (const step of [10, 20, 30, 40, 50]) await fingers.move([x, y + 30 - step], [x, y + 130 + step]);
  await expect.poll(async () => (await sheet.view()).scale / first.scale).toBeCloseTo(2, 1);
  // The finger that stays moves the paper.
  await fingers.secondUp([x, y + 180]);
  const zoomed = await sheet.view();
  for (const step of [10, 20, 30]) await fingers.move([x + step, y - 20]);
  await expect.poll(async () => (await sheet.view()).x - zoomed.x).toBeGreaterThan(15);
  await fingers.up();
  expect(await sheet.figures()).toEqual(before);
  await expect(sheet.button('Undo')).toBeDisabled();

  await sheet.button('Show all').click();
  await expect.poll(async () => (await sheet.view()).scale).toBeCloseTo(first.scale, 2);
  const back = await sheet.middle('corner:p3');
  // The page may have moved so that what is selected is seen.
  expect(Math.hypot(back.x - corner.x, back.y + await scrolled() - corner.y - on)).toBeLessThan(1);
});

test('a tap selects, and what it selects can be changed by tapping on', async ({ page, site }) => {
  const { sheet } = await openOnPhone(page, site);
  const before = await sheet.figures();
  const { x, y } = await sheet.middle('corner:p3');
  await page.touchscreen.tap(x, y);
  await expect(sheet.row('elbow:p3')).toHaveClass(/lit/);
  expect(await sheet.figures()).toEqual(before);
  await sheet.button('Remove this bend').tap();
  await expect(sheet.mark('corner:p3')).toHaveCount(0);
});

test('nothing makes the page wider than the phone', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const overhang = () => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
  expect(await overhang()).toBe(0);
  await sheet.reopen(withEveryElement);
  for (const units of Object.values(UNITS)) {
    await sheet.units(units);
    for (const element of EVERY_ELEMENT) {
      await sheet.select(element);
      await sheet.unfold();
      expect(await overhang(), `${element}, ${units}`).toBe(0);
    }
  }
  await sheet.choose('no plan');
  await expect(sheet.alert).toContainText('not complete JSON');
  expect(await overhang()).toBe(0);
  await sheet.reopen((plan) => { plan.title = plan.note = plan.obstacles[0].name = 'W'.repeat(300); });
  expect(await overhang()).toBe(0);
});

// WCAG 2.2, 2.5.8 asks for 24 px; the project for 44 px under a finger.
test('what is tapped is 44 px high at least', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.reopen(withEveryElement);
  for (const element of [null, ...EVERY_ELEMENT]) {
    if (element) await sheet.select(element);
    // A total's name takes what is pressed anywhere on its block.
    const small = await page.evaluate(() => [...document.querySelectorAll('button, input, select, summary')]
      .filter((each) => each.checkVisibility() && each.type !== 'file')
      .map((each) => each.closest('label, .total') ?? each)
      .filter((each) => each.getBoundingClientRect().height < 43.5)
      .map((each) => `${Math.round(each.getBoundingClientRect().height)} px: ${each.textContent.trim().slice(0, 40) || each.outerHTML.slice(0, 60)}`));
    expect(small, element ?? 'nothing selected').toEqual([]);
  }
});
