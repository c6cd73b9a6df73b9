/** The vet rings back: what was said is written down, stands on the plan, and nothing is taken for it that was not said. */
import { records } from '../../device/database.ts';
import { button, choice, field, link, sentence, words } from '../../hands/hands.ts';
import { haveAPlan } from '../../models/start.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

/** The hay of a decision: "Soak 6.55 kg of hay a day, no grass". */
const kilograms = (decision: string): number => Number(/([\d.]+) kg/.exec(decision)?.[1]);

test("a lower level than 1.5 % stands on the plan with the vet's name", async ({ hands, page, holds }) => {
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/plan`);
  const before = kilograms(await hands.see(sentence(/hay/)));
  await hands.tap(link("Write down the vet's word"));
  await hands.see(sentence(/What the vet said of Bramble/));

  // A word without a name is none (practice.md rule 3).
  await hands.tap(choice('Lowest level of dry matter'));
  await hands.type(field(/^Lowest level/), '1.25');
  await hands.tap(button("Save the vet's word"));
  await hands.see(words(/a word without one is none/));
  expect(await records(page, 'vet_word')).toEqual([]);

  await hands.type(field(/^The vet.s name/), 'M. Alder');
  await hands.tap(choice('By telephone'));
  await readBeforeAgain(page);
  await hands.tap(button("Save the vet's word"));
  await hands.see(words(/M\. Alder/));
  expect(await records(page, 'vet_word')).toHaveLength(1);
  await hands.see(words(/^Dry matter down to 1\.25 % .*M\. Alder, holds until/));
  // The least that is safe may now be less (practice.md rule 3).
  expect(kilograms(await readSentence(hands))).toBeLessThan(before);
  await holds('plan-vets-word');
});
