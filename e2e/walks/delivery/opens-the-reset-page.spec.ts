/** Nothing works any more, and somebody opens the page for that. */
import { firstVisitIsOver } from '../../device/worker.ts';
import { sentence, words } from '../../hands/hands.ts';
import { expect, test } from '../../walk.ts';

test('it comes from the server, without wasm and past the worker', async ({ hands, page }) => {
  await hands.open('');
  await firstVisitIsOver(page);
  const asked: string[] = [];
  let pastTheWorker = false;
  page.on('request', (request) => asked.push(request.url()));
  page.on('response', (response) => {
    if (response.url().endsWith('/reset.html')) pastTheWorker = !response.fromServiceWorker();
  });
  await hands.open('reset.html');
  await hands.see(sentence());
  expect(pastTheWorker).toBe(true);
  expect(asked.filter((url) => url.endsWith('.wasm'))).toEqual([]);
  expect(await hands.count(words(/vet|records|copy/i))).toBeGreaterThan(0);
});
