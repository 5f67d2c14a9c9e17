// What a first visit weighs. The bar: all files before first use, compressed with
// brotli, at most 300 KB (taken as 300,000 bytes, the stricter reading).

import { brotliCompressSync } from 'node:zlib';
import { test, expect } from './page.mjs';

test('all files before first use weigh at most 300 KB', async ({ request, site }) => {
  const { files } = await (await request.get(`${site}precache.json`)).json();
  let total = 0;
  for (const { name } of files) {
    // Node's default is brotli's best quality, which a host of files made once can afford.
    total += brotliCompressSync(await (await request.get(site + name)).body()).length;
  }
  expect(total).toBeGreaterThan(0);
  expect(total).toBeLessThanOrEqual(300_000);
});
