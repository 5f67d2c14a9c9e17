// The four people whom the page is for, each from a cleared profile, at their size and with their hands.
// Every tap, key press and dialog counts; a swipe of the page counts as one. Bars: the design's scenes.

import AxeBuilder from '@axe-core/playwright';
import { test, expect, open } from './page.mjs';
import { rename, saved } from './keep.mjs';
import { PHONE, Sheet } from './sheet.mjs';

test.describe.configure({ timeout: 60_000 });

const INCH = 0.0254;

/** Counts what a person does, and keeps a picture of each step for the report. */
class Person {
  actions = 0;

  constructor(page) {
    this.page = page;
  }

  /** A tap or a press with the pointer, by how the page is used here. */
  async press(what) {
    this.actions += 1;
    await (this.touches ? what.tap() : what.click());
  }

  button(name) { return this.page.getByRole('button', { name, exact: true }); }

  async keys(...keys) {
    for (const key of keys) {
      this.actions += 1;
      await this.page.keyboard.press(key);
    }
  }

  async swipeTo(what) {
    this.actions += 1;
    await what.evaluate((element) => element.scrollIntoView({ block: 'center' }));
  }

  /** A place of the plan, inches. */
  async at(x, y) {
    const [left, top] = await this.page.locator('.canvas').evaluate((canvas, [x, y]) => {
      const at = new DOMPoint(x, y).matrixTransform(canvas.querySelector('g').getScreenCTM());
      return [at.x, at.y];
    }, [x * INCH, y * INCH]);
    const size = this.page.viewportSize();
    expect(left > 0 && left < size.width && top > 0 && top < size.height, `${x}, ${y} in is on the screen`).toBe(true);
    this.actions += 1;
    await (this.touches ? this.page.touchscreen.tap(left, top) : this.page.mouse.click(left, top));
  }

  picture(name) { return this.page.screenshot({ path: test.info().outputPath(`${name}.png`) }); }
}

/** Layout that moved by itself, summed as the standard sums it. */
async function watchShifts(page) {
  await page.addInitScript(() => {
    globalThis.shifted = 0;
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) if (!entry.hadRecentInput) globalThis.shifted += entry.value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
}

const shifts = (page) => page.evaluate(() => globalThis.shifted);

async function clean(page) {
  const { violations } = await new AxeBuilder({ page }).analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`)).toEqual([]);
}

const figure = (page) => page.locator('[data-total=Airflow] .total-figure');
const MOST_SHIFT = 0.05;

test.describe('homeowner on a phone', () => {
  test.use({ viewport: PHONE, hasTouch: true, isMobile: true });

  test('draws a room with a thumb, takes a suggestion, sends a link', async ({ page, site, context }) => {
    await context.grantPermissions(['clipboard-read', 'clipboard-write']);
    await watchShifts(page);
    await open(page, site);
    const person = Object.assign(new Person(page), { touches: true });
    await person.picture('1-first');
    await person.press(page.locator('.head-more'));
    await person.press(person.button('Start blank'));
    await person.press(page.locator('.head-more'));
    await person.swipeTo(page.locator('.canvas'));
    await person.press(person.button('Outside wall'));
    for (const corner of [[0, 0], [96, 0], [96, 84]]) await person.at(...corner);
    await person.picture('2-walls');
    await person.press(person.button('Run'));
    for (const corner of [[48, 30], [70, 30], [70, 12], [99, 12]]) await person.at(...corner);
    await person.press(person.button('Done'));
    await expect(figure(page)).toHaveText(/\d/);
    const toFigure = person.actions;
    await person.picture('3-own-run');
    await clean(page);

    const look = page.getByTestId('reroute-start');
    await look.scrollIntoViewIfNeeded();
    await person.press(look);
    const take = person.button('Take this run').first();
    await expect(take).toBeVisible();
    await person.picture('4-suggestions');
    const before = await figure(page).textContent();
    await person.press(take);
    await expect(figure(page)).not.toHaveText(before);
    const toTaken = person.actions - toFigure;
    await saved(page);

    await page.locator('.head-more').scrollIntoViewIfNeeded();
    await person.press(page.locator('.head-more'));
    await person.press(person.button('Send as a link'));
    await expect(page.getByRole('dialog', { name: 'Send as a link' }).getByRole('status')).toHaveText('The link is copied.');
    const toSent = person.actions - toFigure - toTaken;
    await person.picture('5-link');
    await clean(page);
    console.log(`homeowner: ${toFigure} actions to a figure of an own room, ${toTaken} to a suggestion taken, ${toSent} to a link; shift ${await shifts(page)}`);
    expect(toFigure).toBeLessThanOrEqual(40);
    expect(toTaken).toBeLessThanOrEqual(2);
    expect(toSent).toBeLessThanOrEqual(2);
    expect(await shifts(page)).toBeLessThan(MOST_SHIFT);
  });
});

test.describe('installer on a laptop', () => {
  test.use({ viewport: { width: 1280, height: 800 } });

  test('draws, chooses the code, compares a route and prints, with no pointer at all', async ({ page, site }) => {
    await open(page, site);
    const person = new Person(page);
    /** Tabs on until something has the focus. */
    const reach = async (what) => {
      for (let press = 0; press < 250; press += 1) {
        if (await what.evaluate((element) => element === document.activeElement).catch(() => false)) return;
        await person.keys('Tab');
      }
      throw new Error(`not reached by the Tab key: ${what}`);
    };
    await reach(person.button('Start blank'));
    await person.keys('Enter');
    await reach(page.locator('.canvas'));
    await person.keys('w', 'Enter', '1', '0', "'", 'ArrowRight', '8', "'", 'ArrowDown', 'Escape');
    await person.keys('g', 'Enter');
    await person.keys('r', '2', "'", 'ArrowUp', '1', "'", 'ArrowRight', '1', "'", '6', '"', 'ArrowUp', '6', '2', '"', 'ArrowRight', 'Escape');
    await expect(figure(page)).toHaveText(/\d/);
    await person.picture('1-drawn');

    const look = page.getByTestId('reroute-start');
    await reach(look);
    await person.keys('Enter');
    const offered = page.getByTestId('reroute').first();
    await expect(offered).toBeVisible();
    const show = offered.getByRole('button', { name: 'Show on the drawing' });
    await reach(show);
    await person.keys('Enter');
    await expect(show).toHaveAttribute('aria-pressed', 'true');
    await person.picture('2-compared');

    const sets = page.locator('.panel.code select').first();
    await reach(sets);
    const set = await sets.inputValue();
    await person.keys('ArrowDown');
    await expect(sets).not.toHaveValue(set);

    const print = page.getByRole('region', { name: 'Handover', exact: true }).getByRole('button', { name: 'Print or save as PDF' });
    await page.evaluate(() => {
      globalThis.printed = new Promise((resolve) => { globalThis.print = () => resolve(document.documentElement.dataset.print); });
    });
    await reach(print);
    await person.keys('Enter');
    expect(await page.evaluate(() => globalThis.printed)).toBe('handover');
    await page.pdf({ format: 'Letter', path: test.info().outputPath('sheet.pdf') });
    await page.evaluate(() => dispatchEvent(new Event('afterprint')));
    await person.picture('3-printed');
    await clean(page);
    console.log(`installer: ${person.actions} key presses from the first screen to the sheet`);
  });
});

test.describe('trainer at a projector', () => {
  test.use({ viewport: { width: 2560, height: 1440 } });

  test('two runs side by side with one elbow swapped', async ({ page, site }) => {
    await watchShifts(page);
    await open(page, site);
    const person = new Person(page);
    await person.press(person.button('Side by side'));
    await expect(page.locator('.side-canvas')).toBeVisible();
    await person.picture('1-two-runs');
    const { x, y, width, height } = await page.locator('.canvas [data-mark="corner:p2"]').boundingBox();
    person.actions += 1;
    await page.mouse.click(x + width / 2, y + height / 2);
    const kind = page.locator('.selected').getByLabel('Elbow', { exact: true });
    // The list is opened and a line of it pressed.
    person.actions += 2;
    await kind.selectOption('Sharp mitre');
    await expect(page.getByTestId('side-count')).toContainText('One thing differs');
    await person.picture('2-swapped');
    await clean(page);
    console.log(`trainer: ${person.actions} actions; shift ${await shifts(page)}`);
    expect(person.actions).toBeLessThanOrEqual(6);
    expect(await shifts(page)).toBeLessThan(MOST_SHIFT);
  });
});

test.describe('technician in a basement', () => {
  test.use({ viewport: PHONE, hasTouch: true, isMobile: true, serviceWorkers: 'allow' });

  test('opens the job saved before, types a reading, is told what to test next', async ({ page, site, context }) => {
    // Last spring, with a network: the job was saved.
    await open(page, site);
    await expect(page.getByTestId('offline')).toHaveText('Ready offline');
    await rename(page, 'Basement run');
    await saved(page);
    // Another job since then.
    await page.getByRole('button', { name: 'Start blank', exact: true }).tap();
    await rename(page, 'Another run');
    await saved(page);

    await context.setOffline(true);
    await page.reload();
    const sheet = new Sheet(page);
    await sheet.banded();
    const person = Object.assign(new Person(page), { touches: true });
    await person.press(page.locator('.head-more'));
    await person.press(person.button('Jobs'));
    const jobs = page.getByRole('dialog', { name: 'Jobs' });
    await person.picture('1-jobs');
    await person.press(jobs.getByRole('button', { name: 'Open: Basement run' }));
    await expect(sheet.job).toHaveText('Basement run');
    const value = page.locator('#site-value');
    await person.swipeTo(value);
    await person.press(value);
    await person.keys('1', '.', '0');
    await person.picture('2-typed');
    await person.press(person.button('Add reading'));
    await expect(page.getByTestId('next')).toBeVisible();
    await page.getByTestId('next').scrollIntoViewIfNeeded();
    await person.picture('3-next');
    await clean(page);
    console.log(`technician: ${person.actions} actions`);
    expect(person.actions).toBeLessThanOrEqual(10);
  });
});
