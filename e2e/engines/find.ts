/**
 * Finding a thing by role and name in an engine that Playwright does not drive here.
 *
 * Testing Library does the finding inside the page; this puts it there once for each document and hands it the thing.
 */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { Thing } from '../hands/hands.ts';

/** A text or a pattern, as it crosses into the page. */
export interface Words {
  readonly text: string;
  /** Flags of a pattern; absent for plain text. */
  readonly flags?: string;
}

/** A thing, as it crosses into the page. */
export interface Wanted {
  readonly role?: string;
  readonly name?: Words;
  readonly words?: Words;
  readonly level?: number;
  readonly within?: Wanted;
}

function words(of: string | RegExp): Words {
  return typeof of === 'string' ? { text: of } : { text: of.source, flags: of.flags };
}

/** A thing that can be sent as JSON. */
export function wanted(what: Thing): Wanted {
  return {
    ...(what.role === undefined ? {} : { role: what.role }),
    ...(what.name === undefined ? {} : { name: words(what.name) }),
    ...(what.words === undefined ? {} : { words: words(what.words) }),
    ...(what.level === undefined ? {} : { level: what.level }),
    ...(what.within === undefined ? {} : { within: wanted(what.within) }),
  };
}

/** The library as a script that puts itself on the window. */
export async function library(): Promise<string> {
  const entry = createRequire(import.meta.url).resolve('@testing-library/dom');
  return readFile(join(dirname(entry), '@testing-library', 'dom.umd.min.js'), 'utf8');
}

/** What the library puts on the window, as far as it is used here. */
interface Finder {
  queryAllByRole(ground: HTMLElement, role: string, how: object): HTMLElement[];
  queryAllByText(ground: HTMLElement, text: string | RegExp, how: object): HTMLElement[];
}

/** Every such thing in sight. Runs inside the page, so it stands on nothing outside itself. */
export function inSight(what: Wanted): HTMLElement[] {
  const finder = (window as unknown as { TestingLibraryDom: Finder }).TestingLibraryDom;
  const spoken = (of: Words): string | RegExp => (of.flags === undefined ? of.text : new RegExp(of.text, of.flags));
  const all = (thing: Wanted): HTMLElement[] => {
    const grounds = thing.within === undefined ? [document.body] : all(thing.within);
    return grounds.flatMap((ground) => {
      if (thing.role !== undefined) {
        return finder.queryAllByRole(ground, thing.role, {
          ...(thing.name === undefined ? {} : { name: spoken(thing.name) }),
          ...(thing.level === undefined ? {} : { level: thing.level }),
        });
      }
      return thing.words === undefined ? [] : finder.queryAllByText(ground, spoken(thing.words), { exact: false });
    });
  };
  // A choice is covered by the key that is its label.
  const shown = (element: HTMLElement): boolean => element.getClientRects().length > 0;
  return all(what).filter(shown);
}

/** What a finger meets of the only such thing: of a choice, its label. `null` while there is not exactly one. */
export function face(found: HTMLElement[]): HTMLElement | null {
  const [one] = found;
  if (one === undefined || found.length !== 1) return null;
  const label = one instanceof HTMLInputElement && (one.type === 'radio' || one.type === 'checkbox') ? one.labels?.[0] : undefined;
  const met = label ?? one;
  met.scrollIntoView({ block: 'center' });
  return met;
}

/** The words on a thing; of a field, what it holds. */
export function said(element: HTMLElement): string {
  const field = element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement;
  return (field ? element.value : element.innerText).trim();
}
