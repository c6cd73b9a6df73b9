/** What was really eaten: a day nobody answered is not known, and the sums say so. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { link, sentence, words } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('the week of an animal says what is to come today, and what nobody answered two days on', async ({ pocket }) => {
  const first = await pocket.takeOut();
  await wakeAt(first.page, dawn);
  await haveAPlan(first.hands);
  await first.hands.tap(link('What was really eaten'));
  await first.hands.see(sentence('Bramble: nothing was due or logged yet'));
  await first.hands.see(words(/of today is still to come\.$/));
  await first.hands.see(words(/^Grass is not known until it is logged/));
  const ledger = new URL(first.page.url()).hash;
  expect(ledger).toMatch(/\/ledger$/);
  await first.holds('ledger-first-day');

  // Two days on nobody has answered anything: that is not known, and no fast.
  await pocket.putAway();
  const later = await pocket.takeOut();
  await wakeAt(later.page, new Date(dawn.getTime() + 2 * 24 * 60 * 60_000));
  await later.hands.open(ledger);
  expect(await readSentence(later.hands)).toBe('What Bramble ate is not known: nobody answered');
  await later.hands.see(words(/^Some of it nobody answered for/));
  await later.holds('ledger-nobody-answered');
});
