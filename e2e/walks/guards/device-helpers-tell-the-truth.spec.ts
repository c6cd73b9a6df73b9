/** The helpers that stand for the phone: clock, database, durability, being killed. */
import type { Page } from '@playwright/test';
import { sleepFor, wakeAt } from '../../device/clock.ts';
import { databases, putRow, rows } from '../../device/database.ts';
import { canRefuse, refuseNextWrite } from '../../device/faults.ts';
import { expect, test } from '../../walk.ts';

/** A bare page of this origin, without the app. */
async function bare(page: Page, home: string): Promise<void> {
  await page.route('**/bare.html', (route) => route.fulfill({ contentType: 'text/html', body: '<!doctype html><title>bare</title>' }));
  await page.goto(`${home}bare.html`);
}

test('the wall clock jumps, then goes on, and the page is told', async ({ page, host }) => {
  await bare(page, host.home);
  await page.evaluate(() => {
    document.title = '0';
    document.addEventListener('visibilitychange', () => (document.title = String(Number(document.title) + 1)));
  });
  const at = Date.parse('2026-05-05T05:12:00Z');
  await wakeAt(page, new Date(at));
  const now = (): Promise<number> => page.evaluate(() => Date.now());
  expect((await now()) - at).toBeLessThan(5_000);
  expect(await now()).toBeGreaterThanOrEqual(at);
  await expect.poll(now, { message: 'time goes on' }).toBeGreaterThan(at + 200);
  const local = await page.evaluate(() => new Date().toString());
  expect(local).toContain('06:12');

  const then = await sleepFor(page, 12 * 60);
  expect(then.getTime() - at).toBeGreaterThanOrEqual(12 * 3_600_000);
  expect(await now()).toBeGreaterThanOrEqual(then.getTime());
  expect(await page.title()).toBe('2');
  const rang = await page.evaluate(() => new Promise((resolve) => setTimeout(() => resolve('rang'), 20)));
  expect(rang, 'timers still run').toBe('rang');
});

test('reading a database that is not there makes none', async ({ page, host }) => {
  await bare(page, host.home);
  expect(await rows(page, 'records')).toEqual([]);
  expect(await databases(page)).toEqual([]);
  await putRow(page, { id: 'a', json: '{}' });
  expect(await rows(page, 'records')).toEqual([{ id: 'a', json: '{}' }]);
  expect(await rows(page, 'drafts')).toEqual([]);
});

test('each transaction is seen with its mode and durability', async ({ transactions, page, host }) => {
  await bare(page, host.home);
  await putRow(page, { id: 'a', json: '{}' });
  await page.evaluate(async () => {
    const opened = await new Promise<IDBDatabase>((resolve) => {
      const request = indexedDB.open('tussock');
      request.onsuccess = () => resolve(request.result);
    });
    opened.transaction(['records'], 'readwrite', { durability: 'strict' });
    opened.transaction('records');
    opened.close();
  });
  await expect.poll(() => transactions.length).toBe(3);
  expect(transactions).toEqual([
    { database: 'tussock', stores: ['records'], mode: 'readwrite', durability: 'not asked' },
    { database: 'tussock', stores: ['records'], mode: 'readwrite', durability: 'strict' },
    { database: 'tussock', stores: ['records'], mode: 'readonly', durability: 'not asked' },
  ]);
});

test('a refused write puts nothing, and only the next one is refused', async ({ context, page, host }) => {
  await canRefuse(context);
  await bare(page, host.home);
  await putRow(page, { id: 'a', json: '{}' });
  await refuseNextWrite(page);
  await expect(putRow(page, { id: 'b', json: '{}' }), 'the transaction aborts').rejects.toThrow();
  await putRow(page, { id: 'c', json: '{}' });
  expect((await rows(page, 'records')).map(({ id }) => id)).toEqual(['a', 'c']);
});

test('a killed browser says no farewell, and what it had committed is there', async ({ pocket, host }) => {
  const farewell = (page: Page): Promise<void> =>
    page.evaluate(() => addEventListener('pagehide', () => localStorage.setItem('tussock-farewell', 'said')));
  const said = (page: Page): Promise<string | null> => page.evaluate(() => localStorage.getItem('tussock-farewell'));

  const first = await pocket.takeOut();
  await bare(first.page, host.home);
  await putRow(first.page, { id: 'a', json: '{}' });
  await farewell(first.page);
  await pocket.kill();
  await expect(first.page.evaluate(() => 1), 'nothing answers any more').rejects.toThrow();

  const second = await pocket.takeOut();
  await bare(second.page, host.home);
  expect(await said(second.page)).toBeNull();
  expect(await rows(second.page, 'records')).toEqual([{ id: 'a', json: '{}' }]);
  await farewell(second.page);
  // Leaving the page in order does say it, so its absence above was the kill.
  await second.page.goto('about:blank');
  const third = await pocket.restart();
  await bare(third.page, host.home);
  expect(await said(third.page)).toBe('said');
  expect(await rows(third.page, 'records')).toEqual([{ id: 'a', json: '{}' }]);
});
