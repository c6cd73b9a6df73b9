/** Nothing works any more, and somebody opens the page for that. */
import { readFile } from 'node:fs/promises';
import { databases, putRow, rows } from '../../device/database.ts';
import { cached, firstVisitIsOver } from '../../device/worker.ts';
import { button, link, words } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

test('it needs no wasm and nothing of the app, and makes no database by looking', async ({ hands, page }) => {
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await hands.open('reset.html');
  await readSentence(hands);
  await hands.see(words('Nothing is stored'));
  expect(asked.some((url) => url.endsWith('/reset.html'))).toBe(true);
  expect(asked.filter((url) => /\.wasm$|\/app-|\/start-/.test(url))).toEqual([]);
  expect(await databases(page)).toEqual([]);
});

test('it writes out every row as text', async ({ hands, page }) => {
  await hands.open('reset.html');
  await putRow(page, { id: 'a-1', json: '{"name":"Bramble"}' });
  await hands.open('reset.html');
  await hands.see(words('records 1'));
  const download = page.waitForEvent('download');
  await hands.tap(button('Save a copy of everything as text'));
  const saved = await download;
  expect(saved.suggestedFilename()).toMatch(/^tussock-copy-\d{4}-\d\d-\d\d\.txt$/);
  const [head, row] = (await readFile(await saved.path(), 'utf8')).trim().split('\n').map((line) => JSON.parse(line) as unknown);
  expect(head).toMatchObject({ tussock: 'dump', v: 1 });
  expect(row).toEqual({ database: 'tussock', store: 'records', key: 'a-1', row: { id: 'a-1', json: '{"name":"Bramble"}' } });
});

test("it takes the app's files away, fetches them anew and leaves the records", async ({ hands, page }) => {
  await hands.open('');
  await hands.see(link('Start'));
  await firstVisitIsOver(page);
  await hands.open('reset.html');
  // A row that no index knows: the app does not show it, and nobody may lose it.
  await putRow(page, { id: 'a-1', json: '{}' });
  const kept = await rows(page, 'records');
  expect(kept).toEqual([{ id: 'a-1', json: '{}' }]);
  const whole = (await cached(page)).length;
  expect(whole).toBeGreaterThan(0);

  await hands.tap(button("Remove the app's files and reload"));
  await hands.see(link('Start'));
  await firstVisitIsOver(page);
  await expect.poll(async () => (await cached(page)).length).toBe(whole);
  expect(await rows(page, 'records')).toEqual(kept);
});
