// Firefox and WebKitGTK through their own WebDriver programs, as Debian and the set-up put them on PATH.
// WebKitGTK needs a screen; Xvfb is one that nobody sees.

import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { Builder } from 'selenium-webdriver';

const MINI_BROWSER = '/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser';
const DISPLAY = ':97';

/** Each browser: its driver's program and arguments, and what is asked of it. `downloads` is a folder. */
const BROWSERS = {
  Firefox: {
    driver: (port) => ['geckodriver', [`--port=${port}`]],
    wants: (downloads) => ({
      browserName: 'firefox',
      'moz:firefoxOptions': {
        binary: '/usr/bin/firefox-esr',
        args: ['-headless'],
        prefs: {
          'browser.download.folderList': 2,
          'browser.download.dir': downloads,
          // Nothing is asked of the outside.
          'app.normandy.enabled': false,
          'datareporting.policy.dataSubmissionEnabled': false,
          'network.captive-portal-service.enabled': false,
          'network.connectivity-service.enabled': false,
        },
      },
    }),
  },
  WebKitGTK: {
    driver: (port) => ['WebKitWebDriver', [`--port=${port}`]],
    wants: () => ({
      browserName: 'MiniBrowser',
      'webkitgtk:browserOptions': { binary: MINI_BROWSER, args: ['--automation'] },
    }),
    screen: true,
  },
};

export const NAMES = Object.keys(BROWSERS);

/** Opens the browser, hands it to `use`, and closes everything that was opened. */
export async function withBrowser(name, use) {
  const { driver, wants, screen } = BROWSERS[name];
  const folder = mkdtempSync(path.join(tmpdir(), 'other-browser-'));
  const running = [];
  const start = (program, args) => {
    const child = spawn(program, args, { env: { ...process.env, DISPLAY, HOME: folder, WEBKIT_DISABLE_COMPOSITING_MODE: '1' }, stdio: 'ignore' });
    running.push(child);
    return new Promise((resolve, reject) => {
      child.once('spawn', resolve);
      child.once('error', reject);
    });
  };
  let browser;
  try {
    if (screen) await start('Xvfb', [DISPLAY, '-screen', '0', '1280x900x24', '-nolisten', 'tcp']);
    const port = await freePort();
    await start(...driver(port));
    const address = `http://127.0.0.1:${port}`;
    await answering(address);
    browser = await new Builder().usingServer(address).withCapabilities(wants(folder)).build();
    await use(browser, folder);
  } finally {
    await browser?.quit().catch(() => {});
    for (const child of running) child.kill('SIGKILL');
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

const freePort = () => new Promise((resolve) => {
  const server = createServer();
  server.listen(0, '127.0.0.1', () => {
    const { port } = server.address();
    server.close(() => resolve(port));
  });
});

/** Waits until the driver answers, for it takes a moment to listen. */
async function answering(address, tries = 200) {
  for (let left = tries; ; left -= 1) {
    const up = await fetch(`${address}/status`).then((response) => response.ok, () => false);
    if (up) return;
    if (left === 0) throw new Error(`The driver at ${address} does not answer.`);
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}
