/** The measuring guide beside a pony and a donkey, and what is asked back when the tape was misused. */
import { records } from '../../device/database.ts';
import { button, field, link, type Hands, sentence, thing, words } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal, type NewAnimal } from '../../models/animals.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

const picture = thing('img', /^A (horse|donkey) from the side/);

async function toWeigh(hands: Hands, animal: NewAnimal): Promise<void> {
  await hands.open(newAnimalForm);
  await fillIn(hands, animal);
  await saveAnimal(hands, animal.name);
}

test('the guide shows each measure of a pony, and the way back loses nothing that was typed', async ({ hands, page, holds }) => {
  await toWeigh(hands, { name: 'Bramble', kind: 'Pony', height: '128', born: '2012' });
  await hands.type(field('Heart girth'), '152');
  await hands.tap(link('Where the tape goes'));
  await hands.see(sentence('Where the tape goes on Bramble'));
  await hands.see(thing('img', /^A horse from the side: the tape runs from the withers/));
  expect(await hands.count(picture)).toBe(6);
  await hands.see(thing('heading', 'Length around the buttock'));
  await hands.see(words(/^From the point of the shoulder along the side/));
  await holds('guide-pony');
  await hands.tap(link('Back'));
  await hands.see(sentence('Weigh Bramble'));
  await expect.poll(() => hands.see(field('Heart girth'))).toBe('152');
  const before = await readSentence(hands);
  await readBeforeAgain(page);
  await hands.tap(button('Save weight'));
  await readSentence(hands, before);
  await hands.see(words(/^Bramble: \d+ kg/));
});

test('a donkey is measured from the elbow, and its pictures are of a donkey', async ({ hands, holds }) => {
  await toWeigh(hands, { name: 'Moss', kind: 'Donkey', height: '104', born: '2008' });
  await hands.tap(link('Where the tape goes'));
  await hands.see(sentence('Where the tape goes on Moss'));
  expect(await hands.count(picture)).toBe(5);
  await hands.see(thing('heading', 'Length from the elbow'));
  await hands.see(words(/^From the elbow to the point of the buttock/));
  expect(await hands.count(thing('heading', 'Length around the buttock'))).toBe(0);
  expect(await hands.count(thing('img', /^A horse/))).toBe(0);
  await holds('guide-donkey');
  await hands.tap(link('Weigh Moss'));
  await hands.see(field('Heart girth'));
});

test('inches typed as centimetres are asked back and mended in one touch', async ({ hands, page, holds }) => {
  await toWeigh(hands, { name: 'Bramble', kind: 'Pony', height: '128', born: '2012' });
  await hands.type(field('Heart girth'), '60');
  await hands.type(field('Length'), '54');
  await hands.tap(button('Save weight'));
  await hands.see(words('Heart girth of 60 cm: was that in inches?'));
  await holds('weigh-inches');
  expect(await records(page, 'weight'), 'nothing is kept meanwhile').toEqual([]);
  await hands.tap(button('It was inches'));
  expect(await hands.see(field('Heart girth'))).toBe('60 in');
  expect(await hands.see(field('Length'))).toBe('54 in');
  const before = await readSentence(hands);
  await readBeforeAgain(page);
  await hands.tap(button('Save weight'));
  await readSentence(hands, before);
  await hands.see(words(/^Bramble: \d+ kg/));
  expect(JSON.stringify(await records(page, 'weight'))).toContain('"60 in"');
});

test("a donkey's length in the formula of a horse is asked back, and so is a horse's in that of a donkey", async ({ hands, page }) => {
  await toWeigh(hands, { name: 'Bramble', kind: 'Pony', height: '128', born: '2012' });
  await hands.type(field('Heart girth'), '152');
  await hands.type(field('Length'), '96');
  await hands.tap(button('Save weight'));
  await hands.see(words('Was this length taken from the elbow, as of a donkey?'));
  await hands.tap(button('Measure again'));
  expect(await hands.see(field('Length'))).toBe('');
  expect(await records(page, 'weight')).toEqual([]);
  await hands.type(field('Length'), '134');
  const before = await readSentence(hands);
  await readBeforeAgain(page);
  await hands.tap(button('Save weight'));
  await readSentence(hands, before);
  await hands.see(words(/^Bramble: \d+ kg/));

  await toWeigh(hands, { name: 'Moss', kind: 'Donkey', height: '104', born: '2008' });
  await hands.type(field('Heart girth'), '115');
  await hands.type(field('Length'), '122');
  await hands.tap(button('Save weight'));
  await hands.see(words('Was this length taken from the shoulder, as of a horse?'));
  expect(await records(page, 'weight')).toHaveLength(1);
});

test('under 112 cm the wider band is said of a pony, and a horse of that height is asked back', async ({ hands, page, holds }) => {
  await toWeigh(hands, { name: 'Bramble', kind: 'Pony', height: '106', born: '2012' });
  await hands.type(field('Heart girth'), '128');
  await hands.type(field('Length'), '112');
  await hands.see(words('Weigh it on a scale before any restriction'));
  await holds('weigh-small');

  await toWeigh(hands, { name: 'Moss', kind: 'Horse', born: '2012' });
  await hands.type(field('Heart girth'), '140');
  await hands.type(field('Height at the withers'), '108');
  await hands.tap(button('Save weight'));
  await hands.see(words('A horse of 108 cm: is that right?'));
  await hands.tap(button('It is right'));
  const before = await readSentence(hands);
  await readBeforeAgain(page);
  await hands.tap(button('Save weight'));
  await readSentence(hands, before);
  await hands.see(words(/^Moss: \d+ kg/));
});
