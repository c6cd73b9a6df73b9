/** Frozen taps, two tubs at once, a tub that was stopped by mistake: what a cold morning does to the soaks of a day. */
import { dawn, sleepFor, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, choice, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

/** The reasons for leaving out the soak of the first visit. */
const notSoaked = thing('region', /^Not soaked today: Bramble, for 07:00$/);

test('the tap is frozen: one tap, and the net hangs lighter; then it is soaked after all', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open('#/shed');
  await hands.tap(link('Soaks and tubs'));
  await hands.see(sentence(/to start$/));
  // The dry hay's own verdict and the ways out stand where it is decided.
  await hands.see(words(/^Dry, .+ for Bramble\. Give less grass/, notSoaked));
  await holds('soaks-of-the-day');
  hands.touches.reset();
  await hands.tap(button('Frozen', notSoaked));
  await hands.see(words('Not soaked: hang until the scale reads'));
  expect(hands.touches.taps).toBe(1);
  await hands.see(sentence(/1 net not soaked$/));
  await holds('not-soaked');
  await hands.open('#/round');
  await hands.see(words(/not soaked, [\d.]+ kg to soak it/));
  expect(JSON.stringify(await records(page, 'job'))).toContain('frozen');

  // The scale asks for the lighter reading.
  await hands.open('#/shed');
  await hands.tap(link('Weigh nets'));
  await hands.see(words('Not soaked: hang until the scale reads'));

  // Twenty minutes later the tap runs.
  await sleepFor(page, 20);
  await hands.open('#/shed/soaks');
  await hands.tap(button('Soak it after all, Bramble'));
  await hands.see(notSoaked);
  expect(await hands.count(words('Not soaked: hang until the scale reads'))).toBe(0);
});

test('two tubs at once are lifted out apart, and every step can be taken back', async ({ hands, page }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);

  // A tub with its name and what it holds.
  await hands.open('#/shed/tubs/new');
  await hands.type(field('Name'), 'Tub 1');
  await hands.type(field('How much hay it holds, dry'), '12');
  await hands.see(words('For 12.00 kg of hay: 120 to 180 l of water, fresh each time.'));
  await hands.tap(button('Save the tub'));
  await hands.see(sentence(/to start$/));
  await hands.see(words(/^2\.25 of 12\.00 kg this tub holds$/));

  // Started from the list, with one tap.
  hands.touches.reset();
  await hands.tap(button('Start tub 1'));
  await expect.poll(() => hands.count(button('Start tub 1'))).toBe(0);
  expect(hands.touches.taps).toBe(1);
  await hands.see(words(/In the water, lift out at/));

  // And another beside it, for the whole yard.
  await hands.open('#/shed/tub/new');
  await hands.tap(choice('The whole yard'));
  await hands.type(field(/^Hay, dry/), '3');
  await hands.tap(button('Start the soak'));
  await hands.see(words('Lift out in'));
  const second = new URL(page.url()).hash;
  expect(await records(page, 'tub')).toHaveLength(2);

  await hands.open('#/round');
  await readSentence(hands);
  await hands.see(link(/Lift out tub 1/));
  await hands.see(link(/Lift out tub 2/));

  // Stopped by mistake, taken back at once; and again, long after the ten seconds.
  await hands.open(second);
  await hands.see(words('Lift out in'));
  await hands.tap(button('Stop this tub'));
  await hands.see(sentence(/^Stopped/));
  await hands.tap(button('Undo'));
  await hands.see(words('Lift out in'));
  await readBeforeAgain(page);
  await hands.tap(button('Stop this tub'));
  await hands.see(sentence(/^Stopped/));
  await sleepFor(page, 10);
  await hands.tap(button(/^Not stopped at/));
  await hands.see(words('Lift out in'));

  // Lifted out too soon on the wrong tub.
  await sleepFor(page, 55);
  await hands.see(words(/^Lift out now/));
  await hands.tap(button('Lifted out now'));
  await hands.see(words('Drained in'));
  await sleepFor(page, 5);
  await hands.tap(button(/^Not lifted out at/));
  await hands.see(words(/^Lift out now/));
});
