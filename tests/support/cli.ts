import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';
import type { IsoDate } from '../../server/src/base/brand.ts';
import type { CommandIo } from '../../server/src/cli/io.ts';
import { run } from '../../server/src/cli/run.ts';

export interface Outcome {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

export interface Surroundings {
  readonly cwd: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly terminal?: 'terminal' | 'pipe';
  readonly pdfReader?: string;
  readonly workbookPart?: string;
  /** The program that further threads run. */
  readonly helper?: string;
  /** The most that each of them may have in memory, in megabytes. */
  readonly helperMemory?: number;
  /** The name of the program's build, for results that are kept. */
  readonly build?: string;
  readonly today?: string;
}

/** Runs one command line in this process. */
export async function cli(
  words: readonly string[],
  {
    cwd,
    env = {},
    terminal = 'pipe',
    pdfReader,
    workbookPart,
    helper,
    helperMemory,
    build,
    today = '2025-03-03',
  }: Surroundings,
): Promise<Outcome> {
  let out = '';
  let err = '';
  const isTerminal = terminal === 'terminal';
  const io: CommandIo = {
    stdout: {
      isTerminal,
      columns: 100,
      write: (text) => {
        out += text;
      },
    },
    stderr: {
      isTerminal,
      columns: 100,
      write: (text) => {
        err += text;
      },
    },
    env,
    cwd,
    today: () => today as IsoDate,
    ...(build !== undefined && { build }),
    ...(pdfReader !== undefined && { pdfReader }),
    ...(helper !== undefined && { helper }),
    ...(helperMemory !== undefined && { helperMemory }),
    ...(workbookPart !== undefined && { workbookPart }),
  };
  const code = await run(words, io);
  return { code, out, err };
}

/** A folder with these files, taken away after the test. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'traywright-')));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [path, content] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), content);
  }
  return folder;
}

export const libraryText = 'kind: library\nid: test-library\n';

/** A file without any finding of its own, and one with an error: a field that no document has. */
export const goodText = 'kind: question\nid: q-good\n';
export const badText = 'kind: question\nid: q-bad\nfrobnicate: "yes"\n';

export interface FoundInJson {
  readonly rule: string;
  readonly severity: string;
  readonly message: string;
  readonly at: { readonly file: string; readonly line: number; readonly column: number };
}

interface Json {
  readonly libraries: readonly { readonly findings: readonly FoundInJson[] }[];
}

/** The findings of a JSON report. */
export function findingsIn(json: string): readonly FoundInJson[] {
  return (JSON.parse(json) as Json).libraries.flatMap((library) => library.findings);
}

/** `file rule` of every finding. */
export function namesIn(json: string): readonly string[] {
  return findingsIn(json).map(({ at, rule }) => `${at.file} ${rule}`);
}
