/** Photographs: taken or chosen, made small, kept beside their records, laid side by side, taken back. */
import type { Page, TestInfo } from '@playwright/test';
import { asShapeOne, databases, records, rows } from '../../device/database.ts';
import { hasNoRoom } from '../../device/faults.ts';
import {
  cameraOf,
  Chooser,
  drawn,
  hasCamera,
  jumped,
  onScreen,
  pictures,
  segmentsOf,
  sizeOf,
  toldByCamera,
  watchJumps,
} from '../../device/photographs.ts';
import { firstVisitIsOver } from '../../device/worker.ts';
import { button, field, type Hands, link, sentence, thing, words } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal } from '../../models/animals.ts';
import { expect, test } from '../../walk.ts';

/** So many days before now. */
const ago = (days: number): Date => new Date(Date.now() - days * 86_400_000);

/** A new animal called Moss; gives its address. */
async function haveMoss(hands: Hands, page: Page): Promise<string> {
  await hands.open(newAnimalForm);
  await fillIn(hands, { name: 'Moss', kind: 'Pony' });
  await saveAnimal(hands, 'Moss');
  return new URL(page.url()).hash.replace(/\/weigh$/, '');
}

const chooserOf = (page: Page, info: TestInfo): Chooser => new Chooser(page, info.outputPath('files'));

test('ten photographs are kept at once, shown without signal, and what they take is said', async (
  { transactions, hands, host, page, watch, holds },
  info,
) => {
  test.setTimeout(240_000);
  watch.tolerates(/sw\.js|ERR_CONNECTION_REFUSED|fetching the script/, 'the browser may look for a newer worker in vain');
  await watchJumps(page.context());
  const camera = chooserOf(page, info);
  const moss = await haveMoss(hands, page);
  await firstVisitIsOver(page);
  await hands.open(`${moss}/photos`);
  await hands.see(sentence('Moss was never photographed'));
  await hands.see(words('No photograph takes any room yet'));
  await holds('photos-none');
  await hands.tap(link(/^From the side/));
  await hands.see(sentence('Moss from the side: no photograph yet'));
  await holds('photos-of-pose-none');

  for (let taken = 1; taken <= 10; taken += 1) {
    camera.gives(await drawn(page, { width: 1600, height: 1200, seed: taken }), ago(77 - 7 * taken));
    await hands.tap(button('Photograph the side'));
    await hands.see(sentence(`Moss from the side: ${taken} photograph${taken === 1 ? '' : 's'}`));
  }
  await hands.see(words('Saved.'));
  const written = transactions.filter(({ stores, mode }) => stores.includes('pictures') && mode === 'readwrite');
  expect(written).toHaveLength(10);
  for (const one of written) {
    expect(one.durability).toBe('strict');
    expect(one.stores, 'in the transaction of its record').toContain('records');
  }

  await host.stop();
  await hands.open(`${moss}/photos/side`);
  await hands.see(sentence('Moss from the side: 10 photographs'));
  const before = await jumped(page);
  const shown = await onScreen(page);
  expect(shown, 'then, now, and all ten').toHaveLength(12);
  for (const { alt, across } of shown) {
    expect(alt).toMatch(/^Moss from the side, \d{1,2} [A-Z][a-z]+ \d{4}$/);
    expect(across).toBe(1280);
  }
  expect((await jumped(page)) - before, 'nothing moves when a picture comes').toBeLessThan(0.01);
  expect(new Set(shown.map(({ alt }) => alt)).size, 'each with its own day').toBe(10);
  await holds('photos-of-pose');
  const kept = await pictures(page);
  expect(kept).toHaveLength(10);
  for (const { sha256, found, kind, bytes } of kept) {
    expect(found).toBe(sha256);
    expect(kind).toBe('ArrayBuffer');
    expect(bytes.length).toBeLessThanOrEqual(300_000);
  }

  // Then is the first, and can be stepped on.
  const first = shown[0]?.alt;
  await hands.see(words(/^Then, /));
  await hands.tap(button('Later'));
  await expect.poll(async () => (await onScreen(page))[0]?.alt).not.toBe(first);
  await hands.tap(button('Earlier'));
  await expect.poll(async () => (await onScreen(page))[0]?.alt).toBe(first);

  await hands.tap(link('Back'));
  await hands.see(sentence('Moss was last photographed 7 days ago'));
  await hands.see(words(/^10 photographs take [\d.]+ (kB|MB)$/));
  await hands.see(words(/^Room for about .* by what the browser says$|^This browser does not say/));
  await holds('photos');
  await hands.open('#/horses');
  await hands.see(link(/^Moss/));
  expect((await onScreen(page)).map(({ alt }) => alt)).toEqual([expect.stringMatching(/^Moss from the side, /)]);
  await holds('horses-photograph');
});

test('a large picture is made small, turned as it was held, and says nothing of where it was taken', async ({ hands, page }, info) => {
  test.setTimeout(180_000);
  const camera = chooserOf(page, info);
  const moss = await haveMoss(hands, page);
  await hands.open(`${moss}/photos/crest`);
  await hands.see(sentence('The crest of Moss: no photograph yet'));
  const noise = await drawn(page, { width: 3200, height: 2400, seed: 3, noise: true });
  const told = toldByCamera(noise, '51.5 N 0.1 W Hill Farm', 6);
  expect(told.length).toBeGreaterThan(2_000_000);
  camera.gives(told, new Date());
  await hands.tap(button('Photograph the crest'));
  await hands.see(sentence('The crest of Moss: 1 photograph'));

  const [kept, ...more] = await pictures(page);
  expect(more).toEqual([]);
  const bytes = kept?.bytes ?? Buffer.alloc(0);
  expect(bytes.length).toBeGreaterThan(10_000);
  expect(bytes.length).toBeLessThanOrEqual(300_000);
  const { width, height } = sizeOf(bytes);
  expect(Math.max(width, height)).toBeLessThanOrEqual(1280);
  expect(height, 'held upright').toBeGreaterThan(width);
  for (const word of ['Exif', 'Hill Farm', '51.5', 'http', 'Photoshop']) expect(bytes.includes(word), word).toBe(false);
  const beside = segmentsOf(bytes).filter(({ marker }) => marker >= 0xe0 || marker === 0xfe);
  expect(beside.every(({ marker, held }) => marker === 0xe0 && held.length === 14)).toBe(true);
  const [photo] = await records(page, 'photo');
  expect(photo?.['body']).toEqual({
    bytes: bytes.length,
    dated: 'taken',
    height_px: height,
    pose: 'crest',
    sha256: kept?.sha256,
    width_px: width,
  });
});

test('its day is set right, and it is taken back and brought back', async ({ hands, page, holds }, info) => {
  const camera = chooserOf(page, info);
  const moss = await haveMoss(hands, page);
  await hands.open(`${moss}/photos/behind`);
  await hands.see(sentence('Moss from behind: no photograph yet'));
  camera.gives(await drawn(page, { width: 600, height: 800, seed: 4 }), ago(3));
  await hands.tap(button('Choose a picture'));
  await hands.see(sentence('Moss from behind: 1 photograph'));
  await hands.see(words(/, as its file says$/));
  await hands.tap(link(/^Moss from behind/));
  await hands.see(sentence(/^Moss from behind, /));
  await hands.see(words(/^600 by 800 pixels, \d+ kB$/));
  await onScreen(page);
  await holds('photo');
  await hands.type(field('Taken on'), '3.3.2026');
  await hands.tap(button('Save the day'));
  await hands.see(sentence('Moss from behind: 1 photograph'));
  await hands.see(link(/3 Mar 2026$/));
  expect(await hands.count(words(/as its file says$/))).toBe(0);

  await hands.tap(link(/^Moss from behind/));
  await hands.see(sentence('Moss from behind, 3 Mar 2026'));
  await hands.tap(button('Take it back'));
  await hands.see(sentence('Moss from behind: no photograph yet'));
  expect((await records(page, 'photo')).map((record) => record['gone'])).toEqual([true]);
  expect(await pictures(page), 'nothing is deleted').toHaveLength(1);
  await hands.tap(button('Undo'));
  await hands.see(sentence('Moss from behind: 1 photograph'));
  await onScreen(page);
});

test('the last one lies pale over what the camera sees, and the camera is on no longer than that', async ({ hands, page, holds }, info) => {
  test.setTimeout(180_000);
  await hasCamera(page.context(), 'gives');
  const camera = chooserOf(page, info);
  const moss = await haveMoss(hands, page);
  await hands.open(`${moss}/photos/side`);
  await hands.see(sentence('Moss from the side: no photograph yet'));
  expect(await hands.count(button('Take it over the last one'))).toBe(0);
  camera.gives(await drawn(page, { width: 1280, height: 720, seed: 5 }), new Date());
  await hands.tap(button('Photograph the side'));
  await hands.see(sentence('Moss from the side: 1 photograph'));
  expect(await cameraOf(page), 'nobody asked before the tap').toEqual({ asked: 0, running: 0 });

  await hands.tap(button('Take it over the last one'));
  await hands.see(sentence('Bring it under the one of today'));
  await hands.see(thing('img', /^Moss from the side, .*, pale over the view$/));
  await onScreen(page);
  expect(await cameraOf(page)).toEqual({ asked: 1, running: 1 });
  await holds('photo-live');
  await hands.tap(button('Hide the last one'));
  await expect.poll(() => hands.count(thing('img'))).toBe(0);
  await hands.tap(button('Take it now'));
  await hands.see(sentence('Moss from the side: 2 photographs'));
  expect((await cameraOf(page)).running).toBe(0);
  const kept = await pictures(page);
  expect(kept.map(({ bytes }) => sizeOf(bytes).width)).toEqual([1280, 1280]);

  await hands.tap(button('Take it over the last one'));
  await hands.see(sentence('Bring it under the one of today'));
  await hands.tap(button('Back'));
  await hands.see(sentence('Moss from the side: 2 photographs'));
  expect((await cameraOf(page)).running).toBe(0);
});

for (const [answer, said] of [
  ['refuses', /^The camera was not allowed/],
  ['none', /^This browser gives no camera to a page/],
] as const) {
  test(`where the camera is ${answer === 'none' ? 'not there' : 'refused'}, the phone's own takes it`, async ({ hands, page }, info) => {
    await hasCamera(page.context(), answer);
    const camera = chooserOf(page, info);
    const moss = await haveMoss(hands, page);
    await hands.open(`${moss}/photos/side`);
    for (const [count, sentenceNow] of [[1, '1 photograph'], [2, '2 photographs']] as const) {
      camera.gives(await drawn(page, { width: 640, height: 480, seed: 10 + count }), new Date());
      await hands.tap(button('Photograph the side'));
      await hands.see(sentence(`Moss from the side: ${sentenceNow}`));
      // The line of the save comes under the key and lifts it.
      await hands.see(button('Undo'));
      // The line of the save comes and goes under the key, so that a tap may miss it: whoever misses taps again.
      await expect
        .poll(async () => {
          await hands.tap(button('Take it over the last one'));
          return hands.count(words(said));
        })
        .toBeGreaterThan(0);
    }
  });
}

test('a full disk is said, and what was kept before is still there', async ({ hands, page }, info) => {
  const camera = chooserOf(page, info);
  const moss = await haveMoss(hands, page);
  await hands.open(`${moss}/photos/side`);
  camera.gives(await drawn(page, { width: 640, height: 480, seed: 20 }), new Date());
  await hands.tap(button('Photograph the side'));
  await hands.see(sentence('Moss from the side: 1 photograph'));
  await hasNoRoom(page);
  camera.gives(await drawn(page, { width: 640, height: 480, seed: 21 }), new Date());
  await hands.tap(button('Photograph the side'));
  await hands.see(words(/^There is no room left on this device/));
  await hands.see(sentence('Moss from the side: 1 photograph'));
  expect(await records(page, 'photo')).toHaveLength(1);
  expect(await pictures(page)).toHaveLength(1);
});

test('a database of an earlier shape steps up and loses nothing', async ({ hands, page }, info) => {
  const camera = chooserOf(page, info);
  const moss = await haveMoss(hands, page);
  // Away from the app, which would hold the database open.
  await hands.open('reset.html');
  const before = { records: await rows(page, 'records'), past: await rows(page, 'past'), meta: await rows(page, 'meta') };
  await asShapeOne(page);
  expect(await databases(page)).toEqual([{ name: 'tussock', version: 1 }]);
  await hands.open(`${moss}/photos`);
  await hands.see(sentence('Moss was never photographed'));
  expect(await databases(page)).toEqual([{ name: 'tussock', version: 2 }]);
  expect({ records: await rows(page, 'records'), past: await rows(page, 'past'), meta: await rows(page, 'meta') }).toEqual(before);
  camera.gives(await drawn(page, { width: 640, height: 480, seed: 30 }), new Date());
  await hands.tap(button('Photograph the side'));
  await hands.see(sentence('Moss was last photographed today'));
  expect(await pictures(page)).toHaveLength(1);
});
