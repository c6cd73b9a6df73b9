/**
 * What a person can do with the app: open, tap, type, see, count, and keep a picture.
 *
 * Walks and page models speak only these six verbs, so that another engine needs another pair of
 * hands and no other walks. Things are named as a screen reader names them, by role and name.
 */

/** The roles that walks may name. */
export type Role =
  | 'alert'
  | 'banner'
  | 'button'
  | 'checkbox'
  | 'combobox'
  | 'dialog'
  | 'group'
  | 'heading'
  | 'img'
  | 'link'
  | 'list'
  | 'listitem'
  | 'main'
  | 'navigation'
  | 'option'
  | 'radio'
  | 'radiogroup'
  | 'region'
  | 'row'
  | 'status'
  | 'switch'
  | 'table'
  | 'textbox';

/** Something on the screen: a role with its name, or plain words; `within` narrows the search. */
export interface Thing {
  readonly role?: Role;
  /** Exact accessible name, or a pattern for it. */
  readonly name?: string | RegExp;
  /** Words as they are read; used where no role is named. */
  readonly words?: string | RegExp;
  /** Level of a heading, 1 to 6. */
  readonly level?: number;
  readonly within?: Thing;
}

/** A thing by role and name. */
export function thing(role: Role, name?: string | RegExp, within?: Thing): Thing {
  return { role, ...(name === undefined ? {} : { name }), ...(within === undefined ? {} : { within }) };
}

/** A button by its name. */
export const button = (name: string | RegExp, within?: Thing): Thing => thing('button', name, within);
/** A link by its name. */
export const link = (name: string | RegExp, within?: Thing): Thing => thing('link', name, within);
/** A field to type in, by its label. */
export const field = (name: string | RegExp, within?: Thing): Thing => thing('textbox', name, within);
/** One of several keys, by its words. */
export const choice = (name: string | RegExp, within?: Thing): Thing => thing('radio', name, within);
/** Words as they are read on the screen, in part or as a pattern. */
export const words = (text: string | RegExp, within?: Thing): Thing =>
  within === undefined ? { words: text } : { words: text, within };
/** The one sentence that opens each screen. */
export const sentence = (text?: string | RegExp): Thing =>
  text === undefined ? { role: 'heading', level: 1 } : { role: 'heading', level: 1, name: text };

/** Touches counted since the last reset: a tap is one touch, a typed character one digit. */
export interface Touches {
  readonly taps: number;
  readonly digits: number;
  /** Begins a new count. */
  reset(): void;
}

/** How a picture is kept. */
export interface ShotOptions {
  /** The whole page rather than what fits the window. */
  readonly whole?: boolean;
}

/** The six verbs. */
export interface Hands {
  readonly touches: Touches;
  /**
   * Opens an address cold, as from a bookmark: `''` is the front door, `'#/start'` a deep link,
   * `'reset.html'` a file. What an earlier page held in memory is gone.
   */
  open(address: string): Promise<void>;
  /** Touches a thing once, when it can be touched. */
  tap(what: Thing): Promise<void>;
  /** Types into a field key by key; touches it first when it has not the focus. Of a list that opens, chooses by its words. */
  type(into: Thing, text: string): Promise<void>;
  /** Waits until a thing is in sight and gives the words on it; of a field, what it holds. */
  see(what: Thing): Promise<string>;
  /** How many such things are in sight now. */
  count(what: Thing): Promise<number>;
  /** Keeps a picture in both themes and fails if they look the same. */
  shot(name: string, options?: ShotOptions): Promise<void>;
}
