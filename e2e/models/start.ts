/** Six answers to a first plan, in the six verbs. */
import { button, choice, field, type Hands, sentence, words } from '../hands/hands.ts';

/** The answers that a walk gives; the words are those on the keys. */
export interface Answers {
  readonly sort: string;
  readonly name?: string;
  readonly age: string;
  readonly girth: string;
  readonly ribs: string;
  readonly ever: string;
  readonly hay: string;
  readonly visits: RegExp;
}

/** A pony that once had laminitis, fat, on hay that nobody tested, seen to twice a day. */
export const unnamed: Answers = {
  sort: 'Pony 112 to 148 cm',
  age: '14',
  girth: '162',
  ribs: 'Not felt',
  ever: 'It had, sound now',
  hay: 'Grass hay, or I do not know',
  visits: /^Twice a day/,
};

/** The same with a name. */
export const bramble: Answers = { ...unnamed, name: 'Bramble' };

/** Fills in the form in sight and asks for the plan. */
export async function answer(hands: Hands, answers: Answers): Promise<void> {
  await hands.tap(choice(answers.sort));
  if (answers.name !== undefined) await hands.type(field('Name'), answers.name);
  await hands.type(field('Age'), answers.age);
  await hands.type(field('Heart girth'), answers.girth);
  await hands.tap(choice(answers.ribs));
  await hands.tap(choice(answers.ever));
  await hands.tap(choice(answers.hay));
  await hands.tap(choice(answers.visits));
  await hands.tap(button('Make the first plan'));
}

/** Takes the plan in sight and gives its sentence. */
export async function takePlan(hands: Hands): Promise<string> {
  const decision = await hands.see(sentence(/hay/));
  await hands.tap(button('Use this plan'));
  await hands.see(words(/, give or take /));
  return decision;
}

/** A cold start at the six answers, to a plan that is taken. */
export async function haveAPlan(hands: Hands, answers: Answers = bramble): Promise<void> {
  await hands.open('#/start');
  await answer(hands, answers);
  await takePlan(hands);
}
