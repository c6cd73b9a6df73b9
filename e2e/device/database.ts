/** Reads the app's IndexedDB from inside the page, without making or keeping anything. */
import type { Page } from '@playwright/test';

/** The stores of `tussock` and `tussock-example`. */
export type Store = 'records' | 'past' | 'drafts' | 'meta' | 'pictures';

/** One row as it lies in a store: index fields and, for records, `json`, the canonical text. */
export type Row = Record<string, unknown>;

/** Names and versions of this origin's databases. */
export async function databases(page: Page): Promise<{ name: string; version: number }[]> {
  const list = await page.evaluate(() => indexedDB.databases());
  return list.map(({ name, version }) => ({ name: name ?? '', version: version ?? 0 }));
}

/** Every row of a store in key order; none when the database or the store is not there yet. */
export async function rows(page: Page, store: Store, database = 'tussock'): Promise<Row[]> {
  return page.evaluate(
    async ([name, from]) => {
      // Opening a database that is not there would make it, with no stores and in the app's way.
      if (!(await indexedDB.databases()).some((one) => one.name === name)) return [];
      const opened = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
      try {
        if (!opened.objectStoreNames.contains(from)) return [];
        return await new Promise<Record<string, unknown>[]>((resolve, reject) => {
          const request = opened.transaction(from, 'readonly').objectStore(from).getAll();
          request.onsuccess = () => resolve(request.result as Record<string, unknown>[]);
          request.onerror = () => reject(request.error);
        });
      } finally {
        opened.close();
      }
    },
    [database, store] as const,
  );
}

/** The records of one kind, parsed from their canonical text. */
export async function records(page: Page, kind: string, database = 'tussock'): Promise<Row[]> {
  const all = await rows(page, 'records', database);
  return all
    .map((row) => JSON.parse(String(row['json'])) as Row)
    .filter((record) => record['kind'] === kind);
}

/** Puts one row into `records`; where no app has made the database yet, one with that store alone. */
export async function putRow(page: Page, row: { readonly id: string; readonly json: string }): Promise<void> {
  await page.evaluate(async (given) => {
    const opened = await new Promise<IDBDatabase>((resolve, reject) => {
      const request = indexedDB.open('tussock');
      request.onupgradeneeded = () => request.result.createObjectStore('records', { keyPath: 'id' });
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
    await new Promise<void>((resolve, reject) => {
      const writing = opened.transaction('records', 'readwrite');
      writing.objectStore('records').put(given);
      writing.oncomplete = () => resolve();
      writing.onabort = () => reject(writing.error);
    });
    opened.close();
  }, row);
}

/** Turns `tussock` back into the shape in which the first releases made it, with the same rows; no app may be open. */
export async function asShapeOne(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const done = <T>(request: IDBRequest<T>): Promise<T> =>
      new Promise((resolve, reject) => {
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
    const names = ['records', 'past', 'drafts', 'meta'];
    const before = await done(indexedDB.open('tussock'));
    const held: unknown[][] = [];
    for (const name of names) held.push(await done<unknown[]>(before.transaction(name).objectStore(name).getAll()));
    before.close();
    await done(indexedDB.deleteDatabase('tussock'));
    const asking = indexedDB.open('tussock', 1);
    asking.onupgradeneeded = () => {
      const records = asking.result.createObjectStore('records', { keyPath: 'id' });
      records.createIndex('by_kind', ['kind', 'at', 'id']);
      records.createIndex('by_subject', ['subject', 'at', 'id']);
      asking.result.createObjectStore('past', { keyPath: ['id', 'stamp'] });
      asking.result.createObjectStore('drafts', { keyPath: 'key' });
      asking.result.createObjectStore('meta', { keyPath: 'key' });
    };
    const after = await done(asking);
    const writing = after.transaction(names, 'readwrite');
    for (const [index, name] of names.entries()) for (const row of held[index] ?? []) writing.objectStore(name).put(row);
    await new Promise<void>((resolve, reject) => {
      writing.oncomplete = () => resolve();
      writing.onabort = () => reject(writing.error);
    });
    after.close();
  });
}
