import type { Severity } from '../base/problem.ts';
import type { CheckReport, LibraryReport, PlacedFinding } from './model.ts';

export interface FindingInLibrary {
  readonly placed: PlacedFinding;
  readonly library: LibraryReport;
}

const weight: Readonly<Record<Severity, number>> = { error: 0, warning: 1, advice: 2 };

/** All findings of a report, the gravest first, else in the report's order: what is cut off after some is never graver than what is shown. */
export function worstFirst(report: CheckReport): readonly FindingInLibrary[] {
  const all = report.libraries.flatMap((library) => library.findings.map((placed) => ({ placed, library })));
  return all.sort((a, b) => weight[a.placed.finding.severity] - weight[b.placed.finding.severity]);
}

/** `error` reaches `warning`; nothing reaches `never`. As `--fail-on` has it. */
export function reaches(severity: Severity, least: string): boolean {
  const limit = least === 'error' || least === 'warning' || least === 'advice' ? weight[least] : -1;
  return weight[severity] <= limit;
}
