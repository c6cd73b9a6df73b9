/** The first pair of hands: Playwright on a phone with a touch screen, or on a desk with a mouse. */
import { expect, type Locator, type Page } from '@playwright/test';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { out } from '../house/settings.ts';
import type { Hands, ShotOptions, Thing, Touches } from './hands.ts';

class Tally implements Touches {
  taps = 0;
  digits = 0;

  reset(): void {
    this.taps = 0;
    this.digits = 0;
  }
}

/** Where these hands are and how they touch. */
export interface Grip {
  readonly page: Page;
  /** The front door's address; read at each opening, because a host can move. */
  readonly home: () => string;
  /** A finger rather than a mouse. */
  readonly finger: boolean;
}

/** The verbs, done by Playwright. */
export class PlaywrightHands implements Hands {
  readonly touches = new Tally();

  constructor(private readonly grip: Grip) {}

  async open(address: string): Promise<void> {
    const { page, home } = this.grip;
    // A second address of the same document would be a hash change and not an opening.
    if (page.url() !== 'about:blank') await page.goto('about:blank');
    await page.goto(new URL(address, home()).href);
  }

  async tap(what: Thing): Promise<void> {
    const one = await this.face(what);
    await (this.grip.finger ? one.tap() : one.click());
    this.touches.taps += 1;
  }

  async type(into: Thing, text: string): Promise<void> {
    const one = this.find(into);
    await expect(one, `${nameOf(into)} can be typed in`).toBeEditable();
    // A list that opens is no part of the page: its offer is chosen by its words, as by one tap more.
    if (into.role === 'combobox') {
      await one.selectOption({ label: text });
      this.touches.taps += 2;
      return;
    }
    const focused = await one.evaluate((element) => element === document.activeElement);
    if (!focused) await this.tap(into);
    await one.pressSequentially(text);
    this.touches.digits += [...text].length;
  }

  async see(what: Thing): Promise<string> {
    const one = this.find(what);
    await expect(one, `${nameOf(what)} is in sight`).toBeVisible();
    // What a field holds is read as its words are.
    return one.evaluate((element) =>
      (element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement
        ? element.value
        : element instanceof HTMLSelectElement
        ? (element.selectedOptions[0]?.text ?? '')
        : (element as HTMLElement).innerText
      ).trim(),
    );
  }

  async count(what: Thing): Promise<number> {
    return this.find(what).filter({ visible: true }).count();
  }

  async shot(name: string, options: ShotOptions = {}): Promise<void> {
    const { page } = this.grip;
    const folder = join(out, 'shots');
    mkdirSync(folder, { recursive: true });
    const picture = async (scheme: 'light' | 'dark', theme: string): Promise<Buffer> => {
      await page.emulateMedia({ colorScheme: scheme });
      return page.screenshot({ path: join(folder, `${name}-${theme}.png`), fullPage: options.whole === true });
    };
    const paper = await picture('light', 'paper');
    const slate = await picture('dark', 'slate');
    await page.emulateMedia({ colorScheme: 'light' });
    expect(slate.equals(paper), `${name} looks different on paper and on slate`).toBe(false);
  }

  /** What a finger meets of a thing: of a choice, the key that is its label. */
  private async face(what: Thing): Promise<Locator> {
    const one = this.find(what);
    if (what.role !== 'radio' && what.role !== 'checkbox') return one;
    await expect(one, `${nameOf(what)} is there`).toBeAttached();
    const label = one.locator('xpath=ancestor::label');
    return (await label.count()) === 1 ? label : one;
  }

  private find(what: Thing): Locator {
    const ground: Page | Locator = what.within === undefined ? this.grip.page : this.find(what.within);
    if (what.role !== undefined) {
      return ground.getByRole(what.role, {
        ...(what.name === undefined ? {} : { name: what.name, exact: typeof what.name === 'string' }),
        ...(what.level === undefined ? {} : { level: what.level }),
      });
    }
    if (what.words !== undefined) return ground.getByText(what.words);
    throw new Error('a thing has a role or words');
  }
}

/** How a thing is called in a failure. */
function nameOf(what: Thing): string {
  const own = what.role === undefined ? `the words ${String(what.words)}` : `${what.role} ${String(what.name ?? '')}`.trim();
  return what.within === undefined ? own : `${own} in ${nameOf(what.within)}`;
}
