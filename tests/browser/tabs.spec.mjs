// Two tabs that race on one job lose nothing in silence: what is called saved is stored, and the
// other tab says that its plan is not.

import { test, expect, open } from './page.mjs';
import { job, jobsStored, planFile, saved, stored, takeTermination, word, WORD } from './keep.mjs';

const FULL = process.env.ELBOWROOM_FULL === '1';
const SETTLED = new RegExp(`^(${WORD.saved}|${WORD.notKept})$`);

/** The same chances in each run. */
function chances(seed) {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

test(`${FULL ? 50 : 4} races`, async ({ context, page, site }) => {
  test.setTimeout(FULL ? 1_800_000 : 120_000);
  const chance = chances(2);
  await open(page, site);
  await takeTermination(page);
  await page.keyboard.press('ArrowRight');
  await saved(page);
  let jobs = 1;
  for (let race = 0; race < (FULL ? 50 : 4); race += 1) {
    const other = await context.newPage();
    await page.reload();
    await open(other, site);
    const keys = [[page, ['ArrowRight', 'ArrowLeft']], [other, ['ArrowUp', 'ArrowDown']]];
    await Promise.all(keys.map(async ([tab, [there, back]]) => {
      await takeTermination(tab);
      const presses = 1 + Math.floor(4 * chance());
      for (let press = 0; press < presses; press += 1) await tab.keyboard.press(chance() < 0.7 ? there : back);
    }));
    const tabs = [];
    for (const tab of [page, other]) {
      await expect(word(tab)).toHaveText(SETTLED);
      tabs.push({ tab, saved: await word(tab).textContent() === WORD.saved, text: (await planFile(tab)).toString() });
    }
    const { text } = await stored(page);
    for (const each of tabs.filter((tab) => tab.saved)) expect(each.text, `race ${race}: what is called saved`).toBe(text);
    for (const each of tabs.filter((tab) => !tab.saved)) {
      await each.tab.getByRole('button', { name: 'Keep mine as another job' }).click();
      await saved(each.tab);
      jobs += 1;
      expect(await jobsStored(each.tab)).toBe(jobs);
      expect((await stored(each.tab)).text).toBe(each.text);
    }
    await other.close();
  }
});

test('what another tab has stored opens where it is the same as here, and takes no other job with it', async ({ context, page, site }) => {
  await open(page, site);
  await takeTermination(page);
  await page.keyboard.press('ArrowRight');
  await saved(page);
  const other = await context.newPage();
  await open(other, site);
  await takeTermination(other);
  await other.keyboard.press('ArrowRight');
  await other.keyboard.press('ArrowLeft');
  await saved(other);
  await expect(word(page)).toHaveText(WORD.notKept);
  await page.getByRole('button', { name: 'Open the other one' }).click();
  await saved(page);

  const plan = JSON.parse(await planFile(page));
  plan.title = 'Another job, invented';
  const file = { name: 'plan.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(plan)) };
  await page.locator('#plan-file').setInputFiles(file);
  await expect(job(page)).toHaveText(plan.title);
  await saved(page);
  expect(await jobsStored(page)).toBe(2);
});
