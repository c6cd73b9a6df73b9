/** A weight over weeks: one reading is no trend, seven are, and one that cannot be is kept and not believed. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, field, link, sentence, words } from '../../hands/hands.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

const week = 7 * 24 * 60 * 60_000;

test('a tape every week, a trend with its band and its target, and an odd reading that moves nothing', async ({ hands, page, holds }) => {
  test.setTimeout(180_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.tap(link('Weight over time'));
  expect(await readSentence(hands)).toBe('Bramble: too few weighings to say where it goes');
  await hands.see(words(/^What fills its gut has changed/));
  await holds('weight-first');

  // About 0.7 % a week, told by a girth that is out by half a centimetre now and then.
  const girths = ['161.5', '161', '160.5', '160', '160', '159', '158.5', '158'];
  for (const [index, girth] of girths.entries()) {
    await wakeAt(page, new Date(dawn.getTime() + (index + 1) * week));
    await hands.open(`${horse}/weigh`);
    await hands.type(field('Heart girth'), girth);
    await hands.tap(button('Save weight'));
    await hands.see(words(/^Saved\./));
  }
  await hands.open(`${horse}/weight`);
  await hands.see(sentence(/^Bramble: losing \d\.\d kg a week$/));
  await hands.see(words(/^\d\.\d % a week, between \d\.\d and \d\.\d/));
  await holds('weight-trend');

  const before = await readSentence(hands);
  await wakeAt(page, new Date(dawn.getTime() + 9 * week));
  await hands.open(`${horse}/weigh`);
  await hands.type(field('Heart girth'), '184');
  await hands.tap(button('Save weight'));
  // It is asked back, and kept as it was read.
  await hands.tap(button(/^It is right/));
  await readBeforeAgain(page);
  await hands.tap(button('Save weight'));
  await hands.see(words(/^Saved\./));
  await hands.open(`${horse}/weight`);
  await hands.see(words('odd: kept, not believed'));
  expect(await readSentence(hands)).toBe(before);
  expect(await records(page, 'weight')).toHaveLength(10);
});
