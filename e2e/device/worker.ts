/** The service worker and its caches, as the page can see them. */
import { expect, type Page } from '@playwright/test';

/** One answer that lies in a cache. */
export interface Cached {
  readonly cache: string;
  readonly url: string;
  readonly status: number;
  readonly type: string;
  /** Hexadecimal SHA-256 of the body. */
  readonly sha256: string;
}

/**
 * Waits until the first visit is over: a worker is active and answers for this page, which by its
 * install step means that the whole build lies in the cache.
 */
export async function firstVisitIsOver(page: Page): Promise<void> {
  await expect
    .poll(
      () =>
        page.evaluate(async () => {
          const registration = await navigator.serviceWorker.getRegistration();
          if (registration?.active?.state !== 'activated') return 'no active worker';
          return navigator.serviceWorker.controller === null ? 'the worker does not answer for the page' : 'over';
        }),
      { message: 'the first visit is over', timeout: 30_000 },
    )
    .toBe('over');
}

/** Every answer in every cache of this origin. */
export async function cached(page: Page): Promise<Cached[]> {
  return page.evaluate(async () => {
    const found: Cached[] = [];
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        const answer = await cache.match(request);
        if (answer === undefined) continue;
        const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', await answer.arrayBuffer()));
        found.push({
          cache: name,
          url: request.url,
          status: answer.status,
          type: answer.headers.get('content-type') ?? '',
          sha256: [...digest].map((byte) => byte.toString(16).padStart(2, '0')).join(''),
        });
      }
    }
    return found;
  });
}

/** Takes every answer whose path matches out of every cache, as an eviction would; gives how many. */
export async function evict(page: Page, path: RegExp): Promise<number> {
  return page.evaluate(async (pattern) => {
    let gone = 0;
    for (const name of await caches.keys()) {
      const cache = await caches.open(name);
      for (const request of await cache.keys()) {
        if (new RegExp(pattern).test(new URL(request.url).pathname) && (await cache.delete(request))) gone += 1;
      }
    }
    return gone;
  }, path.source);
}

/** Asks the registration to look for a newer worker and waits until one is installed and waits its turn. */
export async function newWorkerWaits(page: Page): Promise<void> {
  await expect
    .poll(
      () =>
        page.evaluate(async () => {
          const registration = await navigator.serviceWorker.getRegistration();
          if (registration === undefined) return 'no registration';
          if (registration.waiting !== null) return 'waits';
          if (registration.installing === null) await registration.update();
          return 'not yet';
        }),
      { message: 'a newer worker waits', timeout: 30_000 },
    )
    .toBe('waits');
}

/** What the app does when a person takes the offered update: the event that start.js waits for. */
export async function takeTheUpdate(page: Page): Promise<void> {
  await page.evaluate(() => dispatchEvent(new CustomEvent('tussock-apply-update')));
}
