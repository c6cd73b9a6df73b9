/** An animal that will not eat: a handful is held out, the stop stands, and the sheet is there to read aloud. */
import { records } from '../../device/database.ts';
import { dawn, sleepFor, wakeAt } from '../../device/clock.ts';
import { button, choice, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal, tape } from '../../models/animals.ts';
import { readBeforeAgain } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

const handful = thing('group', 'Hold out a handful of dry hay');
const dull = thing('group', 'Does it look dull?');
const lastAte = thing('group', 'When was it last seen eating before that?');

test('a dull pony: the vet now, the number is kept, and the sheet is read aloud', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.tap(link('Will not eat'));
  await hands.see(sentence('Hold out a handful of dry hay to Bramble'));
  await holds('will-not-eat');
  await hands.tap(choice('Yes', dull));
  await hands.see(sentence('Ring the vet now'));
  await hands.see(words('Ring the vet: the number is not known'));
  await hands.tap(choice('Refused it', handful));
  await hands.tap(choice('Last evening', lastAte));
  await hands.type(field('Temperature'), '39.4');
  await hands.see(words(/^39\.4 °C, far over what is usual: ring the vet now/, thing('list', 'For the vet, to read aloud')));
  await hands.type(field("The vet's telephone number"), '01632 960123');
  await hands.tap(button('Save what it did'));
  await hands.see(link('Ring the vet, 01632 960123'));
  await hands.see(sentence('Ring the vet now'));
  await hands.see(words(/^As saved at/));
  // Pulse and breathing.
  expect(await hands.count(words('Not taken'))).toBe(2);
  await holds('call-sheet');
  const [kept] = await records(page, 'appetite');
  expect(JSON.stringify(kept)).toContain('refused');

  // It stands on the round.
  await hands.open('#/round');
  await hands.see(link(/Off its feed: hold out a handful/));
});

test('a reading that cannot be is named with its range, and nothing is stored', async ({ hands, page }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.tap(link('Will not eat'));
  await hands.type(field('Temperature'), '3.94');
  await hands.tap(button('Save what it did'));
  await hands.see(words(/30.*45/));
  await hands.see(words('Say what it did with a handful of dry hay'));
  expect(await records(page, 'appetite')).toEqual([]);
});

test('put away before it is saved, the form comes back as it was', async ({ pocket }) => {
  const first = await pocket.takeOut();
  await wakeAt(first.page, dawn);
  await haveAPlan(first.hands);
  await first.hands.tap(link('Will not eat'));
  await first.hands.tap(choice('Refused it', handful));
  await first.hands.see(sentence('Ring the vet now'));
  const form = new URL(first.page.url()).hash;
  await first.hands.type(field('Pulse'), '48');
  await pocket.putAway();
  const later = await pocket.takeOut();
  await wakeAt(later.page, new Date(dawn.getTime() + 5 * 60_000));
  await later.hands.open(form);
  await later.hands.see(words('As you left it at'));
  expect(await later.hands.see(field('Pulse'))).toBe('48');
  await later.hands.see(sentence('Ring the vet now'));
});

test('a horse that left its net overnight and eats when offered: feed it now, ring this morning', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await hands.open(newAnimalForm);
  await fillIn(hands, { name: 'Fern', kind: 'Horse', height: '15 hh', born: '2014' });
  await saveAnimal(hands, 'Fern');
  await tape(hands, '185', '160');
  await hands.tap(link('Will not eat'));
  await hands.see(sentence('Hold out a handful of dry hay to Fern'));
  await hands.tap(choice('Ate it', handful));
  await hands.tap(choice('No', dull));
  await hands.tap(choice('Last evening', lastAte));
  await hands.see(sentence('Feed it now. Ring the vet this morning'));
  await hands.see(words('If it stops eating or turns dull, ring the vet at once'));
  await holds('eats-when-offered');

  // Seen eating just now, it is this hay alone.
  await hands.tap(choice('Just now', lastAte));
  await hands.see(sentence('Fern leaves this hay: feed other forage'));
  await hands.see(words('Feed other forage now'));
  await holds('leaves-this-hay');
  await hands.tap(choice('Last evening', lastAte));
  await hands.tap(button('Save what it did'));
  await hands.see(words(/^As saved at/));
  await hands.see(link('It eats as usual again: say so in a look-over'));
  await hands.open('#/horses');
  await hands.see(link(/^Fern Vet this morning/));
});

test('a net that was hardly touched leads to it', async ({ hands, page }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open('#/shed/weigh');
  await hands.tap(button('Both filled to target'));
  await hands.see(sentence("Bramble's nets are filled today"));
  await sleepFor(page, 90);
  await hands.tap(link('What was left'));
  await hands.see(sentence("No net of Bramble's is open"));
  // It is to be soaked, and is not today.
  const left = new URL(page.url()).hash;
  await hands.tap(link('Start the soak first'));
  await hands.tap(button('Frozen', thing('region', /^Not soaked today: Bramble, for 07:00$/)));
  await hands.see(words('Not soaked: hang until the scale reads'));
  await hands.open(left);
  await hands.tap(button(/^Hung now/));
  await hands.see(sentence(/^What is left of the net of/));
  await sleepFor(page, 600);
  await readBeforeAgain(page);
  await hands.tap(button(/^Three quarters/));
  await hands.see(words(/^Hardly touched: offer/));
  await hands.tap(link('Will not eat'));
  await hands.see(sentence('Hold out a handful of dry hay to Bramble'));
});
