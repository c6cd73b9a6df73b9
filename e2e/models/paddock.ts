/** Grass, in the six verbs. */
import { button, choice, type Hands, link, sentence, thing, words } from '../hands/hands.ts';
import { readSentence } from './screen.ts';

/** Says of the last night or of the sky what its chip says. */
export async function say(hands: Hands, chip: string): Promise<void> {
  await hands.tap(thing('checkbox', chip));
  await hands.see(words('Saved.'));
}

/** Notes in the season that the flush is over, and comes back to the paddock. */
export async function flushIsOver(hands: Hands): Promise<void> {
  await hands.open('#/paddock/season');
  await readSentence(hands);
  await hands.tap(choice('The flush is over'));
  await hands.tap(button('Save the note'));
  await hands.see(words('Saved.'));
  await hands.tap(link('Back'));
  await hands.see(sentence());
}
