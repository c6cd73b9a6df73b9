/** The first evening: a few answers about one pony, and a plan that says what it rests on. */
import { records } from '../../device/database.ts';
import { button, link, sentence, words } from '../../hands/hands.ts';
import { answer, bramble, takePlan, unnamed } from '../../models/start.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

test('from the front door to a first plan in 25 touches and 20 digits', async ({ hands, page, holds }) => {
  await hands.open('');
  await hands.see(link('Start'));
  hands.touches.reset();
  await hands.tap(link('Start'));
  await hands.see(sentence('A few answers, then a first plan'));
  await answer(hands, unnamed);
  const decision = await hands.see(sentence(/hay/));
  // practice.md section 4.
  expect(hands.touches.taps, 'touches').toBeLessThanOrEqual(25);
  expect(hands.touches.digits, 'digits').toBeLessThanOrEqual(20);

  // Ever laminitic: no grass (practice.md rule 16). Untested hay: never shown as low (rule 6).
  expect(decision).toMatch(/^Soak [\d.]+ kg of hay a day, no grass$/);
  await hands.see(words(/^Have the hay tested$/));
  await hands.see(words(/The vet.s word goes before this plan/));
  await holds('plan');

  await takePlan(hands);
  expect(await records(page, 'plan')).toHaveLength(1);
  await holds('beside-after-plan');
});

test('what is open is said, nothing is stored, and the answers stay', async ({ hands, page, holds }) => {
  await hands.open('#/start');
  await hands.see(sentence('A few answers, then a first plan'));
  await holds('six-answers');
  await hands.tap(button('Make the first plan'));
  await hands.see(words('Something is still open. It is marked above.'));
  await holds('six-answers-open');
  expect(await records(page, 'animal')).toEqual([]);
});

test('an animal that has laminitis now gets no plan but the vet', async ({ hands, holds }) => {
  await hands.open('#/start');
  await answer(hands, { ...bramble, ever: 'It has it now' });
  const said = await readSentence(hands, 'A few answers, then a first plan');
  expect(said).toMatch(/vet/i);
  await hands.see(link("Write down the vet's word"));
  await holds('plan-refused');
});
