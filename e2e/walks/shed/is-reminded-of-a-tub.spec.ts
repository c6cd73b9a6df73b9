/**
 * Reminders of a tub and of the day: what rings while a page is open, once; and the files that ring when none is, read
 * by a calendar's own parser.
 */
import type { Page } from '@playwright/test';
import { readFile } from 'node:fs/promises';
import { heard, listen, savesFiles } from '../../device/bell.ts';
import { dawn, lookAgain, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { firstVisitIsOver } from '../../device/worker.ts';
import { button, type Hands, link, sentence, thing, words } from '../../hands/hands.ts';
import { type CalendarEvent, readCalendar } from '../../models/calendar.ts';
import { readBeforeAgain, readSentence } from '../../models/screen.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

const MINUTE = 60_000;

/** Taps the action and reads the file that is saved. */
async function save(page: Page, hands: Hands, action: string, name: string): Promise<CalendarEvent[]> {
  const download = page.waitForEvent('download');
  await hands.tap(button(action));
  const saved = await download;
  expect(saved.suggestedFilename()).toBe(name);
  await hands.see(words(/^Saved\. Open it with the calendar/));
  return readCalendar(await readFile(await saved.path(), 'utf8'));
}

/** When the hay of the one soak was first wet, as it lies on the disk. */
async function wetted(page: Page): Promise<number> {
  const [start] = await records(page, 'soak_step');
  return Number(start?.['at']);
}

/** Starts a soak with what stands in the form, and gives its address. */
async function soak(page: Page, hands: Hands): Promise<string> {
  await hands.open('#/shed/tub/new');
  await hands.tap(button('Start the soak'));
  await hands.see(words('Lift out in'));
  return new URL(page.url()).hash;
}

test('a tub rings once while the page is open, and asks for leave by its own button only', async ({ hands, page, context }) => {
  test.setTimeout(120_000);
  await listen(context, 'granted');
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await firstVisitIsOver(page);
  const tub = await soak(page, hands);
  await hands.tap(link('Remind me'));
  await hands.see(sentence(/^Lift out at/));
  await hands.see(button(/^Sound and vibration off/));
  expect(await heard(page)).toEqual({ tones: 0, notifications: [], asked: 0, awake: 0 });

  // What rings is heard when it is switched on: three beeps.
  await hands.tap(button(/^Sound and vibration/));
  await hands.see(button(/^Sound and vibration on/));
  expect((await heard(page)).asked).toBe(0);
  await hands.tap(button(/^Notification/));
  await hands.see(button(/^Notification on/));
  await hands.tap(button(/^Keep the screen on/));
  await hands.see(button(/^Keep the screen on on/));
  await expect.poll(async () => (await heard(page)).awake).toBe(1);
  expect(await heard(page)).toMatchObject({ tones: 3, notifications: [], asked: 1 });

  const start = await wetted(page);
  await wakeAt(page, new Date(start + 59 * MINUTE));
  await hands.see(sentence(/^Lift out at/));
  expect((await heard(page)).notifications).toEqual([]);
  await wakeAt(page, new Date(start + 61 * MINUTE));
  await hands.see(sentence(/^Lift out now/));
  await expect.poll(async () => (await heard(page)).notifications).toEqual(['Lift out tub 1']);
  await lookAgain(page);
  expect(await heard(page)).toMatchObject({ tones: 6, notifications: ['Lift out tub 1'], asked: 1 });

  // Opened anew it is late still and was told already. What it tells next is the next thing, and nothing in between.
  await hands.open(tub);
  await hands.see(words(/^Lift out now/));
  await lookAgain(page);
  await wakeAt(page, new Date(start + 12 * 60 * MINUTE));
  await hands.see(sentence(/^Throw away/));
  await expect.poll(async () => (await heard(page)).notifications).toEqual(['Throw away what is left of tub 1']);
  expect((await heard(page)).asked).toBe(0);
});

test('somebody who refuses is told that nothing shows', async ({ hands, page, context }) => {
  await listen(context, 'denied');
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await firstVisitIsOver(page);
  await hands.open('#/shed/reminders');
  await hands.tap(button(/^Notification/));
  await hands.see(button(/^Notification refused/));
  await hands.see(words(/^Refused for this page: nothing shows/));
});

test("a tub's file has its times, and takes them out again when it is stopped", async ({ hands, page, context }) => {
  await savesFiles(context);
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  const tub = await soak(page, hands);
  const start = await wetted(page);
  await hands.open(`${tub}/remind`);
  await hands.see(sentence(/^Lift out at/));
  const made = await save(page, hands, 'Calendar file for this tub', 'tussock-tub.ics');
  const second = (at: number): number => Math.floor(at / 1000) * 1000;
  expect(made.map(({ start: at, floating, status, alarms }) => ({ at, floating, status, alarms }))).toEqual([
    { at: second(start + 60 * MINUTE), floating: false, status: 'CONFIRMED', alarms: [0, 300] },
    { at: second(start + 75 * MINUTE), floating: false, status: 'CONFIRMED', alarms: [0] },
    { at: second(start + 720 * MINUTE), floating: false, status: 'CONFIRMED', alarms: [0, 1800] },
  ]);
  for (const [at, said] of [/^Lift out tub 1/, /^Feed tub 1, drained/, /^Throw away what is left of tub 1/].entries()) {
    expect(made[at]?.summary).toMatch(said);
  }
  for (const { uid } of made) expect(uid).toMatch(/^(lift-out|feed|throw-away)\.[0-9a-f-]{36}@tussock$/);

  // A minute later it is stopped.
  await wakeAt(page, new Date(start + 2 * MINUTE));
  await hands.open(tub);
  await hands.tap(button('Stop this tub'));
  await expect.poll(() => readSentence(hands)).not.toMatch(/^Lift out/);
  await hands.open(`${tub}/remind`);
  await hands.see(sentence('This tub is over: nothing rings for it'));
  const gone = await save(page, hands, 'Calendar file to take it out', 'tussock-tub.ics');
  expect(gone.map(({ uid }) => uid)).toEqual(made.map(({ uid }) => uid));
  for (const [at, event] of gone.entries()) {
    expect(event).toMatchObject({ status: 'CANCELLED', alarms: [] });
    expect(event.sequence).toBeGreaterThan(made[at]?.sequence ?? Number.NaN);
  }
});

test('the day is one file that comes back at the same time by the clock, over the change of it', async ({ hands, page, context }) => {
  await savesFiles(context);
  // Nine days before the clock goes forward.
  await wakeAt(page, new Date('2026-03-20T05:45:00Z'));
  await haveAPlan(hands);
  await hands.open('#/shed');
  await hands.tap(link('Reminders'));
  await hands.see(sentence(/reminders? a day$/));
  const shown = await hands.see(thing('list', 'Every day'));
  const made = await save(page, hands, 'Calendar file for the day', 'tussock-day.ics');
  expect(made.length).toBeGreaterThan(0);
  for (const event of made) {
    expect(event).toMatchObject({ floating: true, status: 'CONFIRMED', alarms: [0] });
    expect(event.uid).toMatch(/@tussock$/);
    expect(event.summary).toMatch(/^Bramble: /);
    const clocks = new Set(event.times.map((time) => time.slice(11)));
    expect(clocks.size, 'always at the same time').toBe(1);
    expect(shown).toContain(event.times[0]?.slice(11, 16));
    const days = event.times.map((time) => time.slice(0, 10));
    expect(days).toContain('2026-03-28');
    expect(days).toContain('2026-03-30');
    // A week on is a week and not an hour less: the phone's own clock has it at another hour of UTC.
    const hours = await page.evaluate(
      (times) => times.map((time) => new Date(time).getUTCHours()),
      event.times.filter((time) => /-03-28T|-03-30T/.test(time)),
    );
    expect(((hours[0] ?? 0) - (hours[1] ?? 0) + 24) % 24).toBe(1);
  }
});

test('a key that is tapped twice is on and off again, and nothing is read from it but its word', async ({ hands, page, context }) => {
  await listen(context, 'granted');
  await wakeAt(page, dawn);
  await haveAPlan(hands);
  await hands.open('#/shed/reminders');
  await hands.tap(button(/^Sound and vibration off/));
  await hands.see(button(/^Sound and vibration on/));
  await readBeforeAgain(page);
  await hands.tap(button(/^Sound and vibration on/));
  await hands.see(button(/^Sound and vibration off/));
});
