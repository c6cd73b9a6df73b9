/**
 * Animals on one hay, from a fresh yard: the group's plan is used, its nets hang, the ledger has them once, and one of
 * them will not eat. A normal morning keeps to its touches when two of three animals are a group.
 */
import { dawn, sleepFor, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, field, type Hands, link, sentence, thing, words } from '../../hands/hands.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { bramble, haveAPlan } from '../../models/start.ts';
import { liftOutBothTubs, startBothTubs } from '../../models/tubs.ts';
import { expect, test } from '../../walk.ts';

/** So many minutes after dawn. */
const after = (minutes: number): Date => new Date(dawn.getTime() + minutes * 60_000);

/** Puts animals that are there into a new group and uses its plan; gives the group's address. */
async function feedTogether(hands: Hands, address: () => string, names: readonly string[]): Promise<string> {
  await hands.open('#/horses/group/new');
  await hands.see(sentence('Who eats together?'));
  await hands.type(field('Name'), 'Top field');
  for (const name of names) await hands.tap(thing('checkbox', name));
  await hands.tap(button('Save group'));
  await hands.see(sentence(/^Offer [\d.]+ kg/));
  const group = address();
  await hands.tap(button('Use this plan'));
  await hands.see(words(/^In use since/));
  return group;
}

test('three animals share one hay: plan, day, nets, ledger, and one that will not eat', async ({ hands, page, holds }) => {
  test.setTimeout(240_000);
  await wakeAt(page, dawn);
  const names = ['Bramble', 'Moss', 'Fern'];
  for (const name of names) await haveAPlan(hands, { ...bramble, name });
  const horse = new URL(page.url()).hash;
  const group = await feedTogether(hands, () => new URL(page.url()).hash, names);
  // The three of their own, the group's, and a part for each.
  expect(await records(page, 'plan')).toHaveLength(7);
  await hands.see(words('4 feeding places, one more than animals, well apart'));
  await holds('group-in-use');

  // One of them has its hay with the group now.
  await hands.open(`${horse}/plan`);
  await hands.see(words('Fern has its hay with Top field'));
  await hands.see(link('See Top field'));
  await holds('plan-of-a-member');

  // The group's day is accepted like that of one animal.
  await hands.open(`${group}/day`);
  await hands.see(sentence(/longest wait/));
  await holds('group-day');
  await readBeforeAgain(page);
  await hands.tap(button(/^Accept a wait of [\d.]+ h/));
  await hands.see(words(/^Accepted: a wait of up to/));

  // Its nets are filled, soaked and hung with "all as planned".
  await hands.open('#/shed/weigh');
  await hands.tap(button('All 8 filled to target'));
  await hands.see(sentence(/nets are filled today$/));
  await hands.open('#/shed/soaks');
  await hands.tap(button(/^Start a new tub/));
  await expect.poll(async () => (await records(page, 'soak_step')).length).toBe(1);
  await wakeAt(page, after(61));
  await hands.open('#/round');
  await hands.tap(button(/^Lift out/));
  await expect.poll(() => hands.count(button(/^Lift out/))).toBe(0);
  await wakeAt(page, after(76));
  await hands.open('#/round');
  await hands.tap(button('All as planned for 07:00'));
  await expect.poll(async () => (await records(page, 'net_hung')).length).toBe(4);

  // The ledger of the group, and of one of them.
  await hands.open(`${group}/ledger`);
  await hands.see(sentence(/^Top field ate/));
  await holds('ledger-of-a-group');
  await hands.open(`${horse}/ledger`);
  await hands.see(sentence(/^Fern ate/));

  // Somebody leaves it: which one is asked.
  await sleepFor(page, 600);
  const id = group.split('/').pop() ?? '';
  await hands.open(`#/shed/hung/${id}`);
  await hands.see(sentence(/^What is left of the net of/));
  await hands.see(words('These nets time nobody'));
  expect(await hands.count(button(/^Eaten up now/))).toBe(0);
  await holds('nets-of-a-group');
  await hands.tap(link('Will not eat'));
  await hands.see(sentence('Which one will not eat?'));
  await holds('which-will-not-eat');
  await hands.tap(link(/^Moss/));
  await hands.see(sentence('Hold out a handful of dry hay to Moss'));
});

test('one that is fed apart leaves the group, and the round says that who eats there has changed', async ({ hands, page }) => {
  test.setTimeout(120_000);
  await wakeAt(page, dawn);
  const names = ['Bramble', 'Moss', 'Fern'];
  for (const name of names) await haveAPlan(hands, { ...bramble, name });
  const horse = new URL(page.url()).hash;
  const group = await feedTogether(hands, () => new URL(page.url()).hash, names);
  await hands.open(`${horse}/plan`);
  await hands.see(words(/^Fed apart, Fern leaves Top field from today/));
  await hands.tap(button('Feed it apart by this plan'));
  await hands.see(words(/, give or take /));
  await hands.open(group);
  await hands.see(words('Fern does not eat of this hay any more'));
  await hands.see(button('Use this plan'));
  await hands.open('#/round');
  expect(await readSentence(hands)).toMatch(/due|later|late/);
  await hands.see(words(/^Top field: who eats there has changed since its plan/));
});

test('a normal morning of one animal and a group of two keeps to its touches', async ({ hands, page }) => {
  test.setTimeout(240_000);
  await wakeAt(page, dawn);
  for (const name of ['Bramble', 'Moss', 'Fern']) await haveAPlan(hands, { ...bramble, name });
  await feedTogether(hands, () => new URL(page.url()).hash, ['Bramble', 'Moss']);
  for (const name of ['Tub 1', 'Tub 2']) {
    await hands.open('#/shed/tubs/new');
    await hands.type(field('Name'), name);
    await hands.type(field('How much hay it holds, dry'), '6');
    await hands.tap(button('Save the tub'));
    await hands.see(sentence(/to start$/));
  }
  await hands.open('#/round');
  expect(await readSentence(hands)).toMatch(/^\d+ due/);
  hands.touches.reset();

  // Three nets for the group and one for Fern at each of two visits.
  await hands.tap(link('Shed'));
  await hands.tap(link('Weigh nets'));
  await hands.tap(button('All 8 filled to target'));
  await hands.see(sentence('All nets are filled today'));
  await hands.tap(link('Back'));
  await startBothTubs(hands);

  await wakeAt(page, after(61));
  await liftOutBothTubs(hands, page);

  await wakeAt(page, after(76));
  await hands.open('#/round');
  await hands.tap(button('All as planned for 07:00'));
  await expect.poll(async () => (await records(page, 'net_hung')).length).toBe(4);
  expect(hands.touches.taps, 'touches of a normal morning').toBeLessThanOrEqual(12);
  expect(hands.touches.digits).toBe(0);
});
