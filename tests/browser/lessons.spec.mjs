// Lessons: a question about the second run, guesses before its figures, and files that a trainer makes.

import { readFile } from 'node:fs/promises';
import { test, expect, open } from './page.mjs';
import { WORD, handedOut, job, jobsStored, word } from './keep.mjs';

const OWN = ['One elbow more', 'Sharp or long radius', 'Flexible duct pushed together', 'The same code length', 'Hot air and cold air', 'A flap that sticks'];
const FILES = ['one-elbow-more', 'sharp-or-long-radius', 'flex-pushed-together', 'same-code-length', 'hot-and-cold', 'blocked-flap'];
const fileOf = (name) => readFile(new URL(`../../public/lessons/${name}.json`, import.meta.url));

async function begin(page, site) {
  await open(page, site);
  await page.getByRole('button', { name: 'Side by side', exact: true }).click();
}
const unfold = (page, name) => page.getByText(name, { exact: true }).click();
const cells = (page, name) => page.locator(`.side-table [data-side="${name}"] td`);
const field = (page) => page.locator('#side-guess');

test.setTimeout(90_000);

test('each lesson of the page opens with its question and hidden figures, and answers once they are shown', async ({ page, site }) => {
  await begin(page, site);
  for (const [index, name] of OWN.entries()) {
    const lesson = JSON.parse(await fileOf(FILES[index]));
    await unfold(page, 'A lesson');
    await page.getByRole('button', { name, exact: true }).click();
    await expect(page.locator('.side-question')).toHaveText(lesson.question);
    await expect(job(page)).toHaveText(lesson.second.title);
    await expect(word(page)).toHaveText(WORD.untouched);
    await expect(cells(page, 'BackPressure').nth(1)).toHaveText('hidden');
    // No figure of the second run is to be seen or read anywhere on the page.
    await expect(page.locator('.totals, .ledger, .pressure, .heat, .panel.code, .dominant').filter({ visible: true })).toHaveCount(0);
    await expect(page.locator('.canvas :is(.rank, .core)').filter({ visible: true })).toHaveCount(0);
    await expect(page.locator('.side-answer')).toHaveCount(0);
    await expect(page.getByRole('button', { name: 'Show the figures' })).toBeDisabled();
    await field(page).fill('20');
    await field(page).press('Enter');
    await page.getByRole('button', { name: 'Show the figures' }).click();
    await expect(page.locator('.side-answer')).toHaveText(lesson.answer);
    await expect(page.locator('.side-spread')).toContainText('One guess, from');
    await expect(cells(page, 'BackPressure').nth(1)).not.toHaveText('hidden');
  }
  expect(await jobsStored(page)).toBe(0);
});

test('several guesses spread about the figure, and one that is no number is not taken', async ({ page, site }) => {
  await begin(page, site);
  await page.getByRole('button', { name: 'Guess first' }).click();
  for (const guess of ['90', '140', 'many', '100', '1,2,3', '110']) {
    await field(page).fill(guess);
    await field(page).press('Enter');
    if (!/^\d+$/.test(guess)) await expect(page.locator('#side-guess-wrong')).toContainText('was not understood as a number');
  }
  await expect(page.locator('.side-guesses li')).toHaveText([/^90 cfm/, /^140 cfm/, /^100 cfm/, /^110 cfm/]);
  // What is done meanwhile reads no figure aloud.
  const spoken = page.locator('#app > p[role=status]');
  await page.locator('.canvas').focus();
  await page.keyboard.press('Escape');
  await page.keyboard.press('p');
  await page.keyboard.press('ArrowRight');
  await expect(spoken).toContainText('hidden until a guess is in');
  await page.getByRole('button', { name: 'Show the figures' }).click();
  const airflow = await cells(page, 'Airflow').nth(1).textContent();
  await expect(page.locator('.side-spread')).toContainText('4 guesses, from 90 cfm to 140 cfm, the middle one 105 cfm');
  await expect(page.locator('.side-spread')).toContainText(`the figure is ${airflow}: 3 below it, 1 above it.`);
  await page.getByText('m, Pa, L/s').click();
  await expect(page.locator('.side-spread')).toContainText('from 42.5 L/s to 66.1 L/s, the middle one 49.6 L/s');
  await page.getByRole('button', { name: 'Hide them and guess again' }).click();
  await expect(cells(page, 'Airflow').nth(1)).toHaveText('hidden');
  await page.getByRole('button', { name: 'Guess first' }).click();
  await expect(cells(page, 'Airflow').nth(1)).not.toHaveText('hidden');
});

test('a trainer makes a lesson of two runs, and it opens as it was made, hostile texts and all', async ({ page, site }) => {
  await begin(page, site);
  await page.locator('.canvas').focus();
  await page.keyboard.press('p');
  await page.keyboard.press('ArrowRight');
  await unfold(page, 'Make a lesson of these two');
  const save = page.getByRole('button', { name: 'Save the lesson as a file' });
  await save.click();
  await expect(page.locator('.side-sources [role=alert]')).toContainText('The lesson\'s name has 0 letters');
  const hostile = '<script>alert(1)</script> "=cmd" \u202e';
  await page.getByLabel('Name of the lesson').fill(hostile);
  await page.getByLabel('Question', { exact: true }).fill(`What now? ${hostile}`);
  await page.getByLabel('Answer', { exact: true }).fill(hostile);
  const file = await handedOut(page, () => save.click());
  const lesson = JSON.parse(file);
  expect([lesson.format, lesson.version, lesson.title, lesson.asks]).toEqual(['elbowroom-lesson', 1, hostile, 'airflow']);
  expect(lesson.first.title).toContain('(copy)');

  await page.reload();
  await begin(page, site);
  await unfold(page, 'A lesson');
  const choose = (buffer) => page.locator('#lesson-file').setInputFiles({ name: 'lesson.json', mimeType: 'application/json', buffer });
  for (const [buffer, words] of [
    [Buffer.from('{"format":"elbowroom-plan"}'), 'does not say that it is a lesson'],
    [Buffer.from('no lesson'), 'not complete JSON'],
    [Buffer.from(JSON.stringify({ ...lesson, second: { ...lesson.second, version: 9 } })), 'second run: The file\'s version is 9'],
  ]) {
    await choose(buffer);
    await expect(page.locator('.side-said')).toContainText(words);
    await expect(page.locator('.side-said')).toContainText('The open plan is as it was.');
    await expect(page.locator('.side-question')).toHaveCount(0);
  }
  await choose(file);
  await expect(page.locator('.side-question')).toHaveText(`What now? ${hostile}`);
  await expect(page.locator('.side-lesson h3')).toHaveText(hostile);
  await expect(page.locator('.side-said')).toBeEmpty();
  await field(page).fill('1');
  await field(page).press('Enter');
  await page.getByRole('button', { name: 'Show the figures' }).click();
  await expect(page.locator('.side-answer')).toHaveText(hostile);
});

test('without a network a lesson that is not there says so', async ({ page, context, site, problems }) => {
  await begin(page, site);
  await unfold(page, 'A lesson');
  await context.route('**/lessons/*.json', (route) => route.fulfill({ status: 503, body: '' }));
  await page.getByRole('button', { name: 'One elbow more' }).click();
  await expect(page.locator('.side-said')).toContainText('could not be fetched');
  await expect(job(page)).not.toHaveText('One elbow more');
  expect(problems.splice(0)).toEqual([expect.stringContaining('503')]);
});
