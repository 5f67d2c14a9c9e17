// The page in the two other engines that phones and desktops have: a run is drawn, kept over a reload,
// saved as a file where the browser can be told where to put it, and other runs are searched.

import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import path from 'node:path';
import { after, before, test } from 'node:test';
import { By, Key, until } from 'selenium-webdriver';
import { serve } from '../build/serve.mjs';
import { NAMES, withBrowser } from './drivers.mjs';

const LONGEST_WAIT = 60_000;
const INCH = 0.0254;

let site;
before(async () => { site = await serve({ base: '/under/a/path/' }); });
after(() => site.close());

const button = (name) => By.xpath(`//button[normalize-space()=${JSON.stringify(name)}]`);

/** What the page says somewhere, once `holds` is true of it. */
async function said(browser, place, holds) {
  let last = '';
  await browser.wait(async () => {
    const found = await browser.findElements(By.css(place));
    last = found.length > 0 ? await browser.executeScript('return arguments[0].textContent', found[0]).catch(() => '') : '';
    return holds(last);
  }, LONGEST_WAIT, `${place} never said what was waited for`).catch((problem) => {
    problem.message += `, but: ${last}`;
    throw problem;
  });
  return last;
}

const airflow = '[data-total=Airflow] .total-figure';
const isFigure = (text) => /\d/.test(text);

async function standing(browser) {
  // Every part of it: the page is busy until then.
  await browser.wait(until.elementLocated(By.css('#app:not([aria-busy]) .canvas')), LONGEST_WAIT);
  return said(browser, airflow, isFigure);
}

/** Where a place of the plan, inches, is on the screen now. */
const place = (browser, x, y) => browser.executeScript(`
  const canvas = document.querySelector('.canvas');
  const at = new DOMPoint(arguments[0], arguments[1]).matrixTransform(canvas.querySelector('g').getScreenCTM());
  return [Math.round(at.x), Math.round(at.y)];`, x * INCH, y * INCH);

async function pressOn(browser, x, y) {
  const [left, top] = await place(browser, x, y);
  await browser.actions({ async: true }).move({ x: left, y: top }).press().release().perform();
}

async function click(browser, name) {
  const found = await browser.wait(until.elementLocated(button(name)), LONGEST_WAIT);
  await browser.executeScript('arguments[0].scrollIntoView({ block: "nearest" })', found);
  await found.click();
}

async function draw(browser) {
  await click(browser, 'Start blank');
  await browser.executeScript("document.querySelector('.canvas').scrollIntoView({ block: 'start' })");
  await click(browser, 'Outside wall');
  await pressOn(browser, 0, 0);
  await pressOn(browser, 120, 0);
  await pressOn(browser, 120, 96);
  await click(browser, 'Run');
  for (const corner of [[48, 27], [72, 27], [72, 9], [123, 9]]) await pressOn(browser, ...corner);
  await click(browser, 'Done');
}

for (const name of NAMES) {
  test(`${name}: draw, keep, reload, save, search`, { timeout: 240_000 }, () => withBrowser(name, async (browser, folder) => {
    await browser.manage().window().setRect({ width: 1280, height: 880 });
    await browser.get(site.address);
    await standing(browser);
    await draw(browser);
    const drawn = await said(browser, airflow, isFigure);
    await said(browser, '[data-testid=keep-word]', (text) => text === 'Saved in this browser');
    await browser.navigate().refresh();
    assert.equal(await standing(browser), drawn, 'the figures after a reload');
    const rows = await browser.findElements(By.css('.ledger tbody tr'));
    assert.ok(rows.length >= 6, `${rows.length} rows in the ledger`);

    await browser.findElement(By.css('.canvas')).sendKeys(Key.ESCAPE);
    await browser.executeScript("document.querySelector('[data-testid=reroute-start]').scrollIntoView()");
    await browser.findElement(By.css('[data-testid=reroute-start]')).click();
    await said(browser, '[data-testid=reroute]', (text) => text.length > 0);

    if (name !== 'Firefox') return;
    await browser.executeScript('scrollTo(0, 0)');
    await click(browser, 'Save file');
    const saved = () => readdirSync(folder).filter((file) => file.endsWith('.json'));
    await browser.wait(() => saved().length === 1, LONGEST_WAIT, 'no file was saved');
    const plan = JSON.parse(readFileSync(path.join(folder, saved()[0]), 'utf8'));
    assert.equal(plan.walls.length, 2);
    assert.equal(plan.run.points.length, 4);
  }));
}
