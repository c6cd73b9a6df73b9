/** The six verbs over any engine that can run a script in its page and touch an element. */
import { mkdirSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Hands, Thing, Touches } from '../hands/hands.ts';
import { out } from '../house/settings.ts';
import { face, inSight, library, said, type Wanted, wanted } from './find.ts';

/** How long a thing may take to come into sight, in milliseconds. */
const PATIENCE = 20_000;
/** How often it is looked for. */
const BEAT = 100;

/** What an engine must be able to do. `E` is its handle of an element. */
export interface Driver<E> {
  /** Its name, for pictures. */
  readonly name: string;
  /** Opens an address. */
  go(address: string): Promise<void>;
  /** Runs an expression in the page and gives its value. */
  value(expression: string): Promise<unknown>;
  /** Runs an expression in the page that gives an element or null. */
  element(expression: string): Promise<E | null>;
  /** Touches an element. */
  touch(element: E): Promise<void>;
  /** Types into an element that has the focus. */
  keys(element: E, text: string): Promise<void>;
  /** A picture of the window. */
  picture(): Promise<Uint8Array>;
}

class Tally implements Touches {
  taps = 0;
  digits = 0;

  reset(): void {
    this.taps = 0;
    this.digits = 0;
  }
}

/** Hands on a driven engine. */
export class DrivenHands<E> implements Hands {
  readonly touches = new Tally();

  constructor(
    private readonly driver: Driver<E>,
    private readonly home: () => string,
  ) {}

  async open(address: string): Promise<void> {
    await this.driver.go('about:blank');
    await this.driver.go(new URL(address, this.home()).href);
  }

  async tap(what: Thing): Promise<void> {
    await this.driver.touch(await this.meet(what));
    this.touches.taps += 1;
  }

  async type(into: Thing, text: string): Promise<void> {
    const field = await this.meet(into);
    await this.driver.touch(field);
    await this.driver.keys(field, text);
    this.touches.digits += [...text].length;
  }

  async see(what: Thing): Promise<string> {
    return this.until(what, async () => {
      const told = await this.driver.value(
        `(() => { const all = ${this.all(what)}; return all.length === 1 ? (${said.toString()})(all[0]) : null; })()`,
      );
      return typeof told === 'string' ? told : undefined;
    });
  }

  async count(what: Thing): Promise<number> {
    await this.equip();
    return Number(await this.driver.value(`${this.all(what)}.length`));
  }

  async shot(name: string): Promise<void> {
    const folder = join(out, 'shots');
    mkdirSync(folder, { recursive: true });
    await writeFile(join(folder, `${name}-${this.driver.name}.png`), await this.driver.picture());
  }

  /** An expression for every such thing in sight. */
  private all(what: Thing): string {
    const thing: Wanted = wanted(what);
    return `(${inSight.toString()})(${JSON.stringify(thing)})`;
  }

  private async meet(what: Thing): Promise<E> {
    return this.until(what, async () => {
      const element = await this.driver.element(`(${face.toString()})(${this.all(what)})`);
      return element ?? undefined;
    });
  }

  /** Puts the library into the document, once. */
  private async equip(): Promise<void> {
    const there = await this.driver.value("typeof window.TestingLibraryDom !== 'undefined'");
    if (there !== true) await this.driver.value(`(function () { ${await library()}\n; return true; }).call(window)`);
  }

  private async until<T>(what: Thing, look: () => Promise<T | undefined>): Promise<T> {
    const end = Date.now() + PATIENCE;
    let problem: unknown;
    while (Date.now() < end) {
      try {
        await this.equip();
        const found = await look();
        if (found !== undefined) return found;
        problem = undefined;
      } catch (error) {
        // The document may have gone while it was asked.
        problem = error;
      }
      await new Promise((resolve) => setTimeout(resolve, BEAT));
    }
    const count = await this.count(what).catch(() => 0);
    await this.shot('engine-lost').catch(() => undefined);
    throw new Error(`${JSON.stringify(wanted(what))} is not in sight as the only one (${count} are)${problem === undefined ? '' : `: ${String(problem)}`}`);
  }
}
