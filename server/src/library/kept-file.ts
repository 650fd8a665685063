import type { FileId } from '../base/brand.ts';
import type { Text } from '../model/node.ts';
import { rootOf } from '../model/node.ts';

/** One page of a document that the library keeps. */
export interface KeptPage {
  /** Number printed on the page, where the document says it and it is not simply the count. */
  readonly label?: string;
  /** As it would be pasted and cleaned. Empty where the page holds no text: a picture. */
  readonly text: string;
}

/**
 * What came of looking at a file that a rule file names: a fact from outside, like the text of a rule file. A library that nobody has
 * looked around in has none, and nothing is said then.
 */
export type KeptFile =
  | {
      readonly state: 'read';
      /** SHA-256 of the file's bytes, 64 small hexadecimal digits. */
      readonly sha256: string;
      readonly pages: readonly KeptPage[];
    }
  | { readonly state: 'unread'; readonly sha256?: string; readonly why: UnreadReason }
  /** Nothing there that may be opened: the same answer for what does not exist and for what leads out of the library. */
  | { readonly state: 'missing' };

export type UnreadReason = 'no-pdf' | 'broken' | 'locked' | 'too-large' | 'too-many-pages' | 'too-slow' | 'unreadable';

/** Largest file that is opened, in bytes; most pages; most characters of all pages together. */
export const keptFileLimits = { bytes: 64_000_000, pages: 2_000, characters: 8_000_000 } as const;

/** The path below the library's root that `link` means in `file`. Undefined for whatever leads out of the library or is no plain path. */
export function pathFrom(file: FileId, link: string): string | undefined {
  const isOdd = /[\\?#%]|\p{Cc}/u.test(link);
  if (link === '' || link.length > 500 || isOdd || link.startsWith('/') || /^[a-z][a-z0-9+.-]*:/i.test(link))
    return undefined;
  const parts = file.split('/').slice(0, -1);
  for (const part of link.split('/')) {
    if (part === '' || part === '.') continue;
    if (part !== '..') parts.push(part);
    else if (parts.pop() === undefined) return undefined;
  }
  return parts.length === 0 ? undefined : parts.join('/');
}

/** How `file` names the path below the library's root; undefined where it can't: a name that would be read as something else. */
export function linkFrom(file: FileId, path: string): string | undefined {
  const from = file.split('/').slice(0, -1);
  const to = path.split('/');
  let shared = 0;
  while (shared < from.length && shared < to.length - 1 && from[shared] === to[shared]) shared++;
  const link = [...from.slice(shared).map(() => '..'), ...to.slice(shared)].join('/');
  return pathFrom(file, link) === path ? link : undefined;
}

/** Where the file that a rule file names lies; undefined for one that leads out of the library. */
export function keptPath(link: Text): string | undefined {
  return pathFrom(rootOf(link.at).file, link.text);
}

/** A checksum as a person may have stored it, in the form of `sha256`. */
export function plainChecksum(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/^sha-?256[:=]\s?/, '');
}
