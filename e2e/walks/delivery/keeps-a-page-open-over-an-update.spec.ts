/** A new release comes out while somebody has the app open. */
import type { Page } from '@playwright/test';
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { cached, firstVisitIsOver, newWorkerWaits, takeTheUpdate } from '../../device/worker.ts';
import { sentence } from '../../hands/hands.ts';
import { PlaywrightHands } from '../../hands/playwright.ts';
import { brokenRelease, filesOf, nextRelease } from '../../host/deploys.ts';
import { dist } from '../../house/settings.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

/** SHA-256 of every file of a deploy. */
async function printsOf(folder: string): Promise<Set<string>> {
  const prints = new Set<string>();
  for (const file of await filesOf(folder)) prints.add(sha256(await readFile(join(folder, file))));
  return prints;
}

function sha256(bytes: Buffer): string {
  return createHash('sha256').update(bytes).digest('hex');
}

/** Which build a page has been answered with since the collecting began. */
interface Answers {
  /** `old` or `new` where every body fits that one build, `mixed` where neither fits, and the paths that differ. */
  verdict(): Promise<string>;
}

/** Collects what a page is answered with: the page itself, scripts, wasm, pictures. */
function collect(page: Page, builds: { readonly old: Set<string>; readonly new: Set<string> }): Answers {
  const bodies: Promise<[string, string]>[] = [];
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    if (response.status() !== 200 || pathname.endsWith('/sw.js')) return;
    bodies.push(response.body().then((body) => [pathname, sha256(body)]));
  });
  return {
    verdict: async () => {
      const settled = await Promise.allSettled(bodies);
      const answers = settled.flatMap((one) => (one.status === 'fulfilled' ? [one.value] : []));
      if (!answers.some(([path]) => path.endsWith('.wasm'))) return 'no wasm came';
      const strangers = (build: Set<string>): string[] => answers.filter(([, print]) => !build.has(print)).map(([path]) => path);
      const [notOld, notNew] = [strangers(builds.old), strangers(builds.new)];
      if (notOld.length > 0 && notNew.length > 0) return `mixed: ${notOld.join(', ')} against ${notNew.join(', ')}`;
      if (notOld.length === 0 && notNew.length === 0) return 'the two builds are the same';
      return notOld.length === 0 ? 'old' : 'new';
    },
  };
}

test('the open page keeps its build until it is left, and the next start has the new one whole', async ({ hands, host, page, context }) => {
  const next = await nextRelease();
  const builds = { old: await printsOf(dist), new: await printsOf(next) };
  await hands.open('#/start');
  const first = await readSentence(hands);
  await firstVisitIsOver(page);

  await host.deploy(next);
  await newWorkerWaits(page);
  expect(new Set((await cached(page)).map(({ cache }) => cache)).size, 'each build lies in a cache of its own').toBe(2);

  // The page that is open goes on, and what it loads is still of its own build, even when it is loaded anew.
  expect(await readSentence(hands)).toBe(first);
  const reloaded = collect(page, builds);
  await page.reload();
  expect(await readSentence(hands)).toBe(first);
  await expect.poll(() => reloaded.verdict()).toBe('old');

  // Once the last page of the old build is left, the next start is of the new one.
  await page.close();
  await expect
    .poll(
      async () => {
        const fresh = await context.newPage();
        const started = collect(fresh, builds);
        await fresh.goto(`${host.home}#/start`);
        await new PlaywrightHands({ page: fresh, home: () => host.home, finger: true }).see(sentence());
        const verdict = await started.verdict();
        await fresh.close();
        return verdict;
      },
      { message: 'the new build starts' },
    )
    .toBe('new');
});

test('taking the update reloads the tab it was taken in, and no other', async ({ hands, host, page, context }) => {
  const next = await nextRelease();
  const builds = { old: await printsOf(dist), new: await printsOf(next) };
  await hands.open('#/start');
  const first = await readSentence(hands);
  await firstVisitIsOver(page);
  const other = await context.newPage();
  await other.goto(`${host.home}#/start`);
  const otherHands = new PlaywrightHands({ page: other, home: () => host.home, finger: true });
  expect(await otherHands.see(sentence())).toBe(first);
  await other.evaluate(() => {
    document.title = 'not reloaded';
  });

  await host.deploy(next);
  await newWorkerWaits(page);
  const taken = collect(page, builds);
  const reloaded = page.waitForEvent('load');
  await takeTheUpdate(page);
  await reloaded;
  expect(await readSentence(hands)).toBe(first);
  await expect.poll(() => taken.verdict()).toBe('new');
  expect(await other.title(), 'the other tab was left alone').toBe('not reloaded');
  expect(await otherHands.see(sentence())).toBe(first);
});

test('no start is ever answered by two builds', async ({ hands, host, page }) => {
  const next = await nextRelease();
  const builds = { old: await printsOf(dist), new: await printsOf(next) };
  await hands.open('#/start');
  await readSentence(hands);
  await firstVisitIsOver(page);
  await host.deploy(next);
  for (let start = 0; start < 5; start += 1) {
    const answers = collect(page, builds);
    await hands.open(start % 2 === 0 ? '#/start' : '#/example');
    await readSentence(hands);
    await expect.poll(() => answers.verdict(), { message: `start ${start}` }).toMatch(/^(old|new)$/);
  }
});

test('a release with a file missing is not taken, and the old one goes on', async ({ hands, host, page, watch }) => {
  watch.expects(/404/, 'the release lacks a file');
  const next = await brokenRelease();
  await hands.open('#/start');
  const first = await readSentence(hands);
  await firstVisitIsOver(page);
  await host.deploy(next);
  const outcome = await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.getRegistration();
    await registration?.update().catch(() => undefined);
    const worker = registration?.installing ?? registration?.waiting;
    if (worker === null || worker === undefined) return 'none';
    while (worker.state === 'installing') await new Promise((resolve) => worker.addEventListener('statechange', resolve, { once: true }));
    return worker.state;
  });
  expect(outcome, 'the broken release is thrown away').toBe('redundant');
  await hands.open('#/start');
  expect(await readSentence(hands)).toBe(first);
});
