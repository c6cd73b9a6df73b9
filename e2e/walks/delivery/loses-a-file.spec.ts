/** The phone, short of room, has thrown files out of the cache. */
import { cached, evict, firstVisitIsOver } from '../../device/worker.ts';
import { link } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

/** What is lost, its path, and a screen that needs it. */
const losses = [
  ['wasm', /app-\w+\.wasm$/, '#/start'],
  ['wasm of the horses', /later-horses-\w+\.wasm$/, '#/start'],
  ['wasm of the shed', /later-shed-\w+\.wasm$/, '#/shed/hay/new'],
  ['wasm that all parts need', /later-horses-plans-shed-\w+\.wasm$/, '#/shed/hay/new'],
  ['app script', /app-\w+\.js$/, '#/start'],
  ['join script', /join-\w+\.js$/, '#/start'],
  ['start script', /start-\w+\.js$/, '#/start'],
  ['page', /index\.html$/, '#/start'],
  ['icon', /icon-192-\w+\.png$/, '#/start'],
] as const;

for (const [lost, path, screen] of losses) {
  test(`with a line the lost ${lost} is fetched again and kept`, async ({ hands, page }) => {
    await hands.open(screen);
    const before = await readSentence(hands);
    await firstVisitIsOver(page);
    const whole = await cached(page);
    expect(await evict(page, path)).toBe(1);

    await hands.open(screen);
    expect(await readSentence(hands)).toBe(before);
    await expect.poll(() => cached(page), { message: 'the cache is whole again' }).toEqual(expect.arrayContaining(whole));
  });
}

test('without a line the loss is told in words, and the ways out work', async ({ hands, host, page, watch }) => {
  watch.tolerates(/ERR_FAILED|ERR_CONNECTION_REFUSED|Failed to load resource/, 'there is no line');
  await hands.open('#/start');
  const before = await readSentence(hands);
  await firstVisitIsOver(page);
  expect(await evict(page, /app-\w+\.wasm$/)).toBe(1);
  await host.stop();

  await hands.open('#/start');
  const told = await readSentence(hands);
  expect(told).not.toBe(before);
  await hands.see(link('Reload'));
  await hands.tap(link('Save a copy of everything, mend the app'));
  await readSentence(hands, told);

  await host.start();
  await hands.open('#/start');
  await expect.poll(() => readSentence(hands), { message: 'with the line back the app starts' }).toBe(before);
});

test('an icon that is lost without a line keeps nobody out', async ({ hands, host, page, watch }) => {
  watch.tolerates(/ERR_FAILED|ERR_CONNECTION_REFUSED|Failed to load resource/, 'there is no line');
  await hands.open('#/start');
  const before = await readSentence(hands);
  await firstVisitIsOver(page);
  expect(await evict(page, /icon-512-\w+\.png$/)).toBe(1);
  await host.stop();
  await hands.open('#/start');
  expect(await readSentence(hands)).toBe(before);
});
