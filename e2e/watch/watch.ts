/**
 * Watches a whole walk: console errors, page errors, CSP reports, requests to another origin and
 * missing files each make the walk fail at its end, wherever they came from.
 */
import type { BrowserContext } from '@playwright/test';
import { readCspReports } from './csp.ts';

interface Allowance {
  readonly pattern: RegExp;
  readonly why: string;
  readonly must: boolean;
  used: boolean;
}

/** What one walk has shown so far. */
export class Watch {
  private readonly faults: string[] = [];
  private readonly allowances: Allowance[] = [];

  /** The origin is read at each request, because a walk may begin before its host. */
  constructor(private readonly origin: () => string) {}

  /** Looks over every page that this browser window opens from now on. */
  async over(context: BrowserContext): Promise<void> {
    context.on('console', (message) => {
      if (message.type() !== 'error') return;
      const { url } = message.location();
      this.note(`console error: ${message.text()}${url === '' ? '' : ` (${url})`}`);
    });
    context.on('weberror', (error) => this.note(`page error: ${error.error().stack ?? error.error().message}`));
    context.on('request', (request) => {
      const url = new URL(request.url());
      const local = url.protocol === 'data:' || url.protocol === 'blob:' || url.protocol === 'about:';
      if (!local && url.origin !== this.origin()) this.note(`request elsewhere: ${request.url()}`);
    });
    context.on('response', (response) => {
      if (response.status() >= 400) this.note(`answer ${response.status()}: ${response.url()}`);
    });
    await readCspReports(context, (report) => this.note(`CSP: ${report}`));
  }

  /** A fault that this walk provokes: it may come and must come at least once. */
  expects(pattern: RegExp, why: string): void {
    this.allowances.push({ pattern, why, must: true, used: false });
  }

  /** A fault that this walk may provoke, depending on who comes first. */
  tolerates(pattern: RegExp, why: string): void {
    this.allowances.push({ pattern, why, must: false, used: false });
  }

  /** What was seen and not allowed, and what was expected and not seen. */
  verdict(): string[] {
    const unseen = this.allowances.filter((allowance) => allowance.must && !allowance.used);
    return [...this.faults, ...unseen.map(({ pattern, why }) => `expected and not seen: ${String(pattern)} (${why})`)];
  }

  private note(fault: string): void {
    const allowance = this.allowances.find(({ pattern }) => pattern.test(fault));
    if (allowance === undefined) this.faults.push(fault);
    else allowance.used = true;
  }
}
