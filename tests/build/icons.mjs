// Draws the icons of the installed page from public/icon.svg: `node tests/build/icons.mjs`.

import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { fileURLToPath } from 'node:url';

const require = createRequire(import.meta.url);
const { chromium } = require('@playwright/test');
const folder = fileURLToPath(new URL('../../public/', import.meta.url));
const drawing = readFileSync(`${folder}icon.svg`, 'utf8');

// A maskable icon is cut to a circle or the like by the system: its drawing keeps to the middle.
const ICONS = [
  { name: 'icon-192.png', size: 192, share: 0.86, radius: 0.18 },
  { name: 'icon-512.png', size: 512, share: 0.86, radius: 0.18 },
  { name: 'icon-maskable-512.png', size: 512, share: 0.58, radius: 0 },
];

const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
for (const { name, size, share, radius } of ICONS) {
  const page = await browser.newPage({ viewport: { width: size, height: size }, colorScheme: 'light' });
  await page.setContent(`<style>
    html, body { margin: 0; background: transparent }
    div { width: ${size}px; height: ${size}px; border-radius: ${radius * size}px; background: #ffffff; display: grid; place-items: center }
    svg { width: ${share * size}px }
  </style><div>${drawing}</div>`);
  writeFileSync(`${folder}${name}`, await page.screenshot({ omitBackground: true }));
  await page.close();
}
await browser.close();
