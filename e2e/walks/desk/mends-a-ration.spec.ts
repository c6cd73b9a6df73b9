/** A ration is mended, looked at, set by hand and used; the plan is made with it, and the change over stands day by day. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { button, choice, field, type Hands, link, sentence, thing, words } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

/** From the invented yard to the mend of its pony. */
async function mendBramble(hands: Hands): Promise<void> {
  await hands.open('#/example');
  const yard = await readSentence(hands);
  await hands.tap(link(/^Bramble/));
  const beside = await readSentence(hands, yard);
  await hands.tap(link('The ration against its needs'));
  await readSentence(hands, beside);
  await hands.tap(link('Find the cheapest mend'));
  await hands.see(sentence(/cover/));
}

test('the cheapest mend of an invented pony is minerals and salt, with what decides it and what else would do', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await mendBramble(hands);
  // It loses weight: no energy is offered.
  await hands.see(words('While it loses weight: only what the hay lacks'));
  const slip = thing('table', 'What changes, now and proposed');
  expect(await hands.see(slip)).toContain('ard minerals');
  expect(await hands.see(slip)).not.toContain('eet pulp');
  expect(await hands.count(thing('listitem', undefined, thing('list', 'What decides it')))).toBeGreaterThan(0);
  await holds('mend');

  await hands.tap(choice(/^Fewest foods/));
  await hands.see(sentence(/cover/));
  await hands.tap(choice('1 at most'));
  await hands.see(sentence(/covers? it|Nothing that is offered covers it/));
  await hands.tap(choice('Any number'));
  await hands.tap(choice(/^Cheapest/));
  await hands.see(sentence(/cover/));
});

test('an amount that is set by hand stays, a wrong one is said, and the form comes back after a kill', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const mend = `${new URL(page.url()).hash}/ration/mend`;
  await hands.open(mend);
  await hands.see(sentence(/cover/));
  await hands.tap(words('Set amounts by hand'));
  await hands.type(field(/^Beet pulp without molasses/), '300');
  await expect.poll(() => hands.see(thing('table', 'What changes, now and proposed'))).toContain('300 g');
  await hands.type(field(/^Salt/), 'a cup');
  await hands.see(words(/a cup/));
  await holds('mend-by-hand');
  await hands.open(mend);
  await hands.tap(words('Set amounts by hand'));
  expect(await hands.see(field(/^Beet pulp without molasses/))).toBe('300');
});

test('a used ration is what the plan is made with, and the way there stands day by day', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/ration/mend`);
  await hands.see(sentence(/cover/));
  await hands.tap(button('Use this ration'));
  // The plan with its foods is offered, and what hangs stays until it is used.
  await hands.see(sentence(/hay/));
  await hands.open(`${horse}/ration/change`);
  await hands.see(sentence(/change|over/));
  await holds('change-over');
});
