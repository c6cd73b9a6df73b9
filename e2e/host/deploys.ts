/** Other folders to serve: the same build under another stamp, and a build with something wrong. */
import { execFile } from 'node:child_process';
import { existsSync } from 'node:fs';
import { cp, mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { dist, out, repository, run, xtask } from '../house/settings.ts';

const call = promisify(execFile);

const folders = join(out, 'deploys');

/** Milliseconds that one worker waits for another to make a deploy. */
const PATIENCE = 600_000;

/** Makes a folder once in a run, whichever worker asks first; the others wait for it. */
async function once(name: string, make: (folder: string) => Promise<unknown>): Promise<string> {
  const folder = join(folders, name);
  const [claim, made] = [`${folder}.${run}.claim`, `${folder}.${run}.made`];
  await mkdir(folders, { recursive: true });
  const mine = await mkdir(claim).then(
    () => true,
    () => false,
  );
  if (mine) {
    await rm(folder, { recursive: true, force: true });
    await make(folder);
    await mkdir(made);
    return folder;
  }
  const until = Date.now() + PATIENCE;
  while (!existsSync(made)) {
    if (Date.now() > until) throw new Error(`another walk was to make ${folder} and did not`);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  return folder;
}

/** The built folder stamped anew, as if it were the next release. */
export function nextRelease(): Promise<string> {
  return once('next', (folder) => call(xtask, ['dist', '--stamp', 'next', '--out', folder], { cwd: repository }));
}

/** The next release with its wasm left out, as a broken upload leaves it. */
export async function brokenRelease(): Promise<string> {
  const whole = await nextRelease();
  return once('broken', async (folder) => {
    await cp(whole, folder, { recursive: true });
    for (const path of await filesOf(folder)) {
      if (path.endsWith('.wasm')) await rm(join(folder, path));
    }
  });
}

/** Every file of a built folder as a path relative to it, without the precompressed twins. */
export async function filesOf(folder: string = dist): Promise<string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true });
  return entries
    .filter((entry) => entry.isFile() && !/\.(br|gz)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
    .sort();
}

/** The one file whose name matches, with its text. */
export async function fileLike(pattern: RegExp, folder: string = dist): Promise<{ path: string; text: string }> {
  const found = (await filesOf(folder)).filter((path) => pattern.test(path));
  const [path] = found;
  if (path === undefined || found.length > 1) {
    throw new Error(`${String(pattern)} names ${found.length} files of the build, not one`);
  }
  return { path, text: await readFile(join(folder, path), 'utf8') };
}

/** Every rule of the build: its style sheets and what its pages carry inside. */
export async function styleOf(folder: string = dist): Promise<string> {
  const sheets: string[] = [];
  for (const path of await filesOf(folder)) {
    if (!/\.(css|html)$/.test(path)) continue;
    const text = await readFile(join(folder, path), 'utf8');
    if (path.endsWith('.css')) sheets.push(text);
    else for (const [, inside] of text.matchAll(/<style>([\s\S]*?)<\/style>/g)) sheets.push(inside ?? '');
  }
  if (!sheets.some((sheet) => sheet.includes('--ground'))) throw new Error('no style sheet of the build sets the tokens');
  return [...new Set(sheets)].join('\n');
}
