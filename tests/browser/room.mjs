// The room about the run, as a hand draws it. Places are inches of the plan: the example's room goes
// from 0, 0 to 108, 89.25 inside its walls, and its lower right quarter is free.

import { expect } from './page.mjs';
import { Sheet } from './sheet.mjs';

export const INCH = 0.0254;

export class Room extends Sheet {
  /** Where a place of the plan is on the screen now; the page is scrolled so that it is seen. */
  place(x, y) {
    return this.canvas.evaluate((canvas, [x, y]) => {
      const on = () => new DOMPoint(x * 0.0254, y * 0.0254).matrixTransform(canvas.querySelector('g').getScreenCTM());
      const below = document.querySelector('.selected-sheet.open');
      const covered = below && getComputedStyle(below).position === 'fixed' ? below.getBoundingClientRect().top : innerHeight;
      const [top, foot] = [innerHeight * 0.2, covered * 0.9];
      if (on().y < top || on().y > foot) scrollBy(0, on().y - (top + foot) / 2);
      return [on().x, on().y];
    }, [x, y]);
  }

  async click(x, y, modifiers = []) {
    const at = await this.place(x, y);
    for (const key of modifiers) await this.page.keyboard.down(key);
    await this.page.mouse.click(...at);
    for (const key of modifiers) await this.page.keyboard.up(key);
  }

  async tap(x, y) { await this.page.touchscreen.tap(...await this.place(x, y)); }

  async drag(from, to) {
    await this.hold(from, to);
    await this.letGo();
  }

  /** Presses at a place and moves the mouse to another, without letting go. */
  async hold(from, to) {
    await this.page.mouse.move(...await this.place(...from));
    await this.page.mouse.down();
    await this.page.mouse.move(...await this.place(...to), { steps: 5 });
  }

  async hover(x, y) { await this.page.mouse.move(...await this.place(x, y)); }

  /** Takes a tool in hand: a button by its name, or a kind from a list. */
  async take(tool, kind) {
    if (kind) await this.page.locator(`#tool-${tool}`).selectOption(kind);
    else await this.page.getByRole('toolbar').getByRole('button', { name: tool, exact: true }).click();
  }

  async keys(...keys) {
    await this.canvas.focus();
    for (const key of keys) await this.page.keyboard.press(key);
  }

  async plan() { return JSON.parse(await this.file()); }

  async file() { return String(await this.download('Save file')); }

  /** What the next step back is called. */
  undoes(name) { return expect(this.button('Undo')).toHaveAttribute('title', name); }

  async undo(name) {
    await this.undoes(name);
    await this.button('Undo').click();
  }

  selectedName() { return this.page.locator('.panel.selected .selected-name'); }

  /** The names of the lines that the pointer has settled on. */
  guides() { return this.page.locator('.canvas g.guide text'); }
}

/** A rectangle of the plan as corner and sides, inches, rounded to the thousandth. */
export const inches = ({ x_m: x, y_m: y, width_m: width, depth_m: depth }) =>
  [x, y, width, depth].map((metres) => Number((metres / INCH).toFixed(3)));
