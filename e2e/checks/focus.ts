/**
 * Whether what has the focus can be seen (R77): bars that stay in the window must not lie over it.
 *
 * This moves the focus through the screen, and a field that is left may say what is wrong with it,
 * so it is asked for at the end of a walk and not by `holds`.
 */
import type { Page } from '@playwright/test';
import { phoneSize } from '../house/phone.ts';

/** The phone, and a narrow one with its keyboard up. */
const stands = [phoneSize, { width: 320, height: 568 }, { width: 390, height: 480 }];

/** Everything that is covered while it has the focus. */
export async function focusFaults(page: Page): Promise<string[]> {
  const faults: string[] = [];
  for (const stand of stands) {
    await page.setViewportSize(stand);
    const covered = await page.evaluate(async () => {
      const found: string[] = [];
      const targets = [...document.querySelectorAll<HTMLElement>('a[href], button, input, select, textarea, summary')];
      const frame = (): Promise<unknown> => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
      for (const way of [targets, [...targets].reverse()]) {
        for (const target of way) {
          if (!target.isConnected || !target.checkVisibility({ visibilityProperty: true })) continue;
          target.focus();
          if (document.activeElement !== target) continue;
          await frame();
          const face = target.closest('label') ?? target;
          const box = face.getBoundingClientRect();
          const middle = document.elementFromPoint(box.left + box.width / 2, box.top + box.height / 2);
          if (middle !== null && (face.contains(middle) || middle.contains(face))) continue;
          const name = target.getAttribute('aria-label') ?? (target as HTMLInputElement).labels?.[0]?.innerText ?? target.innerText;
          found.push(`${target.tagName.toLowerCase()} "${name.trim()}" from ${box.top.toFixed(0)} to ${box.bottom.toFixed(0)} px`);
        }
      }
      return [...new Set(found)];
    });
    faults.push(...covered.map((fault) => `${stand.width} x ${stand.height}: covered while it has the focus: ${fault}`));
  }
  await page.setViewportSize(phoneSize);
  return faults;
}
