import { existsSync } from 'node:fs';
import path from 'node:path';
import { defineConfig } from '@playwright/test';

// Debian's Chromium (the set-up installs it), never a browser that Playwright brings.
const NAMES = ['chromium', 'chromium-browser', 'google-chrome'];
const chromium = process.env.PATH.split(path.delimiter)
  .flatMap((folder) => NAMES.map((name) => path.join(folder, name)))
  .find((file) => existsSync(file));
if (!chromium) throw new Error('No Chromium found on PATH: run `make setup`.');

export default defineConfig({
  testDir: '.',
  outputDir: '../results/browser',
  fullyParallel: true,
  workers: 2,
  // A test that passes only the second time has failed.
  retries: 0,
  forbidOnly: Boolean(process.env.CI),
  reporter: [['list'], ['json', { outputFile: '../results/browser.json' }]],
  use: {
    headless: true,
    // What they do is tested by itself; elsewhere each test starts from the built files.
    serviceWorkers: 'block',
    viewport: { width: 1280, height: 800 },
    launchOptions: {
      executablePath: chromium,
      args: [
        '--no-sandbox',
        '--disable-gpu',
        '--disable-background-networking',
        '--disable-component-update',
        '--disable-sync',
      ],
    },
  },
});
