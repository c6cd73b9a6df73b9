/** An engine other than the one Playwright drives, started for one walk. */
import type { EngineName } from '../house/settings.ts';
import type { Driver } from './driven.ts';
import { startFirefox } from './firefox.ts';
import { startWebkit } from './webkit.ts';

/** A started engine. */
export interface Engine {
  /** What it can do. Its handle of an element is its own affair. */
  readonly driver: Driver<any>;
  /** Errors its console and pages told, as far as it tells any. */
  faults(): readonly string[];
  /** Ends it. */
  end(): Promise<void>;
}

/** Starts an engine. */
export function start(name: EngineName): Promise<Engine> {
  return name === 'firefox' ? startFirefox() : startWebkit();
}
