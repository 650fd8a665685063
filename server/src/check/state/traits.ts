import type { FileRecord } from '../../library/file-record.ts';
import { isReadable } from '../../library/resting-record.ts';
import type { Kind } from '../../schema/kinds.ts';
import { kinds } from '../../schema/kinds.ts';

const kindBits = 0xff;
const readable = 1 << 8;
const opened = 1 << 9;

/** What is kept of a file as one number: its kind, whether it could be read as an entity, and whether it could be opened at all. */
export function traitsOf(record: FileRecord, text: 'opened' | 'not-opened'): number {
  const kindNumber = record.kind === undefined ? 0 : kinds.indexOf(record.kind) + 1;
  return kindNumber | (isReadable(record) ? readable : 0) | (text === 'opened' ? opened : 0);
}

export function kindIn(traits: number): Kind | undefined {
  return kinds[(traits & kindBits) - 1];
}

export function wasReadable(traits: number): boolean {
  return (traits & readable) !== 0;
}

export function wasOpened(traits: number): boolean {
  return (traits & opened) !== 0;
}
