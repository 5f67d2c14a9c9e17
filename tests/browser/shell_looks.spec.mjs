// How the shell looks from a phone to a projector: large type, forced colours, motion, twice the
// size, wide text; and each of these under the checker of accessibility.

import { test, expect } from './page.mjs';
import { PHONE, Sheet, overhang } from './sheet.mjs';
import { violations } from './violations.mjs';

// Large type

/** How large letters, strokes and rings are. */
const sizes = (page) => page.evaluate(() => {
  const height = (selector) => document.querySelector(selector).getBoundingClientRect().height;
  const stroke = (selector) => Number.parseFloat(getComputedStyle(document.querySelector(selector)).strokeWidth);
  return {
    root: Number.parseFloat(getComputedStyle(document.documentElement).fontSize),
    label: height('[data-mark="length:leg:p4"] text'),
    ring: height('[data-mark="rank:1"] circle, g.rank circle'),
    corner: height('g.corner circle'),
    window: stroke('.mark.window'),
    dryer: stroke('.mark.dryer'),
  };
});

/** The worst overlap of two texts on the drawing, as a share of the smaller one. */
const worstOverlap = (page) => page.evaluate(() => {
  const texts = [...document.querySelectorAll('.canvas text')].filter((text) => text.checkVisibility());
  const boxes = texts.map((text) => [text.textContent, text.getBoundingClientRect()]);
  let worst = { share: 0, pair: '' };
  boxes.forEach(([first, a], index) => {
    for (const [second, b] of boxes.slice(index + 1)) {
      const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
      const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
      const share = (Math.max(across, 0) * Math.max(down, 0)) / Math.min(a.width * a.height, b.width * b.height);
      if (share > worst.share) worst = { share, pair: `${first} / ${second}` };
    }
  });
  return worst;
});

for (const [width, height] of [[360, 740], [1280, 800], [2560, 1440]]) {
  test(`large type makes letters and strokes half as large again at ${width} px, for the visit only`, async ({ page, site }) => {
    await page.setViewportSize({ width, height });
    const sheet = await Sheet.open(page, site);
    const before = await sizes(page);
    await sheet.tool('Large type');
    await expect(sheet.button('Large type')).toHaveAttribute('aria-pressed', 'true');
    await expect.poll(async () => {
      const after = await sizes(page);
      return Object.keys(before).filter((name) => Math.abs(after[name] / before[name] - 1.5) > 0.03);
    }).toEqual([]);
    expect(await overhang(page)).toBe(0);
    await expect.poll(async () => (await worstOverlap(page)).share, JSON.stringify(await worstOverlap(page))).toBeLessThan(0.25);
    await page.reload();
    await sheet.banded();
    await expect(page.locator('html')).not.toHaveClass(/large/);
  });
}

test('a wide screen is used: three columns, and the drawing is half of it', async ({ page, site }) => {
  await page.setViewportSize({ width: 2560, height: 1440 });
  const sheet = await Sheet.open(page, site);
  const left = (selector) => page.locator(selector).evaluate((element) => element.getBoundingClientRect().left);
  const columns = [await left('.canvas'), await left('.panel.ledger'), await left('.panel.code')];
  expect(columns).toEqual([...columns].sort((a, b) => a - b));
  expect(new Set(columns).size).toBe(3);
  expect((await sheet.canvas.boundingBox()).width).toBeGreaterThan(2560 * 0.45);
});

// Colours and motion

for (const colorScheme of ['light', 'dark']) {
  test(`forced colours leave everything to be seen, ${colorScheme}`, async ({ page, site }) => {
    await page.emulateMedia({ colorScheme, forcedColors: 'active' });
    const sheet = await Sheet.open(page, site);
    await sheet.select('leg:p4');
    const contrasts = await page.evaluate(() => {
      const channels = (colour) => {
        const [red, green, blue, alpha = 1] = colour.match(/[\d.]+/g).map(Number);
        return { rgb: [red, green, blue], alpha };
      };
      const luminance = (rgb) => {
        const [red, green, blue] = rgb.map((channel) => {
          const share = channel / 255;
          return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
        });
        return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
      };
      const paper = channels(getComputedStyle(document.querySelector('.canvas')).backgroundColor).rgb;
      const contrast = (colour, opacity) => {
        const { rgb, alpha } = channels(colour);
        const seen = rgb.map((channel, index) => channel * alpha * opacity + paper[index] * (1 - alpha * opacity));
        const [high, low] = [luminance(seen), luminance(paper)].sort((a, b) => b - a);
        return (high + 0.05) / (low + 0.05);
      };
      const strokes = [
        '.outside-wall', '.inside-wall', '.window', '.door', '.obstacle', '.dryer', '.casing', '.casing.lit', '.core',
        'g.corner circle', 'g.new-bend path', 'g.rank circle', '.plot-line.total', '.plot-line.static', '.plot-span.lit', '.share-rest',
      ];
      const fills = ['.share-bar', '.legend rect', '.canvas text', '.plot text'];
      const of = (selectors, property, opacity) => selectors.map((selector) => {
        const element = document.querySelector(selector);
        if (!element) return [selector, 0];
        const style = getComputedStyle(element);
        return [`${selector} ${property}`, contrast(style[property], Number(style[opacity]))];
      });
      return [...of(strokes, 'stroke', 'strokeOpacity'), ...of(fills, 'fill', 'fillOpacity')];
    });
    expect(contrasts.length).toBe(20);
    // WCAG 2.2, 1.4.11 asks for 3 to 1.
    expect(contrasts.filter(([, contrast]) => !(contrast >= 3))).toEqual([]);

    // What is selected differs in form, not only in colour.
    const form = (selector) => page.locator(selector).first().evaluate((element) => {
      const { strokeDasharray, outlineStyle, fontWeight } = getComputedStyle(element);
      return { strokeDasharray, outlineStyle, fontWeight };
    });
    expect((await form('.casing.lit')).strokeDasharray).not.toBe((await form('.casing:not(.lit)')).strokeDasharray);
    expect((await form('.ledger tbody tr.lit')).outlineStyle).toBe('solid');
    expect((await form('.ledger tbody tr:not(.lit)')).outlineStyle).toBe('none');

    await sheet.button('Keys').focus();
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Tab');
    const focus = await sheet.button('Keys').evaluate((button) => {
      const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(button);
      return { outlineStyle, outlineWidth, outlineColor, behind: getComputedStyle(document.querySelector('.head')).backgroundColor };
    });
    expect(focus).toMatchObject({ outlineStyle: 'solid', outlineWidth: '3px' });
    expect(focus.outlineColor).not.toBe(focus.behind);
  });
}

test('the sheet moves only where motion is welcome', async ({ page, site }) => {
  await page.setViewportSize(PHONE);
  const sheet = await Sheet.open(page, site);
  await sheet.select('leg:p4');
  const motion = () => page.evaluate(() => [...document.querySelectorAll('*')]
    .filter((element) => {
      const { animationName, transitionDuration } = getComputedStyle(element);
      return animationName !== 'none' || transitionDuration.split(', ').some((each) => Number.parseFloat(each) > 0);
    })
    .map((element) => element.getAttribute('class')));
  expect(await motion()).toContain('selected-sheet open');
  // On a wider page it is a panel in its place, and rises from nowhere.
  await page.setViewportSize({ width: 1280, height: 800 });
  expect(await motion()).toEqual([]);
  await page.setViewportSize(PHONE);
  await page.emulateMedia({ reducedMotion: 'reduce' });
  expect(await motion()).toEqual([]);
});

// Zoom and spacing

/** The names of everything that can be used now. */
const usable = (page) => page.locator('#app').getByRole('button').or(page.locator('input, select, summary'))
  .evaluateAll((all) => all.filter((each) => each.checkVisibility()).map((each) => each.id || each.textContent.trim() || each.name));

test('at twice the size nothing is lost and the page does not scroll sideways', async ({ page, site }) => {
  const sheet = await Sheet.open(page, site);
  await sheet.select('leg:p4');
  await sheet.unfold();
  const wide = await usable(page);
  const figures = await sheet.figures();
  // 1280 px at 200 % are 640 px of the page.
  await page.setViewportSize({ width: 640, height: 400 });
  await sheet.unfoldHead();
  const narrow = await usable(page);
  expect(wide.filter((name) => !narrow.includes(name))).toEqual([]);
  expect(await sheet.figures()).toEqual(figures);
  for (const name of ['Airflow', 'BackPressure', 'Velocity']) await expect(sheet.band(name)).toBeVisible();
  await expect(page.getByText('static, at the outlet').filter({ visible: true })).not.toHaveCount(0);
  expect(await overhang(page)).toBe(0);
});

for (const width of [360, 640, 1280]) {
  test(`text may be set wider without being cut off, ${width} px`, async ({ page, site }) => {
    await page.setViewportSize({ width, height: 740 });
    const sheet = await Sheet.open(page, site);
    await sheet.select('elbow:p2');
    await sheet.unfoldHead();
    // WCAG 2.2, 1.4.12. A sheet made by a script is no inline style, which the policy forbids.
    await page.evaluate(() => {
      const spacing = new CSSStyleSheet();
      spacing.replaceSync(`* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important; }
        p { margin-bottom: 2em !important; }`);
      document.adoptedStyleSheets = [spacing];
    });
    expect(await overhang(page)).toBe(0);
    const cut = await page.evaluate(() => [...document.querySelectorAll('#app *')]
      .filter((element) => element.checkVisibility() && !element.closest('svg, .visually-hidden, select'))
      .filter((element) => {
        const { overflowX, overflowY } = getComputedStyle(element);
        const hides = (overflow) => overflow === 'hidden' || overflow === 'clip';
        return (hides(overflowX) && element.scrollWidth > element.clientWidth + 1)
          || (hides(overflowY) && element.scrollHeight > element.clientHeight + 1);
      })
      .map((element) => element.outerHTML.slice(0, 80)));
    expect(cut).toEqual([]);
    const strip = await page.locator('.totals dl').evaluate((list) => [...list.querySelectorAll('dt, dd')]
      .filter((each) => each.scrollWidth > each.clientWidth + 1).map((each) => each.textContent));
    expect(strip).toEqual([]);
  });
}

// Every state of the shell under the checker

const STATES = {
  'phone, sheet open': { viewport: PHONE, enter: (sheet) => sheet.select('elbow:p2') },
  'phone, tools unfolded': { viewport: PHONE, enter: (sheet) => sheet.unfoldHead() },
  'phone, keys': { viewport: PHONE, enter: (sheet) => sheet.tool('Keys') },
  'phone, large type': { viewport: PHONE, enter: (sheet) => sheet.tool('Large type') },
  '640 px, sheet open': { viewport: { width: 640, height: 400 }, enter: (sheet) => sheet.select('leg:p4') },
  '1280 px, large type, selected': {
    viewport: { width: 1280, height: 800 },
    enter: async (sheet) => { await sheet.tool('Large type'); await sheet.select('leg:p4'); },
  },
  '1280 px, keys': { viewport: { width: 1280, height: 800 }, enter: (sheet) => sheet.tool('Keys') },
  '2560 px, large type': { viewport: { width: 2560, height: 1440 }, enter: (sheet) => sheet.tool('Large type') },
  '1280 px, forced colours': { viewport: { width: 1280, height: 800 }, forcedColors: 'active', enter: (sheet) => sheet.select('leg:p4') },
  'phone, forced colours': { viewport: PHONE, forcedColors: 'active', enter: (sheet) => sheet.select('elbow:p2') },
};

for (const colorScheme of ['light', 'dark']) {
  for (const [name, { viewport, enter, forcedColors = 'none' }] of Object.entries(STATES)) {
    test(`no violation: ${name}, ${colorScheme}`, async ({ page, site }) => {
      test.setTimeout(120_000);
      await page.setViewportSize(viewport);
      await page.emulateMedia({ colorScheme, forcedColors, reducedMotion: 'reduce' });
      const sheet = await Sheet.open(page, site);
      await enter(sheet);
      expect(await violations(page)).toEqual([]);
    });
  }
}
