/** Somebody puts it on the home screen. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { firstVisitIsOver } from '../../device/worker.ts';
import { fileLike } from '../../host/deploys.ts';
import { dist } from '../../house/settings.ts';
import { expect, test } from '../../walk.ts';

interface Picture {
  readonly src: string;
  readonly sizes: string;
  readonly type?: string;
  readonly purpose?: string;
  readonly form_factor?: string;
  readonly label?: string;
}

interface Manifest {
  readonly [key: string]: unknown;
  readonly icons: readonly Picture[];
  readonly screenshots?: readonly Picture[];
  readonly shortcuts?: readonly { readonly name: string; readonly url: string }[];
}

/** Width and height from the header of a PNG. */
async function pngSize(path: string): Promise<string> {
  const bytes = await readFile(join(dist, path));
  expect(bytes.subarray(1, 4).toString('latin1'), `${path} is a PNG`).toBe('PNG');
  return `${bytes.readUInt32BE(16)}x${bytes.readUInt32BE(20)}`;
}

test('the browser finds nothing that stands against it', async ({ hands, page, context }) => {
  await hands.open('');
  await firstVisitIsOver(page);
  const session = await context.newCDPSession(page);
  // A window that keeps nothing cannot install anything; everything else must be in order.
  const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
  expect(installabilityErrors.filter(({ errorId }) => errorId !== 'in-incognito')).toEqual([]);
  const manifest = await session.send('Page.getAppManifest');
  expect(manifest.errors).toEqual([]);
  expect(manifest.url).toMatch(/manifest\.webmanifest$/);
});

test('the manifest says all that an install asks for, and its pictures are there', async () => {
  const manifest = JSON.parse((await fileLike(/manifest\.webmanifest$/)).text) as Manifest;
  for (const key of ['id', 'name', 'short_name', 'start_url', 'scope', 'display', 'description', 'lang', 'theme_color']) {
    expect(manifest[key], key).toBeTruthy();
  }
  for (const key of ['id', 'start_url', 'scope']) {
    expect(String(manifest[key]), `${key} is relative, so that any folder can host it`).not.toMatch(/^\/|^https?:/);
  }
  const sizesFor = (purpose: string): string[] =>
    manifest.icons.filter((icon) => (icon.purpose ?? 'any').split(' ').includes(purpose)).map(({ sizes }) => sizes);
  expect(sizesFor('any')).toEqual(expect.arrayContaining(['192x192', '512x512']));
  expect(sizesFor('maskable').length, 'a maskable icon').toBeGreaterThan(0);
  expect(manifest.icons.filter(({ purpose }) => purpose?.includes(' ')), 'each icon has one purpose').toEqual([]);
  for (const picture of [...manifest.icons, ...(manifest.screenshots ?? [])]) {
    if (picture.src.endsWith('.svg')) continue;
    expect(await pngSize(picture.src), picture.src).toBe(picture.sizes);
  }
});
