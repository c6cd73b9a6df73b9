/** What is not done every day: other times, a laboratory report, a second phone at the same tub, a window that keeps nothing. */
import { dawn, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { hasNoDisk } from '../../device/faults.ts';
import { button, choice, field, link, sentence, words } from '../../hands/hands.ts';
import { PlaywrightHands } from '../../hands/playwright.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('a third visit is added, and a time that is none is told by its name', async ({ hands, page, holds }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open('#/shed/visits');
  await hands.see(sentence('When somebody comes'));
  expect(await hands.see(field('Visit 1'))).toBe('07:00');
  await hands.type(field('Visit 3'), '25.00');
  await hands.tap(button('Save the times'));
  await hands.see(words('"25.00" is not a time: type it like 6:05'));
  await holds('visits');
  await hands.open('#/shed/visits');
  // What was typed came back as a draft.
  await hands.tap(button('Throw away'));
  await hands.type(field('Visit 3'), '12.30');
  await hands.tap(button('Save the times'));
  await hands.see(sentence(/nets? to weigh/));
  await hands.open('#/shed/visits');
  expect(await hands.see(field('Visit 2'))).toBe('12:30');
  expect(await hands.see(field('Visit 3'))).toBe('18:00');
});

test('a laboratory report proves a hay', async ({ hands, page }) => {
  await haveAPlan(hands);
  await hands.open('#/shed');
  await hands.tap(link(/^Grass hay/));
  expect(await readSentence(hands)).toMatch(/not proven/);
  await hands.tap(button('Change it, or add a report'));
  // An eighth lies between the two columns (practice.md rule 6): the column is asked and never guessed.
  await hands.type(field(/^WSC/), '6.1');
  await hands.type(field(/^Starch/), '0.8');
  await hands.tap(button('Save hay'));
  await hands.see(words(/^Choose the column/));
  await hands.tap(choice('Dry matter'));
  await readBeforeAgain(page);
  await hands.tap(button('Save hay'));
  await expect.poll(() => readSentence(hands)).toMatch(/within the limit/);
  const [lot] = await records(page, 'lot');
  expect(JSON.stringify(lot)).toContain('6.1');
});

test('a tub that is lifted out on one screen is lifted out on the other', async ({ hands, page, context, host }) => {
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open('#/shed/tub/new');
  await hands.tap(button('Start the soak'));
  await hands.see(words('Lift out in'));
  const tub = new URL(page.url()).hash;

  const second = await context.newPage();
  await wakeAt(second, new Date(dawn.getTime() + 65 * 60_000));
  const other = new PlaywrightHands({ page: second, home: () => host.home, finger: true });
  await other.open(tub);
  await other.see(words(/^Lift out now/));
  await other.tap(button('Lifted out now'));
  await other.see(words('Drained in'));

  await page.bringToFront();
  await wakeAt(page, new Date(dawn.getTime() + 66 * 60_000));
  await hands.see(words('Drained in'));
  expect(await hands.count(button('Lifted out now'))).toBe(0);
});

test('a window that keeps nothing says so before anything is typed', async ({ hands, page, holds }) => {
  await hasNoDisk(page);
  await hands.open('#/start');
  await hands.see(sentence('A few answers, then a first plan'));
  await hands.see(words('This window keeps nothing: what you type is gone when it closes.'));
  await holds('keeps-nothing');
});
