/** Measures over time: what changed since last time and since the first, what of it is noise, and the neck beside the height. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { button, field, link, type Hands, sentence, thing, words } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal } from '../../models/animals.ts';
import { expect, test } from '../../walk.ts';

const day = 24 * 60 * 60_000;

interface Measured {
  readonly girth: string;
  readonly belly: string;
  readonly neck?: string;
  readonly height?: string;
}

async function measure(hands: Hands, horse: string, of: Measured): Promise<void> {
  await hands.open(`${horse}/weigh`);
  await hands.see(sentence('Weigh Bramble'));
  await hands.type(field('Heart girth'), of.girth);
  await hands.type(field('Belly girth'), of.belly);
  if (of.neck !== undefined) await hands.type(field('Neck'), of.neck);
  if (of.height !== undefined) await hands.type(field('Height at the withers'), of.height);
  await hands.tap(button('Save weight'));
  await hands.see(words(/^Bramble: \d+ kg/));
}

test('three tapes in a month: the belly is named in the sentence, and every measure is in the table', async ({ hands, page, holds }) => {
  test.setTimeout(120_000);
  await wakeAt(page, dawn);
  await hands.open(newAnimalForm);
  await fillIn(hands, { name: 'Bramble', kind: 'Pony', height: '124', born: '2012' });
  await saveAnimal(hands, 'Bramble');
  const horse = new URL(page.url()).hash.replace(/\/weigh$/, '');
  await hands.open(`${horse}/measures`);
  await hands.see(sentence('Measures of Bramble'));
  await hands.see(words('Nothing was measured with a tape yet.'));
  await holds('measures-none');

  await measure(hands, horse, { girth: '152', belly: '172', neck: '92', height: '124' });
  await wakeAt(page, new Date(dawn.getTime() + 14 * day));
  await measure(hands, horse, { girth: '151.5', belly: '170' });
  await wakeAt(page, new Date(dawn.getTime() + 28 * day));
  await measure(hands, horse, { girth: '151', belly: '167', neck: '88' });

  await hands.tap(link('Measures so far'));
  await hands.see(sentence("Bramble's belly: down 5 cm"));
  const changes = thing('list', 'Since last time');
  await hands.see(words('Neck girth', changes));
  await hands.see(words('down 4 cm', changes));
  await hands.see(words('down 0.5 cm', changes));
  expect(await hands.count(words(/more than a tape varies by itself/, changes))).toBeGreaterThan(0);
  await hands.see(words(/^The neck is 0\.71 of the height/));
  expect(await hands.count(thing('row', /cm/))).toBe(3);
  await holds('measures');
  await hands.tap(link('Where the tape goes'));
  await hands.see(sentence('Where the tape goes on Bramble'));
  await hands.tap(link('Weigh Bramble'));
  await hands.tap(link('Measures so far'));
  await hands.see(sentence("Bramble's belly: down 5 cm"));
});
