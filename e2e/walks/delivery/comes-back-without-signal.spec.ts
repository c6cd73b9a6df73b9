/** Somebody who was here once comes back in a field without signal. */
import { firstVisitIsOver } from '../../device/worker.ts';
import { type Hands, link, sentence } from '../../hands/hands.ts';
import { expect, test } from '../../walk.ts';

/** The doors of the first screen as deep links, with nothing read yet. */
const deepLinks = ['#/start', '#/example'];

/** Opens the front door and both deep links cold, and gives the sentence of each. */
async function readAll(hands: Hands): Promise<string[]> {
  const read: string[] = [];
  for (const address of ['', ...deepLinks]) {
    await hands.open(address);
    // A deep link shows the shell's own sentence until the app has started.
    if (read[0] !== undefined) await expect.poll(() => hands.see(sentence())).not.toBe(read[0]);
    read.push(await hands.see(sentence()));
  }
  return read;
}

test('every door opens with the server stopped', async ({ hands, host, page, watch }) => {
  await hands.open('');
  await firstVisitIsOver(page);
  const online = await readAll(hands);
  expect(new Set(online).size, 'each door has a sentence of its own').toBe(online.length);

  await host.stop();
  watch.tolerates(/sw\.js|ERR_CONNECTION_REFUSED|fetching the script/, 'the browser may look for a newer worker in vain');
  expect(await readAll(hands)).toEqual(online);
  await hands.open('');
  await hands.tap(link('Start'));
  await expect.poll(() => hands.see(sentence())).toBe(online[1]);
  await page.reload();
  await expect.poll(() => hands.see(sentence())).toBe(online[1]);
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
