/** Firefox, driven over WebDriver BiDi. */
import puppeteer, { type ElementHandle } from 'puppeteer-core';
import { phoneSize } from '../house/phone.ts';
import { firefox } from '../house/settings.ts';
import type { Driver } from './driven.ts';
import type { Engine } from './engine.ts';

/** Starts Firefox with a window as wide as a phone. */
export async function startFirefox(): Promise<Engine> {
  const browser = await puppeteer.launch({ browser: 'firefox', executablePath: firefox, headless: true });
  const page = await browser.newPage();
  await page.setViewport(phoneSize);
  const faults: string[] = [];
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('console', (message) => {
    if (message.type() === 'error') faults.push(message.text());
  });
  const driver: Driver<ElementHandle> = {
    name: 'firefox',
    go: async (address) => {
      await page.goto(address);
    },
    value: (expression) => page.evaluate(expression),
    element: async (expression) => {
      const handle = await page.evaluateHandle(expression);
      return (handle.asElement() as ElementHandle | null) ?? null;
    },
    touch: (element) => element.click(),
    keys: (element, text) => element.type(text),
    picture: () => page.screenshot(),
  };
  return { driver, faults: () => faults, end: () => browser.close() };
}
