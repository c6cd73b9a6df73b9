/** axe-core over the screen as it stands, in both themes, by the rules of WCAG 2.0 to 2.2, A and AA. */
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';

const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Each violation in one line: theme, rule, what it says and where. */
export async function axeFaults(page: Page): Promise<string[]> {
  const faults: string[] = [];
  const size = page.viewportSize();
  // As tall as the page: a bar that stays at the foot of the window hides nothing that scrolling brings up.
  const tall = await page.evaluate(() => document.documentElement.scrollHeight);
  if (size !== null) await page.setViewportSize({ width: size.width, height: Math.max(size.height, tall) });
  for (const [scheme, theme] of [['light', 'paper'], ['dark', 'slate']] as const) {
    await page.emulateMedia({ colorScheme: scheme });
    const { violations, passes } = await new AxeBuilder({ page }).withTags(rules).analyze();
    if (passes.length === 0) faults.push(`${theme}: axe found nothing to look at`);
    for (const violation of violations) {
      const places = violation.nodes.map((node) => `${node.target.join(' ')} ${node.failureSummary ?? ''}`);
      faults.push(`${theme}: ${violation.id}, ${violation.help}: ${places.join(' | ').replace(/\s+/g, ' ')}`);
    }
  }
  await page.emulateMedia({ colorScheme: 'light' });
  if (size !== null) await page.setViewportSize(size);
  return faults;
}
