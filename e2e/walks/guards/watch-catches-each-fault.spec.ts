/** The watch itself: each kind of fault, made on purpose, is written down. */
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { Host } from '../../host/host.ts';
import { out } from '../../house/settings.ts';
import { expect, test } from '../../walk.ts';
import { Watch } from '../../watch/watch.ts';

test('each fault that a page can show is written down', async ({ browser, host }) => {
  const context = await browser.newContext();
  const watch = new Watch(() => host.origin);
  await watch.over(context);
  const page = await context.newPage();
  await page.route('**/broken.html', (route) =>
    route.fulfill({
      contentType: 'text/html',
      body: `<!doctype html><title>broken</title><meta http-equiv="Content-Security-Policy"
        content="script-src 'self' 'sha256-none' ; img-src *"><p onclick="0">x</p><script>let a;</script>`,
    }),
  );
  await page.goto(`${host.home}broken.html`);
  await page.evaluate(() => {
    console.error('said loudly');
    setTimeout(() => {
      throw new Error('thrown and not caught');
    }, 0);
    void fetch('not-there.js');
    new Image().src = 'http://127.0.0.2:9/elsewhere.png';
  });
  await expect.poll(() => watch.verdict().join('\n')).toContain('thrown and not caught');
  await expect.poll(() => watch.verdict().join('\n')).toMatch(/answer 404: .*not-there\.js/);
  const verdict = watch.verdict().join('\n');
  expect(verdict).toContain('console error: said loudly');
  expect(verdict).toMatch(/CSP: script-src\S* refused inline/);
  expect(verdict).toContain('request elsewhere: http://127.0.0.2:9/elsewhere.png');
  await context.close();
});

test('an expected fault that never came is a fault', async ({ host }) => {
  const watch = new Watch(() => host.origin);
  watch.tolerates(/may come/, 'it depends');
  expect(watch.verdict()).toEqual([]);
  watch.expects(/must come/, 'it is provoked');
  expect(watch.verdict()).toEqual(['expected and not seen: /must come/ (it is provoked)']);
});

test('what a worker asks for elsewhere, or in vain, is seen too', async ({ browser }) => {
  const folder = join(out, 'deploys', 'bare-worker');
  await mkdir(folder, { recursive: true });
  await writeFile(join(folder, 'index.html'), '<!doctype html><title>bare</title><p>x</p>');
  await writeFile(
    join(folder, 'sw.js'),
    `addEventListener('install', (event) => event.waitUntil(Promise.allSettled(
      [fetch('http://127.0.0.2:9/from-the-worker'), fetch('not-there.bin')])));`,
  );
  const host = await Host.open('/', folder);
  const context = await browser.newContext();
  const watch = new Watch(() => host.origin);
  await watch.over(context);
  const page = await context.newPage();
  await page.goto(host.home);
  await page.evaluate(async () => {
    await navigator.serviceWorker.register('sw.js');
    await navigator.serviceWorker.ready;
  });
  await expect.poll(() => watch.verdict().join('\n')).toContain('request elsewhere: http://127.0.0.2:9/from-the-worker');
  await expect.poll(() => watch.verdict().join('\n')).toContain(`answer 404: ${host.home}not-there.bin`);
  await context.close();
  await host.stop();
});
