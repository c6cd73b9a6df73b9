/** The folder lies on a host that does not know what a wasm is. */
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { dist } from '../../house/settings.ts';
import { readSentence } from '../../models/screen.ts';
import { test } from '../../walk.ts';

for (const type of ['application/octet-stream', 'application/wasm; charset=utf-8']) {
  test(`the app starts from a wasm that is sent as ${type}`, async ({ hands, page, watch }) => {
    watch.tolerates(/WebAssembly\.instantiateStreaming|MIME/, 'the wrong type may be remarked on');
    await page.route('**/*.wasm', async (route) => {
      const file = new URL(route.request().url()).pathname.split('/').pop() ?? '';
      await route.fulfill({ contentType: type, body: await readFile(join(dist, file)) });
    });
    await hands.open('');
    const first = await readSentence(hands);
    await hands.open('#/start');
    await readSentence(hands, first);
  });
}
