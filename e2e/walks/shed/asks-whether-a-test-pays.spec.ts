/** Hay that nobody tested, and whether a laboratory test of it pays: typed, left and come back to, answered in days. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { choice, field, link, sentence, words } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('the worth of a test is asked of a hay, kept as a draft and answered in days and money', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open('#/shed');
  await hands.tap(link(/^Grass hay/));
  await hands.see(sentence(/not proven/));
  const hay = new URL(page.url()).hash;
  await hands.tap(link('Does a test pay?'));
  await hands.see(sentence(/does a test pay\?$/));
  await hands.tap(choice('EUR'));
  await hands.type(field('How much there is'), '1500');
  await hands.type(field('How much is fed a day'), '6');
  await hands.type(field('Minutes a day for soaking'), '15');
  await hands.type(field('What the test costs'), '45');
  await hands.type(field('An hour of your time is worth'), '10');
  await hands.see(sentence(/^A test pays from \d+ days on, [\d.]+ kg: this hay lasts 250$/));
  // Without a price of tested hay, buying it is not compared, and soaking is no pass.
  await hands.see(words(/^Buying tested hay is not compared/));
  await hands.see(words(/^Soaking settles nothing/));
  await holds('worth-of-a-test');

  // Two prices are two of one currency; tested hay that costs little more is the cheaper way where the test does not pass it.
  await hands.type(field('A tonne of this hay costs'), '180');
  await hands.type(field('A tonne of tested hay costs'), '260');
  await hands.see(words(/^120\.00 EUR$/));
  const said = await readSentence(hands);
  expect(said).toMatch(/^A test (pays|does not pay)/);

  // Left and come back to: nothing typed is lost.
  await hands.open(hay);
  await hands.see(sentence(/not proven/));
  await hands.tap(link('Does a test pay?'));
  expect(await hands.see(field('How much there is'))).toBe('1500');
  expect(await readSentence(hands)).toBe(said);
  // What cannot be read is told at its field, and there is no answer meanwhile.
  await hands.type(field('What the test costs'), 'dear');
  await hands.see(sentence(/does a test pay\?$/));
});
