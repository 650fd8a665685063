/**
 * cli/together/: a check by several threads. The first opens the files and tells their bytes to the others; all read all of them, each
 * judges its share, and the first gathers what was found. This file is all that they say to each other.
 */
import type { FileId, IsoDate } from '../../base/brand.ts';
import type { KnownAnswers } from '../../check/state/known-answers.ts';
import { Rows } from '../../check/state/rows.ts';
import type { OpenedFile } from '../../host/library-files.ts';
import type { KeptFile } from '../../library/kept-file.ts';

/** The word after `check` with which a helper is started, and by nobody else. */
export const helperWord = '--judge-a-share';

export type ToHelper =
  | { readonly say: 'begin'; readonly task: Task }
  /** Files as they were opened, in the order of the library's. */
  | { readonly say: 'files'; readonly opened: readonly OpenedFile[] }
  /** What the documents hold that the library keeps; after all files. */
  | { readonly say: 'documents'; readonly kept: readonly (readonly [path: string, found: KeptFile])[] };

export interface Task {
  readonly today: IsoDate;
  /** How many files will be told. */
  readonly files: number;
  /** Places among the files of those whose findings are wanted. */
  readonly asked: Uint32Array;
  readonly shares: SharedArrayBuffer;
  /** Whose share is one's own. */
  readonly worker: number;
  /** Whether anybody will ask what findings rest on. */
  readonly keeps: 'findings' | 'findings and what they rest on';
}

/** What a helper says in the end: of each file that it judged what was found and what that rests on. */
export interface JudgedShare {
  readonly files: readonly FileId[];
  readonly findings: Rows<Uint8Array>;
  readonly reads: Rows<Uint32Array>;
  readonly answers: KnownAnswers;
}

/** Undefined for what is no message to a helper. */
export function toHelperIn(message: unknown): ToHelper | undefined {
  if (!isRecord(message)) return undefined;
  const { say, task, opened, kept } = message;
  if (say === 'begin' && isRecord(task) && task.shares instanceof SharedArrayBuffer) return message as ToHelper;
  if (say === 'files' && Array.isArray(opened)) return message as ToHelper;
  return say === 'documents' && Array.isArray(kept) ? (message as ToHelper) : undefined;
}

/** Undefined for anything that is not whole. What was sent has lost its classes. */
export function judgedShareIn(message: unknown): JudgedShare | undefined {
  if (!isRecord(message) || !isRecord(message.answers)) return undefined;
  const { files, answers } = message;
  const findings = rowsIn(message.findings, Uint8Array);
  const reads = rowsIn(message.reads, Uint32Array);
  const answered = rowsIn(answers.reads, Uint32Array);
  if (!Array.isArray(files) || findings?.count !== files.length || reads?.count !== files.length) return undefined;
  const brief = rowsIn(answers.brief, Uint8Array);
  const { keys } = answers;
  if (!(keys instanceof Uint32Array) || brief?.count !== keys.length || answered?.count !== keys.length)
    return undefined;
  return {
    files: files as readonly FileId[],
    findings,
    reads,
    answers: { keys, reads: answered, brief },
  };
}

function rowsIn<N extends Uint8Array | Uint32Array>(
  value: unknown,
  form: abstract new (...given: never) => N,
): Rows<N> | undefined {
  if (!isRecord(value) || !(value.ends instanceof Uint32Array) || !(value.values instanceof form)) return undefined;
  const rows = new Rows(value.ends, value.values);
  return rows.isWhole() ? rows : undefined;
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}
