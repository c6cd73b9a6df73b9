/** Somebody reads the app in the sun, and at night in the stable. */
import { contrastFaults, palettesOf, strayColours } from '../../checks/contrast.ts';
import { link, sentence } from '../../hands/hands.ts';
import { fileLike } from '../../host/deploys.ts';
import { expect, test } from '../../walk.ts';

test('every text token has 7:1 and every edge 3:1, in both themes', async () => {
  const { path, text } = await fileLike(/\.css$/);
  const palettes = palettesOf(text);
  const grounds = new Set(palettes.map(({ tokens }) => tokens.get('ground')?.toLowerCase()));
  expect(grounds.size, `${path} has a palette for paper and one for slate`).toBeGreaterThanOrEqual(2);
  expect(palettes.flatMap(contrastFaults)).toEqual([]);
});

test('no rule paints with a colour that is not a token', async () => {
  const { text } = await fileLike(/\.css$/);
  expect(strayColours(text)).toEqual([]);
});

for (const [theme, scheme] of [['paper', 'dark'], ['slate', 'light']] as const) {
  test(`${theme}, once chosen, stays when the phone goes ${scheme}`, async ({ hands, page }) => {
    await hands.open('');
    await hands.see(sentence());
    await page.emulateMedia({ colorScheme: theme === 'paper' ? 'light' : 'dark' });
    const asWanted = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    await page.emulateMedia({ colorScheme: scheme });
    const asSystem = await page.evaluate(() => getComputedStyle(document.body).backgroundColor);
    expect(asSystem, 'the theme follows the phone until one is chosen').not.toBe(asWanted);
    await page.evaluate((chosen) => localStorage.setItem('tussock-theme', chosen), theme);
    await hands.open('');
    await hands.see(sentence());
    expect(await page.evaluate(() => getComputedStyle(document.body).backgroundColor)).toBe(asWanted);
  });
}

test('the first screen holds up', async ({ hands, holds }) => {
  await hands.open('');
  await hands.see(sentence());
  await holds('first-run');
});

for (const door of ['Start', 'Example yard']) {
  test(`the screen behind ${door} holds up`, async ({ hands, holds }) => {
    await hands.open('');
    const first = await hands.see(sentence());
    await hands.tap(link(door));
    await expect.poll(() => hands.see(sentence())).not.toBe(first);
    await holds(`behind-${door.toLowerCase().replace(' ', '-')}`);
  });
}
