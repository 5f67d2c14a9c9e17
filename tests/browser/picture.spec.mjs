// A floor plan's picture to trace: taken, scaled, kept, taken away again; and what is no picture.

import { test, expect } from './page.mjs';
import { saved } from './keep.mjs';
import { INCH, Room } from './room.mjs';

/** An invented plan's picture, three wide to two deep, drawn by the browser itself. */
const png = (page) => page.evaluate(() => {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [120, 80];
  canvas.getContext('2d').fillRect(10, 10, 60, 4);
  return canvas.toDataURL('image/png').split(',')[1];
}).then((base64) => Buffer.from(base64, 'base64'));

const choose = (page, buffer, mimeType = 'image/png', name = 'invented.png') =>
  page.locator('#picture-file').setInputFiles({ name, mimeType, buffer });

async function withPicture(page, site) {
  const room = await Room.open(page, site);
  const before = await room.file();
  const bytes = await png(page);
  await choose(page, bytes);
  await expect(room.mark('picture')).toBeVisible();
  return { room, before, bytes };
}

test('a picture stands under the drawing, is scaled by two points and a length, and is kept', async ({ page, site }) => {
  const { room, before, bytes } = await withPicture(page, site);
  await room.undoes('picture');
  const { picture } = await room.plan();
  expect(picture.coding).toBe('png');
  expect(Buffer.from(picture.data_base64, 'base64').equals(bytes)).toBe(true);
  expect(picture.depth_m / picture.width_m, 'its own shape').toBeCloseTo(80 / 120, 9);
  // It lies under everything and is seen whole.
  expect(await page.locator('.canvas [data-mark]').first().getAttribute('data-mark')).toBe('picture');
  const shown = await room.mark('picture').boundingBox();
  const canvas = await room.canvas.boundingBox();
  expect(shown.x).toBeGreaterThanOrEqual(canvas.x);
  expect(shown.x + shown.width).toBeLessThanOrEqual(canvas.x + canvas.width);
  expect(shown.y + shown.height).toBeLessThanOrEqual(canvas.y + canvas.height);

  await room.take('Scale the picture');
  await room.click(24, 48);
  await room.click(144, 48);
  await expect(room.field('True length of this line')).toBeVisible();
  await room.type('True length of this line', 'five feet');
  await expect(page.locator('#draw-length-note')).toContainText('“five” was not understood. Write it like');
  await room.type('True length of this line', '5 ft');
  await room.undoes('picture');
  const scaled = (await room.plan()).picture;
  // 120 in were drawn, 60 in are true: half the size about the first point.
  expect(scaled.width_m).toBeCloseTo(picture.width_m / 2, 6);
  expect(scaled.depth_m).toBeCloseTo(picture.depth_m / 2, 6);
  expect(scaled.x_m).toBeCloseTo((picture.x_m + 24 * INCH) / 2, 6);
  expect(scaled.y_m).toBeCloseTo((picture.y_m + 48 * INCH) / 2, 6);

  const file = await room.file();
  await saved(page);
  await page.reload();
  await expect(room.mark('picture')).toBeVisible();
  expect(await room.file()).toBe(file);

  // Its rim selects it: it is there to be drawn over.
  await room.button('Show all').click();
  await room.click(scaled.x_m / INCH, (scaled.y_m + scaled.depth_m * 0.9) / INCH);
  await expect(room.selectedName()).toHaveText('Picture to trace');
  await room.button('Remove').click();
  await expect(room.mark('picture')).toHaveCount(0);
  await expect(room.button('Scale the picture')).toHaveCount(0);
  await room.undoes('remove');
  expect(await room.file()).toBe(before);
});

test('the picture is scaled, moved and removed by keys alone', async ({ page, site }) => {
  const { room, before } = await withPicture(page, site);
  const { picture } = await room.plan();
  await room.button('Scale the picture').focus();
  await page.keyboard.press('Enter');
  // From the newest wall's end, 10 ft to the right.
  await room.keys('Enter', ...Array(10).fill('Shift+ArrowRight'), 'Enter', '2', '0', ' ', 'f', 't', 'Enter');
  await room.undoes('picture');
  expect((await room.plan()).picture.width_m).toBeCloseTo(picture.width_m * 2, 6);
  // Back from the walls' side of the list: run, dryer, picture.
  await room.keys('Escape', 'Shift+T', 'Shift+T', 'Shift+T');
  await expect(room.selectedName()).toHaveText('Picture to trace');
  await room.keys('ArrowRight');
  await room.undoes('move');
  await room.keys('Delete');
  await expect(room.mark('picture')).toHaveCount(0);
  expect(await room.file()).toBe(before);
});

test('what is no picture and what is too large is refused in words, and the plan is as it was', async ({ page, site }) => {
  const { room, bytes } = await withPicture(page, site);
  const file = await room.file();
  const tooLarge = Buffer.concat([bytes, Buffer.alloc(1_500_000)]);
  for (const [chosen, said] of [
    [[Buffer.from('no picture'), 'text/plain', 'invented.txt'], 'The file is no picture that can be shown here. Save it as PNG, JPEG or WebP'],
    [[Buffer.from('no picture at all')], 'The file is no picture that can be shown here'],
    [[bytes.subarray(0, 40)], 'The file is no picture that can be shown here'],
    [[tooLarge], 'larger than 1.5 MB. Save it smaller'],
  ]) {
    await choose(page, ...chosen);
    await expect(room.alert).toContainText(said);
    await expect(room.alert).toContainText('The open plan is as it was.');
    await page.locator('.trouble').getByRole('button', { name: 'Close' }).click();
  }
  expect(await room.file()).toBe(file);
  // The same file chosen once more is still looked at.
  await choose(page, tooLarge);
  await expect(room.alert).toContainText('larger than 1.5 MB');
});
