/**
 * cli/: arguments, commands and exit codes over the same core as the editor. It must not know the trade, must not word findings, and
 * must not reach the process except through `CommandIo`, so that a test can run any command in-process.
 */
import type { IsoDate } from '../base/brand.ts';

export interface Sink {
  write(text: string): void;
  readonly isTerminal: boolean;
  /** Columns of the terminal, where there is one. */
  readonly columns?: number;
}

/** All that a command sees of the world, besides the files of the library. */
export interface CommandIo {
  readonly stdout: Sink;
  readonly stderr: Sink;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Absolute. */
  readonly cwd: string;
  today(): IsoDate;
  /** The program that reads PDFs, an absolute path. Without one, kept documents are not looked at. */
  readonly pdfReader?: string;
  /** The name of the program's build. Without one, results are not kept. */
  readonly build?: string | undefined;
  /** Where results are kept unless told otherwise. */
  readonly results?: string | undefined;
  /** The program itself, an absolute path, to be run by further threads. Without it, one thread does everything. */
  readonly helper?: string;
  /** The most that each further thread may have in memory, in megabytes; as much as it needs unless given. */
  readonly helperMemory?: number;
  /** The part that knows workbooks, an absolute path. Without one, tables are read and written as CSV only. */
  readonly workbookPart?: string;
}

export const exit = {
  /** Nothing at or above what `--fail-on` names. */
  ok: 0,
  findings: 1,
  /** The command line or the library's settings can't be followed. */
  usage: 2,
  /** A fault of ours. */
  internal: 3,
  /** Nothing to check. */
  nothing: 4,
} as const;

export type ExitCode = (typeof exit)[keyof typeof exit];
