/** The ration against its needs: what is over, short and not known first, every number behind one key, and on to the mend. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { link, sentence, thing, words } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

/** "1 over, 2 short, 1 not known": what is none is left out. */
const COUNTS = /^(Nothing over or short)?(\d+ over)?(, )?(\d+ short)?(, )?(\d+ not known)?$/;

test('the ration of an invented animal says what needs a look, and shows the rest when asked', async ({ hands, holds }) => {
  await hands.open('#/example');
  await readSentence(hands);
  await hands.tap(link(/^Bramble/));
  const beside = await hands.see(sentence(/Bramble/));
  await hands.tap(link('The ration against its needs'));
  const said = await readSentence(hands, beside);
  await hands.see(words(/^No plan is in use/));
  expect(said).toMatch(COUNTS);

  // Nobody tested the hay: its selenium is not known, and nobody takes it from a mean.
  await hands.see(words(/^Nobody tested Meadow, June cut$/));
  await hands.see(words('A balance is no diagnosis'));
  const look = thing('list', 'What needs a look');
  await hands.tap(words(/^\d+ not known, show$/));
  const unknown = thing('list', 'not known');
  expect(await hands.count(thing('listitem', undefined, unknown))).toBeGreaterThan(1);
  // Energy stands first, with its two ends.
  await hands.see(thing('img', /^Energy: .* Has .*, need /, look));
  await holds('ration-balance');

  await hands.tap(words(/^\d+ within, show$/));
  const within = thing('list', 'within');
  expect(await hands.count(thing('listitem', undefined, within))).toBeGreaterThan(0);
  await hands.tap(words('All numbers'));
  const table = thing('table', 'Every nutrient of the ration a day');
  // Every nutrient and energy.
  expect(await hands.count(thing('row', undefined, table))).toBeGreaterThanOrEqual(22);
  await holds('ration-all-numbers');

  await hands.tap(link('Find the cheapest mend'));
  await readSentence(hands, said);
});

test('a plan in use is what is held, and the plan leads to its ration', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/plan`);
  await hands.tap(link('The ration against its needs'));
  await hands.see(words(/^By the plan in use since /));
  expect(await readSentence(hands)).toMatch(COUNTS);
  await hands.see(words('What it costs a day is not known: a price is missing.'));
  await holds('ration-of-a-plan');
  await hands.tap(link('See the plan'));
  await hands.see(sentence(/hay/));
});
