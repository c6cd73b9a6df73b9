/** Everything that is asked of every screen, in one call. */
import { expect, type Page } from '@playwright/test';
import type { Hands } from '../hands/hands.ts';
import { axeFaults } from './axe.ts';
import { fitFaults, type FitOptions } from './fit.ts';
import { orderFaults, type OrderOptions } from './order.ts';

/** Exceptions of one screen, each named. */
export interface ScreenOptions extends FitOptions, OrderOptions {}

/**
 * Counts the sentence, the action and the stop blocks, measures every width, runs axe in both
 * themes and keeps a picture in both. The screen stays as it was, so a walk can go on from it.
 */
export async function holdsUp(page: Page, hands: Hands, name: string, options: ScreenOptions = {}): Promise<void> {
  const faults = [
    ...(await orderFaults(page, options)).map((fault) => `order: ${fault}`),
    ...(await fitFaults(page, options)).map((fault) => `fit: ${fault}`),
    ...(await axeFaults(page)).map((fault) => `axe: ${fault}`),
  ];
  await hands.shot(name);
  expect(faults, `${name} holds up`).toEqual([]);
}
