import { join } from 'node:path';
import type { ListedFile } from '../library/listed-files.ts';
import { glimpseOf, openingProblem, refusedProblem } from '../library/listed-files.ts';
import type { LoadedFile } from '../library/loaded-file.ts';
import { decodeBytes } from '../syntax/decode.ts';
import { staysInside } from './library-paths.ts';
import { readBytes } from './read-text.ts';

/** Opens one listed file of the library at `root` (absolute, links resolved). What can't be read is a problem, never an exception. */
export function loadFile(root: string, listed: ListedFile): LoadedFile {
  const { file, problems } = listed;
  if (listed.opens === 'no') return { file, text: undefined, problems };
  if (!staysInside(listed.path)) return { file, text: undefined, problems: [...problems, refusedProblem()] };
  const read = readBytes(join(root, listed.path));
  if ('refused' in read) return { file, text: undefined, problems: [...problems, openingProblem(read.refused)] };
  const decoded = decodeBytes(read.bytes);
  if ('text' in decoded) return { file, text: decoded.text, problems };
  return { file, text: undefined, problems: [...problems, decoded.problem], glimpse: glimpseOf(read.bytes) };
}
