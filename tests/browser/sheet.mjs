// The sheet as a person sees and handles it: totals, ledger, drawing, fields, files.

import { readFile } from 'node:fs/promises';
import { expect, open } from './page.mjs';

export const LEG_LENGTH = 'Leg length, corner to corner';
export const UNITS = { usCustomary: 'ft, in. w.c., cfm', si: 'm, Pa, L/s' };
export const PHONE = { width: 360, height: 740 };
const BAND_PENDING = 'working out the band';

export class Sheet {
  constructor(page) {
    this.page = page;
    this.canvas = page.locator('svg.canvas');
    this.rows = page.locator('.ledger tbody tr');
    this.alert = page.getByRole('alert');
    this.job = page.locator('.head-job');
    // What is read aloud after a finished change.
    this.spoken = page.locator('#app > p[role=status]');
  }

  static async open(page, site) {
    const sheet = new this(page);
    await open(page, site);
    await sheet.banded();
    return sheet;
  }

  // Figures

  total(name) { return this.page.locator(`[data-total=${name}] .total-figure`); }

  band(name) { return this.page.locator(`[data-total=${name}] .total-band`); }

  row(element) { return this.page.locator(`.ledger tr[data-element="${element}"]`); }

  /** A cell of the ledger; of one that has a band too, the likely figure. */
  cell(element, name) {
    const cell = `[data-cell=${name}]`;
    return this.row(element).locator(`${cell} .likely, ${cell}:not(:has(.likely))`);
  }

  /** The same once it has followed a drag whose hand rests: it may lie a moment behind. */
  async ledgerAtRest() {
    let last = '';
    await expect.poll(async () => {
      const before = last;
      last = await this.ledgerText();
      return last === before;
    }, { intervals: [300] }).toBe(true);
    return last;
  }

  /** A figure's band in the ledger. */
  cellBand(element, name) { return this.row(element).locator(`[data-cell=${name}] .band`); }

  /** All that the ledger says at likely inputs: the bands come later. */
  ledgerText() {
    return this.page.locator('.ledger table').evaluate((table) => {
      const copy = table.cloneNode(true);
      for (const band of copy.querySelectorAll('.band')) band.remove();
      return copy.textContent;
    });
  }

  /** Waits until the bands shown belong to the figures shown. */
  async banded() {
    for (const name of ['Airflow', 'BackPressure', 'Velocity']) {
      await expect(this.band(name)).toContainText(' to ');
    }
    await expect(this.page.locator('.ledger tbody .band').first()).toContainText(' to ');
  }

  /** Every figure that is printed, once its bands are there. */
  async figures() {
    await this.banded();
    const texts = ['.totals', '.ledger table', '.panel.code', '.pressure .plot'];
    return Promise.all(texts.map((each) => this.page.locator(each).textContent()));
  }

  pendingBand(name) { return expect(this.band(name)).toHaveText(BAND_PENDING); }

  // Drawing

  mark(id) { return this.page.locator(`.canvas [data-mark="${id}"]`); }

  /** The middle of a mark, px of the page. */
  async middle(id) {
    const { x, y, width, height } = await this.mark(id).boundingBox();
    return { x: x + width / 2, y: y + height / 2 };
  }

  /** Where a mark that keeps its size stands on the drawing. */
  placeOf(id) { return this.mark(id).getAttribute('transform'); }

  /** The paper's move and scale. */
  async view() {
    const transform = await this.canvas.locator('> g').first().getAttribute('transform');
    const [x, y, scale] = transform.match(/-?[\d.]+(?:e-?\d+)?/g).map(Number);
    return { x, y, scale };
  }

  /** Presses on a mark and moves the mouse by so many px, without letting go. */
  async pull(id, right, down) {
    const { x, y } = await this.middle(id);
    await this.page.mouse.move(x, y);
    await this.page.mouse.down();
    await this.page.mouse.move(x + right, y + down, { steps: 5 });
  }

  letGo() { return this.page.mouse.up(); }

  // Hands

  button(name) { return this.page.getByRole('button', { name, exact: true }); }

  async select(element) {
    await this.row(element).getByRole('button').click();
    await expect(this.row(element)).toHaveClass(/lit/);
  }

  /** Unfolds everything that can be. */
  unfold() {
    return this.page.locator('details').evaluateAll((folded) => folded.forEach((each) => { each.open = true; }));
  }

  field(label) { return this.page.getByLabel(label, { exact: true }); }

  async type(label, text) {
    await this.field(label).fill(text);
    await this.field(label).press('Enter');
  }

  /** Presses a tool of the head, which folds away on a narrow page. */
  async tool(name) {
    await this.unfoldHead();
    await this.button(name).click();
  }

  async unfoldHead() {
    const more = this.button('More');
    if (await more.isVisible() && await more.getAttribute('aria-expanded') === 'false') await more.click();
  }

  async units(label) {
    await this.unfoldHead();
    await this.page.locator('.head-tools').getByText(label, { exact: true }).click();
    await expect(this.page.getByRole('radio', { name: label })).toBeChecked();
  }

  // Files

  /** The bytes that a button hands to the browser's downloads. */
  async download(button) {
    const downloading = this.page.waitForEvent('download');
    await this.tool(button);
    return readFile(await (await downloading).path());
  }

  async choose(bytes) {
    const file = { name: 'plan.json', mimeType: 'application/json', buffer: Buffer.from(bytes) };
    await this.page.locator('#plan-file').setInputFiles(file);
  }

  /** Opens the open plan again, changed by `change`; its title is new, so that it is seen to come. */
  async reopen(change) {
    const plan = JSON.parse(await this.download('Save file'));
    plan.title = 'Changed, invented';
    change(plan);
    await this.choose(JSON.stringify(plan));
    await expect(this.job).toHaveText(plan.title);
    return plan;
  }
}

/** How far the page is wider than its window, px. */
export const overhang = (page) => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Makes of the example a run with every kind of element. */
export function withEveryElement(plan) {
  const [riser, second, third, last] = plan.run.points;
  plan.site.make_up_free_area_m2 = 0.02;
  riser.diameter_m = 0.127;
  second.duct = { foil: { short_of_full_stretch_percent: 20 } };
  second.blockage_free_area = 0.6;
  second.ends_in_wall_box = true;
  third.leak_free_area_m2 = 0.0002;
  third.elbow.kind = 'smooth';
  last.concealed_elbows = { least: 1, most: 2 };
  last.estimate = { less_m: 0.3, more_m: 0.5 };
}

export const EVERY_ELEMENT = [
  'make-up-air:@outlet', 'leg:p1', 'elbow:p1', 'riser:p1', 'elbow-after-riser:p1', 'area-change:p2',
  'leg:p2', 'blockage:p2', 'wall-box:p2', 'elbow:p2', 'leak:p3', 'elbow:p3', 'leg:p4', 'concealed-elbows:p4', 'termination:p4',
];
