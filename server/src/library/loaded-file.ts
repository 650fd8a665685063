import type { FileId } from '../base/brand.ts';
import type { Problem, Severity } from '../base/problem.ts';
import { span } from '../base/span.ts';
import type { FileRecord } from './file-record.ts';
import { readInPassing, readRuleFile, unreadableFile } from './file-record.ts';

/** What came of opening one rule file: its text, or none; and what is wrong with the file as a thing on disk. */
export interface LoadedFile {
  readonly file: FileId;
  readonly text: string | undefined;
  readonly problems: readonly Problem[];
  /** Of a file without text: characters in which its kind and id may still be found, so that others don't take it for missing. */
  readonly glimpse?: string;
}

/** The record of a file that was opened, or of one that could not be: that one holds its problems only. */
export function recordOf(loaded: LoadedFile): FileRecord {
  return recordBy(readRuleFile, loaded);
}

/** The same for a file that others ask and that is rarely judged itself. */
export function recordInPassing(loaded: LoadedFile): FileRecord {
  return recordBy(readInPassing, loaded);
}

function recordBy(read: typeof readRuleFile, { file, text, problems, glimpse }: LoadedFile): FileRecord {
  if (text === undefined) return { ...unreadableFile(file, glimpse ?? '', problems), text: '' };
  if (problems.length === 0) return read(file, text);
  const record = readRuleFile(file, text);
  return { ...record, problems: [...problems, ...record.problems] };
}

/** What can be wrong with a file before a word of it is read, for the catalogue and `explain`. */
export const fileRules = [
  {
    id: 'file-refused',
    severity: 'error',
    why: 'A link, pipe or device can lead out of the library or never end, so only ordinary files are opened.',
  },
  {
    id: 'file-unreadable',
    severity: 'error',
    why: 'A file that cannot be opened is not checked, and others may rest on it.',
  },
  { id: 'folder-unreadable', severity: 'error', why: 'Rule files in a folder that cannot be opened are not checked.' },
  {
    id: 'library-inside-library',
    severity: 'error',
    why: 'A file belongs to one library: with two, it would depend on where one starts what the file is checked against.',
  },
  {
    id: 'file-name-twin',
    severity: 'warning',
    why: 'On some computers two such names are one file, so one of the two would be lost when the library is copied.',
  },
] as const satisfies readonly { id: string; severity: Severity; why: string }[];

export type FileRuleId = (typeof fileRules)[number]['id'];

/** A problem of the file as a whole: it stands at the file's first character. */
export function fileProblem(rule: FileRuleId, message: string): Problem {
  const severity = fileRules.find((known) => known.id === rule)?.severity ?? 'error';
  return { rule, message, span: span(0, 0), severity };
}
