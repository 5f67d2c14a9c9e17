// Without a network: the page that was opened once opens again, with the job, and asks for nothing.
// And a newer build: it waits, says so, and never takes over under an open job.

import { cpSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { built, serve } from '../build/serve.mjs';
import { test, expect, open } from './page.mjs';
import { openJobs, rename, saved } from './keep.mjs';
import { Sheet } from './sheet.mjs';

test.use({ serviceWorkers: 'allow' });

const word = (page) => page.getByTestId('offline');
const takeOver = (page) => page.getByRole('button', { name: 'Start the newer version' });
const buildOf = (page) => page.locator('meta[name=elbowroom-build]').getAttribute('content');

async function openReady(page, site) {
  const sheet = await Sheet.open(page, site);
  await expect(word(page)).toHaveText('Ready offline');
  return sheet;
}

test('on the first visit already: offline, the page opens, is drawn on, keeps the job and opens again', async ({ page, site, context }) => {
  await openReady(page, site);
  await context.setOffline(true);
  await page.reload();
  await expect(page.locator('#app > .loading')).toHaveCount(0);
  const sheet = new Sheet(page);
  await sheet.banded();
  const before = await sheet.total('BackPressure').innerText();
  await sheet.pull('corner:p4', 0, 30);
  await sheet.letGo();
  await expect(sheet.total('BackPressure')).not.toHaveText(before);
  await sheet.ledgerAtRest();
  const drawn = await sheet.total('BackPressure').innerText();
  await expect(page.getByTestId('keep-word')).toHaveText('Saved in this browser');
  await page.reload();
  await expect(page.locator('#app > .loading')).toHaveCount(0);
  await expect(sheet.total('BackPressure')).toHaveText(drawn, { useInnerText: true });
  await sheet.banded();
});

test('a first visit hears of no newer version, and nothing on it moves about', async ({ page, site }) => {
  await page.setViewportSize({ width: 412, height: 823 });
  await page.addInitScript(() => {
    globalThis.told = [];
    globalThis.moved = 0;
    addEventListener('elbowroom-offline', () => globalThis.told.push(document.documentElement.dataset.offline));
    new PerformanceObserver((list) => {
      for (const { value } of list.getEntries()) globalThis.moved += value;
    }).observe({ type: 'layout-shift', buffered: true });
  });
  await openReady(page, site);
  expect(await page.evaluate(() => globalThis.told)).toEqual(['ready']);
  expect(await page.evaluate(() => globalThis.moved)).toBeLessThan(0.05);
});

test('offline: other runs are looked for, the visit is printed, the job is opened again from the list', async ({ page, site, context }) => {
  test.slow();
  await openReady(page, site);
  await context.setOffline(true);
  await page.reload();
  const sheet = new Sheet(page);
  await sheet.banded();
  await rename(page, 'In a basement');
  await page.getByTestId('reroute-start').click();
  await expect(page.getByTestId('reroute').first()).toBeVisible();
  const visits = page.locator('.panel.site');
  await visits.getByLabel('Date', { exact: true }).fill('March 3');
  await visits.getByLabel('Date', { exact: true }).blur();
  await page.evaluate(() => {
    globalThis.printed = new Promise((resolve) => { globalThis.print = () => resolve(document.documentElement.dataset.print); });
  });
  await visits.getByRole('button', { name: 'Print this visit' }).click();
  expect(await page.evaluate(() => globalThis.printed)).toBe('visit');
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.print-sheet')).toContainText('In a basement');
  expect((await page.pdf()).length).toBeGreaterThan(10_000);
  await page.emulateMedia({ media: 'screen' });
  await page.evaluate(() => dispatchEvent(new Event('afterprint')));
  await saved(page);

  await sheet.button('Start blank').click();
  const jobs = await openJobs(page);
  await jobs.getByRole('button', { name: 'Open: In a basement' }).click();
  await expect(sheet.job).toHaveText('In a basement');
});

test('offline, a lesson is fetched from what the browser keeps, and a link is made and opened', async ({ page, site, context }) => {
  test.setTimeout(90_000);
  await openReady(page, site);
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Side by side', exact: true }).click();
  await page.getByText('A lesson', { exact: true }).click();
  await page.getByRole('button', { name: 'One elbow more' }).click();
  await expect(page.locator('.side-question')).toBeVisible();
  await page.getByRole('button', { name: 'Send as a link' }).click();
  const link = await page.getByLabel('The link').inputValue();
  await page.goto('about:blank');
  await page.goto(link);
  await expect(page.locator('.head-job')).toHaveText('One elbow more');
});

test('once it is ready the page asks for nothing more, but whether there is a newer build', async ({ page, site, context }) => {
  await openReady(page, site);
  const asked = [];
  context.on('request', (request) => {
    if (request.serviceWorker() || !request.isNavigationRequest()) asked.push(request);
  });
  const sheet = new Sheet(page);
  await sheet.pull('corner:p4', 0, 30);
  await sheet.letGo();
  await sheet.banded();
  await sheet.unfold();
  await page.reload();
  await sheet.banded();
  const fromNetwork = [];
  for (const request of asked) {
    const response = await request.response().catch(() => null);
    if (!response?.fromServiceWorker() && !/^(blob|data):/.test(request.url())) fromNetwork.push(request.url());
  }
  expect(fromNetwork.filter((address) => address !== `${site}service-worker.js`)).toEqual([]);
});

/** A copy of the built page, to be given another build's name. */
function copyOfSite() {
  const folder = mkdtempSync(path.join(tmpdir(), 'built-'));
  cpSync(built, folder, { recursive: true });
  const { build } = JSON.parse(readFileSync(path.join(folder, 'precache.json'), 'utf8'));
  const renamed = (name) => {
    renameSync(path.join(folder, build), path.join(folder, name));
    for (const file of ['index.html', 'manifest.webmanifest', 'precache.json', 'service-worker.js']) {
      const text = readFileSync(path.join(folder, file), 'utf8');
      writeFileSync(path.join(folder, file), text.replaceAll(build, name));
    }
  };
  return { folder, build, renamed, remove: () => rmSync(folder, { recursive: true }) };
}

const NEWER = 'build-0123456789abcdef';

test('a newer build waits under an open job, and starts with it when it is asked to', async ({ page, context, problems }) => {
  const copy = copyOfSite();
  const { address, close } = await serve({ folder: copy.folder, base: '/other/' });
  try {
    const sheet = await openReady(page, address);
    await sheet.pull('corner:p4', 0, 30);
    await sheet.letGo();
    copy.renamed(NEWER);
    await page.evaluate(async () => (await navigator.serviceWorker.getRegistration()).update());
    await expect(word(page)).toContainText('A newer version is here');

    // The old page goes on, with its own files: also what it fetches only now.
    expect(await buildOf(page)).toBe(copy.build);
    const styles = await page.evaluate(async (build) => (await fetch(`${build}/page.css`)).status, copy.build);
    expect(styles).toBe(200);
    const before = await sheet.total('BackPressure').innerText();
    await sheet.pull('corner:p4', 0, 30);
    await sheet.letGo();
    await expect(sheet.total('BackPressure')).not.toHaveText(before);
    await sheet.banded();
    await sheet.ledgerAtRest();
    const drawn = await sheet.total('BackPressure').innerText();

    // Beside another page it is refused.
    const other = await context.newPage();
    await open(other, address);
    await takeOver(page).click();
    await expect(word(page)).toContainText('Other Elbowroom pages are open');
    expect(await buildOf(page)).toBe(copy.build);
    await other.close();

    await takeOver(page).click();
    await expect.poll(() => buildOf(page).catch(() => null)).toBe(NEWER);
    await expect(page.locator('#app > .loading')).toHaveCount(0);
    await expect(sheet.total('BackPressure')).toHaveText(drawn, { useInnerText: true });
    await expect(word(page)).toHaveText('Ready offline');
    expect(await page.evaluate(() => caches.keys())).toEqual([NEWER]);
    // Served from a place of its own, which the watch takes for elsewhere.
    const elsewhere = problems.splice(0).filter((problem) => !problem.startsWith(`request elsewhere: ${address}`));
    expect(elsewhere).toEqual([]);
  } finally {
    await close();
    copy.remove();
  }
});

test('it can be installed: the manifest is read, and its icons are there', async ({ page, site, request }) => {
  await open(page, site);
  const session = await page.context().newCDPSession(page);
  const { url, errors, data } = await session.send('Page.getAppManifest');
  expect(url).toBe(`${site}manifest.webmanifest`);
  expect(errors).toEqual([]);
  const manifest = JSON.parse(data);
  expect(manifest.display).toBe('standalone');
  expect(manifest.icons.map(({ sizes }) => sizes)).toEqual(expect.arrayContaining(['192x192', '512x512']));
  for (const { src } of manifest.icons) expect((await request.get(site + src)).status(), src).toBe(200);
});
