/**
 * What the build tool tells the browser tests, read once from the environment.
 *
 * Run by hand, every setting falls back to where the build tool puts things in this repository.
 */
import { existsSync, mkdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The engines beside the one Playwright drives. */
export type EngineName = 'firefox' | 'webkit';
const ENGINES: readonly EngineName[] = ['firefox', 'webkit'];

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

/** Firefox: `TUSSOCK_FIREFOX`, otherwise Debian's place for it. */
export const firefox = process.env['TUSSOCK_FIREFOX'] ?? '/usr/bin/firefox-esr';

/** What drives WebKit: `TUSSOCK_WEBKIT_DRIVER`, otherwise Debian's place for it. */
export const webkitDriver = process.env['TUSSOCK_WEBKIT_DRIVER'] ?? '/usr/bin/WebKitWebDriver';

/** The browser it starts, which Debian keeps beside the library: `TUSSOCK_MINI_BROWSER`. */
export const miniBrowser =
  process.env['TUSSOCK_MINI_BROWSER'] ?? '/usr/lib/x86_64-linux-gnu/webkit2gtk-4.1/MiniBrowser';

/** The display that nobody sees: `TUSSOCK_XVFB`. */
export const xvfb = process.env['TUSSOCK_XVFB'] ?? '/usr/bin/Xvfb';

/**
 * The engines beside Chromium: those that `TUSSOCK_ENGINES` names, separated by commas; otherwise those that are here.
 * One that is named must be there.
 */
const named = process.env['TUSSOCK_ENGINES'];
export const engines: EngineName[] = ENGINES.filter((engine) =>
  named === undefined ? existsSync(engine === 'firefox' ? firefox : webkitDriver) : named.split(',').includes(engine),
);

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
  const programs = { firefox: [firefox], webkit: [webkitDriver, miniBrowser, xvfb] };
  for (const program of engines.flatMap((engine) => programs[engine])) {
    if (!existsSync(program)) missing.push(`no ${program} (TUSSOCK_ENGINES asks for it)`);
  }
  if (missing.length > 0) throw new Error(`${missing.join('; ')}. cargo xtask test sets all of these.`);
  mkdirSync(out, { recursive: true });
}
