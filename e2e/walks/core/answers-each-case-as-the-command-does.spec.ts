/** The core in a page says of every case of the repository what the command says, to a part in a thousand million. */
import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { cases, repository } from '../../house/settings.ts';
import { expect, test } from '../../walk.ts';

/** Largest difference of two numbers, as a part of the larger one. */
const CLOSE = 1e-9;

/** Where two answers part: "plan.hays.0.kg: 3.2 and 3.3". */
function differences(left: unknown, right: unknown, path = ''): string[] {
  if (typeof left === 'number' && typeof right === 'number') {
    const apart = Math.abs(left - right);
    return apart <= CLOSE * Math.max(1, Math.abs(left), Math.abs(right)) ? [] : [`${path}: ${left} and ${right}`];
  }
  if (left !== null && right !== null && typeof left === 'object' && typeof right === 'object') {
    const names = [...new Set([...Object.keys(left), ...Object.keys(right)])];
    const of = (whole: object, name: string): unknown => (whole as Record<string, unknown>)[name];
    return names.flatMap((name) => differences(of(left, name), of(right, name), `${path}.${name}`));
  }
  return left === right ? [] : [`${path}: ${String(left)} and ${String(right)}`];
}

// A worker that took the page over meanwhile would ask the host for the answering files, which it does not have.
test.use({ serviceWorkers: 'block' });

test('the nine cases of the repository, and a number that is off is found', async ({ hands, page }) => {
  const names = (await readdir(join(repository, 'core/examples/cases'))).filter((name) => name.endsWith('.json'));
  expect(names.length).toBeGreaterThanOrEqual(9);
  await page.route('**/answer*', async (route) => {
    const file = new URL(route.request().url()).pathname.split('/').pop() ?? '';
    const contentType = file.endsWith('.js') ? 'text/javascript' : 'application/wasm';
    await route.fulfill({ contentType, body: await readFile(join(cases, file)) });
  });
  await hands.open('');
  for (const name of names) {
    const asked = await readFile(join(repository, 'core/examples/cases', name), 'utf8');
    const answered = await page.evaluate(async (text) => {
      const script = './answer.js';
      const core = (await import(new URL(script, document.baseURI).href)) as {
        default: (from: { module_or_path: URL }) => Promise<unknown>;
        answer: (text: string) => string;
      };
      await core.default({ module_or_path: new URL('./answer_bg.wasm', document.baseURI) });
      return core.answer(text);
    }, asked);
    const here = JSON.parse(answered) as unknown;
    const there = JSON.parse(await readFile(join(cases, name), 'utf8')) as unknown;
    expect(differences(here, there), name).toEqual([]);
    // The comparison can fail.
    expect(differences({ ...(here as object), extra: 1 }, there), name).toEqual(['.extra: 1 and undefined']);
  }
});
