/** The two tubs of a normal morning, in the six verbs. */
import { expect, type Page } from '@playwright/test';
import { button, type Hands, link } from '../hands/hands.ts';
import { readBeforeAgain } from './screen.ts';

/** From the shed: both tubs go into the water. */
export async function startBothTubs(hands: Hands): Promise<void> {
  await hands.tap(link('Soaks and tubs'));
  await hands.tap(button('Start tub 1'));
  await expect.poll(() => hands.count(button('Start tub 1'))).toBe(0);
  await hands.tap(button('Start tub 2'));
  await expect.poll(() => hands.count(button('Start tub 2'))).toBe(0);
}

/** On the round: both are lifted out, one after the other. */
export async function liftOutBothTubs(hands: Hands, page: Page): Promise<void> {
  await hands.open('#/round');
  await hands.tap(button(/^Lift out tub 1 now/));
  await hands.see(button(/^Lift out tub 2 now/));
  await readBeforeAgain(page);
  await hands.tap(button(/^Lift out tub 2 now/));
  await expect.poll(() => hands.count(button(/^Lift out/))).toBe(0);
}
