// A plan to look at on another page: the element, the page for an iframe, and the lesson that shows how.

import { readFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { deflateSync } from 'node:zlib';
import { composed } from '../bench/many_plans.mjs';
import { built } from '../build/serve.mjs';
import { test, expect } from './page.mjs';
import { violations } from './violations.mjs';

const folder = path.join(built, 'api');
const module = await import(pathToFileURL(path.join(folder, 'elbowroom.js')));
const HOUSE = JSON.parse(readFileSync(path.join(folder, 'examples/house.json'), 'utf8'));

/** A link as the page makes them: `job-1.`, then the file, packed (RFC 1950), in base64url. */
const linkTo = (plan) => `#job-1.${deflateSync(Buffer.from(JSON.stringify(plan))).toString('base64url')}`;

/** Holds what `view` shows against what the module says of `plan`. */
async function shows(view, plan, units = 'us') {
  const { title, run, totals, costliest } = module.view(plan, { units });
  await expect(view.getByRole('heading')).toHaveText(title);
  await expect(view.getByRole('img')).toHaveAttribute('aria-label', run);
  await expect(view.locator('dt')).toHaveText(totals.map(({ name }) => name));
  await expect(view.locator('dd.figure')).toHaveText(totals.map(({ figure }) => figure));
  await expect(view.locator('.costliest')).toHaveText(costliest);
  // As many marks as the drawing's file has.
  const { drawing } = module.view(plan, { units });
  expect(await view.locator('svg path').count()).toBe(drawing.match(/<path/g).length);
}

test('the lesson shows a plan from a file and one from an object, under the policy', async ({ page, site }) => {
  await page.goto(`${site}api/examples/lesson.html`);
  const [file, object] = [page.locator('elbowroom-view').nth(0), page.locator('elbowroom-view').nth(1)];
  await shows(file, HOUSE);
  const smooth = { ...HOUSE, title: 'The same run with smooth elbows', run: { ...HOUSE.run, points: HOUSE.run.points.map((point) => ({ ...point, elbow: { kind: 'smooth', centre_line_radius_m: 0.1524 } })) } };
  await shows(object, smooth);
  await file.evaluate((element) => element.setAttribute('units', 'si'));
  await shows(file, HOUSE, 'si');
  expect(await violations(page)).toEqual([]);
});

for (const colorScheme of ['light', 'dark']) {
  test(`the view has no violation of accessibility on a phone, ${colorScheme}`, async ({ page, site }) => {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width: 360, height: 780 });
    await page.goto(`${site}api/view.html${linkTo(HOUSE)}`);
    await shows(page.locator('elbowroom-view'), HOUSE);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(await violations(page)).toEqual([]);
  });
}

test('the page for an iframe takes a file, a link and another link', async ({ page, site }) => {
  const view = page.locator('elbowroom-view');
  await page.goto(`${site}api/view.html?plan=examples/house.json&units=si`);
  await shows(view, HOUSE, 'si');
  await page.goto(`${site}api/view.html${linkTo(composed(3))}`);
  await shows(view, composed(3));
  await page.evaluate((link) => { location.hash = link; }, linkTo(composed(5)));
  await shows(view, composed(5));
});

test('a page around it hands over a plan, and hears what came of it', async ({ page, site }) => {
  // A page without any policy of its own, as a course system has it.
  await page.route('**/course.html', (route) => route.fulfill({ contentType: 'text/html', body: `<!doctype html><html lang="en"><link rel="icon" href="data:,"><title>Course</title><iframe title="A plan" src="api/view.html" width="800" height="700"></iframe><script>
    globalThis.heard = [];
    addEventListener('message', ({ data }) => globalThis.heard.push(data));
  </script>` }));
  await page.goto(`${site}course.html`);
  await expect.poll(() => page.evaluate(() => globalThis.heard)).toEqual([{ elbowroom: 'ready' }]);
  const send = (data) => page.evaluate((sent) => document.querySelector('iframe').contentWindow.postMessage(sent, '*'), data);
  await send({ plan: composed(7), units: 'si' });
  await shows(page.frameLocator('iframe').locator('elbowroom-view'), composed(7), 'si');
  await send({ plan: { ...composed(7), version: 9 } });
  await expect.poll(() => page.evaluate(() => globalThis.heard.at(-1))).toEqual({ elbowroom: 'refused', message: expect.stringContaining('9'), path: 'version' });
});

test('what cannot be shown is said, and what comes after it is shown', async ({ page, site, problems }) => {
  await page.goto(`${site}api/view.html`);
  const view = page.locator('elbowroom-view');
  const alert = view.getByRole('alert');
  const set = (name, value) => view.evaluate((element, [key, text]) => element.setAttribute(key, text), [name, value]);
  await set('src', 'nowhere.json');
  await expect(alert).toContainText('404');
  await expect.poll(() => problems.splice(0).join()).toContain('404');
  await set('link', '#job-1.AAAA');
  await expect(alert).toContainText('link');
  // A link that unfolds to far more than any job.
  await set('link', `#job-1.${deflateSync(Buffer.alloc(64 << 20, 32)).toString('base64url')}`);
  await expect(alert).toContainText('link');
  await set('link', linkTo(HOUSE));
  await shows(view, HOUSE);
  await view.evaluate((element) => { element.plan = '{"format":"elbowroom-plan"'; });
  await expect(alert).toContainText('JSON');
  await view.evaluate((element, text) => { element.plan = new File([text], 'house.json'); }, JSON.stringify(composed(9)));
  await shows(view, composed(9));
});

test('names that somebody typed are text and nothing else', async ({ page, site }) => {
  const hostile = '<img src=x onerror=alert(1)><script>alert(2)</script>"&';
  const plan = { ...HOUSE, title: hostile, obstacles: HOUSE.obstacles.map((each) => ({ ...each, name: hostile })) };
  let dialogs = 0;
  page.on('dialog', (dialog) => { dialogs += 1; dialog.dismiss(); });
  await page.goto(`${site}api/view.html${linkTo(plan)}`);
  const view = page.locator('elbowroom-view');
  await shows(view, plan);
  await expect(view.locator('img:not([role]), script, svg image')).toHaveCount(0);
  await expect(view.locator('svg text', { hasText: '<script>' })).toHaveCount(1);
  expect(dialogs).toBe(0);
});

test.describe('where the planner is kept for offline', () => {
  test.use({ serviceWorkers: 'allow' });

  test('its service worker leaves the module and the view alone', async ({ page, site }) => {
    await page.goto(site);
    await expect(page.getByTestId('offline')).toHaveText('Ready offline');
    await page.goto(`${site}api/view.html${linkTo(HOUSE)}`);
    await shows(page.locator('elbowroom-view'), HOUSE);
  });
});
