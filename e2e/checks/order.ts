/** look.md section 9, counted: one sentence, one primary action, at most one block with swapped ink. */
import type { Page } from '@playwright/test';

/** Tallest a stop block may stand, in CSS pixels, so that it does not dazzle at night. */
const STOP_HEIGHT = 240;
/** Least height of the primary action, in CSS pixels. */
const ACTION_HEIGHT = 64;
/** Least distance from the primary action to any other target, in CSS pixels. */
const ACTION_GAP = 8;

/** What one screen may hold. */
export interface OrderOptions {
  /** How many primary actions: one, unless a screen is named that has none. */
  readonly actions?: 0 | 1;
}

/** What is out of order on this screen. */
export async function orderFaults(page: Page, options: OrderOptions = {}): Promise<string[]> {
  const seen = await page.evaluate(
    ([gap]) => {
      const shown = (element: Element): boolean => element.checkVisibility({ visibilityProperty: true });
      const all = (selector: string): HTMLElement[] =>
        [...document.querySelectorAll<HTMLElement>(selector)].filter(shown);
      const size = (element: HTMLElement): { text: string; height: number; width: number } => {
        const box = element.getBoundingClientRect();
        return { text: element.innerText.trim().replace(/\s+/g, ' '), height: box.height, width: box.width };
      };
      const close: string[] = [];
      const targets = all('a[href], button, input, select, textarea, summary, [role=button], [role=link]');
      for (const action of all('.action')) {
        const own = action.getBoundingClientRect();
        for (const other of targets) {
          if (other === action || other.contains(action) || action.contains(other)) continue;
          const box = other.getBoundingClientRect();
          const across = Math.max(box.left - own.right, own.left - box.right);
          const down = Math.max(box.top - own.bottom, own.top - box.bottom);
          const apart = Math.max(across, down);
          // What scrolls beneath the foot of a sticky action is covered there: only what a finger can touch is a neighbour.
          const within = (value: number, low: number, high: number): number => Math.min(Math.max(value, low + 1), high - 1);
          const touched = document.elementFromPoint(
            within((own.left + own.right) / 2, box.left, box.right),
            within((own.top + own.bottom) / 2, box.top, box.bottom),
          );
          if (apart >= 0 && apart < gap && touched !== null && other.contains(touched)) close.push(`${other.innerText.trim() || other.tagName} (${apart.toFixed(1)} px)`);
        }
      }
      return {
        sentences: all('h1').map(size),
        actions: all('.action').map(size),
        stops: all('.stop-block').map(size),
        close,
      };
    },
    [ACTION_GAP] as const,
  );

  const faults: string[] = [];
  const wanted = options.actions ?? 1;
  const named = (list: { text: string }[]): string => list.map(({ text }) => `"${text}"`).join(', ') || 'none';
  if (seen.sentences.length !== 1) faults.push(`one h1 wanted, found ${named(seen.sentences)}`);
  if (seen.sentences.some(({ text }) => text === '')) faults.push('the h1 says nothing');
  if (seen.actions.length !== wanted) faults.push(`${wanted} primary action wanted, found ${named(seen.actions)}`);
  for (const { text, height } of seen.actions) {
    if (height < ACTION_HEIGHT) faults.push(`the action "${text}" is ${height.toFixed(1)} px high, under ${ACTION_HEIGHT}`);
  }
  for (const neighbour of seen.close) faults.push(`within ${ACTION_GAP} px of the action: ${neighbour}`);
  if (seen.stops.length > 1) faults.push(`at most one stop block wanted, found ${named(seen.stops)}`);
  for (const { text, height } of seen.stops) {
    if (height > STOP_HEIGHT) faults.push(`the stop block "${text}" is ${height.toFixed(0)} px high, over ${STOP_HEIGHT}`);
  }
  return faults;
}
