// The page's own program carries English alone: the words of another language are as large as all of
// the English ones, and belong to the worker that makes sheets in it.

import { test, expect } from './page.mjs';

const ENGLISH = 'Back pressure';
// A word that no Spanish text on dryers goes without.
const ELSEWHERE = ['secadora'];

test("the page's program holds English words and none of another language", async ({ request, site }) => {
  const { files } = await (await request.get(`${site}precache.json`)).json();
  const names = files.map(({ name }) => name).filter((name) => name.endsWith('.wasm') && !name.endsWith('/worker_bg.wasm'));
  // What the first look needs, and the rest.
  expect(names).toHaveLength(2);
  const program = Buffer.concat(await Promise.all(names.map(async (name) => (await request.get(`${site}${name}`)).body())));
  expect(program.includes(ENGLISH)).toBe(true);
  for (const word of ELSEWHERE) expect(program.includes(word), word).toBe(false);
});
