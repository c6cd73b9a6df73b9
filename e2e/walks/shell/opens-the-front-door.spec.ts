/** Somebody opens the app for the first time, on a slow line. */
import { button, link, sentence } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

test('the first screen can be read before the wasm has come', async ({ hands, page, watch }) => {
  let letThrough = (): void => undefined;
  const held = new Promise<void>((resolve) => (letThrough = resolve));
  let asked = 0;
  await page.route('**/*.wasm', async (route) => {
    asked += 1;
    await held;
    await route.continue();
  });
  // The preload that was held back may be reported as not used in time.
  watch.tolerates(/preloaded/, 'the wasm is held back on purpose');

  await hands.open('');
  const first = await readSentence(hands);
  expect(first.length, 'the sentence says something').toBeGreaterThan(0);
  await hands.see(link('Start'));
  await hands.see(link('Example yard'));
  await expect.poll(() => asked, { message: 'the wasm was asked for and held back' }).toBeGreaterThan(0);

  letThrough();
  await hands.tap(link('Start'));
  await readSentence(hands, first);
});

test('without the wasm it says so, and Reload starts it once the wasm comes', async ({ hands, page, watch }) => {
  watch.expects(/wasm/, 'the wasm does not come at first');
  await page.route('**/*.wasm', (route) => route.abort());
  await hands.open('');
  await hands.see(link('Save a copy, mend the app'));
  const told = await readSentence(hands);
  expect(await hands.count(link('Start')), 'nothing is offered that would not work').toBe(0);

  await page.unroute('**/*.wasm');
  await hands.tap(button('Reload'));
  await hands.see(link('Start'));
  expect(await readSentence(hands)).not.toBe(told);
});

test('a script that never comes is told as well', async ({ hands, page, watch }) => {
  watch.expects(/ERR_FAILED/, 'the script never comes');
  await page.route('**/start-*.js', (route) => route.abort());
  await hands.open('');
  await hands.see(button('Reload'));
});

for (const { part, screen, says } of [
  { part: 'horses', screen: '#/start', says: 'A few answers, then a first plan' },
  { part: 'shed', screen: '#/shed/hay/new', says: 'Which hay is it?' },
]) {
  test(`a screen of ${part} waits for its part, says when it does not come, and Try again brings it`, async ({ hands, page, watch }) => {
    watch.expects(/ERR_FAILED|Failed to fetch/, 'the part does not come at first');
    await page.route(`**/later-${part}-*.wasm`, (route) => route.abort());
    await hands.open(screen);
    await hands.see(sentence('This part of the app has not come yet'));
    await page.unroute(`**/later-${part}-*.wasm`);
    await hands.tap(button('Try again'));
    await hands.see(sentence(says));
  });
}
