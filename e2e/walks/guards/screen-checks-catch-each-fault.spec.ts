/** The checks that every screen goes through: each fault, drawn on purpose, is found. */
import type { Page } from '@playwright/test';
import { axeFaults } from '../../checks/axe.ts';
import { fitFaults } from '../../checks/fit.ts';
import { focusFaults } from '../../checks/focus.ts';
import { orderFaults } from '../../checks/order.ts';
import { expect, test } from '../../walk.ts';

/** A bare page with one thing on it. */
async function draw(page: Page, body: string, css = ''): Promise<void> {
  await page.setContent(`<!doctype html><html lang="en"><head><title>drawn</title>
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <style>body{margin:0;font-size:1rem}h1{font-size:1.75rem}a.block,button{display:block;min-height:48px;min-width:48px}${css}</style>
    </head><body><main>${body}</main></body></html>`);
}

const good = '<h1>One sentence</h1><p>Words</p><button class="action">Weigh nets</button>';
const tall = 'button.action{min-height:72px;margin-top:8px}';

test('a screen in order passes all of them', async ({ page }) => {
  await draw(page, good, tall);
  expect(await orderFaults(page)).toEqual([]);
  expect(await fitFaults(page)).toEqual([]);
  expect(await axeFaults(page)).toEqual([]);
});

test('two sentences, two actions, two stop blocks, a low action and a tall block are found', async ({ page }) => {
  await draw(
    page,
    `<h1>One</h1><h1>Two</h1><button class="action">A</button><button>near</button><button class="action">B</button>
     <p class="stop-block">No grass</p><p class="stop-block" style="height:300px">Vet today</p>`,
  );
  const faults = (await orderFaults(page)).join('\n');
  expect(faults).toContain('one h1 wanted, found "One", "Two"');
  expect(faults).toContain('1 primary action wanted, found "A", "B"');
  expect(faults).toContain('the action "A" is 48.0 px high, under 64');
  expect(faults).toContain('within 8 px of the action: near');
  expect(faults).toContain('at most one stop block wanted');
  expect(faults).toContain('the stop block "Vet today" is 300 px high, over 240');
});

test('a screen with no sentence or no action is found', async ({ page }) => {
  await draw(page, '<p>Words</p>');
  expect((await orderFaults(page)).join('\n')).toContain('one h1 wanted, found none');
  expect((await orderFaults(page)).join('\n')).toContain('1 primary action wanted, found none');
  expect((await orderFaults(page, { actions: 0 })).join('\n')).not.toContain('primary action');
});

test('sideways scroll, cut text, a small target and an action out of view are found', async ({ page }) => {
  await draw(
    page,
    `<h1>One</h1><div class="wide">wide</div><p class="cut">a line that is much too long for its box</p>
     <p class="low">two<br>lines</p><button class="small">x</button><p>Read <a href="#why">Why</a> now</p>
     <div class="down"></div><button class="action">A</button>`,
    `.wide{width:350px} .cut{width:90px;overflow:hidden;white-space:nowrap} .low{height:20px;overflow:hidden}
     button.small{min-height:30px} .down{height:1000px}`,
  );
  const faults = (await fitFaults(page)).join('\n');
  expect(faults).toMatch(/320 px: scrolls sideways/);
  expect(faults).toMatch(/320 px: div "wide" reaches from 0 to 350/);
  expect(faults).not.toMatch(/390 px: scrolls sideways/);
  expect(faults).toMatch(/390 px: p "a line that is.*" is cut off sideways/);
  expect(faults).toMatch(/390 px: p "twolines" is cut off below/);
  expect(faults).toMatch(/390 px: button "x" is [\d.]+ x 30\.0 px, under 48/);
  expect(faults).toMatch(/390 px: a "Why" is/);
  expect(faults).toMatch(/390 px: the action "A" is out of view/);
});

test('only a named inline link is let off, and a name for nothing is found', async ({ page }) => {
  await draw(page, `<h1>One</h1><p>Read <a href="#why">Why</a> now</p>`);
  expect(await fitFaults(page, { inline: ['Why'] })).toEqual([]);
  expect(await fitFaults(page, { inline: ['Why', 'Where'] })).toEqual(['the inline link "Where" is excepted and not there']);
});

test('axe looks in both themes', async ({ page }) => {
  await draw(
    page,
    '<h1>One</h1><p class="faint">faint by night</p>',
    '@media(prefers-color-scheme:dark){body{background:#000;color:#fff}.faint{color:#333}}',
  );
  const faults = (await axeFaults(page)).join('\n');
  expect(faults).toContain('slate: color-contrast');
  expect(faults).not.toContain('paper: color-contrast');
});

test('a bar that stays over what has the focus is found', async ({ page }) => {
  const long = '<div class="down"></div><p><button>first</button></p><div class="down"></div><button>second</button><footer>bar</footer>';
  const bar = '.down{height:900px} footer{position:fixed;left:0;right:0;bottom:0;height:120px;background:#fff}';
  await draw(page, long, `${bar} main{padding-bottom:0}`);
  expect((await focusFaults(page)).join('\n')).toContain('390 x 844: covered while it has the focus: button "second"');
  await draw(page, long, `${bar} html{scroll-padding-bottom:160px} main{padding-bottom:160px}`);
  expect(await focusFaults(page)).toEqual([]);
});
