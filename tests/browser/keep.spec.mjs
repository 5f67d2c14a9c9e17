// The open job is kept in the browser and opens with the page; where it cannot be kept, or what
// was kept cannot be read, the page says so and nothing is lost.

import AxeBuilder from '@axe-core/playwright';
import { test, expect, open } from './page.mjs';
import {
  WORD, handedOut, job, jobsStored, planFile, rename, replaceStored, saved, storeAsOnce, stored,
  takeTermination, word,
} from './keep.mjs';
import { Sheet } from './sheet.mjs';

const EXAMPLE = /^Example/;
const notice = (page) => page.locator('.trouble');
const text = async (bytes) => (await bytes).toString();

/** Moves the run's end by an inch and waits until that is on the disk. */
async function editAndWait(page, key = 'ArrowRight') {
  await takeTermination(page);
  await page.keyboard.press(key);
  await saved(page);
}

/** From the next load on, every write that the page asks of the storage is noted. */
const noteWrites = (page) => page.addInitScript(() => {
  // A job and the note of which is open are put in one transaction: that is one write.
  const transactions = new Set();
  globalThis.writes = [];
  const { put } = IDBObjectStore.prototype;
  IDBObjectStore.prototype.put = function note(...given) {
    const { transaction } = this;
    if (!transactions.has(transaction)) globalThis.writes.push({ durability: transaction.durability });
    transactions.add(transaction);
    return put.apply(this, given);
  };
});
const writes = (page) => page.evaluate(() => globalThis.writes);

test.describe('what was done is there after a reload', () => {
  test('edits of many kinds: the very same file and figures', async ({ page, site }) => {
    await open(page, site);
    await takeTermination(page);
    for (const key of ['ArrowRight', 'ArrowRight', 'Shift+ArrowDown']) await page.keyboard.press(key);
    // A bend in the last leg, pulled aside.
    for (const key of ['p', 'b', 'ArrowDown']) await page.keyboard.press(key);
    await page.locator('tr[data-element="leg:p2"] button').click();
    await page.getByLabel('Leg length, corner to corner').fill('2\' 7 3/16"');
    await page.getByLabel('Leg length, corner to corner').press('Enter');
    await page.getByLabel(/^Altitude/).fill('5280 ft');
    await page.getByLabel(/^Altitude/).press('Enter');
    await page.getByLabel(/^Exhaust temperature/).fill('131.7');
    await page.getByLabel(/^Exhaust temperature/).press('Enter');
    await page.getByRole('button', { name: 'Undo' }).click();
    await saved(page);
    const before = { file: await text(planFile(page)), figures: await new Sheet(page).figures() };
    expect((await stored(page)).text).toBe(before.file);

    await page.reload();
    await expect(word(page)).toHaveText(WORD.saved);
    expect({ file: await text(planFile(page)), figures: await new Sheet(page).figures() }).toEqual(before);
  });

  test('another plan, without the example showing first', async ({ page, site }) => {
    await open(page, site);
    await takeTermination(page);
    await page.keyboard.press('ArrowDown');
    const plan = JSON.parse(await text(planFile(page)));
    plan.title = 'Cellar, <b>bold</b>';
    plan.note = 'Opened from a file.';
    await new Sheet(page).choose(JSON.stringify(plan));
    await expect(job(page)).toHaveText(plan.title);
    await saved(page);
    const before = { file: await text(planFile(page)), figures: await new Sheet(page).figures() };

    // Every title that stands in the page at any time from its first line on.
    await page.addInitScript(() => {
      globalThis.titles = new Set();
      new MutationObserver(() => {
        const shown = document.querySelector('.head-job')?.textContent;
        if (shown !== undefined) globalThis.titles.add(shown);
        // What stands there for a first visit is hidden by a class that is there before it.
        const isHidden = document.documentElement.classList.contains('kept');
        if (document.querySelector('.first-sight') && !isHidden) globalThis.titles.add('the first sight');
      }).observe(document, { childList: true, subtree: true, characterData: true });
    });
    await page.reload();
    await expect(job(page)).toHaveText(plan.title);
    expect({ file: await text(planFile(page)), figures: await new Sheet(page).figures() }).toEqual(before);
    expect(await page.evaluate(() => [...globalThis.titles])).toEqual([plan.title]);
  });

  test('the blank plan, and undo back to the job before it', async ({ page, site }) => {
    await open(page, site);
    await editAndWait(page);
    const edited = await text(planFile(page));
    await page.getByRole('button', { name: 'Start blank' }).click();
    await expect(word(page)).toHaveText(WORD.untouched);
    await rename(page, 'Second job');
    await saved(page);
    await page.reload();
    await expect(job(page)).toHaveText('Second job');

    await new Sheet(page).choose(edited);
    await expect(job(page)).toHaveText(JSON.parse(edited).title);
    await page.getByRole('button', { name: 'Start blank' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await saved(page);
    await page.reload();
    await saved(page);
    expect(await text(planFile(page))).toBe(edited);
  });

  test('the one job that the first version of the page kept', async ({ page, site }) => {
    await open(page, site);
    await editAndWait(page);
    const edited = await text(planFile(page));
    await storeAsOnce(page, { text: edited, stored_at_ms: 1 });
    await page.reload();
    await saved(page);
    expect(await text(planFile(page))).toBe(edited);
    expect(await jobsStored(page)).toBe(1);
  });
});

test.describe('what is stored, and when', () => {
  test('the example that nobody touched is no job, and does not take the place of one', async ({ page, site }) => {
    await open(page, site);
    await expect(word(page)).toHaveText(WORD.untouched);
    expect(await stored(page)).toBeUndefined();
    await editAndWait(page);
    const edited = await text(planFile(page));
    await page.getByRole('button', { name: 'Start blank' }).click();
    await new Sheet(page).choose(edited);
    await saved(page);
    await page.getByRole('button', { name: 'Example' }).click();
    await expect(word(page)).toHaveText(WORD.untouched);
    expect((await stored(page)).text).toBe(edited);
    await page.reload();
    await saved(page);
    expect(await text(planFile(page))).toBe(edited);
  });

  test('a drag is stored when it ends and not before, and strictly', async ({ page, site }) => {
    await noteWrites(page);
    await open(page, site);
    const corner = await page.locator('[data-mark="corner:p3"]').boundingBox();
    const from = { x: corner.x + corner.width / 2, y: corner.y + corner.height / 2 };
    const ledger = () => new Sheet(page).ledgerText();
    const before = await ledger();
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 10, from.y + 80, { steps: 8 });
    await expect.poll(ledger).not.toBe(before);
    expect(await writes(page)).toEqual([]);
    await page.mouse.up();
    await saved(page);
    expect(await writes(page)).toEqual([{ durability: 'strict' }]);
    expect((await stored(page)).text).toBe(await text(planFile(page)));
  });

  test('a time stamp is stored with the plan', async ({ page, site }) => {
    await open(page, site);
    const before = Date.now();
    await editAndWait(page);
    const { stored_at_ms: storedAt } = await stored(page);
    expect(storedAt).toBeGreaterThanOrEqual(before);
    expect(storedAt).toBeLessThanOrEqual(Date.now());
  });

  test('the loader is told of each saved plan, and of the one that the page opened with', async ({ page, site }) => {
    await page.addInitScript(() => {
      globalThis.told = [];
      addEventListener('elbowroom-kept', ({ detail }) => globalThis.told.push(detail));
    });
    await open(page, site);
    expect(await page.evaluate(() => globalThis.told)).toEqual([]);
    await editAndWait(page);
    const kept = { name: 'example-laundry-with-a-chimney-breast.json', text: await text(planFile(page)) };
    expect(await page.evaluate(() => globalThis.told)).toEqual([kept]);
    await page.reload();
    await saved(page);
    expect(await page.evaluate(() => globalThis.told)).toEqual([kept]);
  });
});

test.describe('what is stored cannot be read', () => {
  const broken = {
    'half a plan': { value: { text: '{"format":"elbowroom-plan","version":1,', stored_at_ms: 1 }, says: 'not complete JSON' },
    'a plan of a later version': { value: { text: '{"format":"elbowroom-plan","version":99}', stored_at_ms: 1 }, says: 'version is 99' },
    'no text at all': { value: { plan: ['not', 'ours'] }, says: 'not what this page stores', text: '{"plan":["not","ours"]}' },
  };
  for (const [name, { value, says, text: expected = value.text }] of Object.entries(broken)) {
    test(`${name}: it stays, the example opens, and it can be had as a file`, async ({ page, site }) => {
      await open(page, site);
      await replaceStored(page, value);
      await page.reload();
      await expect(job(page)).toHaveText(EXAMPLE);
      await expect(word(page)).toHaveText(WORD.notKept);
      await expect(notice(page)).toContainText('could not be read');
      await expect(notice(page)).toContainText(says);
      const download = () => page.getByRole('button', { name: 'Download what is stored' }).click();
      expect(await text(handedOut(page, download))).toBe(expected);

      // An edit does not take its place either, until that is asked for.
      await takeTermination(page);
      await page.keyboard.press('ArrowRight');
      await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
      await expect(word(page)).toHaveText(WORD.notKept);
      await expect(notice(page)).toContainText('could not be read');
      expect(await stored(page)).toEqual(value);

      await page.getByRole('button', { name: 'Keep this plan instead' }).click();
      await saved(page);
      await expect(notice(page)).toHaveCount(0);
      const edited = await text(planFile(page));
      expect((await stored(page)).text).toBe(edited);
      await page.reload();
      await saved(page);
      expect(await text(planFile(page))).toBe(edited);
    });
  }
});

for (const colorScheme of ['light', 'dark']) {
  test.describe(`${colorScheme}, 360 px`, () => {
    test.use({ colorScheme, viewport: { width: 360, height: 780 } });

    test('what is said where nothing is kept fits and has no violation of accessibility', async ({ page, site }) => {
      await open(page, site);
      await replaceStored(page, 'no record');
      await page.reload();
      await expect(notice(page).getByRole('button')).toHaveCount(3);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBeLessThanOrEqual(0);
      const axe = new AxeBuilder({ page }).options({ rules: { 'target-size': { enabled: true } } });
      const { violations } = await axe.analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
    });
  });
}

test.describe('a storage that does not keep', () => {
  /** The page says why, and the file that it offers is the open plan's. */
  async function saysNotKept(page, why) {
    await expect(word(page)).toHaveText(WORD.notKept);
    // Heard as well as seen.
    await expect(page.getByRole('status').filter({ hasText: /^Changes are not kept$/ })).toHaveCount(1);
    await expect(notice(page)).toContainText(why);
    const offered = await text(handedOut(page, () => notice(page).getByRole('button', { name: 'Save file' }).click()));
    expect(offered).toBe(await text(planFile(page)));
  }

  const refusals = {
    'throws': () => {
      IDBFactory.prototype.open = () => { throw new DOMException('provoked', 'SecurityError'); };
    },
    'reports an error': () => {
      IDBFactory.prototype.open = () => {
        const request = Object.create(IDBOpenDBRequest.prototype, {
          error: { value: new DOMException('provoked', 'InvalidStateError') },
          onerror: { set: (listener) => queueMicrotask(() => listener({ target: request })) },
          onsuccess: { set: () => {} },
          onupgradeneeded: { set: () => {} },
        });
        return request;
      };
    },
    'is not there': () => {
      Object.defineProperty(globalThis, 'indexedDB', { value: undefined });
    },
  };
  for (const [how, script] of Object.entries(refusals)) {
    test(`refused (${how}): the page works, and says that nothing is kept`, async ({ page, site }) => {
      await page.addInitScript(script);
      await open(page, site);
      await expect(job(page)).toHaveText(EXAMPLE);
      await saysNotKept(page, 'lets the page store nothing');
      await takeTermination(page);
      await page.keyboard.press('ArrowRight');
      await expect(page.getByRole('button', { name: 'Undo' })).toBeEnabled();
      await saysNotKept(page, 'lets the page store nothing');
    });
  }

  test('full: the page says so, and the next change tries again', async ({ page, site }) => {
    const devtools = await page.context().newCDPSession(page);
    const { origin } = new URL(site);
    // Before anything is stored: for a while the browser goes by the room that it found last.
    await devtools.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await open(page, site);
    await takeTermination(page);
    await page.keyboard.press('ArrowRight');
    await saysNotKept(page, 'is full');
    expect(await stored(page)).toBeUndefined();
    await devtools.send('Storage.overrideQuotaForOrigin', { origin });
    await takeTermination(page);
    await page.keyboard.press('ArrowRight');
    await saved(page);
    await expect(notice(page)).toHaveCount(0);
    expect((await stored(page)).text).toBe(await text(planFile(page)));
  });

  test('silent: the page opens all the same, and says so', async ({ page, site }) => {
    await page.clock.install();
    await page.addInitScript(() => {
      const never = { onerror: null, onsuccess: null, onupgradeneeded: null };
      IDBFactory.prototype.open = () => Object.assign(Object.create(IDBOpenDBRequest.prototype, {
        onerror: { writable: true }, onsuccess: { writable: true }, onupgradeneeded: { writable: true },
      }), never);
    });
    await page.goto(site);
    await expect.poll(async () => {
      await page.clock.runFor(1000);
      return page.locator('#app > .loading').count();
    }).toBe(0);
    await expect(job(page)).toHaveText(EXAMPLE);
    await saysNotKept(page, 'does not answer');
  });

  test('emptied under the open page: the next change is stored anew', async ({ page, site }) => {
    await open(page, site);
    await editAndWait(page);
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Storage.clearDataForOrigin', { origin: new URL(site).origin, storageTypes: 'indexeddb' });
    await page.keyboard.press('ArrowRight');
    await saved(page);
    await expect.poll(async () => (await stored(page))?.text).toBe(await text(planFile(page)));
  });
});

test.describe('two tabs on one job', () => {
  /** Both tabs have the job open; the second has stored a change that the first does not have. */
  async function conflict(context, page, site) {
    await open(page, site);
    await editAndWait(page);
    const other = await context.newPage();
    await open(other, site);
    await editAndWait(other, 'ArrowDown');
    return other;
  }

  test('never write over one another without being told to', async ({ context, page, site }) => {
    const other = await conflict(context, page, site);
    const theirs = await stored(page);

    // Noticed before anything is done here.
    await expect(word(page)).toHaveText(WORD.notKept);
    await page.keyboard.press('ArrowRight');
    await expect(notice(page)).toContainText('another tab');
    await expect(word(page)).toHaveText(WORD.notKept);
    expect(await stored(page)).toEqual(theirs);

    await page.getByRole('button', { name: 'Keep this plan instead' }).click();
    await saved(page);
    const ours = await stored(page);
    expect(ours.text).toBe(await text(planFile(page)));
    await other.keyboard.press('ArrowDown');
    await expect(word(other)).toHaveText(WORD.notKept);
    expect(await stored(page)).toEqual(ours);
  });

  test('may both be kept, each as a job of its own', async ({ context, page, site }) => {
    const other = await conflict(context, page, site);
    await notice(page).getByRole('button', { name: 'Keep mine as another job' }).press('Enter');
    await saved(page);
    // The button that had the focus went with the notice.
    await expect(page.locator('.drawing .canvas')).toBeFocused();
    expect(await jobsStored(page)).toBe(2);
    expect((await stored(page)).text).toBe(await text(planFile(page)));
    await other.keyboard.press('ArrowDown');
    await saved(other);
    expect(await jobsStored(page)).toBe(2);
  });

  test('the other one may be opened, and undo brings back what was here', async ({ context, page, site }) => {
    const other = await conflict(context, page, site);
    const [mine, theirs] = [await text(planFile(page)), await text(planFile(other))];
    await notice(page).getByRole('button', { name: 'Open the other one' }).click();
    await saved(page);
    expect(await text(planFile(page))).toBe(theirs);
    await page.getByRole('button', { name: 'Undo' }).click();
    expect(await text(planFile(page))).toBe(mine);
  });
});

test('a real panic shows the calm page with the plan as last saved, and a reload goes on from it', async ({ page, site, problems }) => {
  await open(page, site);
  await editAndWait(page);
  const kept = await text(planFile(page));
  // The program takes it for granted that the browser can copy an element; where it cannot, that
  // is a panic in Rust.
  await page.evaluate(() => {
    Node.prototype.cloneNode = () => { throw new Error('provoked'); };
  });
  await page.locator('tr[data-element="leg:p2"] button').click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Elbowroom had to stop');
  const report = page.getByRole('link', { name: 'Download a report of the fault' });
  const reported = await text(handedOut(page, () => report.click()));
  expect(reported).toContain('panicked at');
  expect(reported).toMatch(/\d\.\d s {2}\w+\n$/);
  expect(reported).not.toContain('Example');
  await page.getByText('What the page reported').click();
  await expect(page.locator('pre')).toContainText(/panicked at .*\.rs/);
  const link = page.getByRole('link', { name: 'Download example-laundry-with-a-chimney-breast.json' });
  expect(await text(handedOut(page, () => link.click()))).toBe(kept);
  expect(problems.splice(0).join('\n')).toContain('unreachable');

  await page.getByRole('button', { name: 'Reload the page' }).click();
  await saved(page);
  expect(await text(planFile(page))).toBe(kept);
});
