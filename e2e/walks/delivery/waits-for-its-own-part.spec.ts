/** The app comes in parts, a place each: a screen waits for its own, and the others come behind it. */
import type { Page } from '@playwright/test';
import { firstVisitIsOver } from '../../device/worker.ts';
import { link, sentence } from '../../hands/hands.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

const parts = { horses: /\/later-horses-[0-9a-f]{10}\.wasm$/, shed: /\/later-shed-[0-9a-f]{10}\.wasm$/ };

/** Holds a part back until it is let through. */
async function hold(page: Page, part: RegExp): Promise<() => void> {
  let letThrough = (): void => undefined;
  const held = new Promise<void>((resolve) => (letThrough = resolve));
  await page.route(part, async (route) => {
    await held;
    await route.continue();
  });
  return letThrough;
}

/** Whether the page has asked for a part, since the looking began. */
function asks(page: Page, part: RegExp): () => boolean {
  let asked = false;
  page.on('request', (request) => {
    if (request.serviceWorker() === null && part.test(new URL(request.url()).pathname)) asked = true;
  });
  return () => asked;
}

test('the part of the place in sight comes first, and the others behind it without being asked', async ({ hands, page }) => {
  const [letThrough, shed, horses] = [await hold(page, parts.shed), asks(page, parts.shed), asks(page, parts.horses)];
  await hands.open('#/shed/hay/new');
  await expect.poll(shed).toBe(true);
  await firstVisitIsOver(page);
  expect(horses(), 'one after another').toBe(false);

  letThrough();
  await hands.see(sentence('Which hay is it?'));
  await expect.poll(horses, { message: 'the next one' }).toBe(true);
});

test('a screen of another place does not wait for the part before it', async ({ hands, page }) => {
  const [letThrough, shed, horses] = [await hold(page, parts.horses), asks(page, parts.shed), asks(page, parts.horses)];
  await hands.open('#/horses');
  const list = await readSentence(hands);
  await expect.poll(horses).toBe(true);
  expect(shed(), 'one after another').toBe(false);

  await hands.tap(link('Shed'));
  await readSentence(hands, list);
  expect(shed()).toBe(true);

  letThrough();
  await hands.open('#/start');
  await hands.see(sentence('A few answers, then a first plan'));
});
