/**
 * The hay as a stock: what came, what is left, a count, another lot opened from a net, a night without hay, and two lots
 * beside each other.
 */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, choice, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('hay that came is counted down, and a count starts it anew', async ({ hands, page, holds }) => {
  test.setTimeout(180_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open('#/shed');
  await hands.see(words(/^stock not known/));
  await hands.tap(link(/^Grass hay/));
  await hands.see(words(/^Nobody said how much there was/));
  await hands.tap(button('Change it, or add a report'));
  await hands.tap(choice('Bales'));
  await hands.type(field('How much was bought'), '40');
  await hands.type(field('Bales that were weighed'), '18 20 22');
  await hands.type(field('Price'), '6.50');
  await hands.tap(choice('A bale'));
  await hands.type(field('Currency'), 'GBP');
  await hands.tap(button('Save hay'));
  await hands.see(words(/^800 kg, between/));
  await hands.see(words(/^A bale weighs 20\.00 kg, give or take 1\.15 kg/));
  await holds('hay-stock');

  await hands.open('#/shed');
  await hands.see(words(/^800 kg, order by/));
  await holds('shed-stock');
  await hands.tap(link('Weigh nets'));
  await hands.tap(button('Both filled to target'));
  await hands.see(sentence("Bramble's nets are filled today"));
  await hands.open('#/shed');
  await hands.see(words(/^79\d kg, order by/));

  await hands.tap(link(/^Grass hay/));
  await hands.tap(link('Count what is left'));
  await hands.see(sentence(/^How much is left of/));
  await hands.type(field('So much is left'), '10');
  await hands.tap(button('Save the count'));
  await hands.see(words('Choose bales or kilograms'));
  await hands.tap(choice('Bales'));
  await holds('hay-count');
  await hands.tap(button('Save the count'));
  await hands.see(words(/^200 kg, between/));
  expect(await records(page, 'lot_count')).toHaveLength(1);
});

test('another hay is opened from a net with one tap, and the plan stays as it was', async ({ hands, page, holds }) => {
  test.setTimeout(180_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const [plan] = await records(page, 'plan');
  await hands.open('#/shed/hay/new');
  await hands.see(sentence('Which hay is it?'));
  await hands.type(field('Name'), 'Lane field');
  await hands.tap(choice('Meadow hay'));
  await hands.type(field('Dry matter'), '80');
  await hands.tap(button('Save hay'));
  await hands.see(sentence(/^Lane field/));

  await hands.open('#/shed');
  await hands.tap(link('Weigh nets'));
  await hands.see(words('Hang until the scale reads'));
  hands.touches.reset();
  await hands.tap(button('Open another hay'));
  await hands.see(words(/^Every net of this hay is weighed from the one you open/));
  await hands.tap(button(/^Open Lane field/));
  // One tap to see the others, one to open it.
  expect(hands.touches.taps).toBe(2);
  await hands.see(words(/^From Lane field since .* in place of Grass hay/));
  await holds('net-another-hay');
  await hands.tap(button('Both filled to target'));
  await hands.see(sentence("Bramble's nets are filled today"));
  const filled = await records(page, 'net_filled');
  const lots = await records(page, 'lot');
  const lane = lots.find((lot) => JSON.stringify(lot).includes('Lane field'));
  expect(filled.map((net) => (net['body'] as { lot: string }).lot)).toEqual([lane?.['id'], lane?.['id']]);
  expect((await records(page, 'plan'))[0]).toEqual(plan);

  await hands.open('#/shed');
  await hands.tap(link(/^Lane field/));
  await hands.tap(link('It runs out tonight'));
  await hands.see(sentence('Without Lane field: never a night with nothing'));
  await hands.see(words('Beet pulp, no molasses'));
  await hands.see(words(/in \d feeds/));
  await holds('hay-tonight');

  await hands.open('#/shed/compare');
  await hands.see(sentence('Which two?'));
  await hands.tap(choice(/^Grass hay/, thing('group', 'This one')));
  await hands.tap(choice('Lane field', thing('group', 'With this one')));
  await expect.poll(() => readSentence(hands)).toMatch(/^Sugar does not tell them apart/);
  await holds('hay-compare');
});
