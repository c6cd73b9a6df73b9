/** The phone, short of room, has thrown a file out of the cache. */
import { cached, evict, firstVisitIsOver } from '../../device/worker.ts';
import { button, link, sentence } from '../../hands/hands.ts';
import { expect, test } from '../../walk.ts';

for (const [lost, path] of [['wasm', /\.wasm$/], ['script', /app[^/]*\.js$/], ['style sheet', /\.css$/]] as const) {
  test(`with a line the lost ${lost} is fetched again and kept`, async ({ hands, page }) => {
    await hands.open('#/start');
    await firstVisitIsOver(page);
    const whole = (await cached(page)).length;
    const before = await hands.see(sentence());
    expect(await evict(page, path)).toBe(1);

    await hands.open('#/start');
    await expect.poll(() => hands.see(sentence())).toBe(before);
    await expect.poll(async () => (await cached(page)).length, { message: 'the cache is whole again' }).toBe(whole);
  });
}

test('without a line the loss is told in words, with ways out', async ({ hands, host, page, watch }) => {
  watch.tolerates(/./, 'a start that fails is allowed to say so on the console');
  await hands.open('');
  await firstVisitIsOver(page);
  expect(await evict(page, /\.wasm$/)).toBe(1);
  await host.stop();

  await hands.open('#/start');
  await hands.see(sentence());
  await expect
    .poll(async () => (await hands.count(link(/mend|reset|try again|copy/i))) + (await hands.count(button(/mend|reset|try again/i))), {
      message: 'a way out is offered',
    })
    .toBeGreaterThan(0);
});
