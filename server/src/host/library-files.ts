import { sep } from 'node:path';
import type { FileId } from '../base/brand.ts';
import type { Problem } from '../base/problem.ts';
import type { ListedFile } from '../library/listed-files.ts';
import { glimpseOf, openingProblem, refusedProblem } from '../library/listed-files.ts';
import type { LoadedFile } from '../library/loaded-file.ts';
import { decodeBytes } from '../syntax/decode.ts';
import { staysInside } from './library-paths.ts';
import { type Bytes, readBytes } from './read-text.ts';

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
