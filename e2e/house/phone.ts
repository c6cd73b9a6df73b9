/** The phone that the walks are made with, the same for a fresh window and for a kept profile. */
import { chromium } from './settings.ts';

/** Switches that keep Chromium quiet: nothing but the page's own requests leaves the process. */
export const switches = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** How the browser is started. Headless is Playwright's own default. */
export const launch = { executablePath: chromium, args: switches };

/** Size in CSS pixels of the phone that look.md draws for. */
export const phoneSize = { width: 390, height: 844 };

/** The window: a phone of 390 x 844 in British English and London time, without motion. */
export const phone = {
  viewport: phoneSize,
  screen: phoneSize,
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
  locale: 'en-GB',
  timezoneId: 'Europe/London',
  colorScheme: 'light' as const,
  reducedMotion: 'reduce' as const,
};
