// Files in and out: nothing is lost on the way, nothing broken comes in, nothing typed comes alive.

import { test, expect } from './page.mjs';
import { LEG_LENGTH, Sheet, UNITS, withEveryElement } from './sheet.mjs';

for (const units of Object.values(UNITS)) {
  test(`saved, changed, opened again: every printed figure and every byte is the same (${units})`, async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    await sheet.reopen(withEveryElement);
    await sheet.units(units);
    // A place that only a pixel of this screen has, and an odd sixteenth.
    await sheet.pull('corner:p3', 7, 33);
    await sheet.letGo();
    await sheet.select('leg:p4');
    await sheet.type(LEG_LENGTH, '67 5/16 in');
    const before = await sheet.figures();
    const bytes = await sheet.download('Save file');

    await sheet.type(LEG_LENGTH, '9 ft');
    await sheet.select('elbow:p2');
    await sheet.button('Remove this bend').click();
    await expect(sheet.row('elbow:p2')).toHaveCount(0);
    expect(await sheet.figures()).not.toEqual(before);

    await sheet.choose(bytes);
    await expect(sheet.row('elbow:p2')).toBeVisible();
    expect(await sheet.figures()).toEqual(before);
    expect(await sheet.download('Save file')).toEqual(bytes);
    await expect(sheet.button('Undo')).toHaveAttribute('title', 'open plan');
  });
}

test('a file that is no plan says what is wrong with it and leaves the open plan alone', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('leg:p4');
  await sheet.type(LEG_LENGTH, '6 ft');
  await expect(sheet.mark('length:leg:p4')).toHaveText('6\' 0"');
  const before = await sheet.figures();
  const good = await sheet.download('Save file');
  const changed = (change) => {
    const plan = JSON.parse(good);
    change(plan);
    return JSON.stringify(plan);
  };
  const broken = [
    ['', 'not complete JSON: line 1, column 0'],
    [good.subarray(0, good.length / 2), 'not complete JSON'],
    [Buffer.from([0x50, 0x4b, 3, 4, 0xff, 0xfe, 0]), 'not text'],
    ['{"hello": 1}', 'does not say that it is a plan'],
    ['[]', 'does not say that it is a plan'],
    [changed((plan) => { plan.version = 99; }), 'version is 99'],
    [changed((plan) => { delete plan.run.diameter_m; }), 'diameter_m'],
    [changed((plan) => { plan.run.points[2].x_m = 'far'; }), 'run.points[2].x_m'],
    [changed((plan) => { plan.run.points[1].y_m = 1e9; }), 'run.points[1].y_m is 1000000000; it can be from -500 to 500'],
    [changed((plan) => { plan.run.points = []; }), 'run.points is empty'],
    [changed((plan) => { plan.openings[0].wall = 'nowhere'; }), 'names a wall that is not in the plan'],
    [changed((plan) => { plan.colour = '<img src=x onerror=alert(1)>'; }), 'colour'],
    [Buffer.alloc((4 << 20) + 1, ' '), '4194305 bytes'],
  ];
  for (const [bytes, said] of broken) {
    await sheet.choose(bytes);
    await expect(sheet.alert).toContainText(said);
    await expect(sheet.alert).toContainText('The open plan is as it was.');
    await expect(sheet.alert.locator('img')).toHaveCount(0);
    await sheet.button('Close').click();
    await expect(sheet.alert).toBeEmpty();
  }
  expect(await sheet.figures()).toEqual(before);
  expect(await sheet.download('Save file')).toEqual(good);
  await expect(sheet.button('Undo')).toHaveAttribute('title', 'set leg length');
});

const HOSTILE = [
  '<img src=x onerror="globalThis.alive = true">',
  '"><svg onload=alert(1)><script>globalThis.alive = true</script>',
  '\'";--</text><a xlink:href="javascript:alert(1)">]]><!-- &#60; &lt; &nope;',
  '=1+1',
  '@SUM(1)|cmd',
  '{{1+1}} ${1+1}',
  '\u202egnp.exe \u0000\u0007\u000b\u001b\u0085',
];

/** The names of elements and attributes of an SVG text, and what its texts say. */
function parsed(page, text) {
  return page.evaluate((source) => {
    const document = new DOMParser().parseFromString(source, 'image/svg+xml');
    const elements = [...document.querySelectorAll('*')];
    const attributes = elements.flatMap((element) => [...element.attributes]);
    return {
      elements: [...new Set(elements.map((element) => element.tagName))].sort(),
      attributes: [...new Set(attributes.map(({ name }) => name))].sort(),
      values: attributes.map(({ value }) => value),
      // White space at the ends is not drawn.
      texts: [...document.querySelectorAll('text')].map((element) => element.textContent.trim()),
    };
  }, text);
}

for (const hostile of HOSTILE) {
  test(`what people typed stays text: ${JSON.stringify(hostile)}`, async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    const plain = await parsed(page, String(await sheet.download('Save drawing')));
    const elementsBefore = await page.locator('#app *:not(.first-steps, .first-steps *)').count();
    const plan = JSON.parse(await sheet.download('Save file'));
    plan.title = hostile;
    plan.note = hostile;
    plan.obstacles[0].name = hostile;
    await sheet.choose(JSON.stringify(plan));
    const exactly = (locator) => expect.poll(() => locator.evaluate((element) => element.textContent)).toBe(hostile);
    // HTML has no sign for nought: what shows in its place is the browser's choice.
    if (!hostile.includes('\0')) {
      await exactly(sheet.job);
      await exactly(sheet.mark('obstacle:b1:name'));
    }
    await expect(sheet.button('Undo')).toHaveAttribute('title', 'open plan');
    await sheet.banded();
    expect(await page.locator('#app *:not(.first-steps, .first-steps *)').count()).toBe(elementsBefore);
    expect(await page.evaluate(() => globalThis.alive)).toBeUndefined();

    const drawing = await parsed(page, String(await sheet.download('Save drawing')));
    expect(drawing.elements).toEqual(plain.elements);
    expect(drawing.attributes).toEqual(plain.attributes);
    // Where texts stand hangs on how long they are; what they say is in no attribute.
    expect(drawing.values.length).toBe(plain.values.length);
    for (const value of drawing.values) expect(value).not.toContain(hostile);
    // A control sign, which XML cannot hold, is a space there, and so is one that turns the direction of
    // what follows; a long name is cut to 40 letters.
    const plainLetters = hostile.replace(/[\0-\u001f\u007f-\u009f\u200e\u200f\u202a-\u202e\u2066-\u2069]/g, ' ');
    const letters = [...plainLetters];
    const shown = (letters.length > 40 ? `${letters.slice(0, 39).join('').trimEnd()}…` : plainLetters).trim();
    expect(drawing.texts).toContain(shown);

    // The file keeps every sign, and the download's name none of the odd ones.
    const downloading = page.waitForEvent('download');
    await sheet.button('Save file').click();
    const download = await downloading;
    expect(download.suggestedFilename()).toMatch(/^[\p{L}\p{N}-]+\.json$/u);
    const chunks = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk);
    expect(JSON.parse(Buffer.concat(chunks)).obstacles[0].name).toBe(hostile);
  });
}

// XML 1.0, section 2.2: these two are no characters, though JSON may hold them.
for (const sign of ['\ufffe', '\uffff']) {
  test(`the saved drawing is XML also with U+${sign.codePointAt(0).toString(16).toUpperCase()} in a name`, async ({ page, site }) => {
    const sheet = await Sheet.open(page, site);
    await sheet.reopen((plan) => { plan.obstacles[0].name = `one${sign}two`; });
    const { elements } = await parsed(page, String(await sheet.download('Save drawing')));
    expect(elements).toEqual(['circle', 'g', 'path', 'rect', 'svg', 'text']);
  });
}

test('the saved drawing shows every element, length and name, true to scale', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const text = String(await sheet.download('Save drawing'));
  const { elements, texts } = await parsed(page, text);
  expect(elements).toEqual(['circle', 'g', 'path', 'rect', 'svg', 'text']);
  expect(texts).toEqual(expect.arrayContaining(['Dryer', 'Chimney', '5\' 6"', 'up 4\' 10"', '1', '2', '3']));
  const shapes = await page.evaluate((source) => {
    const document = new DOMParser().parseFromString(source, 'image/svg+xml');
    return [...document.querySelectorAll('path, circle')].map((element) => ({
      width: Number(element.getAttribute('stroke-width')),
      stroke: element.getAttribute('stroke'),
      size: (element.getAttribute('d') ?? element.getAttribute('r')).length,
    }));
  }, text);
  // At 1 to 20 the casing of 4 in duct is 101.6 / 20 mm wide; every element of the ledger has one.
  const casings = shapes.filter(({ width, stroke }) => Math.abs(width - 5.08) < 1e-6 && stroke === '#1b1f24');
  expect(casings).toHaveLength(await sheet.rows.count());
  for (const { size } of casings) expect(size).toBeGreaterThan(0);

  await sheet.units(UNITS.si);
  const si = await parsed(page, String(await sheet.download('Save drawing')));
  expect(si.texts).toContain('1.676 m');
  // No attribute of it is broken.
  for (const value of [...si.values]) expect(value).not.toMatch(/NaN|inf/);
});

test('a blank plan is a dryer and a straight way out, and can be drawn on', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  const example = await sheet.figures();
  await sheet.button('Start blank').click();
  await expect(sheet.job).toHaveText('New plan');
  await expect(sheet.rows).toHaveCount(2);
  await sheet.banded();
  const straight = await sheet.total('Airflow').textContent();
  await sheet.pull('new-bend:p1', 160, 0);
  await sheet.letGo();
  await expect(sheet.row('elbow:p2')).toHaveClass(/lit/);
  await expect(sheet.total('Airflow')).not.toHaveText(straight);
  await sheet.pull('corner:p1', -60, 20);
  await sheet.letGo();
  // The end of this run had the name of a corner in the plan before.
  await expect(sheet.row('termination:p1')).toHaveClass(/lit/);
  await expect(sheet.mark('corner:p1')).toHaveClass(/lit/);
  await sheet.button('Example').click();
  await expect(sheet.job).toContainText('Example');
  expect(await sheet.figures()).toEqual(example);
});

test('an opened plan is drawn as its own, also where it shares names with the one before', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await expect(sheet.mark('wall:w1')).toHaveClass(/outside-wall/);
  await expect(sheet.mark('opening:o1')).toHaveClass(/window/);
  await sheet.reopen((plan) => {
    plan.walls[0].outside = false;
    plan.openings[0].kind = 'door';
  });
  await expect(sheet.mark('wall:w1')).toHaveClass(/inside-wall/);
  await expect(sheet.mark('opening:o1')).toHaveClass(/door/);
  await expect(sheet.mark('opening:o1:leaf')).toBeVisible();
});

test('a point called outlet is drawn, and no element twice', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.reopen((plan) => {
    plan.run.points[0].id = 'outlet';
    plan.run.points[0].x_m += 1.5;
  });
  await sheet.banded();
  const names = await page.locator('.canvas [data-mark]').evaluateAll((marks) => marks.map((mark) => mark.dataset.mark));
  expect(new Set(names).size).toBe(names.length);
});
