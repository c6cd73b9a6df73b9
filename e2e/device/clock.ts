/**
 * Moves the app's clock as a phone's clock moves: while the app sleeps, and then it is looked at.
 *
 * Only wall time is set; timers are left alone, because a sleeping phone runs none.
 */
import type { Page } from '@playwright/test';

/** A Tuesday in May, a quarter to six by summer time: both nets of the day are still to weigh. */
export const dawn = new Date('2026-05-05T04:45:00Z');

/** Sets the wall clock and lets the page notice that it is being looked at again. */
export async function wakeAt(page: Page, instant: Date | string): Promise<void> {
  await page.clock.setSystemTime(instant);
  await lookAgain(page);
}

/** Moves the wall clock on by so many minutes from what the page now takes for now. */
export async function sleepFor(page: Page, minutes: number): Promise<Date> {
  const now = await page.evaluate(() => Date.now());
  const then = new Date(now + minutes * 60_000);
  await wakeAt(page, then);
  return then;
}

/** The event by which a page learns that it is in sight, without any change of time. */
export async function lookAgain(page: Page): Promise<void> {
  await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
}
