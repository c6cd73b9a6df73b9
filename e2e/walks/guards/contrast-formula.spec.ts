/** The contrast check: the formula against known pairs, and a faint token found. */
import { contrast, contrastFaults, palettesOf, strayColours } from '../../checks/contrast.ts';
import { expect, test } from '../../walk.ts';

const tokens = `--ground:#fff;--inset:#eee;--ink:#000;--soft:#333;--line:#667075;--twine:#0B4A75;
  --on-twine:#fff;--straw:#E9DDB0;--straw-line:#6A5614`;

test('the ratio is the one WCAG gives', () => {
  expect(contrast('#000', '#fff')).toBeCloseTo(21, 10);
  expect(contrast('#fff', '#fff')).toBeCloseTo(1, 10);
  // The grey that just passes and the one that just fails on white at level AA.
  expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
  // Pairs of look.md section 3, to its one decimal.
  expect(contrast('#14181A', '#F8F8F3')).toBeCloseTo(16.8, 1);
  expect(contrast('#D9C983', '#4A4326')).toBeCloseTo(6.0, 1);
});

test('a faint text token, a faint edge and a missing token are found, under each choice', async ({ page }) => {
  const draw = (css: string): Promise<void> => page.setContent(`<!doctype html><style>${css}</style><p>x</p>`);
  await draw(`/* } */ @layer tokens{:root{${tokens}} :root[data-theme=slate]{--soft:#777}
    @media (prefers-contrast:more){:root{--line:#999}}}`);
  const faults = (await palettesOf(page)).flatMap(contrastFaults);
  expect(faults).toContain('slate, phone dark, contrast no-preference: soft on ground is 4.48, under 7');
  expect(faults).toContain('paper, phone light, contrast more: line on ground is 2.85, under 3');
  expect(faults.filter((fault) => /^(no theme|paper).*no-preference/.test(fault))).toEqual([]);
  await draw(':root{--ground:#fff}');
  expect((await palettesOf(page)).flatMap(contrastFaults).join('\n')).toContain('ink is not set');
});

test('a colour outside the palettes is found', () => {
  expect(strayColours(`:root{${tokens}} .tag{color:#f00;border:2px solid var(--line)}`)).toEqual(['.tag: color: #f00']);
});
