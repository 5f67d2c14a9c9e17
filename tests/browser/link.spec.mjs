// A whole job as a link: sent, opened elsewhere, refused where it was harmed. The packed form is read and
// written here by Node's own zlib (RFC 1950) and base64url (RFC 4648, section 5), not by the program.

import { deflateSync, inflateSync } from 'node:zlib';
import AxeBuilder from '@axe-core/playwright';
import { test, expect, open } from './page.mjs';
import { WORD, job, jobsStored, planFile, rename, saved, takeTermination, word } from './keep.mjs';

const MARK = '#job-1.';
const HOSTILE = '<img src=x onerror=alert(1)> "=cmd" \u202eleft \u{1f9fa}';

const inside = (link) => JSON.parse(inflateSync(Buffer.from(link.split(MARK)[1], 'base64url')));
const linkOf = (site, plan) => `${site}${MARK}${deflateSync(Buffer.from(JSON.stringify(plan))).toString('base64url')}`;
const trouble = (page) => page.locator('.trouble').first();

async function send(page) {
  const more = page.locator('.head-more');
  if (await more.isVisible() && await more.getAttribute('aria-expanded') === 'false') await more.click();
  await page.getByRole('button', { name: 'Send as a link' }).click();
  const dialog = page.getByRole('dialog', { name: 'Send as a link' });
  await expect(dialog.getByLabel('The link')).toBeVisible();
  return dialog;
}

// Each link starts a worker, and some of these tests open the page several times.
test.setTimeout(90_000);

test('the link holds the job, is copied, and opens it in another browser as one that is not kept yet', async ({ page, context, site, browser }) => {
  await context.grantPermissions(['clipboard-read', 'clipboard-write']);
  await open(page, site);
  await takeTermination(page);
  await page.keyboard.press('ArrowRight');
  await rename(page, HOSTILE);
  await saved(page);
  const plan = JSON.parse(await planFile(page));
  const dialog = await send(page);
  const link = await dialog.getByLabel('The link').inputValue();
  await expect(dialog.getByRole('status')).toHaveText('The link is copied.');
  expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(link);
  expect(link.startsWith(site + MARK)).toBe(true);
  expect(inside(link)).toEqual(plan);

  // Another browser that keeps a job of its own already.
  const elsewhere = await browser.newContext({ serviceWorkers: 'block' });
  const other = await elsewhere.newPage();
  await open(other, site);
  await rename(other, 'Job of the other');
  await saved(other);
  await other.goto('about:blank');
  await other.goto(link);
  await expect(job(other)).toHaveText(HOSTILE);
  await expect(word(other)).toHaveText(WORD.untouched);
  expect(other.url()).toBe(site);
  expect(JSON.parse(await planFile(other))).toEqual(plan);
  expect(await jobsStored(other)).toBe(1);
  // Until it is changed, the job that was open stays what a reload opens.
  await other.reload();
  await expect(job(other)).toHaveText('Job of the other');
  await other.goto('about:blank');
  await other.goto(link);
  await expect(job(other)).toHaveText(HOSTILE);
  await takeTermination(other);
  await other.keyboard.press('ArrowRight');
  await saved(other);
  expect(await jobsStored(other)).toBe(2);
  await other.reload();
  await expect(job(other)).toHaveText(HOSTILE);
  await elsewhere.close();
});

test('a link made by another program opens, also while the page is open', async ({ page, site }) => {
  await open(page, site);
  const plan = JSON.parse(await planFile(page));
  plan.title = 'From elsewhere';
  await page.goto(linkOf(site, plan));
  await expect(job(page)).toHaveText('From elsewhere');
  await expect(page).toHaveURL(site);
});

test('a harmed link says what to do, and the open job stays', async ({ page, site }) => {
  await open(page, site);
  await rename(page, 'The open job');
  await saved(page);
  const plan = JSON.parse(await planFile(page));
  const whole = linkOf(site, { ...plan, title: 'Never seen' });
  const cases = [
    [whole.slice(0, -40), 'was cut off'],
    [`${whole.slice(0, 200)} ${whole.slice(200)}`, 'one that no link has'],
    [whole.replace(MARK, '#job-7.'), 'version “7”'],
    [`${site}${MARK}${'A'.repeat(9000)}`, 'at most 8000'],
    [linkOf(site, { ...plan, run: { ...plan.run, diameter_m: 99 } }), 'run.diameter_m is 99'],
    [linkOf(site, { ...plan, note: ' '.repeat(3_000_000) }), 'larger than'],
  ];
  for (const [link, words] of cases) {
    await page.goto(link);
    await expect(trouble(page)).toContainText(words);
    await expect(trouble(page)).toContainText('The open plan is as it was.');
    await expect(job(page)).toHaveText('The open job');
    await expect(page).toHaveURL(site);
    await trouble(page).getByRole('button', { name: 'Close' }).click();
  }
  // What is no job's link is none of the page's business.
  await page.goto(`${site}#section-3`);
  await expect(page.locator('.trouble')).toHaveCount(0);
  expect(page.url()).toBe(`${site}#section-3`);
});

test('where nothing may be copied the link is selected, and a job too long for one is offered as a file', async ({ page, site }) => {
  await page.addInitScript(() => {
    Object.defineProperty(navigator, 'clipboard', { value: undefined });
    navigator.share = async (what) => { globalThis.handedOn = what; };
  });
  await open(page, site);
  let dialog = await send(page);
  await expect(dialog.getByRole('status')).toContainText('copy it from there');
  const field = dialog.getByLabel('The link');
  await expect(field).toBeFocused();
  expect(await field.evaluate((area) => [area.selectionStart, area.selectionEnd === area.value.length])).toEqual([0, true]);
  await dialog.getByRole('button', { name: 'Hand on' }).click();
  expect(await page.evaluate(() => globalThis.handedOn.url)).toBe(await field.inputValue());
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();

  const plan = JSON.parse(await planFile(page));
  // Letters without a pattern do not pack.
  let last = 1;
  const next = () => {
    last = (Math.imul(last, 1664525) + 1013904223) >>> 0;
    return String.fromCharCode(0x4e00 + (last >>> 16) % 20000);
  };
  plan.note = Array.from({ length: 6000 }, next).join('');
  await page.locator('#plan-file').setInputFiles({ name: 'long.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(plan)) });
  await page.getByRole('button', { name: 'Send as a link' }).click();
  dialog = page.getByRole('dialog', { name: 'Send as a link' });
  await expect(dialog.getByRole('alert')).toContainText('at most 8000');
  const downloading = page.waitForEvent('download');
  await dialog.getByRole('button', { name: 'Save file' }).click();
  await downloading;
});

for (const [colorScheme, width] of [['light', 360], ['dark', 1280]]) {
  test.describe(`${colorScheme}, ${width} px`, () => {
    test.use({ colorScheme, viewport: { width, height: 780 } });

    test('the link fits and has no violation of accessibility', async ({ page, site }) => {
      await open(page, site);
      const dialog = await send(page);
      await expect(dialog.getByRole('status')).not.toBeEmpty();
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      const axe = new AxeBuilder({ page }).include('dialog.send-link').options({ rules: { 'target-size': { enabled: true } } });
      const { violations } = await axe.analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
    });
  });
}
