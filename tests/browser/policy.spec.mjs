// The content security policy, and that everything the page is built of works under it:
// WebAssembly, the module worker, styles, the icon, the page that shows after a panic.

import { test, expect, open } from './page.mjs';

// As the design demands it, written out again here: not read from the build.
const POLICY = [
  "base-uri 'none'",
  "connect-src 'self'",
  "default-src 'none'",
  "form-action 'none'",
  "img-src 'self' blob: data:",
  "manifest-src 'self'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "style-src 'self'",
  "worker-src 'self'",
];

const PANIC_PAGE = { title: 'Elbowroom had to stop', notStarted: 'Elbowroom could not start' };

// Another origin that still is this machine: the same port under its other name.
function elsewhere(site) {
  const address = new URL(site);
  address.hostname = '127.0.0.1';
  return address.href;
}

test('the policy is the one agreed on, and stands before anything that it governs', async ({ request, site }) => {
  const source = await (await request.get(site)).text();
  const [, content] = source.match(/<meta http-equiv="Content-Security-Policy" content="([^"]*)">/);
  expect(content.split(';').map((directive) => directive.trim()).sort()).toEqual(POLICY);
  const before = source.slice(0, source.indexOf('Content-Security-Policy'));
  expect(before).not.toMatch(/<(link|script|style|img)\b/);
});

test('the page holds no inline script, style or handler, and no address from the root of a site', async ({ request, site }) => {
  const source = await (await request.get(site)).text();
  const scripts = source.match(/<script\b[^>]*>/g);
  expect(scripts.filter((script) => !/\ssrc=/.test(script))).toEqual([]);
  expect(source.match(/<script\b[^>]*><\/script>/g)).toEqual(scripts.map((script) => `${script}</script>`));
  expect(source).not.toMatch(/<style\b|\sstyle=|\son[a-z]+=|data-trunk/);
  for (const [, address] of source.matchAll(/\b(?:href|src)="([^"]*)"/g)) {
    // The manifest keeps its address, by which browsers know an installed page.
    expect(address).toMatch(/^(build-[0-9a-f]{16}\/|manifest\.webmanifest$)/);
  }
});

test('the page starts under the policy, below a path', async ({ page, site }) => {
  const served = [];
  page.on('response', (response) => served.push([response.status(), response.url()]));
  await open(page, site);
  await expect(page.locator('#app > *').first()).toBeVisible();
  const build = await page.locator('meta[name=elbowroom-build]').getAttribute('content');
  // Once: the early fetch that index.html asks for is the one that the program uses.
  expect(served.filter(([, address]) => address === `${site}${build}/app_bg.wasm`)).toHaveLength(1);
  expect(served.filter(([status]) => status !== 200)).toEqual([]);
});

test('every listed file of the build is there, in its size', async ({ request, site }) => {
  const { build, files } = await (await request.get(`${site}precache.json`)).json();
  expect(files.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['index.html', `${build}/app_bg.wasm`, `${build}/worker_bg.wasm`, `${build}/worker-start.js`]),
  );
  for (const { name, size } of files) {
    const response = await request.get(site + name);
    expect(response.status(), name).toBe(200);
    expect((await response.body()).length, name).toBe(size);
  }
});

test("the page's own worker starts as a module worker and answers", async ({ page, site }) => {
  await page.addInitScript(() => {
    globalThis.workers = [];
    globalThis.Worker = class extends Worker {
      constructor(address, options) {
        super(address, options);
        const record = { address: String(address), type: options?.type, asked: 0, answered: 0 };
        globalThis.workers.push(record);
        this.record = record;
        this.addEventListener('message', () => { record.answered += 1; });
      }

      postMessage(...message) {
        this.record.asked += 1;
        super.postMessage(...message);
      }
    };
  });
  await open(page, site);
  const build = await page.locator('meta[name=elbowroom-build]').getAttribute('content');
  await expect.poll(() => page.evaluate(() => globalThis.workers.some(({ asked, answered }) => asked > 0 && answered > 0))).toBe(true);
  for (const { address, type } of await page.evaluate(() => globalThis.workers)) {
    expect(address.replace(/^\.\//, '')).toBe(`${build}/worker-start.js`);
    expect(type).toBe('module');
  }
});

// The worker's loader by itself: a program of a few lines stands in for the real one.
test.describe("the worker's loader", () => {
  async function firstAnswer(page, site, program) {
    // A page that starts nothing leaves this worker the only one.
    await page.route('**/app.js', (route) => route.fulfill({ contentType: 'text/javascript', body: 'export default () => {};' }));
    await page.route('**/worker.js', (route) => route.fulfill({ contentType: 'text/javascript', body: program }));
    await page.goto(site);
    return page.evaluate(() => new Promise((resolve) => {
      const build = document.querySelector('meta[name=elbowroom-build]').content;
      const worker = new Worker(`${build}/worker-start.js`, { type: 'module' });
      worker.onmessage = ({ data }) => resolve(data);
      worker.onerror = ({ message }) => resolve(`error: ${message}`);
      worker.postMessage('said early');
    }));
  }

  test('delivers what was said before the program listened', async ({ page, site }) => {
    // The program waits for a message to itself, which comes after the one from the page.
    const program = `export default async () => {
      const { port1, port2 } = new MessageChannel();
      await new Promise((resolve) => { port1.onmessage = resolve; port2.postMessage(0); });
      self.onmessage = ({ data }) => postMessage('heard: ' + data);
    };`;
    expect(await firstAnswer(page, site, program)).toBe('heard: said early');
  });

  test('tells the page of a program that does not start', async ({ page, site, problems }) => {
    const program = "export default async () => { throw new Error('no start'); };";
    expect(await firstAnswer(page, site, program)).toContain('no start');
    // The console's word may come after the worker's.
    await expect.poll(() => problems.join('\n')).toContain('no start');
    problems.splice(0);
  });
});

test('after a panic a calm page says what happened and offers the plan as last saved', async ({ page, site }) => {
  await open(page, site);
  const name = '<b>cellar</b>.json';
  await page.evaluate((fileName) => {
    dispatchEvent(new CustomEvent('elbowroom-kept', { detail: { name: fileName, text: '{"plan":1}' } }));
    dispatchEvent(new CustomEvent('elbowroom-panic', { detail: '<img src=x> was not expected' }));
    dispatchEvent(new CustomEvent('elbowroom-panic', { detail: 'an echo' }));
    // The program is dead by now, so this cannot be the plan.
    dispatchEvent(new CustomEvent('elbowroom-kept', { detail: { name: 'later.json', text: 'later' } }));
  }, name);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(PANIC_PAGE.title);
  await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
  // What others wrote is shown as text.
  await expect(page.locator('main b, main img')).toHaveCount(0);
  await page.getByText('What the page reported').click();
  await expect(page.locator('pre')).toHaveText('<img src=x> was not expected');

  const downloading = page.waitForEvent('download');
  await page.getByRole('link', { name: `Download ${name}` }).click();
  const chunks = [];
  for await (const chunk of await (await downloading).createReadStream()) chunks.push(chunk);
  expect(Buffer.concat(chunks).toString()).toBe('{"plan":1}');

  await page.getByRole('button', { name: 'Reload the page' }).click();
  await expect(page.getByRole('heading', { name: PANIC_PAGE.title })).toHaveCount(0);
  await expect(page.locator('#app > *').first()).toBeVisible();
});

test('a program that cannot be loaded is said to be so', async ({ page, site, problems }) => {
  await page.route('**/app_bg.wasm', (route) => route.fulfill({ status: 404, body: 'gone' }));
  await page.goto(site);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(PANIC_PAGE.notStarted);
  await expect(page.getByText('What was kept')).toBeVisible();
  expect(problems.splice(0).join('\n')).toContain('404');
});

const REST = '**/split_rest.wasm';
const gone = (route) => route.fulfill({ status: 404, body: 'gone' });

test('a part of the program that comes only at the second asking is waited for', async ({ page, site, problems }) => {
  await page.route(REST, gone, { times: 1 });
  await open(page, site);
  await expect(page.locator('.ledger tbody tr').first()).toBeVisible();
  await expect(page.locator('#app > .loading')).toHaveCount(0);
  expect(problems.splice(0).join('\n')).toContain('404');
});

test('a part of the program that never comes stops the page, which says why', async ({ page, site, problems }) => {
  await page.route(REST, gone);
  await page.goto(site);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(PANIC_PAGE.title, { timeout: 15_000 });
  await expect(page.locator('pre')).toContainText('could not be fetched');
  expect(problems.splice(0).join('\n')).toContain('404');
});

test.describe('without scripts', () => {
  test.use({ javaScriptEnabled: false });

  test('the page says that it needs them, and does not pretend to load', async ({ page, site }) => {
    await page.goto(site);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Elbowroom needs JavaScript');
    await expect(page.locator('.loading')).toBeHidden();
  });
});

test.describe('the watch over the page notices', () => {
  test('an inline script and a style attribute', async ({ page, site, problems }) => {
    await open(page, site);
    await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'globalThis.ranInline = true';
      const styled = document.createElement('p');
      styled.setAttribute('style', 'color: red');
      document.body.append(script, styled);
    });
    expect(await page.evaluate(() => globalThis.ranInline)).toBeUndefined();
    await expect.poll(() => problems.filter((each) => each.startsWith('policy violation')).sort()).toEqual([
      'policy violation: script-src-elem inline',
      'policy violation: style-src-attr inline',
    ]);
    problems.length = 0;
  });

  test('a request to another origin, which the policy refuses', async ({ page, site, problems }) => {
    await open(page, site);
    const refused = await page.evaluate((address) => fetch(address).then(() => false, () => true), elsewhere(site));
    expect(refused).toBe(true);
    await expect.poll(() => problems.join('\n')).toContain('policy violation: connect-src http://127.0.0.1');
    problems.length = 0;
  });

  // A worker has the policy that its own file is served with, and a plain host sends none.
  test('a request to another origin from a worker', async ({ page, site, problems }) => {
    await open(page, site);
    const body = `await fetch('${elsewhere(site)}', { mode: 'no-cors' }).catch(() => {}); postMessage('done');`;
    await page.route('**/probe.js', (route) => route.fulfill({ contentType: 'text/javascript', body }));
    await page.evaluate(() => new Promise((resolve) => {
      new Worker('probe.js', { type: 'module' }).onmessage = resolve;
    }));
    await expect.poll(() => problems.splice(0)).toEqual([`request elsewhere: ${elsewhere(site)}`]);
  });

  test('an error that nobody caught', async ({ page, site, problems }) => {
    await open(page, site);
    await page.evaluate(() => { setTimeout(() => { throw new Error('left alone'); }); });
    await expect.poll(() => problems.splice(0)).toEqual(['page error: left alone']);
  });
});
