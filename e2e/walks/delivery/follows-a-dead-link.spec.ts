/** A file that is not there is not there: nobody is handed the front page in its place. */
import { firstVisitIsOver } from '../../device/worker.ts';
import { expect, test } from '../../walk.ts';

const dead = ['app-0000000000.js', 'app-0000000000.wasm', 'nowhere/styles.css', 'nowhere.html', '../../Cargo.toml'];

test('the host answers 404 for each missing file', async ({ host, request }) => {
  for (const path of dead) {
    const answer = await request.get(`${host.home}${path}`);
    expect(answer.status(), path).toBe(404);
    expect(await answer.text(), path).not.toContain('<h1');
  }
});

test('the worker hands out no page for a script or a wasm', async ({ hands, host, page, watch }) => {
  await hands.open('');
  await firstVisitIsOver(page);
  const ask = (path: string): Promise<string> =>
    page.evaluate(async (from) => {
      const answer = await fetch(from).catch(() => undefined);
      return answer === undefined ? 'refused' : `${answer.status} ${answer.headers.get('content-type') ?? ''}`;
    }, path);

  watch.expects(/404|Not Found/, 'missing files are asked for');
  for (const path of dead.slice(0, 3)) expect(await ask(path), path).toMatch(/^404/);

  watch.tolerates(/ERR_FAILED|ERR_CONNECTION_REFUSED|Failed to load resource|FetchEvent|Failed to fetch/, 'and asked for offline');
  await host.stop();
  for (const path of dead.slice(0, 3)) expect(await ask(path), path).not.toMatch(/^200|html/);
});

test('the page, the worker and the manifest are asked for anew, and hashed files are not', async ({ host, request }) => {
  const caching = async (path: string): Promise<string> =>
    (await request.get(`${host.home}${path}`)).headers()['cache-control'] ?? '';
  for (const path of ['', 'index.html', 'sw.js', 'manifest.webmanifest']) {
    expect(await caching(path), path).toContain('no-cache');
  }
});
