import type { FileRecord } from '../../library/file-record.ts';
import type { Kind } from '../../schema/kinds.ts';
import { kinds } from '../../schema/kinds.ts';

const kindBits = 0xff;
const readable = 1 << 8;
const opened = 1 << 9;
const plain = 1 << 10;

/** What is kept of a file as one number: its kind, whether it could be read as an entity, and whether it could be opened at all. */
export function traitsOf({ kind, entity }: FileRecord, text: 'opened' | 'not-opened'): number {
  const kindNumber = kind === undefined ? 0 : kinds.indexOf(kind) + 1;
  return kindNumber | (entity === undefined ? 0 : readable) | (text === 'opened' ? opened : 0);
}

/** The same for a file whose bytes are all that is to say about its content, or for one of which there is more to say. */
export function withContent(traits: number, content: 'plain' | 'odd'): number {
  return content === 'plain' ? traits | plain : traits & ~plain;
}

export function isPlain(traits: number): boolean {
  return (traits & plain) !== 0;
}

export function kindIn(traits: number): Kind | undefined {
  return kinds[(traits & kindBits) - 1];
}

export function isReadable(traits: number): boolean {
  return (traits & readable) !== 0;
}

export function wasOpened(traits: number): boolean {
  return (traits & opened) !== 0;
}
