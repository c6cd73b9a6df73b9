/** Nothing works any more, and somebody opens the page for that. */
import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { databases, putRow, rows } from '../../device/database.ts';
import { Chooser, drawn } from '../../device/photographs.ts';
import { cached, firstVisitIsOver } from '../../device/worker.ts';
import { button, link, sentence, words } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal } from '../../models/animals.ts';
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

test('it writes out the pictures too', async ({ hands, page }, info) => {
  await hands.open(newAnimalForm);
  await fillIn(hands, { name: 'Moss', kind: 'Pony' });
  await saveAnimal(hands, 'Moss');
  const moss = new URL(page.url()).hash.replace(/\/weigh$/, '');
  const camera = new Chooser(page, info.outputPath('files'));
  await hands.open(`${moss}/photos`);
  camera.gives(await drawn(page, { width: 800, height: 600, seed: 2 }), new Date());
  await hands.tap(button('Photograph the side'));
  await hands.see(sentence('Moss was last photographed today'));

  await hands.open('reset.html');
  await hands.see(words(/\bpictures 1\b/));
  const download = page.waitForEvent('download');
  await hands.tap(button('Save a copy of everything as text'));
  const lines = (await readFile(await (await download).path(), 'utf8')).trim().split('\n');
  type Line = { store?: string; key?: string; row?: { sha256: string; bytes: { bytes: number; base64: string } } };
  const written = lines.map((line) => JSON.parse(line) as Line).filter(({ store }) => store === 'pictures');
  expect(written).toHaveLength(1);
  const row = written[0]?.row;
  const bytes = Buffer.from(row?.bytes.base64 ?? '', 'base64');
  expect(bytes.length).toBe(row?.bytes.bytes);
  expect(createHash('sha256').update(bytes).digest('hex')).toBe(row?.sha256);
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
