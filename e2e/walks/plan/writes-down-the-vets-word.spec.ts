/** The vet rings back: what was said is written down, stands on the plan, and nothing is taken for it that was not said. */
import { records } from '../../device/database.ts';
import { button, choice, field, link, sentence, words } from '../../hands/hands.ts';
import { answer, bramble, takePlan } from '../../models/start.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

test("a lower level than 1.5 % stands on the plan with the vet's name", async ({ hands, page }) => {
  await hands.open('#/start');
  await answer(hands, bramble);
  await takePlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/plan`);
  const before = await hands.see(sentence(/hay/));
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
  // The word lets the level go lower; it does not take anything away by itself.
  expect(await readSentence(hands)).toMatch(/hay/);
  expect(before).toMatch(/hay/);
});
