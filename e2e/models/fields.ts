/** Paddocks: their form, and the way from it to what stands there. */
import { button, choice, field, type Hands, sentence, thing, words } from '../hands/hands.ts';

export const newFieldForm = '#/paddock/field/new';

/** What a walk says of a paddock; the words are those on the keys. */
export interface Paddock {
  readonly name: string;
  readonly area: string;
  readonly grows: string;
  /** Plants that were seen there, by the names on their keys. */
  readonly seen: readonly RegExp[];
}

/** An old meadow with ragwort in it. */
export const topField: Paddock = { name: 'Top field', area: '0.8 ha', grows: 'Old meadow', seen: [/^Ragwort/] };

/** Fills in the form of a new paddock and saves it; its screen is in sight then. */
export async function addField(hands: Hands, paddock: Paddock = topField): Promise<void> {
  await hands.open(newFieldForm);
  await hands.see(sentence('A paddock by its name'));
  await hands.type(field('Name'), paddock.name);
  await hands.type(field('Area'), paddock.area);
  await hands.tap(choice(paddock.grows));
  for (const plant of paddock.seen) await hands.tap(thing('checkbox', plant));
  await hands.tap(button('Save the paddock'));
  await hands.see(sentence('Nobody has looked today'));
  await hands.see(words(paddock.name, thing('banner')));
}
