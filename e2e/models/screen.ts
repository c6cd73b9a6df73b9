/** What every screen has in common: the one sentence it opens with, and keys that forgive cold fingers. */
import { expect, type Page } from '@playwright/test';
import { type Hands, sentence } from '../hands/hands.ts';

/** What stands in the sentence's place while the disk is read. */
const OPENING = 'Opening';

/** The sentence of the screen, once the disk has been read; where `after` is given, once it is another one. */
export async function readSentence(hands: Hands, after?: string): Promise<string> {
  let said = '';
  await expect
    .poll(
      async () => {
        said = await hands.see(sentence());
        return said !== OPENING && said !== '' && said !== after;
      },
      { message: after === undefined ? 'a sentence stands' : `another sentence stands than "${after}"` },
    )
    .toBe(true);
  return said;
}

/** A key takes no second press within 0.6 s, for cold fingers stutter; a person reads before pressing again. */
export async function readBeforeAgain(page: Page): Promise<void> {
  const told = await page.evaluate(() => performance.now());
  await expect.poll(async () => (await page.evaluate(() => performance.now())) - told).toBeGreaterThan(600);
}
