// How the specs of keeping see the page: the word in its head, the file that it hands out, and
// what really stands in the browser's storage, read without the program.

import { readFile } from 'node:fs/promises';
import { expect } from './page.mjs';

// Names agreed on with the program; the words are those of report/words/en/fixed.rs.
const STORAGE = { database: 'elbowroom', store: 'job', key: 'open' };
export const WORD = {
  untouched: 'Kept in this browser once you change it',
  saved: 'Saved in this browser',
  notKept: 'Changes are not kept',
};

export const word = (page) => page.getByTestId('keep-word');
export const saved = (page) => expect(word(page)).toHaveText(WORD.saved);
export const job = (page) => page.locator('.head-job');

/** The bytes of the file that a button or link hands out. */
export async function handedOut(page, press) {
  const downloading = page.waitForEvent('download');
  await press();
  return readFile(await (await downloading).path());
}

/** The bytes of the open plan's file. The head's button: a notice may offer one too. */
export const planFile = (page) =>
  handedOut(page, () => page.locator('.head').getByRole('button', { name: 'Save file' }).click());

/** Selects the run's end by keyboard; from then on arrow keys move it by an inch. */
export async function takeTermination(page) {
  await page.locator('.canvas').focus();
  await page.keyboard.press('Escape');
  await page.keyboard.press('p');
}

/** Opens the list of jobs. */
export async function openJobs(page) {
  const button = page.getByRole('button', { name: 'Jobs', exact: true });
  const more = page.locator('.head-more');
  if (await more.isVisible() && await more.getAttribute('aria-expanded') === 'false') await more.click();
  await button.click();
  const dialog = page.getByRole('dialog', { name: 'Jobs' });
  await expect(dialog).toBeVisible();
  return dialog;
}

/** Gives the open job a name. */
export async function rename(page, name) {
  const dialog = await openJobs(page);
  const field = dialog.getByLabel('Name of the open job');
  await field.fill(name);
  await field.press('Enter');
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
}

/** What is stored of the job that was open last, once the page has made its store. */
export const stored = (page) => inStorage(page, 'readonly', async (store, { open }) => {
  const key = await store.get(open);
  return typeof key === 'string' ? store.get(key) : key;
});

/** Puts anything in the place of the stored job. */
export const replaceStored = (page, value) => inStorage(page, 'readwrite', async (store, { open }, value) => {
  const known = await store.get(open);
  const key = typeof known === 'string' ? known : 'a-job';
  await store.put(value, key);
  await store.put(key, open);
}, value);

/** Leaves nothing but a record where the first version of the page kept its one job. */
export const storeAsOnce = (page, value) => inStorage(page, 'readwrite', async (store, { open }, value) => {
  await store.clear();
  await store.put(value, open);
}, value);

/** How many jobs are stored. */
export const jobsStored = (page) => inStorage(page, 'readonly', async (store, { open }) => {
  const keys = await store.getAllKeys();
  return keys.filter((key) => key !== open).length;
});

function inStorage(page, mode, act, value) {
  // The page's policy lets no text be run as code, so the act goes inside the evaluated text itself.
  const argument = JSON.stringify({ storage: STORAGE, mode, value: value ?? null });
  return page.evaluate(`(${run})(${argument}, ${act})`);
}

function run({ storage, mode, value }, act) {
  return new Promise((resolve, reject) => {
    const opening = indexedDB.open(storage.database);
    opening.onerror = () => reject(opening.error);
    opening.onsuccess = () => {
      const database = opening.result;
      const transaction = database.transaction(storage.store, mode);
      const raw = transaction.objectStore(storage.store);
      const answered = (request) => new Promise((answer, refuse) => {
        request.onsuccess = () => answer(request.result);
        request.onerror = () => refuse(request.error);
      });
      const done = act({
        get: (key) => answered(raw.get(key)),
        put: (what, key) => answered(raw.put(what, key)),
        clear: () => answered(raw.clear()),
        getAllKeys: () => answered(raw.getAllKeys()),
      }, { open: storage.key }, value);
      transaction.onabort = () => reject(transaction.error);
      transaction.oncomplete = () => {
        database.close();
        resolve(done);
      };
    };
  });
}
