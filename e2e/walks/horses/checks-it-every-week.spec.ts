/** The weekly check: two girths and a look-over, in the touches the trade has for it, broken off twice with nothing lost. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records, rows } from '../../device/database.ts';
import { button, choice, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { haveAPlan } from '../../models/start.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

const week = 7 * 24 * 60 * 60_000;

test('heart girth, belly girth and a look-over in 8 touches and 8 digits, reloaded in the middle of both', async ({ hands, page, holds }) => {
  test.setTimeout(120_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await wakeAt(page, new Date(dawn.getTime() + week));
  await hands.open(horse);
  await readSentence(hands);

  hands.touches.reset();
  await hands.tap(link(/^Weigh (?!Bramble)/));
  await hands.type(field('Heart girth'), '162');
  await expect.poll(async () => JSON.stringify(await rows(page, 'drafts'))).toContain('162');
  // Somebody calls, and the browser throws the page away.
  await hands.open(`${horse}/weigh`);
  await hands.see(words('As you left it at'));
  expect(await hands.see(field('Heart girth'))).toBe('162');
  await hands.type(field('Belly girth'), '178');
  await hands.see(words(/^About \d+ kg, give or take \d+ kg$/));
  await holds('weekly-girths');
  await hands.tap(button('Save weight'));
  await hands.see(words(/^Bramble: \d+ kg, give or take \d+ kg$/));
  expect(await rows(page, 'drafts'), 'cleared by the save').toEqual([]);

  await hands.tap(link(/^Look-over/));
  await hands.see(sentence('Look Bramble over'));
  await hands.tap(choice('No', thing('radiogroup', 'Is there a strong pulse at a foot?')));
  await expect.poll(async () => JSON.stringify(await rows(page, 'drafts'))).toContain('strong_pulse');
  await hands.open(`${horse}/look-over`);
  await hands.see(words('As you left it at'));
  await hands.tap(button('Looked at all of it: all normal'));
  await hands.see(words(/^Bramble: \d+ kg, give or take \d+ kg$/));

  // practice.md section 4.
  expect(hands.touches.taps, 'touches').toBeLessThanOrEqual(8);
  expect(hands.touches.digits, 'digits').toBeLessThanOrEqual(8);
  const weights = await records(page, 'weight');
  expect(weights, 'that of the first plan, and this one').toHaveLength(2);
  expect(JSON.stringify(weights)).toContain('"178"');
  expect(await records(page, 'look_over')).not.toEqual([]);
});
