/**
 * What the build tool tells the browser tests, read once from the environment.
 *
 * Run by hand, every setting falls back to where the build tool puts things in this repository.
 */
import { existsSync, mkdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's top folder. */
export const repository = resolve(dirname(fileURLToPath(import.meta.url)), '..', '..');

function folderOf(variable: string, fallback: string): string {
  const given = process.env[variable];
  return resolve(given !== undefined && given !== '' ? given : join(repository, fallback));
}

/** The built folder that is served: `TUSSOCK_DIST`, otherwise `dist/`. */
export const dist = folderOf('TUSSOCK_DIST', 'dist');

/** The core for a page, and what the command says of each case: `TUSSOCK_CASES`, otherwise `target/tussock/cases/`. */
export const cases = folderOf('TUSSOCK_CASES', 'target/tussock/cases');

/** Where results, screenshots and second deploys go: `TUSSOCK_OUT`, otherwise `target/e2e/`. */
export const out = folderOf('TUSSOCK_OUT', 'target/e2e');

/** The build tool's program: `TUSSOCK_XTASK`, otherwise the debug build. */
export const xtask = folderOf('TUSSOCK_XTASK', 'target/debug/xtask');

/** The browser: `TUSSOCK_CHROMIUM`, otherwise Debian's place for it. */
export const chromium = process.env['TUSSOCK_CHROMIUM'] ?? '/usr/bin/chromium';

/** The name of this run, the same in every worker: each inherits the environment of the first process. */
export const run = (process.env['TUSSOCK_RUN'] ??= `${Date.now()}-${process.pid}`);

/** Run the long loops and every walk under a sub-path too: `TUSSOCK_ALL=1`. */
export const everything = process.env['TUSSOCK_ALL'] === '1';

/** Makes sure that what the walks need is there, and says in one line what is not. */
export function demandSettings(): void {
  const missing: string[] = [];
  if (!existsSync(join(dist, 'index.html'))) missing.push(`no built folder at ${dist} (TUSSOCK_DIST)`);
  if (!existsSync(join(cases, 'answer.js'))) missing.push(`no answered cases at ${cases} (TUSSOCK_CASES)`);
  if (!existsSync(xtask)) missing.push(`no build tool at ${xtask} (TUSSOCK_XTASK)`);
  if (!existsSync(chromium)) missing.push(`no browser at ${chromium} (TUSSOCK_CHROMIUM)`);
  if (missing.length > 0) throw new Error(`${missing.join('; ')}. cargo xtask test sets all of these.`);
  mkdirSync(out, { recursive: true });
}
