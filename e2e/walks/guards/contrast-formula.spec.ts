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

test('a faint text token, a faint edge and a missing token are found, in any rule', () => {
  const css = `/* } */ @layer tokens{:root{${tokens}} @media (prefers-color-scheme:dark){:root{--ground:#fff;--soft:#777;--line:#999}}}`;
  const [paper, slate] = palettesOf(css);
  expect(paper === undefined ? [] : contrastFaults(paper)).toEqual([]);
  expect(slate?.rule).toBe('@layer tokens / @media (prefers-color-scheme:dark) / :root');
  const faults = slate === undefined ? '' : contrastFaults(slate).join('\n');
  expect(faults).toContain('soft on ground is 4.48, under 7');
  expect(faults).toContain('line on ground is 2.85, under 3');
  const [bare] = palettesOf(':root{--ground:#fff}');
  expect(bare === undefined ? '' : contrastFaults(bare).join('\n')).toContain('ink is not set');
});

test('a colour outside the palettes is found', () => {
  expect(strayColours(`:root{${tokens}} .tag{color:#f00;border:2px solid var(--line)}`)).toEqual(['.tag: color: #f00']);
});
