/** Makes the disk refuse: a write is aborted as a full disk aborts it, after every request succeeded; or there is none at all. */
import type { BrowserContext, Page } from '@playwright/test';

interface Armed {
  walkAbortNextWrite?: boolean;
}

/** Prepares this window's pages; call it before the page opens. */
export async function canRefuse(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    const armed = window as unknown as Armed;
    const open = IDBDatabase.prototype.transaction;
    const put = IDBObjectStore.prototype.put;
    const doomed = new WeakSet<IDBTransaction>();
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...given: Parameters<typeof open>) {
      const opened = open.apply(this, given);
      if (armed.walkAbortNextWrite === true && opened.mode === 'readwrite') {
        armed.walkAbortNextWrite = false;
        doomed.add(opened);
      }
      return opened;
    };
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
      const request = put.apply(this, given);
      const { transaction } = this;
      // The writer may commit at once; an abort from the first success is still in time.
      if (doomed.has(transaction)) request.addEventListener('success', () => transaction.abort(), { once: true });
      return request;
    };
    // A commit that is asked for would outrun the abort.
    const commit = IDBTransaction.prototype.commit;
    IDBTransaction.prototype.commit = function (this: IDBTransaction) {
      if (!doomed.has(this)) commit.apply(this);
    };
  });
}

/** The next transaction that this page opens for writing puts its rows, and is then aborted. */
export async function refuseNextWrite(page: Page): Promise<void> {
  await page.evaluate(() => {
    (window as unknown as Armed).walkAbortNextWrite = true;
  });
}

/** No picture goes on this page's disk any more: it is full. */
export async function hasNoRoom(page: Page): Promise<void> {
  await page.evaluate(() => {
    const put = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (this: IDBObjectStore, ...given: Parameters<typeof put>) {
      if (this.name === 'pictures') throw new DOMException('full', 'QuotaExceededError');
      return put.apply(this, given);
    };
  });
}

/** A window without IndexedDB, as some browsers open in private; call it before the page opens. */
export async function hasNoDisk(page: Page): Promise<void> {
  await page.addInitScript(() => {
    Object.defineProperty(window, 'indexedDB', { configurable: true, value: undefined });
  });
}
