import { sep } from 'node:path';
import type { FileId } from '../base/brand.ts';
import type { Problem } from '../base/problem.ts';
import type { ListedFile } from '../library/listed-files.ts';
import { glimpseOf, openingProblem, refusedProblem } from '../library/listed-files.ts';
import type { LoadedFile } from '../library/loaded-file.ts';
import { decodeBytes } from '../syntax/decode.ts';
import { staysInside } from './library-paths.ts';
import { type Bytes, holdsBytes, readBytes } from './read-text.ts';

/** One listed file as the disk had it, not yet read as text. */
export interface OpenedFile {
  readonly file: FileId;
  readonly problems: readonly Problem[];
  /** Undefined for what the listing alone forbids to open. */
  readonly content: Bytes | undefined;
}

/** Opens one listed file of the library at `root` (absolute, links resolved). What can't be read is a value, never an exception. */
export function openFile(root: string, { file, path, problems, opens }: ListedFile): OpenedFile {
  if (opens === 'no') return { file, problems, content: undefined };
  if (!staysInside(path)) return { file, problems: [...problems, refusedProblem()], content: undefined };
  return { file, problems, content: readBytes(`${root}${sep}${path}`) };
}

/** Where bytes lie. */
export interface Stretch {
  readonly bytes: Uint8Array;
  readonly from: number;
  readonly to: number;
}

/** Whether the listed file is one about which there is nothing to say but its bytes, and has these. */
export function isStill(root: string, { path, problems, opens }: ListedFile, { bytes, from, to }: Stretch): boolean {
  if (opens === 'no' || problems.length > 0 || !staysInside(path)) return false;
  return holdsBytes(`${root}${sep}${path}`, bytes, from, to);
}

/** All that is to say about what was opened, so that no two that differ say the same. A plain file is told by its bytes alone. */
export function contentOf({ problems, content }: OpenedFile): {
  readonly is: 'plain' | 'odd';
  readonly bytes: Uint8Array;
} {
  const isRead = content !== undefined && 'bytes' in content;
  if (isRead && problems.length === 0) return { is: 'plain', bytes: content.bytes };
  const what = JSON.stringify([problems, isRead ? 'read' : (content?.refused ?? '')]);
  return { is: 'odd', bytes: Buffer.concat([Buffer.from(`${what}\n`), isRead ? content.bytes : new Uint8Array()]) };
}

/** The text of an opened file, or what is wrong with it. */
export function decodeFile({ file, problems, content }: OpenedFile): LoadedFile {
  if (content === undefined) return { file, text: undefined, problems };
  if ('refused' in content) return { file, text: undefined, problems: [...problems, openingProblem(content.refused)] };
  const decoded = decodeBytes(content.bytes);
  if ('text' in decoded) return { file, text: decoded.text, problems };
  return { file, text: undefined, problems: [...problems, decoded.problem], glimpse: glimpseOf(content.bytes) };
}

/** Both in one. */
export function loadFile(root: string, listed: ListedFile): LoadedFile {
  return decodeFile(openFile(root, listed));
}
