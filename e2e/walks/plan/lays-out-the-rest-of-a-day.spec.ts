/** A visit was missed: the rest of today is laid out anew with why and what it leaves, hung so by one tap, for today only. */
import { dawn, sleepFor, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, link, sentence, thing, words } from '../../hands/hands.ts';
import { haveAPlan } from '../../models/start.ts';
import { readBeforeAgain } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

interface Relaid {
  readonly day?: string;
  readonly plan?: string;
}

test('the morning net is late: the rest of today is hung so, and tomorrow is the plan again', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  const [before] = await records(page, 'plan');
  // At 05:45 nothing is missed.
  await hands.open(`${horse}/day`);
  await hands.see(sentence(/^2 nets, longest wait/));
  expect(await hands.count(words(/^Rest of today/))).toBe(0);

  // The net of 07:00 still does not hang at 09:45.
  await sleepFor(page, 4 * 60);
  await hands.see(words(/^The net of 07:00 is 2 h 45 min late\.$/));
  await hands.see(words(/^Rest of today: hang [\d.]+ kg now, [\d.]+ kg at 18:00$/));
  await hands.see(words(/^Longest wait until tomorrow's first visit/));
  await holds('day-anew');
  hands.touches.reset();
  await readBeforeAgain(page);
  await hands.tap(button('Hang the rest so'));
  await hands.see(sentence(/^Today laid out anew: 2 visits left$/));
  expect(hands.touches.taps).toBe(1);
  expect(hands.touches.digits).toBe(0);
  expect(await hands.count(button('Hang the rest so'))).toBe(0);

  // It is a record of its own; the plan is what it was.
  const [relaid] = await records(page, 'day_relaid');
  const body = relaid?.['body'] as Relaid | undefined;
  expect(body?.day).toBe('2026-05-05');
  const [after] = await records(page, 'plan');
  expect(after).toEqual(before);

  // The next day is the plan's.
  await wakeAt(page, new Date(dawn.getTime() + 24 * 60 * 60_000));
  await hands.see(sentence(/^2 nets, longest wait/));
});

test('a net that is not soaked yet is not ticked: it opens the soaks', async ({ hands, page }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await sleepFor(page, 75);
  await hands.open('#/round');
  const net = link(/07:00.*Hang net 1.*to be soaked first/);
  await hands.see(net);
  expect(await hands.count(button(/^Done: hang net 1, .*to be soaked first/))).toBe(0);
  await hands.tap(net);
  await hands.see(thing('region', /^Not soaked today: Bramble, for 07:00$/));
});
