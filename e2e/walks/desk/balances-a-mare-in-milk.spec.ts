/** A mare in milk: no plan is made for her, and her ration is held against what milk asks for. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { button, choice, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { answer, bramble } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('in milk without her day nothing is reckoned; with it energy and protein are short, and no plan is made', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await hands.open('#/start');
  await answer(hands, { ...bramble, ever: 'No, as far as I know' });
  await hands.see(sentence(/hay/));
  const horse = new URL(page.url()).hash.replace(/\/plan$/, '');

  // Her state alone: what she needs is not known, and the way leads to her details.
  await hands.open(`${horse}/details`);
  await readSentence(hands);
  // In foal since a day that has not come is refused at its field; no field of another state is asked.
  await hands.tap(choice('In foal'));
  await hands.type(field('Covered on'), '1.6.2026');
  await hands.tap(button('Save details'));
  await hands.see(words('Not saved yet: a field above needs another look.'));
  await holds('details-in-foal');
  await hands.tap(choice('In milk'));
  await hands.see(field('Foaled on'));
  await hands.tap(button('Save details'));
  await hands.see(link('The ration against its needs'));
  await hands.tap(link('The ration against its needs'));
  await hands.see(sentence('Its needs are not reckoned here: ask the vet'));
  await hands.see(words('No plan is made here for it: ask the vet for its ration'));
  await holds('ration-in-milk-not-reckoned');

  await hands.open(`${horse}/details`);
  await hands.see(field('Foaled on'));
  await hands.type(field('Foaled on'), '20.4.2026');
  await hands.tap(button('Save details'));
  await hands.see(link('The ration against its needs'));
  await hands.tap(link('The ration against its needs'));
  const said = await readSentence(hands);
  expect(said).toMatch(/\d+ short/);
  await hands.see(words('It is balanced and never restricted'));
  const look = thing('list', 'What needs a look');
  await hands.see(thing('img', /^Energy: .* Has .*, need /, look));
  await holds('ration-in-milk');
});
