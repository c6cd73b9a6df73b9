/**
 * What every walk begins with: a host of its own, a watched window, hands, and the phone in the pocket.
 *
 * A walk imports `test` and `expect` from here and from nowhere else.
 */
import { test as base, expect, type Page } from '@playwright/test';
import { join } from 'node:path';
import { holdsUp, type ScreenOptions } from './checks/screen.ts';
import { type Opened, watchTransactions } from './device/durability.ts';
import { Pocket } from './device/pocket.ts';
import { DrivenHands } from './engines/driven.ts';
import { start } from './engines/engine.ts';
import type { Hands } from './hands/hands.ts';
import { PlaywrightHands } from './hands/playwright.ts';
import { Host } from './host/host.ts';
import type { EngineName } from './house/settings.ts';
import { Watch } from './watch/watch.ts';

export { expect };

/** Set by the project. */
export interface Place {
  /** The path the app is hosted under; begins and ends with a slash. */
  at: string;
  /** The engine that `elsewhere` is. */
  engine: EngineName | undefined;
}

/** Asks of the screen in sight all that is asked of every screen, and keeps its pictures. */
type Holds = (name: string, options?: ScreenOptions) => Promise<void>;

/** The kept phone in hand: its page, hands on it, and the question to the screen in sight. */
export interface InHand {
  page: Page;
  hands: Hands;
  holds: Holds;
}

/** The phone whose storage outlives its browser, with hands for whatever page it shows. */
export interface KeptPhone {
  /** Starts the browser over the kept profile, in the zone the phone was carried to. */
  takeOut(zone?: string): Promise<InHand>;
  /** Ends the browser in order. */
  putAway(): Promise<void>;
  /** Kills the browser's process at once. */
  kill(): Promise<void>;
  /** Ends it in order and starts it again. */
  restart(): Promise<InHand>;
  /** Transactions that its pages opened, over all its browsers. */
  transactions(): readonly Opened[];
}

/** What a walk can ask for by name. */
export interface Walk {
  /** The static server; stop it and the walk is offline. */
  host: Host;
  /** Makes the walk fail on console errors, page errors, CSP reports, requests elsewhere, missing files. */
  watch: Watch;
  /** Hands on a fresh phone. */
  hands: Hands;
  /** A phone that can be put away, taken out again, or killed. */
  pocket: KeptPhone;
  /** Hands on another engine, which begins empty: those of `hands` have a phone of their own. */
  elsewhere: Hands;
  /** Transactions that the fresh phone's pages opened. */
  transactions: readonly Opened[];
  /** Asks it of the screen of `hands`. */
  holds: Holds;
}

/** The test function of the walks. */
export const test = base.extend<Place & Walk>({
  at: ['/', { option: true }],
  engine: [undefined, { option: true }],

  host: async ({ at }, use) => {
    const host = await Host.open(at);
    await use(host);
    await host.stop();
  },

  watch: async ({ host }, use) => {
    const watch = new Watch(() => host.origin);
    await use(watch);
    expect(watch.verdict(), 'the walk was clean').toEqual([]);
  },

  context: async ({ context, watch }, use) => {
    await watch.over(context);
    await use(context);
  },

  transactions: async ({ context }, use) => {
    await use(await watchTransactions(context));
  },

  hands: async ({ page, host }, use) => {
    await use(new PlaywrightHands({ page, home: () => host.home, finger: true }));
  },

  pocket: async ({ host, watch }, use, info) => {
    const seen: (readonly Opened[])[] = [];
    const pocket = new Pocket(join(info.outputDir, 'profile'), async (context) => {
      await watch.over(context);
      seen.push(await watchTransactions(context));
    });
    const inHand = (page: Page): InHand => {
      const hands = new PlaywrightHands({ page, home: () => host.home, finger: true });
      return { page, hands, holds: (name, options) => holdsUp(page, hands, name, options) };
    };
    await use({
      takeOut: async (zone) => inHand(await pocket.takeOut(zone)),
      restart: async () => inHand(await pocket.restart()),
      putAway: () => pocket.putAway(),
      kill: () => pocket.kill(),
      transactions: () => seen.flat(),
    });
    await pocket.throwAway();
  },

  elsewhere: async ({ engine, host }, use) => {
    if (engine === undefined) throw new Error('this walk is for the projects that name an engine');
    const started = await start(engine);
    try {
      await use(new DrivenHands(started.driver, () => host.home));
      expect(started.faults(), 'the walk was clean').toEqual([]);
    } finally {
      await started.end();
    }
  },

  holds: async ({ page, hands }, use) => {
    await use((name, options) => holdsUp(page, hands, name, options));
  },
});
