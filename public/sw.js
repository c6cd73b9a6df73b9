// Tussock's service worker: keeps one whole build on the device and serves only that.
// A build is all or nothing: install fetches every file of the list, and one missing file leaves the old build at work.
const BUILD = '@@build@@';
const FILES = @@files@@;
const PREFIX = 'tussock-';
const CACHE = PREFIX + BUILD;
const SCOPE = self.registration.scope;
const PAGE = new URL('index.html', SCOPE).href;
const RESET = new URL('reset.html', SCOPE).href;
const WHOLE = [...new Set(['index.html', 'reset.html', ...FILES])].map((file) => new URL(file, SCOPE).href);
const PATIENCE = 20_000; // ms for mending a file before the person is told
const code = (href) => /\.(?:js|wasm)$/.test(new URL(href).pathname);

// Without the app's files and without signal; no script, no style from elsewhere, so that it can always be shown.
const REPAIR = `<!doctype html><html lang="en-GB"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark"><title>Tussock</title>
<style>body{font:1.125rem/1.4 system-ui,sans-serif;margin:1rem;max-width:40rem}h1{font-size:1.75rem;line-height:1.2}
a{display:block;padding:1.2rem 0;color:inherit;font-weight:700}</style>
<main><h1>A file of the app is missing on this device</h1>
<p>Your records are not touched. The file is fetched as soon as there is signal.</p>
<a href="./">Reload</a><a href="reset.html">Save a copy of everything, mend the app</a></main></html>`;

self.addEventListener('install', (event) => event.waitUntil(install()));
self.addEventListener('activate', (event) => event.waitUntil(activate()));

// Skipping the wait is the person's choice, taken in the page; never done at install.
self.addEventListener('message', ({ data, ports, source }) => {
  if (data?.type === 'SKIP_WAITING') self.skipWaiting();
  if (data?.type === 'BUILD') (ports[0] ?? source)?.postMessage({ type: 'BUILD', build: BUILD });
});

// A tap on a notification opens the screen it speaks of, in a page that is open if there is one.
self.addEventListener('notificationclick', (event) => {
  event.notification.close();
  event.waitUntil(show(String(event.notification.data ?? '')));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  const href = request.url.split(/[?#]/)[0];
  if (request.method !== 'GET' || !href.startsWith(SCOPE)) return;
  if (href === RESET) event.respondWith(reset(request));
  else if (request.mode !== 'navigate') event.respondWith(asset(request, href));
  else if (href === SCOPE || href === PAGE) event.respondWith(page(request, event));
  // Any other page under this address is not ours: the server answers, and without signal the app opens instead.
  else event.respondWith(fetch(request).catch(() => Response.redirect(SCOPE)));
});

async function show(address) {
  const there = new URL(address.startsWith('#/') ? address : '', SCOPE).href;
  const pages = await self.clients.matchAll({ type: 'window' });
  const open = pages.find(({ url }) => url.startsWith(SCOPE));
  if (!open) return self.clients.openWindow(there);
  await open.focus();
  return open.navigate(there);
}

async function install() {
  const cache = await caches.open(CACHE);
  try {
    await Promise.all(WHOLE.map((href) => store(cache, href)));
  } catch (problem) {
    await caches.delete(CACHE);
    throw problem;
  }
}

// Keeps the build before this one, for pages of it that are still open, and takes over pages that have no worker yet.
// Such a page does not reload by it: start.js reloads only when the person has asked.
async function activate() {
  const others = (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE);
  const ours = [];
  for (const name of others) {
    const held = await (await caches.open(name)).keys();
    if (held.every((request) => request.url.startsWith(SCOPE))) ours.push(name); // not a neighbour's on the same host
  }
  await Promise.all(ours.slice(0, -1).map((name) => caches.delete(name)));
  await self.clients.claim();
}

/** Fetches one file past every other cache and keeps it, or throws. */
async function store(cache, href, signal) {
  const kept = checked(await fetch(href, { cache: 'reload', signal }), href);
  if (!kept.ok) throw new Error(`${href}: ${kept.status}`);
  await cache.put(href, kept);
}

/** The answer as it is kept: never a page where code was asked for, never a redirect, wasm with exactly its type. */
function checked(response, href) {
  const headers = new Headers(response.headers);
  const html = (headers.get('content-type') ?? '').startsWith('text/html');
  if (response.ok && code(href) && html) return new Response(null, { status: 404 });
  for (const name of ['content-encoding', 'content-length', 'vary']) headers.delete(name);
  if (href.endsWith('.wasm')) headers.set('content-type', 'application/wasm');
  return new Response(response.body, { status: response.status, statusText: response.statusText, headers });
}

/** The shell of this build, if the code it needs is whole; mended from the network if not; else a page that says so. */
async function page(request, event) {
  const cache = await caches.open(CACHE);
  const held = new Set((await cache.keys()).map(({ url }) => url));
  const missing = WHOLE.filter((href) => !held.has(href));
  const needed = missing.filter((href) => href === PAGE || code(href));
  const mend = (list) => Promise.all(list.map((href) => store(cache, href, AbortSignal.timeout(PATIENCE))));
  try {
    await mend(needed);
    if (missing.length > needed.length) event.waitUntil(mend(missing).catch(() => {}));
    return await cache.match(PAGE);
  } catch {
    try {
      return await fetch(request);
    } catch {
      return new Response(REPAIR, { headers: { 'content-type': 'text/html; charset=utf-8' } });
    }
  }
}

/** A file: this build's, or, for a page still open from the build before, that one's by its hashed name; else the network. */
async function asset(request, href) {
  const cache = await caches.open(CACHE);
  const held = (await cache.match(href)) ?? (await before(href));
  if (held) return held;
  try {
    if (WHOLE.includes(href)) {
      await store(cache, href);
      return await cache.match(href);
    }
    return checked(await fetch(request), href);
  } catch {
    return Response.error();
  }
}

async function before(href) {
  for (const name of (await caches.keys()).filter((name) => name.startsWith(PREFIX) && name !== CACHE)) {
    const held = await (await caches.open(name)).match(href);
    if (held) return held;
  }
  return undefined;
}

/** The way out of a broken build comes from the server first; the kept copy serves where there is no signal. */
async function reset(request) {
  try {
    return await fetch(request);
  } catch {
    return (await (await caches.open(CACHE)).match(RESET)) ?? Response.error();
  }
}
