import { mkdirSync, readdirSync, realpathSync } from 'node:fs';
import { join } from 'node:path';
import { decodeBytes } from '../syntax/decode.ts';
import { type Written, writeAtomically } from './atomic-write.ts';
import { readBytes } from './read-text.ts';

/** A folder that pages are written to. */
export interface OutputFolder {
  /** Absolute, links resolved. */
  readonly root: string;
  /** Creates or replaces a file. One that is there already is replaced only where `mayReplace` says that it is ours. */
  write(name: string, text: string, mayReplace: (old: string) => boolean): Written;
}

/** The folder at an absolute path, made where it is not there yet. */
export function outputFolder(path: string): OutputFolder | { readonly why: string } {
  try {
    mkdirSync(path, { recursive: true });
    const root = realpathSync.native(path);
    return { root, write: (name, text, mayReplace) => writeOwn(root, name, text, mayReplace) };
  } catch {
    return { why: `"${path}" is no folder that can be written to.` };
  }
}

function writeOwn(root: string, name: string, text: string, mayReplace: (old: string) => boolean): Written {
  const old = textAt(join(root, name));
  if (old === 'gone') return writeAtomically(root, name, text);
  if (typeof old !== 'object' || !mayReplace(old.text))
    return { why: `"${name}" exists already and was not printed by this command, so it was left alone.` };
  return old.text === text ? { written: join(root, name) } : writeAtomically(root, name, text);
}

/** Pages are larger than rule files. */
const pageLimit = 32_000_000;

function textAt(path: string): { readonly text: string } | 'gone' | 'unreadable' {
  const read = readBytes(path, pageLimit);
  if ('refused' in read) return read.refused === 'gone' ? 'gone' : 'unreadable';
  const decoded = decodeBytes(read.bytes);
  return 'text' in decoded ? { text: decoded.text } : 'unreadable';
}

/** The texts of the files of a folder whose names end so, by name; undefined when there is no such folder. Links are not followed. */
export function textsIn(path: string, ending: string): ReadonlyMap<string, string> | undefined {
  try {
    const texts = new Map<string, string>();
    for (const name of readdirSync(path).sort()) {
      const read = name.endsWith(ending) ? textAt(join(path, name)) : 'gone';
      if (typeof read === 'object') texts.set(name, read.text);
    }
    return texts;
  } catch {
    return undefined;
  }
}

/** A file name made of an id: letters, digits, dots, dashes and underscores; never hidden, never a way out of the folder. */
export function fileNameFor(id: string, ending: string): string {
  const safe = id
    .replace(/[^A-Za-z0-9._-]/g, '-')
    .replace(/^[.-]+/, '_')
    .slice(0, 100);
  return `${safe === '' ? '_' : safe}${ending}`;
}
