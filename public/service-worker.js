// Keeps one whole build of the page in this browser, so that it opens without a network.
//
// The two names below are written in by the finishing step of the build. Each build has a cache of its
// own, and a page is served from the cache of the build that it was loaded from, never from a mixture.
// A newer build waits until no page is open, or until the only page that is open asks for it: code is
// never swapped under somebody's job.

const BUILD = '%BUILD%';
const FILES = ['%FILES%'];

const API = new URL('api/', location).href;
const IN_A_BUILD = /\/(build-[0-9a-f]{16})\//;

addEventListener('install', (event) => {
  event.waitUntil(caches.open(BUILD).then((cache) => cache.addAll(FILES)));
});

addEventListener('activate', (event) => {
  event.waitUntil(dropOthers().then(() => clients.claim()));
});

async function dropOthers() {
  const names = await caches.keys();
  const others = names.filter((name) => name !== BUILD && name.startsWith('build-'));
  await Promise.all(others.map((name) => caches.delete(name)));
}

addEventListener('fetch', (event) => {
  const { request } = event;
  const address = new URL(request.url);
  if (request.method !== 'GET' || address.origin !== location.origin) return;
  // The module for other programs is no part of the page, and not kept with it.
  if (address.href.startsWith(API)) return;
  event.respondWith(answer(request));
});

async function answer(request) {
  const { pathname } = new URL(request.url);
  const page = pathname.slice(new URL(registration.scope).pathname.length);
  if (page === '' || page === 'index.html') {
    const cache = await caches.open(BUILD);
    return (await cache.match('index.html')) ?? fetch(request);
  }
  const [, build = BUILD] = pathname.match(IN_A_BUILD) ?? [];
  if (await caches.has(build)) {
    const kept = await (await caches.open(build)).match(request, { ignoreSearch: true });
    if (kept) return kept;
  }
  return fetch(request);
}

// Asked by a page to take over: only where that page is the only one.
addEventListener('message', (event) => {
  if (event.data !== 'take over') return;
  event.waitUntil(clients.matchAll({ type: 'window', includeUncontrolled: true }).then((pages) => {
    if (pages.length > 1) event.source.postMessage('other pages are open');
    else skipWaiting();
  }));
});
