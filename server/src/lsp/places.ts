import type { Range } from 'vscode-languageserver';
import type { Position } from '../base/line-index.ts';
import { LineIndex } from '../base/line-index.ts';
import type { Span } from '../base/span.ts';
import type { FileRecord } from '../library/file-record.ts';

const indexes = new WeakMap<FileRecord, LineIndex>();

/** Offsets of a file as lines and characters, and back. One index for each text, made when first needed. */
export function linesOf(record: FileRecord): LineIndex {
  const known = indexes.get(record);
  if (known !== undefined) return known;
  const made = new LineIndex(record.text);
  indexes.set(record, made);
  return made;
}

export function rangeOf(record: FileRecord, { start, end }: Span): Range {
  const lines = linesOf(record);
  return { start: lines.position(start), end: lines.position(end) };
}

/** Undefined for what is no position: negative or broken numbers of a client. */
export function offsetOf(record: FileRecord, position: Position): number | undefined {
  const { line, character } = position;
  if (!Number.isInteger(line) || !Number.isInteger(character) || line < 0 || character < 0) return undefined;
  return linesOf(record).offset(position);
}
