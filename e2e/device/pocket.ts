/**
 * A phone whose storage outlives the browser: closed and opened again, or killed in the middle.
 *
 * The profile is a folder of its own, and going away means what it means on a phone: either the
 * browser ends in order, or its process is killed at once and writes nothing more.
 */
import { type Browser, type BrowserContext, chromium, type Page } from '@playwright/test';
import { rm } from 'node:fs/promises';
import { launch, phone } from '../house/phone.ts';

/** Milliseconds that a killed process may take to be gone. */
const PATIENCE = 10_000;

/** The id of the browser's own process, which its helpers follow when it dies. */
async function processOf(browser: Browser): Promise<number> {
  const session = await browser.newBrowserCDPSession();
  const { processInfo } = await session.send('SystemInfo.getProcessInfo');
  const main = processInfo.find(({ type }) => type === 'browser');
  if (main === undefined) throw new Error('the browser names no process of its own');
  return main.id;
}

function isAlive(process_: number): boolean {
  try {
    process.kill(process_, 0);
    return true;
  } catch {
    return false;
  }
}

/** What is done with each new window before a page opens in it: the watch, a spy. */
export type Dressing = (context: BrowserContext) => Promise<unknown>;

/** The kept phone. */
export class Pocket {
  private held: { context: BrowserContext; main: number } | undefined;

  constructor(
    private readonly profile: string,
    private readonly dress: Dressing,
  ) {}

  /** Takes it out: starts the browser over the kept profile and gives its page. `zone` is where the phone was carried. */
  async takeOut(zone = phone.timezoneId): Promise<Page> {
    if (this.held !== undefined) throw new Error('it is already in hand');
    const context = await chromium.launchPersistentContext(this.profile, { ...launch, ...phone, timezoneId: zone });
    const browser = context.browser();
    if (browser === null) throw new Error('the kept profile has no browser of its own');
    // Asked now, so that a kill later falls on the very moment it is meant for.
    this.held = { context, main: await processOf(browser) };
    await this.dress(context);
    return context.pages()[0] ?? context.newPage();
  }

  /** Puts it away in order, so that the browser can finish what it was doing. */
  async putAway(): Promise<void> {
    const held = this.held;
    this.held = undefined;
    await held?.context.close();
  }

  /** Kills the browser's process where it stands: the signal is sent before this returns its promise. */
  async kill(): Promise<void> {
    const held = this.held;
    if (held === undefined) throw new Error('nothing is in hand');
    this.held = undefined;
    process.kill(held.main, 'SIGKILL');
    const until = Date.now() + PATIENCE;
    while (isAlive(held.main)) {
      if (Date.now() > until) throw new Error(`process ${held.main} outlived its kill`);
      await new Promise((resolve) => setTimeout(resolve, 5));
    }
    await held.context.close().catch(() => undefined);
  }

  /** Puts it away and takes it out again. */
  async restart(): Promise<Page> {
    await this.putAway();
    return this.takeOut();
  }

  /** Puts it away for good. */
  async throwAway(): Promise<void> {
    await this.putAway();
    await rm(this.profile, { recursive: true, force: true });
  }
}
