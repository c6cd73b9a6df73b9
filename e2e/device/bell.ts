/** Listens to what a page does to call somebody: tones, shaking, notifications, and the leave it asks for. */
import type { BrowserContext, Page } from '@playwright/test';

/** How often each was done in a page since it was opened. */
export interface Called {
  readonly tones: number;
  readonly notifications: readonly string[];
  readonly asked: number;
  readonly awake: number;
}

interface Heard {
  tones: number;
  notifications: string[];
  asked: number;
  awake: number;
}

/** Listens in every page that this window opens from now on. Whoever asks for notifications is given the answer. */
export async function listen(context: BrowserContext, answer: 'granted' | 'denied'): Promise<void> {
  await context.addInitScript((given: NotificationPermission) => {
    // A page without an address of its own has none of this.
    if (!window.isSecureContext || location.protocol === 'about:') return;
    const heard: Heard = { tones: 0, notifications: [], asked: 0, awake: 0 };
    (window as unknown as { heard: Heard }).heard = heard;
    const start = OscillatorNode.prototype.start;
    OscillatorNode.prototype.start = function (when?: number): void {
      heard.tones += 1;
      start.call(this, when);
    };
    // The answer outlives the page, as that of a person does.
    const KEY = 'test-permission';
    const held = (): NotificationPermission =>
      (localStorage.getItem(KEY) as NotificationPermission | null) ?? 'default';
    Object.defineProperty(Notification, 'permission', { get: held });
    Notification.requestPermission = async (): Promise<NotificationPermission> => {
      heard.asked += 1;
      localStorage.setItem(KEY, given);
      return Promise.resolve(given);
    };
    ServiceWorkerRegistration.prototype.showNotification = async (title: string): Promise<void> => {
      heard.notifications.push(title);
      return Promise.resolve();
    };
    if ('wakeLock' in navigator) {
      const lock = { released: false, release: async (): Promise<void> => Promise.resolve() };
      Object.defineProperty(navigator.wakeLock, 'request', {
        value: async (): Promise<unknown> => {
          heard.awake += 1;
          return Promise.resolve(lock);
        },
      });
    }
  }, answer);
}

/** A browser that hands no file to another app: it saves it. */
export async function savesFiles(context: BrowserContext): Promise<void> {
  await context.addInitScript(() => {
    Object.defineProperty(navigator, 'canShare', { value: undefined });
  });
}

/** What was heard from this page since it was opened. */
export async function heard(page: Page): Promise<Called> {
  return page.evaluate(() => (window as unknown as { heard: Heard }).heard);
}
