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

/** What is stored, once the page has made its store. */
export const stored = (page) => inStorage(page, 'readonly', 'get');

/** Puts anything in the place of the stored job. */
export const replaceStored = (page, value) => inStorage(page, 'readwrite', 'put', value);

function inStorage(page, mode, act, value) {
  return page.evaluate(
    ({ storage, mode, act, value }) =>
      new Promise((resolve, reject) => {
        const opening = indexedDB.open(storage.database);
        opening.onerror = () => reject(opening.error);
        opening.onsuccess = () => {
          const database = opening.result;
          const transaction = database.transaction(storage.store, mode);
          const store = transaction.objectStore(storage.store);
          const request = act === 'put' ? store.put(value, storage.key) : store.get(storage.key);
          transaction.onabort = () => reject(transaction.error);
          transaction.oncomplete = () => {
            database.close();
            resolve(request.result);
          };
        };
      }),
    { storage: STORAGE, mode, act, value },
  );
}
