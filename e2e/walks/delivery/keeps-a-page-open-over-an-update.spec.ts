/** A new release comes out while somebody has the app open. */
import type { Page } from '@playwright/test';
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { cached, firstVisitIsOver, newWorkerWaits } from '../../device/worker.ts';
import { link, sentence } from '../../hands/hands.ts';
import { fileLike, filesOf, stamped } from '../../host/deploys.ts';
import { dist } from '../../house/settings.ts';
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

/** Collects what a page is answered with from now on: path and SHA-256 of each body. */
function collect(page: Page): () => Promise<Map<string, string>> {
  const bodies: Promise<[string, string]>[] = [];
  page.on('response', (response) => {
    const { pathname } = new URL(response.url());
    if (response.status() === 200 && !pathname.endsWith('/sw.js')) {
      bodies.push(response.body().then((body) => [pathname, sha256(body)]));
    }
  });
  return async () => {
    const settled = await Promise.allSettled(bodies);
    return new Map(settled.flatMap((one) => (one.status === 'fulfilled' ? [one.value] : [])));
  };
}

test('the open page keeps its build, and the next start has the new one whole', async ({ hands, host, page, context }) => {
  const next = await stamped('B');
  const [oldPrints, newPrints] = [await printsOf(dist), await printsOf(next)];
  const [oldPage, newPage] = [await fileLike(/^index\.html$/), await fileLike(/^index\.html$/, next)];
  expect(oldPage.text, 'the two deploys differ in the page').not.toBe(newPage.text);
  expect((await fileLike(/^sw\.js$/)).text, 'and in the worker').not.toBe((await fileLike(/^sw\.js$/, next)).text);

  await hands.open('');
  await firstVisitIsOver(page);
  const answered = collect(page);
  await hands.open('#/start');
  const first = await hands.see(sentence());

  await host.deploy(next);
  await newWorkerWaits(page);
  const caches = new Set((await cached(page)).map(({ cache }) => cache));
  expect(caches.size, 'both builds lie in caches of their own').toBe(2);

  // The page that is open goes on, and whatever it loads now is still of its own build.
  expect(await hands.see(sentence())).toBe(first);
  await page.reload();
  await hands.see(sentence());
  const old = await answered();
  expect(old.size).toBeGreaterThan(0);
  for (const [path, print] of old) expect(oldPrints.has(print), `${path} is of the old build`).toBe(true);

  // Once no page of the old build is left, the new worker takes over for the next start.
  const answeredNext = await context.newPage().then(async (fresh) => {
    await page.close();
    const read = collect(fresh);
    await expect
      .poll(
        async () => {
          await fresh.goto(host.home);
          return (await fresh.content()).length > 0 && (await readBuild(fresh, newPage.text));
        },
        { message: 'the new build starts' },
      )
      .toBe(true);
    return read;
  });
  const all = await answeredNext();
  expect([...all.values()].some((print) => newPrints.has(print) && !oldPrints.has(print))).toBe(true);
});

test('a page that is answered by neither build alone is never seen', async ({ hands, host, page }) => {
  const next = await stamped('C');
  const [oldPrints, newPrints] = [await printsOf(dist), await printsOf(next)];
  await hands.open('');
  await firstVisitIsOver(page);
  await host.deploy(next);

  for (let start = 0; start < 5; start += 1) {
    const answered = collect(page);
    await hands.open(start % 2 === 0 ? '#/start' : '#/example');
    await hands.see(sentence());
    const prints = [...(await answered()).values()];
    const whole = prints.every((print) => oldPrints.has(print)) || prints.every((print) => newPrints.has(print));
    expect(whole, `start ${start} is of one build`).toBe(true);
  }
  await hands.open('');
  await hands.see(link('Start'));
});

/** Whether the page's document is the one of this deploy, byte for byte. */
async function readBuild(page: Page, document: string): Promise<boolean> {
  return page.evaluate(async (wanted) => (await (await fetch(location.href.replace(/#.*/, ''))).text()) === wanted, document);
}
