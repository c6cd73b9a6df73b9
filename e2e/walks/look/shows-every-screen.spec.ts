/** Every screen that a yard with two animals, a plan, a hay and a tub can show, held to all that is asked of a screen. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { button, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal } from '../../models/animals.ts';
import { readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('round, shed, nets, hay, tub, details, group, vet and plan hold up', async ({ hands, page, holds }) => {
  test.setTimeout(420_000);
  const faults: string[] = [];
  // One screen that does not hold up must not hide the others.
  const look = async (name: string): Promise<void> => {
    await holds(name).catch((problem: Error) => faults.push(problem.message));
  };

  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(newAnimalForm);
  await fillIn(hands, { name: 'Moss', kind: 'Pony', height: '128', born: '2012' });
  await saveAnimal(hands, 'Moss');

  await hands.open('#/round');
  expect(await readSentence(hands)).toMatch(/due|later|late/);
  await look('round');
  await hands.open('#/horses');
  await readSentence(hands);
  await look('horses-two');
  await hands.tap(link('Weigh them all'));
  await hands.see(sentence('0 of 2 weighed today'));
  await look('weighbridge');
  await hands.open('#/shed');
  await hands.see(sentence('2 nets to weigh for today'));
  await look('shed');
  await hands.tap(link('Weigh nets'));
  await hands.see(words('Hang until the scale reads'));
  await look('net');
  await hands.type(field('Hang until the scale reads'), '3.42');
  await hands.see(words(/^0\.42 kg over/));
  await look('net-over');
  await hands.tap(button('Both filled to target'));
  await hands.see(sentence("Bramble's nets are filled today"));
  await look('nets-filled');

  await hands.open('#/shed/hay/new');
  await hands.see(sentence('Which hay is it?'));
  await look('hay-new');
  await hands.open('#/shed');
  await hands.tap(link(/^Grass hay/));
  await hands.see(sentence(/^Grass hay/));
  await look('hay');

  await hands.open('#/shed/soaks');
  await hands.see(sentence(/to start$/));
  await look('soaks');
  await hands.open('#/shed/tubs/new');
  await hands.see(sentence('A new tub'));
  await look('tub-form');
  await hands.open('#/shed/tub/new');
  await hands.see(sentence('What goes into the water?'));
  await hands.see(thing('group', 'In which tub'));
  await look('tub-new');
  await hands.tap(button('Start the soak'));
  await hands.see(words('Lift out in'));
  await look('tub');
  await hands.tap(link('Remind me'));
  await hands.see(sentence(/^Lift out at/));
  await look('tub-remind');
  await hands.tap(link('Back'));
  await hands.see(words('Lift out in'));
  await hands.tap(button('Correct a time'));
  await hands.see(field(/^In the water at/));
  await look('tub-times');

  await hands.open('#/shed/reminders');
  await hands.see(sentence(/reminders? a day$/));
  await look('reminders');

  await hands.open(`${horse}/details`);
  await readSentence(hands);
  await look('details');
  await hands.open(`${horse}/measure`);
  await hands.see(sentence('Where the tape goes on Bramble'));
  await look('measure');
  await hands.open(`${horse}/measures`);
  await hands.see(sentence('Measures of Bramble'));
  await look('measures-one');
  await hands.open(`${horse}/vet`);
  await readSentence(hands);
  await look('vets-word');
  await hands.open(`${horse}/plan`);
  await hands.see(sentence(/hay/));
  await look('plan-in-use');
  await hands.open(`${horse}/next`);
  await hands.see(words(/, day 1, since /));
  await look('next-step');
  await hands.open(`${horse}/look-back`);
  await hands.see(sentence('No episode is written down'));
  await look('look-back-none');
  await hands.open('#/paddock');
  await hands.see(sentence('No grass today'));
  await look('paddock-no-grass');
  await hands.open('#/paddock/week');
  await readSentence(hands);
  await look('grass-week');
  await hands.open('#/paddock/season');
  await readSentence(hands);
  await look('grass-season');

  await hands.open('#/horses/group/new');
  await readSentence(hands);
  await look('group-new');
  await hands.type(field(/name/i), 'Top field');
  await hands.tap(thing('checkbox', 'Bramble'));
  await hands.tap(thing('checkbox', 'Moss'));
  await hands.tap(button('Save group'));
  await readSentence(hands, 'Who eats together?');
  await look('group');
  expect(faults).toEqual([]);
});

test('the invented yard is marked on every screen, and each of its animals holds up', async ({ hands, holds }) => {
  test.setTimeout(120_000);
  for (const name of ['Bramble', 'Moss', 'Fern']) {
    await hands.open('#/example');
    await readSentence(hands);
    await hands.tap(link(new RegExp(`^${name}`)));
    await hands.see(sentence(new RegExp(name)));
    await hands.see(words(/^Example yard\. /));
    await holds(`example-${name.toLowerCase()}`);
  }
});
