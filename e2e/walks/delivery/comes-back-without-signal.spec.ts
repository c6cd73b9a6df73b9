/** Somebody who was here once comes back in a field without signal. */
import { firstVisitIsOver } from '../../device/worker.ts';
import { type Hands, link } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

/** Addresses inside the app, with no records yet, some in each part of the wasm. */
const deepLinks = ['#/start', '#/example', '#/horses/new', '#/horses/group/new', '#/round', '#/shed', '#/shed/hay/new'];

/** Opens the front door and each address cold, and gives the sentence of each. */
async function readAll(hands: Hands): Promise<string[]> {
  await hands.open('');
  await hands.see(link('Start'));
  const front = await readSentence(hands);
  const read = [front];
  for (const address of deepLinks) {
    await hands.open(address);
    read.push(await readSentence(hands, front));
  }
  return read;
}

test('every door opens with the server stopped', async ({ hands, host, page, watch }) => {
  await hands.open('');
  await firstVisitIsOver(page);
  const online = await readAll(hands);

  await host.stop();
  watch.tolerates(/sw\.js|ERR_CONNECTION_REFUSED|fetching the script/, 'the browser may look for a newer worker in vain');
  expect(await readAll(hands)).toEqual(online);
  // From inside, too, and when the page is loaded anew where it stands.
  await hands.open('');
  await hands.tap(link('Start'));
  await expect.poll(() => readSentence(hands)).toBe(online[1]);
  await page.reload();
  await expect.poll(() => readSentence(hands)).toBe(online[1]);
});

for (const how of ['put away', 'killed'] as const) {
  test(`it starts without a server after the browser was ${how}`, async ({ pocket, host, watch }) => {
    const before = await pocket.takeOut();
    await before.hands.open('');
    await firstVisitIsOver(before.page);
    const online = await readAll(before.hands);

    await host.stop();
    watch.tolerates(/sw\.js|ERR_CONNECTION_REFUSED|fetching the script/, 'the browser may look for a newer worker in vain');
    if (how === 'killed') await pocket.kill();
    else await pocket.putAway();
    const after = await pocket.takeOut();
    expect(await readAll(after.hands)).toEqual(online);
  });
}
