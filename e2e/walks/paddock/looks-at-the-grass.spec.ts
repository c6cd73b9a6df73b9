/** Grass on a paddock: the boot in one tap, readings that survive a kill, a strip and a track, what grows there. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, choice, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { addField, newFieldForm, topField } from '../../models/fields.ts';
import { flushIsOver, haveATestedHorse } from '../../models/paddock.ts';
import { readBeforeAgain } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('a paddock is looked at in one tap, which can be taken back', async ({ hands, page, holds }) => {
  test.setTimeout(120_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open(newFieldForm);
  await hands.see(sentence('A paddock by its name'));
  await hands.tap(button('Save the paddock'));
  await hands.see(words('Give it a name'));
  await hands.type(field('Area'), '2 acres');
  await hands.see(words('8094 m², 0.81 ha, 2 acres'));
  await holds('field-form');
  await hands.type(field('Name'), topField.name);
  await hands.tap(choice(topField.grows));
  await hands.tap(thing('checkbox', /^Ragwort/));
  await hands.tap(button('Save the paddock'));
  await hands.see(sentence('Nobody has looked today'));
  await holds('field-not-looked');
  hands.touches.reset();
  await hands.tap(choice('Ankle'));
  await hands.see(sentence('Leaf at the ankle, seen today'));
  expect(hands.touches.taps).toBe(1);
  expect(hands.touches.digits).toBe(0);
  expect(await records(page, 'sward')).toHaveLength(1);
  await hands.tap(button('Undo'));
  await hands.see(sentence('Nobody has looked today'));
  await hands.tap(choice('Below ankle'));
  await hands.see(words(/^A bare paddock is not forage/));
  await hands.tap(choice('In seed'));
  // One look a day: the second tap adds to the first.
  await hands.see(sentence('Leaf below the ankle, seen today'));
  // What was seen there harms, whatever region is ticked.
  await hands.see(button(/^The liver destroyed over weeks and months/));
  await holds('field-bare');
});

test('readings survive a kill, and fewer than thirty say so', async ({ hands, page, holds }) => {
  test.setTimeout(120_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await addField(hands);
  await hands.tap(link('Read thirty heights'));
  await hands.see(field('Height 1'));
  await holds('readings-none');
  for (const [nth, height] of ['10', '11', '12'].entries()) {
    await hands.type(field(`Height ${nth + 1}`), height);
    await hands.tap(button('Next reading'));
    await hands.see(field(`Height ${nth + 2}`));
    await readBeforeAgain(page);
  }
  await hands.see(words(/^Mean 11 cm, give or take/));
  await hands.open(new URL(page.url()).hash);
  await hands.see(field('Height 4'));
  await holds('readings');
  await hands.tap(button('Take back the last'));
  await hands.see(field('Height 3'));
  await hands.tap(button('Save 2 readings'));
  await hands.see(sentence('10.5 cm by 2 readings, seen today'));
  await hands.see(words('2 of 30 readings: the mean may be far out'));
  await holds('field-read');
});

test('a strip waits for who goes out, and a track keeps hay and water apart', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await addField(hands, { ...topField, seen: [] });
  await hands.tap(choice('Above ankle'));
  await hands.see(sentence('Leaf above the ankle, seen today'));
  await hands.tap(link('A strip or a track'));
  await hands.see(sentence("Today's strip"));
  await hands.see(words(/^Say first who goes out and how long/));
  await hands.type(field('How wide'), '40 paces');
  await hands.see(words(/^30 m$/));
  await holds('strip-nobody-out');
  await hands.tap(words('A track instead'));
  await hands.type(field('One side of the field'), '100');
  await hands.type(field('The other side'), '60');
  await hands.type(field('How wide is the track'), '4');
  await hands.type(field('How many animals'), '3');
  await hands.see(words('Hay place 4'));
  await hands.see(words('That a track takes weight off is not proven'));
  await holds('track');
});

test('a strip is drawn for one that goes out by a decision, with both fences and the paces', async ({ hands, page, holds }) => {
  test.setTimeout(180_000);
  await wakeAt(page, dawn);
  const horse = await haveATestedHorse(hands, page);
  await flushIsOver(hands);
  await addField(hands, { ...topField, seen: [] });
  await hands.tap(choice('Above ankle'));
  await hands.see(sentence('Leaf above the ankle, seen today'));
  const paddock = new URL(page.url()).hash;
  await hands.open(horse.replace('#/horses/', '#/paddock/grazing/'));
  await hands.see(sentence('How Fern goes out to grass'));
  await hands.tap(choice('30 min'));
  await hands.tap(button('Save'));
  await expect.poll(() => new URL(page.url()).hash).toMatch(/^#\/paddock\/of\//);
  await hands.open(`${paddock}/strip`);
  await hands.see(sentence("Today's strip"));
  await hands.type(field('How wide'), '3 m');
  await hands.tap(choice('4 days'));
  await hands.tap(choice('With one'));
  await hands.see(sentence(/^Fence [\d.]+ paces? on$/));
  await hands.see(thing('img', /^The strip from above: /));
  await hands.see(words(/^No animal's plan rests on a strip/));
  await holds('strip');
});

test('grasses to favour and to avoid stand by their names', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open('#/paddock/plants');
  await hands.see(sentence('Grasses, and what harms at grass'));
  await hands.see(thing('list', 'To avoid: may hold much sugar'));
  await hands.see(words('No region is ticked: what harms where you are is not shown'));
  await holds('plants');
  await hands.type(field('Find a plant'), 'lolium');
  await hands.see(words(/^Perennial ryegrass$/));
  await expect.poll(() => hands.count(thing('list', 'Less sugar than others, likely'))).toBe(0);
});
