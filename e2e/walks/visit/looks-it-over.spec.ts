/** A look-over: a sign leads to the stop and to what the vet is told, grain rings before any sign, a fever rings too. */
import { records } from '../../device/database.ts';
import { dawn, wakeAt } from '../../device/clock.ts';
import { button, choice, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

const allNormal = button('Looked at all of it: all normal');

test('a sign swaps the top to the stop, with what the vet is told; lines left are not looked at', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/look-over`);
  await hands.see(sentence('Look Bramble over'));
  await hands.tap(choice('Yes', thing('radiogroup', 'Is there a strong pulse at a foot?')));
  await hands.see(sentence('Stop grazing and work. Soft bed. Vet today'));
  await hands.see(words('Ring the vet: the number is not known'));
  // Whoever saw a sign does not mean that all is normal.
  expect(await hands.count(allNormal)).toBe(0);
  await hands.tap(words('For the vet, to read aloud'));
  const sheet = thing('list', 'For the vet, to read aloud');
  await hands.see(words('A strong pulse at a foot', sheet));
  await holds('look-over-sign');
  await hands.see(words(/^7 lines not looked at/));
  await hands.tap(button('Finish look-over'));
  await hands.see(sentence('Stop grazing and work. Soft bed. Vet today'));
  // The animal's page opens with the same sentence; what was seen is on the disk by then.
  await hands.see(link('Look it over again'));
  expect(JSON.stringify(await records(page, 'look_over'))).toContain('"strong_pulse":"yes"');
  await hands.open('#/round');
  await hands.see(link(/Stop grazing and work/));
});

test('got at grain: the vet now, before any sign, and with every line normal', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/look-over`);
  await hands.see(sentence('Look Bramble over'));
  await hands.tap(thing('checkbox', 'Got at grain'));
  await hands.see(sentence('Ring the vet now'));
  await hands.see(words(/It got at grain: ring the vet now, before signs show/));
  await holds('look-over-grain');
  await hands.tap(allNormal);
  await hands.see(sentence('Ring the vet now'));
  await hands.see(link('Look it over again'));
  await hands.open('#/round');
  await hands.see(link(/It got at grain/));
});

test('a fever is told by kind, rings at once, and goes when it is taken again', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  const lookOver = async (temperature: string): Promise<void> => {
    await hands.open(`${horse}/look-over`);
    await hands.see(allNormal);
    await hands.type(field('Temperature'), temperature);
  };
  await lookOver('102.6 F');
  await hands.see(sentence('Ring the vet now'));
  await holds('look-over-fever');
  await hands.tap(allNormal);
  await hands.see(link('Look it over again'));
  await hands.see(sentence('Ring the vet now'));
  expect(await records(page, 'vitals')).toHaveLength(1);
  expect(JSON.stringify(await records(page, 'look_over'))).toContain('"strong_pulse":"no"');

  await lookOver('38.0');
  await hands.see(words('38 \u{b0}C, within what is usual'));
  await hands.tap(allNormal);
  await hands.see(sentence(/^Bramble: /));
});

test('a reading that cannot be is named, and nothing is stored', async ({ hands, page }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  const before = await records(page, 'look_over');
  await hands.open(`${horse}/look-over`);
  await hands.type(field('Pulse'), '4000');
  await hands.tap(allNormal);
  await hands.see(words('A reading cannot be'));
  expect(await records(page, 'look_over')).toEqual(before);
  expect(await records(page, 'vitals')).toEqual([]);
});
