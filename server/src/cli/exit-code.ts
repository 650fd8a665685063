import type { Severity } from '../base/problem.ts';
import type { SearchFailure } from '../host/library-search.ts';
import type { CheckReport } from '../report/model.ts';
import { countsOf } from '../report/model.ts';
import { reaches } from '../report/worst-first.ts';
import type { Arguments } from './arguments.ts';
import type { ExitCode } from './io.ts';
import { exit } from './io.ts';

/** The first that holds: a fault of ours, something that can't be followed, nothing to check, findings. `--fail-on` and `--max-warnings` decide about findings. */
export function exitCodeOf(
  report: CheckReport,
  failures: readonly SearchFailure[],
  settings: 'read' | 'unread',
  given: Arguments,
): ExitCode {
  const rules = new Set(report.libraries.flatMap(({ findings }) => findings.map(({ finding }) => finding.rule)));
  if (rules.has('internal')) return exit.internal;
  const hasBadSettings = settings === 'unread' || [...rules].some((rule) => rule.startsWith('setting-'));
  if (hasBadSettings || failures.some(({ reason }) => reason !== 'no-library')) return exit.usage;
  const isPart = given.values.has('changed-since');
  const nothing = !isPart && report.libraries.every(({ checked }) => checked.length === 0);
  if (failures.length > 0 || nothing) return exit.nothing;
  return fails(report, given) ? exit.findings : exit.ok;
}

function fails(report: CheckReport, given: Arguments): boolean {
  const counts = countsOf(report);
  const least = failsFrom(report, given);
  return severities.some((severity) => counts[severity] > 0 && reaches(severity, least));
}

const severities: readonly Severity[] = ['error', 'warning', 'advice'];

/** The least severity that fails the check: what `--fail-on` names, and warnings where there are more than `--max-warnings` allows. */
export function failsFrom(report: CheckReport, given: Arguments): string {
  const failOn = given.values.get('fail-on') ?? 'error';
  return tooManyWarnings(report, given) === undefined || reaches('warning', failOn) ? failOn : 'warning';
}

/** Why the check fails although nothing reaches `--fail-on`, for whoever reads the log of a build that somebody else set up. */
export function tooManyWarnings(report: CheckReport, { values }: Arguments): string | undefined {
  const most = values.get('max-warnings');
  const { warning } = countsOf(report);
  if (most === undefined || warning <= Number(most)) return undefined;
  return `there are more warnings (${warning}) than --max-warnings allows (${Number(most)}).`;
}
