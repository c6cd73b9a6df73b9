/** Other folders to serve: the same build under another stamp, and a build with something wrong. */
import { execFile } from 'node:child_process';
import { cp, mkdir, readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { dist, out, repository, xtask } from '../house/settings.ts';

const run = promisify(execFile);

/** A folder name that no other worker uses. */
function place(name: string): string {
  return join(out, 'deploys', `${name}-${process.pid}`);
}

/** The built folder stamped anew, as if it were the next release. */
export async function stamped(stamp: string): Promise<string> {
  const folder = place(stamp);
  await rm(folder, { recursive: true, force: true });
  await mkdir(join(out, 'deploys'), { recursive: true });
  await run(xtask, ['dist', '--stamp', stamp, '--out', folder], { cwd: repository });
  return folder;
}

/** A copy of the built folder for a walk to break. */
export async function copied(name: string, from: string = dist): Promise<string> {
  const folder = place(name);
  await rm(folder, { recursive: true, force: true });
  await cp(from, folder, { recursive: true });
  return folder;
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
