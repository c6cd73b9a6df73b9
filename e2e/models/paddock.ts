/** Grass, in the six verbs. */
import type { Page } from '@playwright/test';
import { button, choice, field, type Hands, link, sentence, thing, words } from '../hands/hands.ts';
import { readSentence } from './screen.ts';
import { bramble, haveAPlan } from './start.ts';

/** Fern, a horse that is only fat: its vet tested it and found it in order. Its address. */
export async function haveATestedHorse(hands: Hands, page: Page): Promise<string> {
  await haveAPlan(hands, {
    ...bramble,
    name: 'Fern',
    sort: 'Horse',
    girth: '190',
    ribs: 'Not seen, felt easily',
    ever: 'No, as far as I know',
  });
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/details`);
  await readSentence(hands);
  await hands.tap(choice(/^In order/, thing('group', 'Insulin test')));
  await hands.type(field('Tested on'), '1.5.2026');
  await hands.type(field('Tested by'), 'The vet');
  await hands.type(field('Which test'), 'Oral sugar test');
  await hands.tap(button('Save details'));
  await hands.see(words(/, give or take /));
  return horse;
}

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
