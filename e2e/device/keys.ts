/** What a finger does with the text of a field before it types another. */
import type { Page } from '@playwright/test';

/** Marks all that stands in the field in hand, so that the next key takes its place. */
export async function markAll(page: Page): Promise<void> {
  await page.keyboard.press('ControlOrMeta+A');
}
