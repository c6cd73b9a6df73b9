/** Sees how each IndexedDB transaction is opened: over what, in which mode, and how durable. */
import type { BrowserContext } from '@playwright/test';

/** One call of `IDBDatabase.transaction`. */
export interface Opened {
  readonly database: string;
  readonly stores: readonly string[];
  readonly mode: string;
  /** What the caller asked for; `'not asked'` where it named nothing. */
  readonly durability: string;
}

/** Every transaction that the pages of this window open from now on, in order. */
export async function watchTransactions(context: BrowserContext): Promise<readonly Opened[]> {
  const seen: Opened[] = [];
  await context.exposeBinding('walkTransaction', (_source, opened: Opened) => {
    seen.push(opened);
  });
  await context.addInitScript(() => {
    const tell = (window as unknown as { walkTransaction: (opened: unknown) => Promise<void> }).walkTransaction;
    const open = IDBDatabase.prototype.transaction;
    IDBDatabase.prototype.transaction = function (this: IDBDatabase, ...given: Parameters<typeof open>) {
      const [names, mode, options] = given;
      void tell({
        database: this.name,
        stores: typeof names === 'string' ? [names] : [...names],
        mode: mode ?? 'readonly',
        durability: options?.durability ?? 'not asked',
      });
      return open.apply(this, given);
    };
  });
  return seen;
}
