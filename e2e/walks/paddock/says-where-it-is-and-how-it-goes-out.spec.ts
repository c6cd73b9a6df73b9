/**
 * The place of the yard, by the phone and typed; how an animal goes out, with what its plan can carry before anything is
 * saved; and what the reckoning of grass rests on.
 */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { phoneIsAt, phoneKeepsItsPlace } from '../../device/whereabouts.ts';
import { button, choice, field, link, sentence, thing, words } from '../../hands/hands.ts';
import { readBeforeAgain } from '../../models/screen.ts';
import { haveATestedHorse } from '../../models/paddock.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

/** Where an animal beside whom a walk stands goes out, from its address. */
const grazing = (horse: string): string => horse.replace(/^#\/horses\//, '#/paddock/grazing/');

test('the phone says where the yard lies when it is asked, and only coarsely', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await phoneIsAt(page, { latitude: 51.208_47, longitude: -3.396_12 });
  await hands.open('#/paddock/place');
  await hands.see(sentence('Where the yard lies'));
  // Nothing is asked before the tap.
  expect(await hands.see(field('Latitude'))).toBe('');
  await holds('place-empty');
  await hands.tap(button("Use this phone's place"));
  await hands.see(words(/^Found\./));
  expect(await hands.see(field('Latitude'))).toBe('51.21');
  expect(await hands.see(field('Longitude'))).toBe('-3.40');
  await hands.see(words('51.21 degrees north of the equator'));
  await hands.see(words('3.40 degrees west of Greenwich'));
  await hands.see(words(/^By this clock the sun stands highest there at 13:/));
  await hands.tap(thing('checkbox', 'Britain and Ireland'));
  await holds('place-found');
  await hands.tap(button('Save the place'));
  await expect.poll(() => new URL(page.url()).hash).toBe('#/paddock');

  const [yard] = await records(page, 'yard');
  const text = JSON.stringify(yard);
  expect(text).toContain('51210000');
  expect(text).not.toContain('51208');
  expect(text).toContain('Europe/London');
  expect(text).toContain('british_isles');
  // What it is called stays.
  expect(text).toContain('Yard');
  await hands.open('#/paddock/place');
  await hands.see(words('51.21 degrees north of the equator'));
});

test('a phone that says no leaves the fields to type in, and a swapped side shows', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await phoneKeepsItsPlace(page);
  await hands.open('#/paddock/place');
  await hands.tap(button("Use this phone's place"));
  await hands.see(words(/^The phone did not allow it\. Type it below/));
  await holds('place-refused');
  await hands.type(field('Latitude'), '51.21 N');
  await hands.see(words('51.21 degrees north of the equator'));
  await hands.tap(button('Save the place'));
  await hands.see(words('Type the longitude too, or leave both empty'));
  await hands.type(field('Longitude'), '190');
  await readBeforeAgain(page);
  await hands.tap(button('Save the place'));
  await hands.see(words(/^Longitude of 190 is not on the earth: type -180 to 180 degrees/));
  await holds('place-wrong');
  await hands.open('#/paddock/place');
  await hands.see(words(/^As you left it/));
  // And without a place the way goes on.
  await hands.tap(link('Skip: the window is told by the clock'));
  await expect.poll(() => new URL(page.url()).hash).toBe('#/paddock');
});

test('hay that is not proven leaves no room for grass, and the screen says what to do instead', async ({
  hands,
  page,
  holds,
}) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(grazing(horse));
  await hands.see(sentence('How Bramble goes out to grass'));
  await hands.see(words(/^Say how long a day/));
  await hands.tap(choice('1 h'));
  await hands.see(words('No room for grass in the plan for Bramble'));
  await hands.see(words(/^A dry lot or a yard, with tested hay in front of it/));
  await hands.see(words(/^Have the hay tested/));
  await holds('turnout-no-room');
  // It may be saved all the same; the plan does not carry it.
  await hands.see(words(/^Saving keeps what you ask for\. The plan never counts more/));
  await hands.tap(button('Save'));
  await expect.poll(() => new URL(page.url()).hash).toMatch(/^#\/paddock\/of\//);
  expect(await records(page, 'grazing')).toHaveLength(1);
});

test('a tested horse goes out for as long as its plan can carry, and then stays in', async ({ hands, page, holds }) => {
  test.setTimeout(180_000);
  await wakeAt(page, dawn);
  const horse = await haveATestedHorse(hands, page);
  await hands.open(grazing(horse));
  await hands.see(sentence('How Fern goes out to grass'));
  await hands.type(field('Or another time'), '2 h 20');
  await hands.tap(choice('With a muzzle'));
  await hands.see(words(/^Check the muzzle every day, and never more than 10 h in a day/));
  await hands.tap(choice('About three weeks'));
  await hands.see(words(/^At most \d+ min a day, muzzled/));
  await hands.see(words(/^Asked for 2 h 20 min\. It is less: /));
  await hands.see(words('Hay that hangs less'));
  await holds('turnout-carried');
  await hands.tap(button('Save'));
  await expect.poll(() => new URL(page.url()).hash).toMatch(/^#\/paddock\/of\//);
  const [decided] = await records(page, 'grazing');
  expect(JSON.stringify(decided)).toContain('140');

  // Told again as it was decided, and stopped.
  await hands.open(grazing(horse));
  expect(await hands.see(field('Or another time'))).toBe('2 h 20');
  await hands.tap(button('Does not go out'));
  await expect.poll(() => new URL(page.url()).hash).toMatch(/^#\/paddock\/of\//);
  expect(await records(page, 'grazing')).toHaveLength(2);
  await hands.open(grazing(horse));
  await hands.see(words('By the last decision it stays in.'));
});

test('the model of intake says what it was tuned to, and every number where it stands', async ({ hands, holds }) => {
  await hands.open('#/paddock/model');
  await hands.see(sentence('What the grass reckoning rests on'));
  await hands.see(words('The model was tuned to these very trials, and tested on no others'));
  await hands.see(words(/^Ponies, day and night, a year: up to 4\.20 % was seen, over the most/));
  await holds('model-of-intake');
  await hands.tap(button(/^0\.49 where it comes from$/));
  await hands.see(words(/^Ponies, 3 h, first week: 0\.49 %/));
});
