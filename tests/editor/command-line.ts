import { execFileSync } from 'node:child_process';
import path from 'node:path';

/** What the bundled command line finds in a folder: the same findings must be seen in every editor. */

const program = path.resolve(import.meta.dirname, '../../dist/traywright.cjs');

export interface FoundByCommandLine {
  /** Below the folder, forward slashes. */
  readonly file: string;
  /** From 1. */
  readonly line: number;
  readonly column: number;
  readonly severity: string;
  readonly code: string;
  readonly message: string;
}

interface JsonReport {
  readonly libraries: readonly {
    readonly findings: readonly {
      readonly rule: string;
      readonly severity: string;
      readonly message: string;
      readonly at: { readonly file: string; readonly line: number; readonly column: number };
    }[];
  }[];
}

/** Findings in the order of the command line. The folder is the library. */
export function foundByCommandLine(folder: string): FoundByCommandLine[] {
  const report = JSON.parse(printed(folder)) as JsonReport;
  return report.libraries.flatMap(({ findings }) =>
    findings.map(({ rule, severity, message, at }) => ({
      file: at.file,
      line: at.line,
      column: at.column,
      severity: severity === 'advice' ? 'info' : severity,
      code: rule,
      message,
    })),
  );
}

/** The exit code says whether there are findings; the report is printed either way. */
function printed(folder: string): string {
  const arguments_ = [program, 'check', '--format', 'json', '--fail-on', 'never'];
  return execFileSync(process.execPath, arguments_, { cwd: folder, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
}

/** One line for each, sorted, so that two lists can be compared whatever their order. */
export function asLines(found: readonly FoundByCommandLine[]): string[] {
  return found
    .map(
      ({ file, line, column, severity, code, message }) =>
        `${file}:${line}:${column} ${severity} ${code} ${message.split('\n')[0]}`,
    )
    .sort();
}
