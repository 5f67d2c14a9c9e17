// What every browser test starts from: the built page, served below a path, and a watch
// that fails the test on anything a visitor's console or network should never show.

import { test as base, expect } from '@playwright/test';
import { serve } from '../build/serve.mjs';

export { expect };

export const test = base.extend({
  // One server for each runner process, on a free port.
  site: [
    async ({}, use) => {
      const { address, close } = await serve({ base: '/somewhere/below/' });
      await use(address);
      await close();
    },
    { scope: 'worker' },
  ],

  // What went wrong so far, as text. A test that provokes a problem takes it out:
  // expect(problems.splice(0)).toEqual([...]).
  problems: async ({}, use) => {
    const problems = [];
    await use(problems);
    expect(problems, 'console errors, page errors, policy violations and requests elsewhere').toEqual([]);
  },

  context: async ({ context, site, problems }, use) => {
    const { origin } = new URL(site);
    context.on('console', (message) => {
      if (message.type() === 'error') problems.push(`console error: ${message.text()}`);
    });
    context.on('weberror', (webError) => problems.push(`page error: ${webError.error().message}`));
    context.on('request', (request) => {
      const address = new URL(request.url());
      if (['http:', 'https:', 'ws:', 'wss:'].includes(address.protocol) && address.origin !== origin) {
        problems.push(`request elsewhere: ${request.url()}`);
      }
    });
    await context.exposeFunction('reportViolation', (text) => problems.push(`policy violation: ${text}`));
    await context.addInitScript(() => {
      addEventListener('securitypolicyviolation', (event) => {
        globalThis.reportViolation(`${event.effectiveDirective} ${event.blockedURI}`);
      });
    });
    await use(context);
  },
});

/** Opens the page and waits until all of it stands. */
export async function open(page, site) {
  await page.goto(site);
  await expect(page.locator('#app > .loading')).toHaveCount(0);
  await expect(page.locator('#app[aria-busy]')).toHaveCount(0);
}
