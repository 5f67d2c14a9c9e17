// Takes the README's pictures of the built page: the example as it opens, on a phone, a laptop
// and a projector, light and dark. Run by `make pictures`.

import { chromium } from '@playwright/test';
import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import config from '../browser/playwright.config.mjs';
import { serve } from './serve.mjs';

const folder = fileURLToPath(new URL('../pictures/', import.meta.url));
const SIZES = [[360, 780], [1280, 800], [2560, 1440]];

mkdirSync(folder, { recursive: true });
const { address, close } = await serve({ base: '/somewhere/below/' });
const browser = await chromium.launch(config.use.launchOptions);
try {
  for (const [width, height] of SIZES) {
    for (const colorScheme of ['light', 'dark']) {
      const touch = width < 700;
      const page = await browser.newPage({ viewport: { width, height }, colorScheme, hasTouch: touch, isMobile: touch });
      await page.goto(address);
      // The bands are the last to come.
      await page.waitForFunction(() => document.querySelector('[data-total=Velocity] .total-band')?.textContent.includes(' to '));
      await page.screenshot({ path: `${folder}${width}-${colorScheme}.png` });
      await page.close();
    }
  }
} finally {
  await browser.close();
  await close();
}
