// The solver beside HiGHS in one page of Chromium: node measure/solver.mjs FOLDER BROWSER
// FOLDER holds answer.js and answer_bg.wasm, optimised as the app is. HiGHS comes from node_modules; nothing is asked of
// the network. Prints one line of JSON: times in milliseconds a solve.
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';

const [folder, executablePath] = process.argv.slice(2);
if (folder === undefined || executablePath === undefined) {
  console.error('usage: node measure/solver.mjs FOLDER BROWSER');
  process.exit(2);
}

const highs = fileURLToPath(new URL('../node_modules/highs/build/', import.meta.url));
const beside = fileURLToPath(new URL('.', import.meta.url));
const FILES = new Map([
  ['/answer.js', join(folder, 'answer.js')],
  ['/answer_bg.wasm', join(folder, 'answer_bg.wasm')],
  ['/highs.mjs', join(highs, 'highs.mjs')],
  ['/highs.wasm', join(highs, 'highs.wasm')],
  ['/timing.mjs', join(beside, 'timing.mjs')],
]);
const TYPES = { mjs: 'text/javascript', js: 'text/javascript', wasm: 'application/wasm' };

const server = createServer((request, response) => {
  const path = new URL(request.url ?? '/', 'http://localhost').pathname;
  // A page on its own reads a clock of 5 microseconds; any other reads one of 100.
  const headers = { 'Cross-Origin-Opener-Policy': 'same-origin', 'Cross-Origin-Embedder-Policy': 'require-corp' };
  const file = FILES.get(path);
  if (path === '/') {
    response.writeHead(200, { ...headers, 'Content-Type': 'text/html' });
    response.end('<!doctype html><title>solver</title><link rel="icon" href="data:,">');
  } else if (file === undefined) {
    response.writeHead(404).end();
  } else {
    readFile(file).then(
      (body) => response.writeHead(200, { ...headers, 'Content-Type': TYPES[path.split('.').pop()] }).end(body),
      () => response.writeHead(500).end(),
    );
  }
});
await new Promise((listening) => server.listen(0, '127.0.0.1', listening));

const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
try {
  const page = await browser.newPage();
  page.on('console', (message) => console.error(`    ${message.text()}`));
  page.setDefaultTimeout(0);
  await page.goto(`http://127.0.0.1:${server.address().port}/`);
  const found = await page.evaluate(async () => {
    const script = '/timing.mjs';
    const { timed } = await import(script);
    return timed();
  });
  console.log(JSON.stringify(found));
} finally {
  await browser.close();
  server.close();
}
