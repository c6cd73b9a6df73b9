/** One visit is enough: afterwards the whole build lies in the phone. */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { cached, firstVisitIsOver } from '../../device/worker.ts';
import { filesOf } from '../../host/deploys.ts';
import { dist } from '../../house/settings.ts';
import { expect, test } from '../../walk.ts';

/** Of no use without a network: the worker itself and the host's own pages. */
const onlineOnly = new Set(['sw.js', 'robots.txt', '404.html']);

test('every file of the build is in the cache, byte for byte', async ({ hands, host, page }) => {
  await hands.open('');
  await firstVisitIsOver(page);
  const inCache = await cached(page);

  expect(new Set(inCache.map(({ cache }) => cache)).size, 'one cache').toBe(1);
  expect(inCache[0]?.cache).toMatch(/^tussock/);
  expect(inCache.filter(({ status }) => status !== 200)).toEqual([]);

  const wanted = new Map<string, string>();
  for (const file of await filesOf()) {
    if (onlineOnly.has(file)) continue;
    wanted.set(file, createHash('sha256').update(await readFile(join(dist, file))).digest('hex'));
  }
  expect(wanted.size, 'a page, two scripts, a wasm and the icons at the least').toBeGreaterThanOrEqual(8);
  // The page may be kept under its own name or under the folder's.
  const found = new Map(inCache.map(({ url, sha256 }) => [url.slice(host.home.length) || 'index.html', sha256]));
  expect(Object.fromEntries([...found].sort())).toEqual(Object.fromEntries([...wanted].sort()));
});

test('the wasm keeps exactly its type, on the line and in the cache', async ({ hands, host, page, request }) => {
  const wasm = (await filesOf()).filter((file) => file.endsWith('.wasm'));
  const parts = wasm.map((file) => file.replace(/-\w+\.wasm$/, ''));
  expect(parts, 'the first part, one a place, and what several places need').toEqual(
    expect.arrayContaining(['app', 'later-horses', 'later-plans', 'later-shed', 'later-horses-plans-shed']),
  );
  for (const file of wasm) {
    const answer = await request.get(`${host.home}${file}`);
    expect(answer.headers()['content-type']).toBe('application/wasm');
  }
  await hands.open('');
  await firstVisitIsOver(page);
  const types = (await cached(page)).filter(({ url }) => url.endsWith('.wasm')).map(({ type }) => type);
  expect(types).toEqual(wasm.map(() => 'application/wasm'));
});
