/** The next step: a new animal settles, is weighed again, and what is proposed is taken and undone; and an episode is looked back on. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, link, sentence, words } from '../../hands/hands.ts';
import { tape } from '../../models/animals.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { bramble, haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

const sound = { ...bramble, ever: 'No, as far as I know' };

/** So many days after the first. */
const after = (days: number): Date => new Date(dawn.getTime() + days * 86_400_000);

test('a fortnight and two weighings lead to the proposal, which is taken, undone, and taken', async ({ hands, page, holds }) => {
  test.setTimeout(180_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands, sound);
  const horse = new URL(page.url()).hash;
  await hands.see(sentence('Bramble: keep on as planned while it settles'));
  await hands.tap(link(/^Next step/));
  await hands.see(sentence('Keep on as planned while it settles'));
  await hands.see(words(/^New, day 1, since /));
  await hands.see(words(/^Next review on /));
  await hands.see(words('0 of 14 days at the starting level'));
  expect(await hands.count(button(/^Let it lose weight/))).toBe(0);
  await holds('next-step');

  // A weight that came in is named on the plan, and changes nothing before the review.
  await wakeAt(page, after(7));
  await hands.open(`${horse}/weigh`);
  await tape(hands, '161');
  await hands.open(`${horse}/plan`);
  await hands.see(words('What would now differ'));
  await hands.see(words(/^Said, and nothing more/));
  expect(await hands.count(button('Use this plan'))).toBe(0);
  await holds('plan-differs');

  await wakeAt(page, after(14));
  await hands.open(horse);
  await hands.see(sentence('Bramble: decide whether to let it lose weight'));
  await hands.tap(link(/^Next step/));
  await hands.see(sentence('Decide whether to let it lose weight'));
  await hands.see(words('14 of 14 days at the starting level'));
  await holds('next-step-decide');
  await hands.tap(button('Let it lose weight'));
  await hands.see(words(/^Losing, day 1, since /));
  await hands.see(words(/^Before that: new/));
  await holds('next-step-losing');
  await hands.tap(button('Undo'));
  await hands.see(words(/^New, day 15, since /));
  await readBeforeAgain(page);
  await hands.tap(button('Let it lose weight'));
  await hands.see(words(/^Losing, day 1, since /));
  const [animal] = await records(page, 'animal');
  expect(JSON.stringify(animal)).toMatch(/"phase":"losing".*"phase_before":"new"/);

  // Its review has come: the plan is made anew, so that it has a next one.
  await hands.tap(link('Make the plan'));
  await hands.see(sentence(/hay/));
  await hands.see(button('Use this plan'));
});

test('an episode that anybody may say is for the vet, and what came before it is listed with what nobody logged', async ({ hands, page, holds }) => {
  test.setTimeout(120_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands, sound);
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/look-back`);
  await hands.see(sentence('No episode is written down'));

  await wakeAt(page, after(10));
  await hands.open(`${horse}/next`);
  const before = await readSentence(hands);
  expect(await hands.count(link('Look back'))).toBe(0);
  await hands.tap(button(/^Say that it has an episode/));
  await readSentence(hands, before);
  await hands.see(words(/^Episode, vet in charge, day 1, since /));
  await hands.see(words(/the number is not known$/));
  await holds('next-step-episode');

  await hands.tap(link('Look back'));
  await hands.see(sentence(/ changed before /));
  await hands.see(words(/^Its first plan, /));
  await hands.see(words('What nobody logged'));
  await hands.see(words('Grass: hours and area are not logged'));
  await holds('look-back');
});
