/** Two visits cannot do without a long wait: it is seen as a day, mends stand beside it, and it is accepted once. */
import { records } from '../../device/database.ts';
import { button, link, sentence, thing, words } from '../../hands/hands.ts';
import { haveAPlan } from '../../models/start.ts';
import { readBeforeAgain } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

interface Stored {
  readonly gap_accepted_min?: number;
}

test('a wait over the line is accepted once, and never by using the plan', async ({ hands, page, holds }) => {
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/plan`);
  await hands.tap(link(/Longest wait|It waits/));
  await hands.see(sentence(/^2 nets, longest wait/));
  // The waits stand between the visits, with their length.
  const list = thing('list', 'The day, visit by visit');
  expect(await hands.count(words(/^Hang [\d.]+ kg$/, list))).toBe(2);
  expect(await hands.count(words(/^No forage for [\d.]+ h$/, list))).toBe(2);
  await hands.see(words(/^Double each net: longest wait/));
  await hands.see(words(/^One more visit about/));
  await holds('plan-day');

  hands.touches.reset();
  await readBeforeAgain(page);
  await hands.tap(button(/^Accept a wait of [\d.]+ h/));
  await hands.see(words(/^Accepted: a wait of up to/));
  expect(hands.touches.taps).toBe(1);
  expect(await hands.count(button(/^Accept a wait/))).toBe(0);
  const [plan] = await records(page, 'plan');
  const body = plan?.['body'] as Stored | undefined;
  expect(body?.gap_accepted_min).toBeGreaterThan(360);

  // It is still accepted after a reload.
  await hands.open(`${horse}/day`);
  await hands.see(words(/^Accepted: a wait of up to/));
  await hands.see(link('Weigh nets'));
});
