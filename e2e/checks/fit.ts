/**
 * Whether a screen fits (R75, R77): at every width, and at twice the type size, nothing scrolls
 * sideways, nothing is cut off, the action stays in view and every target can be hit with a thumb.
 */
import type { Page } from '@playwright/test';
import { phoneSize } from '../house/phone.ts';

/** Least height and width of anything that is touched, in CSS pixels. */
const TARGET = 48;

/** Where the screen is looked at. */
export interface Stand {
  readonly width: number;
  readonly height: number;
  /** Root type size as a multiple of the browser's own. */
  readonly type: 1 | 2;
}

/** The narrow phone, the phone, the wide phone, the desk, and twice the type on the first two. */
export const stands: readonly Stand[] = [
  { width: 320, height: 568, type: 1 },
  { width: 360, height: 740, type: 1 },
  { width: 390, height: 844, type: 1 },
  { width: 412, height: 915, type: 1 },
  { width: 1280, height: 800, type: 1 },
  { width: 320, height: 568, type: 2 },
  { width: 390, height: 844, type: 2 },
];

/** Exceptions, each by its name: nothing is let off unnamed, and a name that lets nothing off is a fault. */
export interface FitOptions {
  /** Accessible names of links that run in a line of text. */
  readonly inline?: readonly string[];
}

/** What does not fit, anywhere. */
export async function fitFaults(page: Page, options: FitOptions = {}): Promise<string[]> {
  const faults: string[] = [];
  const inline = options.inline ?? [];
  const used = new Set<string>();
  for (const stand of stands) {
    await page.setViewportSize({ width: stand.width, height: stand.height });
    await setType(page, stand.type);
    const found = await page.evaluate(measure, { target: TARGET, inline: [...inline] });
    for (const name of found.used) used.add(name);
    const at = `${stand.width} px${stand.type === 1 ? '' : `, type x${stand.type}`}`;
    faults.push(...found.faults.map((fault) => `${at}: ${fault}`));
  }
  await setType(page, 1);
  await page.setViewportSize(phoneSize);
  for (const name of inline) {
    if (!used.has(name)) faults.push(`the inline link "${name}" is excepted and not there`);
  }
  return faults;
}

/** Enlarges the root type as a person's browser setting does, and lets the page lay out again. */
async function setType(page: Page, times: number): Promise<void> {
  await page.evaluate(async (factor) => {
    document.documentElement.style.fontSize = factor === 1 ? '' : `${factor * 100}%`;
    await new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve)));
  }, times);
}

/** Runs in the page. */
function measure(asked: { target: number; inline: string[] }): { faults: string[]; used: string[] } {
  const faults: string[] = [];
  const used: string[] = [];
  const slack = 1;
  const wide = document.documentElement.clientWidth;
  const tall = window.innerHeight;

  const shown = (element: Element): boolean => element.checkVisibility({ visibilityProperty: true });
  const text = (element: Element): string => (element.textContent ?? '').trim().replace(/\s+/g, ' ').slice(0, 60);
  const nameOf = (element: Element): string => {
    const labels = (element as HTMLInputElement).labels;
    const label = labels === null || labels === undefined ? undefined : labels[0];
    return element.getAttribute('aria-label') ?? (label === undefined ? text(element) : text(label));
  };
  const what = (element: Element): string => `${element.tagName.toLowerCase()} "${nameOf(element)}"`;
  /** Kept for screen readers alone: clipped to nothing, or a skip link that waits above the window. */
  const unseen = (element: Element): boolean => {
    for (let at: Element | null = element; at !== null; at = at.parentElement) {
      const style = getComputedStyle(at);
      const box = at.getBoundingClientRect();
      if (style.position === 'absolute' || style.position === 'fixed') {
        if (style.clipPath === 'inset(50%)' || (box.width <= 1 && box.height <= 1)) return true;
        if (box.bottom <= 0) return true;
      }
    }
    return false;
  };

  if (document.documentElement.scrollWidth > wide + slack) {
    faults.push(`scrolls sideways: ${document.documentElement.scrollWidth} px of page in ${wide} px`);
  }

  const every = [...document.body.querySelectorAll<HTMLElement>('*')].filter((one) => shown(one) && !unseen(one));
  for (const element of every) {
    // The parts of a drawing are cut by its own frame, which is measured as one box.
    if (element.closest('svg') !== null && element.tagName.toLowerCase() !== 'svg') continue;
    const box = element.getBoundingClientRect();
    if (box.width === 0 || box.height === 0) continue;
    if (box.right > wide + slack || box.left < -slack) {
      faults.push(`${what(element)} reaches from ${box.left.toFixed(0)} to ${box.right.toFixed(0)} px`);
    }
    const style = getComputedStyle(element);
    const holdsText = [...element.childNodes].some((node) => node.nodeType === Node.TEXT_NODE && text(node as Element) !== '');
    const clips = (overflow: string): boolean => overflow !== 'visible';
    if (clips(style.overflowX) && element.scrollWidth > element.clientWidth + slack) {
      faults.push(`${what(element)} is cut off sideways: ${element.scrollWidth} px in ${element.clientWidth} px`);
    }
    if (holdsText && (style.overflowY === 'hidden' || style.overflowY === 'clip') && element.scrollHeight > element.clientHeight + slack) {
      faults.push(`${what(element)} is cut off below: ${element.scrollHeight} px in ${element.clientHeight} px`);
    }
  }

  const targets = every.filter((element) =>
    element.matches(
      'a[href], button, input:not([type=hidden]), select, textarea, summary, [role=button], [role=link], [role=radio], [role=checkbox], [role=switch], [role=tab]',
    ),
  );
  for (const element of targets) {
    let box = element.getBoundingClientRect();
    const labels = (element as HTMLInputElement).labels;
    const label = labels === null || labels === undefined ? undefined : labels[0];
    // A tick's label is part of what is touched.
    if (label !== undefined && element.matches('[type=radio], [type=checkbox]')) {
      const around = label.getBoundingClientRect();
      if (around.height > box.height) box = around;
    }
    if (box.height + 0.5 >= asked.target && box.width + 0.5 >= asked.target) continue;
    const name = nameOf(element);
    const runsInText = element.matches('a') && getComputedStyle(element).display === 'inline';
    if (runsInText && asked.inline.includes(name)) {
      used.push(name);
      continue;
    }
    faults.push(`${what(element)} is ${box.width.toFixed(1)} x ${box.height.toFixed(1)} px, under ${asked.target}`);
  }

  for (const action of every.filter((element) => element.matches('.action'))) {
    const box = action.getBoundingClientRect();
    if (box.bottom > tall + slack || box.top < -slack) {
      faults.push(`the action "${text(action)}" is out of view, from ${box.top.toFixed(0)} to ${box.bottom.toFixed(0)} px of ${tall}`);
    }
  }
  return { faults, used };
}
