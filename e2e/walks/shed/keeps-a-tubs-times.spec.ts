/** A tub's times stand on stored instants alone: killed, moved by hours, in another zone, over both changes of the clock. */
import type { Page } from '@playwright/test';
import { dawn, wakeAt } from '../../device/clock.ts';
import { records } from '../../device/database.ts';
import { button, type Hands, sentence, thing, words } from '../../hands/hands.ts';
import { haveAPlan } from '../../models/start.ts';
import { expect, test } from '../../walk.ts';

const MINUTE = 60_000;
const HALF_A_DAY = 12 * 60 * MINUTE;

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

/** The three clock times on the reminders of a tub. */
async function times(hands: Hands): Promise<string[]> {
  const list = await hands.see(thing('list', 'Times of this tub'));
  return list.match(/\d\d:\d\d/g) ?? [];
}

/** What a clock on the wall shows. */
function onTheWall(at: number, timeZone: string): string {
  return new Intl.DateTimeFormat('en-GB', { timeZone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }).format(at);
}

test('killed and opened again, three hours on, three hours back, and in another zone', async ({ pocket }) => {
  test.setTimeout(180_000);
  const first = await pocket.takeOut();
  await wakeAt(first.page, dawn);
  await haveAPlan(first.hands);
  const tub = await soak(first.page, first.hands);
  const start = await wetted(first.page);
  await pocket.kill();

  const looks = [
    { zone: 'Europe/London', at: start + 3 * 60 * MINUTE, says: /^Lift out now/ },
    { zone: 'Europe/London', at: start - 3 * 60 * MINUTE, says: /^Lift out at/ },
    { zone: 'America/New_York', at: start + 30 * MINUTE, says: /^Lift out at/ },
    { zone: 'Europe/London', at: start + HALF_A_DAY - MINUTE, says: /^Lift out now/ },
    { zone: 'Europe/London', at: start + HALF_A_DAY, says: /^Throw away now/ },
  ];
  for (const { zone, at, says } of looks) {
    const { page, hands } = await pocket.takeOut(zone);
    await wakeAt(page, new Date(at));
    await hands.open(`${tub}/remind`);
    await hands.see(sentence(says));
    expect(await times(hands), `${zone}, ${new Date(at).toISOString()}`).toEqual(
      [60, 75, 720].map((minutes) => onTheWall(start + minutes * MINUTE, zone)),
    );
    await pocket.kill();
  }
});

const nights = [
  { change: 'forward', evening: '2026-03-28T19:00:00Z' },
  { change: 'back', evening: '2026-10-24T18:00:00Z' },
];

for (const { change, evening } of nights) {
  test(`the night the clock goes ${change}: thrown away after twelve hours, and not a minute before`, async ({ hands, page }) => {
    test.setTimeout(120_000);
    await wakeAt(page, new Date(evening));
    await haveAPlan(hands);
    const tub = await soak(page, hands);
    const start = await wetted(page);
    await hands.open(`${tub}/remind`);
    await hands.see(sentence(/^Lift out at/));
    expect((await times(hands))[2]).toBe(onTheWall(start + HALF_A_DAY, 'Europe/London'));

    await hands.open(tub);
    await wakeAt(page, new Date(start + HALF_A_DAY - MINUTE));
    await hands.see(words(/^Lift out now|^Late/));
    expect(await hands.count(sentence(/^Throw away/))).toBe(0);
    await wakeAt(page, new Date(start + HALF_A_DAY));
    await hands.see(sentence(/^Throw away/));
    await hands.see(words('since it went in'));
  });
}
