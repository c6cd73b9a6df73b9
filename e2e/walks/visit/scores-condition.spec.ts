/** Condition on both scales, and by two people who do not see each other's score. */
import { records } from '../../device/database.ts';
import { button, choice, field, type Hands, link, sentence, words } from '../../hands/hands.ts';
import { fillIn, type NewAnimal, newAnimalForm, saveAnimal, tape } from '../../models/animals.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

/** A new animal with a weight, whose condition is due. */
async function haveWeighed(hands: Hands, animal: NewAnimal, girth: string, length: string): Promise<void> {
  await hands.open(newAnimalForm);
  await fillIn(hands, animal);
  await saveAnimal(hands, animal.name);
  await tape(hands, girth, length);
}

/** Scores the sites one after another, from the first, to the summary. */
async function walkRound(hands: Hands, sites: Record<string, number>): Promise<void> {
  for (const [site, score] of Object.entries(sites)) {
    await hands.see(sentence(new RegExp(`^${site}`)));
    // Nobody scores from a score.
    expect(await hands.count(words(/^Last time/))).toBe(0);
    await hands.tap(button(String(score)));
    await hands.tap(link(/^Next: /));
  }
}

const six = { Neck: 6, Withers: 6, Behind: 6, Ribs: 6, Loin: 6, Tail: 6 } as const;

test('a donkey is scored from 0 to 5, and the score stays on its scale', async ({ hands, page, holds }) => {
  await haveWeighed(hands, { name: 'Fern', kind: 'Donkey', height: '105', born: '2012' }, '115', '90');
  const horse = new URL(page.url()).hash;
  await hands.tap(link('Score Fern'));
  await hands.see(sentence('Neck'));
  await hands.see(words('Scored from 0 to 5.'));
  expect(await hands.count(button('9'))).toBe(0);
  await hands.tap(button('3'));
  await holds('condition-of-five-neck');
  await hands.tap(link('Next: back and ribs'));
  await hands.see(sentence('Back and ribs'));
  await hands.tap(button('3'));
  await hands.tap(button('+ half'));
  await hands.see(words('Ribs hard to feel, a gutter along the back'));
  await holds('condition-of-five-back');
  await hands.tap(link('Next: pelvis and rump'));
  await hands.see(sentence('Pelvis and rump'));
  await hands.tap(button('4'));
  await holds('condition-of-five-pelvis');
  await hands.tap(link('Next: all three'));
  // The neck is a point lower, so the pelvis gives half a point.
  await hands.see(sentence('3.5 of 0 to 5, the first score'));
  await holds('condition-of-five-summary');
  await hands.tap(button('Save condition'));
  await readSentence(hands);
  expect(JSON.stringify(await records(page, 'condition'))).toContain('five_step');

  // On the other scale it is a range and is not compared.
  await hands.open(`${horse}/condition/who`);
  await hands.see(sentence('Who scores Fern, and on which scale?'));
  await hands.see(choice(/^0 to 5, three sites/));
  await holds('condition-who');
  await hands.tap(choice(/^1 to 9, six sites/));
  await hands.tap(button('Score the first site'));
  await hands.see(words('Scored from 1 to 9.'));
  await hands.see(words('You scored it today already.'));
  await walkRound(hands, six);
  await hands.see(sentence('6, the first on this scale'));
  await hands.see(words(/3\.5 of 0 to 5\. That stands for about 6 to 7 of 1 to 9, and is not compared/));
});

test("two people score one day, neither sees the other's, and they differ by 1 at the ribs", async ({ hands, page, holds }) => {
  await haveWeighed(hands, { name: 'Moss', kind: 'Pony', height: '128', born: '2012' }, '158', '150');
  await hands.tap(link('Score Moss'));
  await hands.see(sentence('Neck'));
  await hands.tap(link('Who scores, which scale'));
  await hands.see(sentence('Who scores Moss, and on which scale?'));
  await hands.tap(choice('Somebody new'));
  // Whose score it is must be told apart.
  await hands.tap(button('Score the first site'));
  await hands.see(words('Type the initials'));
  await hands.see(words('Choose what this person is here.'));
  await hands.type(field('Initials'), 'AB');
  await hands.tap(choice('Consultant'));
  await holds('condition-somebody-new');
  await readBeforeAgain(page);
  await hands.tap(button('Score the first site'));
  await hands.see(words('AB scores, from 1 to 9.'));
  await walkRound(hands, { ...six, Neck: 7, Ribs: 7, Tail: 7 });
  await hands.see(sentence('6.5, the first score'));
  await hands.tap(button('Save, then a second person scores'));

  await hands.see(sentence('Who scores Moss, and on which scale?'));
  await hands.see(words('Saved.'));
  expect(await hands.count(words('6.5'))).toBe(0);
  await hands.type(field('Initials'), 'CD');
  await hands.tap(choice('Keeper'));
  await hands.tap(button('Score the first site'));
  await hands.see(words('CD scores, from 1 to 9.'));
  await hands.see(words('Somebody else scored it today.'));
  await walkRound(hands, { ...six, Neck: 7, Tail: 7 });
  await hands.see(sentence('6.3, the first score'));
  expect(await hands.count(words('6.5'))).toBe(0);
  await hands.tap(button('Save condition'));

  await hands.see(sentence('6.3, you differ by 1 at the ribs'));
  await hands.see(words('Filled: CD, 6.3. Outlined: AB, 6.5.'));
  await holds('condition-two');
  const scores = await records(page, 'condition');
  expect(new Set(scores.map((score) => score['by'])).size, 'two scores by two people').toBe(2);
  expect(await records(page, 'person')).toHaveLength(2);

  // Both stand on its own page.
  await hands.tap(link('Go on beside it'));
  await hands.see(words(/^6\.3 to 6\.5, today$/));
  await hands.see(link('What two people scored'));
});
