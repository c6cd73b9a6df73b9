/** Adding an animal and weighing it, in the six verbs. */
import { button, choice, field, type Hands, words } from '../hands/hands.ts';
import { readSentence } from './screen.ts';

/** What is typed of a new animal; the rest stays not known. */
export interface NewAnimal {
  readonly name: string;
  readonly kind: 'Horse' | 'Pony' | 'Miniature' | 'Donkey' | 'Mule';
  readonly height?: string;
  readonly born?: string;
}

/** The address of the form for a new animal, under which its draft is kept. */
export const newAnimalForm = '#/horses/new';

/** Fills in the form for a new animal, which must be in sight, and saves nothing. */
export async function fillIn(hands: Hands, animal: NewAnimal): Promise<void> {
  await hands.type(field('Name'), animal.name);
  await hands.tap(choice(animal.kind));
  if (animal.height !== undefined) await hands.type(field('Height at the withers'), animal.height);
  if (animal.born !== undefined) await hands.type(field('Born in'), animal.born);
}

/** Saves the form in sight and gives the sentence of the weighing that follows. */
export async function saveAnimal(hands: Hands, name: string): Promise<void> {
  await hands.tap(button('Save, then weigh'));
  await hands.see({ role: 'heading', level: 1, name: `Weigh ${name}` });
}

/** Types a girth, and a length where one is given, into the weighing in sight, and saves it; gives the weight beside the animal. */
export async function tape(hands: Hands, girth: string, length?: string): Promise<string> {
  await hands.type(field('Heart girth'), girth);
  if (length !== undefined) await hands.type(field('Length'), length);
  const before = await readSentence(hands);
  await hands.tap(button('Save weight'));
  await readSentence(hands, before);
  return hands.see(words(/, give or take /));
}
