/** Reports of the content security policy, as the page itself hears them. */
import type { BrowserContext } from '@playwright/test';

/** Calls back for each violation in any page or frame of this window. */
export async function readCspReports(context: BrowserContext, report: (text: string) => void): Promise<void> {
  await context.exposeBinding('walkCspReport', (_source, text: string) => report(text));
  await context.addInitScript(() => {
    const tell = (window as unknown as { walkCspReport: (text: string) => Promise<void> }).walkCspReport;
    document.addEventListener('securitypolicyviolation', (event) => {
      void tell(`${event.effectiveDirective} refused ${event.blockedURI} at ${event.sourceFile}:${event.lineNumber}`);
    });
  });
}
