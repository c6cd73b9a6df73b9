/** Somebody reads the app in the sun, and at night in the stable. */
import { contrastFaults, palettesOf, strayColours } from '../../checks/contrast.ts';
import { button, link } from '../../hands/hands.ts';
import { styleOf } from '../../host/deploys.ts';
import { readSentence } from '../../models/screen.ts';
import { expect, test } from '../../walk.ts';

test('every text token has 7:1 and every edge 3:1, in both themes and with more contrast', async ({ hands, page }) => {
  await hands.open('');
  await readSentence(hands);
  const palettes = await palettesOf(page);
  const grounds = (choice: RegExp): Set<string | undefined> =>
    new Set(palettes.filter((palette) => choice.test(palette.choice)).map(({ tokens }) => tokens.get('ground')));
  expect(grounds(/no-preference/).size, 'paper and slate').toBe(2);
  expect(grounds(/more/).size, 'black on white and white on black').toBe(2);
  // What the phone asks for and what a person chooses must come to the same colours.
  const slate = (choice: string): unknown => palettes.find((palette) => palette.choice === choice)?.tokens;
  for (const more of ['no-preference', 'more']) {
    expect(slate(`no theme chosen, phone dark, contrast ${more}`)).toEqual(slate(`slate, phone light, contrast ${more}`));
  }
  expect(palettes.flatMap(contrastFaults)).toEqual([]);
});

test('no rule paints with a colour that is not a token', async () => {
  expect(strayColours(await styleOf())).toEqual([]);
});

for (const [theme, scheme] of [['paper', 'dark'], ['slate', 'light']] as const) {
  test(`${theme}, once chosen, stays when the phone goes ${scheme}`, async ({ hands, page }) => {
    await hands.open('');
    await readSentence(hands);
    await page.emulateMedia({ colorScheme: theme === 'paper' ? 'light' : 'dark' });
    const asWanted = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    await page.emulateMedia({ colorScheme: scheme });
    const asSystem = await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
    expect(asSystem, 'the theme follows the phone until one is chosen').not.toBe(asWanted);
    await page.evaluate((chosen) => localStorage.setItem('tussock-theme', chosen), theme);
    await hands.open('');
    await readSentence(hands);
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor)).toBe(asWanted);
  });
}

test('the first screen holds up', async ({ hands, holds }) => {
  await hands.open('');
  await readSentence(hands);
  await holds('first-run');
});

for (const door of ['Start', 'Example yard']) {
  test(`the screen behind ${door} holds up`, async ({ hands, holds }) => {
    await hands.open('');
    const first = await readSentence(hands);
    await hands.tap(link(door));
    await readSentence(hands, first);
    await holds(`behind-${door.toLowerCase().replace(' ', '-')}`);
  });
}

test('the page for when nothing works holds up', async ({ hands, holds }) => {
  await hands.open('reset.html');
  await readSentence(hands);
  await holds('reset');
});

test('the panel for when the app cannot start holds up', async ({ hands, page, watch, holds }) => {
  watch.expects(/wasm/, 'the wasm never comes');
  await page.route('**/*.wasm', (route) => route.abort());
  await hands.open('');
  await hands.see(button('Reload'));
  await holds('recovery');
});
