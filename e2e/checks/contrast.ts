/**
 * Contrast of the colour tokens by the formula of WCAG 2.
 *
 * The tokens are the style sheet's own, as its rules settle them for each theme and each wish for
 * more contrast; the ratio is worked out from them and from nothing that is painted.
 */
import type { Page } from '@playwright/test';

/** The colour tokens in force under one choice of theme and contrast. */
export interface Palette {
  /** The choice, in words. */
  readonly choice: string;
  readonly tokens: ReadonlyMap<string, string>;
}

/** A pair that look.md section 3 names, with the least ratio it may have. */
export interface Pair {
  readonly front: string;
  readonly back: string;
  readonly least: number;
}

const TEXT = 7;
const EDGE = 3;

/** Every text token on every ground it stands on, and every edge. */
export const pairs: readonly Pair[] = [
  { front: 'ink', back: 'ground', least: TEXT },
  { front: 'ink', back: 'inset', least: TEXT },
  { front: 'soft', back: 'ground', least: TEXT },
  { front: 'soft', back: 'inset', least: TEXT },
  { front: 'twine', back: 'ground', least: TEXT },
  { front: 'twine', back: 'inset', least: TEXT },
  { front: 'on-twine', back: 'twine', least: TEXT },
  { front: 'ground', back: 'ink', least: TEXT },
  { front: 'ink', back: 'straw', least: TEXT },
  { front: 'line', back: 'ground', least: EDGE },
  { front: 'line', back: 'inset', least: EDGE },
  { front: 'straw-line', back: 'ground', least: EDGE },
  { front: 'straw-line', back: 'straw', least: EDGE },
];

/** The names of all colour tokens that a palette must settle. */
export const colourTokens: readonly string[] = [...new Set(pairs.flatMap(({ front, back }) => [front, back]))];

/** Red, green and blue from `#rgb` or `#rrggbb`, each 0 to 1. */
function channels(colour: string): [number, number, number] {
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(colour);
  const digits = short === null ? colour : `#${short.slice(1).map((digit) => digit + digit).join('')}`;
  const long = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(digits);
  if (long === null) throw new Error(`a colour token is written #rrggbb, not "${colour}"`);
  const [r, g, b] = long.slice(1).map((part) => Number.parseInt(part, 16) / 255);
  return [r ?? 0, g ?? 0, b ?? 0];
}

/** Relative luminance, WCAG 2.2. */
function luminance(colour: string): number {
  const [r, g, b] = channels(colour).map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4));
  return 0.2126 * (r ?? 0) + 0.7152 * (g ?? 0) + 0.0722 * (b ?? 0);
}

/** Contrast ratio, WCAG 2.2: 1 to 21, whichever of the two is lighter. */
export function contrast(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return ((high ?? 0) + 0.05) / ((low ?? 0) + 0.05);
}

/** The innermost rules of a style sheet: the selector with the at-rules around it, and the declarations. */
export function rulesOf(css: string): { rule: string; body: string }[] {
  const bare = css.replace(/\/\*[\s\S]*?\*\//g, '');
  const found: { rule: string; body: string }[] = [];
  const open: string[] = [];
  let piece = '';
  for (const letter of bare) {
    if (letter === '{') {
      open.push((piece.split(/[;}]/).pop() ?? '').trim());
      piece = '';
    } else if (letter === '}') {
      if (piece.trim() !== '') found.push({ rule: open.filter((part) => part !== '').join(' / '), body: piece });
      open.pop();
      piece = '';
    } else {
      piece += letter;
    }
  }
  return found;
}

/** The palettes of the page in sight, under every choice that changes them. The page's own choice is put back. */
export async function palettesOf(page: Page): Promise<Palette[]> {
  const palettes: Palette[] = [];
  for (const chosen of ['', 'paper', 'slate']) {
    for (const colorScheme of ['light', 'dark'] as const) {
      for (const more of ['no-preference', 'more'] as const) {
        await page.emulateMedia({ colorScheme, contrast: more });
        const values = await page.evaluate(
          ([theme, names]) => {
            const root = document.documentElement;
            const before = root.dataset['theme'];
            if (theme === '') delete root.dataset['theme'];
            else root.dataset['theme'] = theme;
            const style = getComputedStyle(root);
            const read = names.map((name): [string, string] => [name, style.getPropertyValue(`--${name}`).trim()]);
            if (before === undefined) delete root.dataset['theme'];
            else root.dataset['theme'] = before;
            return read;
          },
          [chosen, [...colourTokens]] as const,
        );
        const choice = `${chosen === '' ? 'no theme chosen' : chosen}, phone ${colorScheme}, contrast ${more}`;
        palettes.push({ choice, tokens: new Map(values.filter(([, value]) => value !== '')) });
      }
    }
  }
  await page.emulateMedia({ colorScheme: 'light', contrast: 'no-preference' });
  return palettes;
}

/** Each pair of a palette that is missing a token or is too faint. */
export function contrastFaults(palette: Palette): string[] {
  const faults: string[] = [];
  for (const { front, back, least } of pairs) {
    const one = palette.tokens.get(front);
    const other = palette.tokens.get(back);
    if (one === undefined || other === undefined) {
      faults.push(`${palette.choice}: ${one === undefined ? front : back} is not set`);
      continue;
    }
    const ratio = contrast(one, other);
    if (ratio < least) faults.push(`${palette.choice}: ${front} on ${back} is ${ratio.toFixed(2)}, under ${least}`);
  }
  return faults;
}

/** Colours written outside the palettes, which no contrast test would see. */
export function strayColours(css: string): string[] {
  const stray: string[] = [];
  for (const { rule, body } of rulesOf(css)) {
    for (const [, name, value] of body.matchAll(/([\w-]+)\s*:\s*([^;]+?)\s*(?:;|$)/g)) {
      if (name === undefined || value === undefined || name.startsWith('--')) continue;
      if (/#[0-9a-f]{3,8}\b|\b(?:rgb|rgba|hsl|hsla|oklch|lab|color)\(/i.test(value)) stray.push(`${rule}: ${name}: ${value}`);
    }
  }
  return stray;
}
