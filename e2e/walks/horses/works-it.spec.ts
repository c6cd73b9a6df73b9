/** Work: a session on the clock with the phone in a pocket, one written down, and no work for an animal that was not sound. */
import { dawn, sleepFor, wakeAt } from '../../device/clock.ts';
import { records, rows } from '../../device/database.ts';
import { button, choice, field, link, sentence, words } from '../../hands/hands.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { bramble, haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

test('a session on the clock outlives the page, and one that was not sound ends work', async ({ hands, page, holds }) => {
  test.setTimeout(120_000);
  await wakeAt(page, dawn);
  await haveAPlan(hands, { ...bramble, ever: 'No, as far as I know' });
  const horse = new URL(page.url()).hash;

  // The plan asks for work, and the round has it.
  await hands.open('#/round');
  await hands.tap(link(/Work it/));
  expect(await readSentence(hands)).toBe('0 of 5 sessions this week');
  await hands.see(words(/^15 min, 5 times a week$/));
  await holds('work');
  await hands.tap(link('Start work'));
  await hands.see(sentence('Start in walk with Bramble'));
  await holds('work-start');
  await hands.tap(button('Start in walk'));
  await hands.see(sentence(/^Walk, 0 min in all$/));
  await sleepFor(page, 5);
  await hands.tap(choice('Trot'));
  await hands.see(sentence(/^Trot, 5 min in all$/));
  await expect.poll(async () => JSON.stringify(await rows(page, 'drafts'))).toMatch(/walk \d+, trot \d+/);
  // Nothing is counted: the page is gone for a quarter of an hour.
  await sleepFor(page, 15);
  await hands.open(`${horse}/work`);
  await hands.tap(link('Go on with the work'));
  await hands.see(sentence(/^Trot, 20 min in all$/));
  await holds('work-going');
  await hands.tap(button('Stop work'));
  await hands.see(sentence(/^Bramble worked for 20 min$/));
  await readBeforeAgain(page);
  await hands.tap(button('Save work'));
  await hands.see(words('Say whether it goes sound, or that nobody looked'));
  expect(await records(page, 'work_session')).toEqual([]);
  await hands.tap(choice('Led in hand'));
  await hands.tap(choice('Sound'));
  await hands.tap(choice('Settled in 10 min'));
  await holds('work-after');
  await readBeforeAgain(page);
  await hands.tap(button('Save work'));
  await hands.see(sentence('1 of 5 sessions this week'));
  await hands.see(words(/5 min walk, 15 min trot, led in hand/));
  expect(await records(page, 'work_session')).toHaveLength(1);
  expect(await rows(page, 'drafts'), 'cleared by the save').toEqual([]);
  await holds('work-done');
  await hands.open('#/round');
  await readSentence(hands);
  expect(await hands.count(link(/Work it/))).toBe(0);

  // Written down, and not sound: the look-over comes next, and there is no more work.
  await hands.open(`${horse}/work/done`);
  await hands.type(field('Minutes of walk'), '15');
  await hands.tap(choice('Lunged or long-reined'));
  await hands.tap(choice('Not sound'));
  await hands.see(words('Stop grazing and work. Soft bed. Vet today'));
  await holds('work-not-sound');
  await hands.tap(button('Save work'));
  await hands.see(sentence('Look Bramble over'));
  await hands.open(horse);
  await hands.see(sentence(/^Stop grazing and work/));
  await hands.open(`${horse}/work`);
  await hands.see(sentence(/^Stop grazing and work/));
  expect(await hands.count(link('Start work'))).toBe(0);
  await holds('work-stopped');
  await hands.open('#/round');
  await hands.see(link(/Stop grazing and work/));

  // Somebody looked, and it goes as usual.
  await hands.open(`${horse}/look-over`);
  await hands.tap(button('Looked at all of it: all normal'));
  await readSentence(hands, 'Look Bramble over');
  await hands.open(`${horse}/work`);
  expect(await readSentence(hands)).toBe('2 of 5 sessions this week');
});

test("after laminitis the vet's word comes first, and movement without riding is offered", async ({ hands, page, holds }) => {
  await haveAPlan(hands);
  const horse = new URL(page.url()).hash;
  await hands.open(`${horse}/plan`);
  await hands.tap(link(/^Work/));
  await hands.see(sentence("Work only after the vet's word"));
  await hands.see(words(/^Hang its hay in several places/));
  expect(await hands.count(link('Start work'))).toBe(0);
  await holds('work-vets-word');
  await hands.tap(link("Write down the vet's word"));
  await hands.see(sentence(/What the vet said of Bramble/));
});
