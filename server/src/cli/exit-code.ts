import type { Severity } from '../base/problem.ts';
import type { SearchFailure } from '../host/library-search.ts';
import type { CheckReport } from '../report/model.ts';
import { countsOf } from '../report/model.ts';
import type { ExitCode } from './io.ts';
import { exit } from './io.ts';

/** The first that holds: a fault of ours, something that can't be followed, nothing to check, findings. `failOn` as the option has it. */
export function exitCodeOf(
  report: CheckReport,
  failures: readonly SearchFailure[],
  settings: 'read' | 'unread',
  failOn: string,
): ExitCode {
  const rules = new Set(report.libraries.flatMap(({ findings }) => findings.map(({ finding }) => finding.rule)));
  if (rules.has('internal')) return exit.internal;
  const hasBadSettings = settings === 'unread' || [...rules].some((rule) => rule.startsWith('setting-'));
  if (hasBadSettings || failures.some(({ reason }) => reason !== 'no-library')) return exit.usage;
  if (failures.length > 0 || report.libraries.every(({ files }) => files.reported === 0)) return exit.nothing;
  return reaches(report, failOn) ? exit.findings : exit.ok;
}

const heavier: Readonly<Record<string, readonly Severity[]>> = {
  error: ['error'],
  warning: ['error', 'warning'],
  advice: ['error', 'warning', 'advice'],
};

function reaches(report: CheckReport, failOn: string): boolean {
  const counts = countsOf(report);
  return (heavier[failOn] ?? []).some((severity) => counts[severity] > 0);
}
