/**
 * The consultant's visit to a yard: what the animals share in one tap, each animal in turn, broken off twice with nothing
 * lost, the report drafted and changed by hand; and the next visit, which says first what changed.
 */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, field, link, sentence, thing, words } from '../../hands/hands.ts';
import type { Hands } from '../../hands/hands.ts';
import { fillIn, newAnimalForm, saveAnimal, tape } from '../../models/animals.ts';
import { expect, test } from '../../walk.ts';

const day = 24 * 60 * 60_000;

async function newPony(hands: Hands, name: string): Promise<void> {
  await hands.open(newAnimalForm);
  await fillIn(hands, { name, kind: 'Pony', height: '128', born: '2012' });
  await saveAnimal(hands, name);
}

async function score(hands: Hands, points: number): Promise<void> {
  for (const site of ['neck', 'withers', 'shoulder', 'ribs', 'loin', 'tail']) {
    await hands.see(sentence(new RegExp(site, 'i')));
    await hands.tap(button(String(points)));
    await hands.tap(link(/^Next: /));
  }
  await hands.tap(button('Save condition'));
}

test('two ponies are visited, the visit is broken off twice, and the report is sent on', async ({ pocket }) => {
  test.setTimeout(240_000);
  const first = await pocket.takeOut();
  await wakeAt(first.page, dawn);
  await newPony(first.hands, 'Bramble');
  await newPony(first.hands, 'Moss');
  await first.hands.open('#/horses');
  await first.hands.tap(link('Start a visit'));
  await first.hands.see(sentence('Whom do you see today?'));
  await first.holds('visit-start');
  await first.hands.tap(button('Start visit'));
  await first.hands.see(sentence('0 of 2 seen'));
  await first.hands.see(words(/^The first visit/));
  await first.holds('visit-under-way');

  // Asked once, for all of them.
  await first.hands.tap(button(/^As before: hay, feeding times, nets and tubs and weather of today$/));
  await expect.poll(async () => first.hands.count(button(/^As before/))).toBe(0);

  await first.hands.tap(link('Weigh Bramble'));
  await tape(first.hands, '158', '150');
  await first.hands.tap(link('Score Bramble'));
  await first.hands.see(sentence(/neck/i));
  await first.hands.tap(button('7'));
  await first.hands.tap(link(/^Next: /));
  await first.hands.see(sentence(/withers/i));

  // The telephone rings in the middle of the walk-round, and the phone is killed.
  const inTheMiddle = new URL(first.page.url()).hash;
  await pocket.kill();
  const second = await pocket.takeOut();
  await wakeAt(second.page, new Date(dawn.getTime() + 20 * 60_000));
  await second.hands.open(inTheMiddle.replace(/\d$/, '1'));
  await score(second.hands, 7);
  await second.hands.see(link('Score the crest'));
  await second.hands.tap(link('Score the crest'));
  await second.hands.tap(thing('radio', /^3/));
  await second.hands.tap(button('Save crest'));

  // Broken off again, between two steps.
  await pocket.putAway();
  const third = await pocket.takeOut();
  await wakeAt(third.page, new Date(dawn.getTime() + 40 * 60_000));
  await third.hands.open('#/horses');
  await third.hands.tap(link('Back to the visit'));
  await third.hands.see(link('Hay as before'));
  await third.hands.tap(link('Look Bramble over'));
  await third.hands.see(sentence('Look Bramble over'));
  await third.hands.tap(button('Looked at all of it: all normal'));
  await third.hands.see(link('Make the plan'));
  await third.hands.tap(link('Back'));

  await third.hands.tap(link('Summary and report'));
  await third.hands.see(sentence(/^0 of 2 seen/));
  const report = field('Report, as you will hand it over');
  expect(await third.hands.see(report)).toMatch(/Bramble\nWeight \d+ kg, give or take \d+ kg; condition 7 of 9; crest 3 of 5\./);
  await third.holds('visit-report');
  await third.hands.type(report, 'Until May.');
  await third.hands.tap(button('End visit'));
  await third.hands.see(link('Start a visit'));
  const kept = await records(third.page, 'yard_visit');
  expect(kept).toHaveLength(1);
  expect(JSON.stringify(kept)).toContain('Until May.');
  for (const kind of ['weight', 'condition', 'crest', 'look_over']) {
    expect(await records(third.page, kind), kind).toHaveLength(1);
  }

  // Four weeks on, what changed stands first.
  await pocket.putAway();
  const fourth = await pocket.takeOut();
  await wakeAt(fourth.page, new Date(dawn.getTime() + 28 * day));
  await fourth.hands.open('#/horses');
  await fourth.hands.tap(link('Start a visit'));
  await fourth.hands.see(words(/^Last visit: /));
  await fourth.hands.tap(button('Start visit'));
  await fourth.hands.see(thing('heading', /^Since /));
  await fourth.hands.tap(link('Weigh Bramble'));
  // Its length holds from four weeks ago, and is not asked again.
  await tape(fourth.hands, '155');
  await fourth.hands.tap(link('Back'));
  await fourth.hands.see(words(/^\d+ kg, was \d+ kg/));
  await fourth.holds('visit-what-changed');
});
