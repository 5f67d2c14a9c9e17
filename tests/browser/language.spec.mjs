// The page's own program carries English alone: the words of another language are as large as all of
// the English ones, and belong to the worker that makes sheets in it.

import { test, expect } from './page.mjs';

const ENGLISH = 'Back pressure';
// A word that no Spanish text on dryers goes without.
const ELSEWHERE = ['secadora'];

test("the page's program holds English words and none of another language", async ({ request, site }) => {
  const { build } = await (await request.get(`${site}precache.json`)).json();
  const program = await (await request.get(`${site}${build}/app_bg.wasm`)).body();
  expect(program.includes(ENGLISH)).toBe(true);
  for (const word of ELSEWHERE) expect(program.includes(word), word).toBe(false);
});
