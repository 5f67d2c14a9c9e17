// The jobs that the browser keeps: each is found, opened, named, copied, deleted and put back, and
// all of them go out and in as one file.

import AxeBuilder from '@axe-core/playwright';
import { test, expect, open } from './page.mjs';
import { handedOut, job, jobsStored, openJobs, planFile, rename, saved, stored, takeTermination } from './keep.mjs';

const text = async (bytes) => (await bytes).toString();
const rows = (dialog) => dialog.getByRole('listitem');
const names = (dialog) => rows(dialog).getByRole('textbox').evaluateAll((fields) => fields.map((field) => field.value));

/** Three jobs, of which the last named is open. */
async function threeJobs(page, site) {
  await open(page, site);
  await takeTermination(page);
  await page.keyboard.press('ArrowRight');
  await rename(page, 'Attic run');
  await saved(page);
  for (const name of ['Basement run', 'Closet run']) {
    await page.getByRole('button', { name: 'Start blank' }).click();
    await rename(page, name);
    await saved(page);
  }
}

test('each job opens with what it had, and none takes the place of another', async ({ page, site }) => {
  await threeJobs(page, site);
  expect(await jobsStored(page)).toBe(3);
  let dialog = await openJobs(page);
  await expect(rows(dialog)).toHaveCount(3);
  expect(await names(dialog)).toEqual(['Closet run', 'Basement run', 'Attic run']);
  await expect(rows(dialog).first()).toContainText('open now');
  await expect(rows(dialog).first().getByRole('button', { name: 'Delete' })).toBeDisabled();

  await dialog.getByRole('button', { name: 'Open: Attic run' }).click();
  await expect(dialog).toBeHidden();
  await expect(job(page)).toHaveText('Attic run');
  await saved(page);
  await takeTermination(page);
  await page.keyboard.press('ArrowRight');
  await saved(page);
  await expect.poll(async () => (await stored(page)).text).toBe(await text(planFile(page)));
  expect(await jobsStored(page)).toBe(3);
  await page.reload();
  await expect(job(page)).toHaveText('Attic run');

  dialog = await openJobs(page);
  expect(await names(dialog)).toEqual(['Attic run', 'Closet run', 'Basement run']);
  // The drawing that stands beside it is really one.
  const picture = rows(dialog).first().locator('img');
  await expect.poll(() => picture.evaluate((image) => image.naturalWidth)).toBeGreaterThan(100);
});

test('a job is found by a part of its name, and given another', async ({ page, site }) => {
  await threeJobs(page, site);
  const dialog = await openJobs(page);
  await dialog.getByLabel('Find by name or note').fill('BASE');
  await expect(rows(dialog)).toHaveCount(1);
  const field = rows(dialog).getByRole('textbox');
  await field.fill('Base <b>&amp; "cellar"');
  await field.press('Enter');
  await expect.poll(() => names(dialog)).toEqual(['Base <b>&amp; "cellar"']);
  await dialog.getByLabel('Find by name or note').fill('nowhere');
  await expect(dialog).toContainText('No kept job has that');
  await page.reload();
  expect(await names(await openJobs(page))).toContain('Base <b>&amp; "cellar"');
});

test('a copy is a job of its own, and a deleted job can be put back', async ({ page, site }) => {
  await threeJobs(page, site);
  const dialog = await openJobs(page);
  await dialog.getByRole('button', { name: 'Copy: Attic run' }).click();
  await expect(rows(dialog)).toHaveCount(4);
  expect(await names(dialog)).toContain('Attic run (copy)');
  await dialog.getByRole('button', { name: 'Delete: Attic run', exact: true }).click();
  await expect(rows(dialog)).toHaveCount(3);
  expect(await jobsStored(page)).toBe(3);
  await expect(dialog.getByRole('status')).toContainText('Deleted: Attic run');
  await expect(dialog.getByRole('button', { name: 'Put it back' })).toBeFocused();
  await dialog.getByRole('button', { name: 'Put it back' }).click();
  await expect(rows(dialog)).toHaveCount(4);
  expect(await names(dialog)).toContain('Attic run');
  await expect(dialog.getByRole('button', { name: 'Put it back' })).toHaveCount(0);
});

test('all jobs go out as one file and come in from it, each as a job of its own', async ({ page, site }) => {
  await threeJobs(page, site);
  const dialog = await openJobs(page);
  const save = () => dialog.getByRole('button', { name: 'Save all jobs as one file' }).click();
  const file = await handedOut(page, save);
  const jobs = JSON.parse(file).jobs.map(({ title }) => title);
  expect(jobs).toEqual(['Closet run', 'Basement run', 'Attic run']);

  const choose = (buffer) => page.locator('#shelf-file').setInputFiles({ name: 'jobs.json', mimeType: 'application/json', buffer });
  await choose(file);
  await expect(dialog.getByRole('status')).toHaveText('Jobs added: 3.');
  await expect(rows(dialog)).toHaveCount(6);
  const broken = JSON.parse(file);
  broken.jobs[1] = { format: 'elbowroom-plan', version: 99 };
  await choose(Buffer.from(JSON.stringify(broken)));
  await expect(dialog.getByRole('status')).toHaveText('Jobs added: 2. Not read: 1.');
  await choose(Buffer.from('{"format":"something else"}'));
  await expect(dialog.getByRole('status')).toContainText('does not say that it is a plan');
  await expect(rows(dialog)).toHaveCount(8);
});

for (const colorScheme of ['light', 'dark']) {
  for (const viewport of [{ width: 360, height: 780 }, { width: 1280, height: 800 }]) {
    test.describe(`${colorScheme}, ${viewport.width} px`, () => {
      test.use({ colorScheme, viewport });

      test('the list of jobs fits and has no violation of accessibility', async ({ page, site }) => {
        await open(page, site);
        await takeTermination(page);
        await page.keyboard.press('ArrowRight');
        await saved(page);
        const dialog = await openJobs(page);
        await expect(rows(dialog)).toHaveCount(1);
        expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
        const axe = new AxeBuilder({ page }).include('dialog.shelf').options({ rules: { 'target-size': { enabled: true } } });
        const { violations } = await axe.analyze();
        expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
      });
    });
  }
}

test('a job that another tab has changed meanwhile is not deleted', async ({ context, page, site }) => {
  await threeJobs(page, site);
  const dialog = await openJobs(page);
  await expect(rows(dialog)).toHaveCount(3);
  const other = await context.newPage();
  await open(other, site);
  await (await openJobs(other)).getByRole('button', { name: 'Open: Attic run' }).click();
  await expect(job(other)).toHaveText('Attic run');
  await takeTermination(other);
  await other.keyboard.press('ArrowRight');
  await saved(other);
  await dialog.getByRole('button', { name: 'Delete: Attic run', exact: true }).click();
  await expect(dialog.getByRole('status')).toContainText('Another tab has changed this job meanwhile');
  await expect(rows(dialog)).toHaveCount(3);
  await expect(dialog.getByRole('button', { name: 'Put it back' })).toHaveCount(0);
});
