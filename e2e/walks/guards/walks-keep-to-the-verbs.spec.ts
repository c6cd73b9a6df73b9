/** The house rules of this folder, kept by a test. */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { repository } from '../../house/settings.ts';
import { expect, test } from '../../walk.ts';

const LINES = 400;

/** What a walk may not do: reach past the hands, wait by the clock, or let itself off. */
const forbidden =
  /\.locator\(|\bpage\.\$|querySelector|getBy[A-Z]\w+|waitForTimeout|waitForFunction|\btest\.(skip|only|fixme|fail)\b|from '@playwright\/test'/;

async function sources(folder: string): Promise<string[]> {
  const found: string[] = [];
  for (const entry of await readdir(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory() && entry.name !== 'node_modules') found.push(...(await sources(path)));
    if (entry.isFile() && entry.name.endsWith('.ts')) found.push(path);
  }
  return found;
}

test('walks speak the six verbs only', async () => {
  const walks = (await sources(join(repository, 'e2e', 'walks'))).filter((path) => !path.includes('guards'));
  expect(walks.length).toBeGreaterThan(0);
  const breaches: string[] = [];
  for (const path of walks) {
    for (const line of (await readFile(path, 'utf8')).split('\n')) {
      if (forbidden.test(line) && !/^import type /.test(line)) breaches.push(`${path}: ${line.trim()}`);
    }
  }
  expect(breaches).toEqual([]);
  expect('await page.locator("#x").click()').toMatch(forbidden);
});

test(`no file is over ${LINES} lines`, async () => {
  for (const path of await sources(join(repository, 'e2e'))) {
    const lines = (await readFile(path, 'utf8')).split('\n').length;
    expect(lines, path).toBeLessThanOrEqual(LINES);
  }
});
