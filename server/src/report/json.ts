import type { Severity } from '../base/problem.ts';
import type { Coverage } from '../check/coverage.ts';
import { fingerprintOf } from '../check/finding.ts';
import type { Cause, CheckReport, Counts, LibraryReport, PlacedFinding, PlaceInText } from './model.ts';
import { countsOf, keptBackBy, pathShown } from './model.ts';

/**
 * The JSON form of a check, version 1. Fields are only ever added within a version. It holds no time and no absolute path, and the same
 * library gives the same bytes. Lines and columns count from 1, columns in UTF-16 units; an end is the place after the last character.
 */
export interface JsonReport {
  readonly format: 'traywright-check';
  readonly version: 1;
  readonly counts: Counts;
  readonly libraries: readonly JsonLibrary[];
  readonly notices: readonly string[];
}

export interface JsonLibrary {
  /** Relative to where the check was started, `/`-separated. */
  readonly path: string;
  readonly files: LibraryReport['files'] & { readonly reported: number };
  readonly coverage: Coverage;
  /** Rule to findings kept back by the library's own settings. */
  readonly suppressed: readonly JsonRuleCount[];
  /** Rule to findings that waivers in force cover. */
  readonly waived: readonly JsonRuleCount[];
  /** Findings that the baseline holds back, and how many of it are settled; null where there is none. */
  readonly baseline: { readonly known: readonly JsonRuleCount[]; readonly settled: number } | null;
  /** In order of file, then place. */
  readonly findings: readonly JsonFinding[];
}

export interface JsonRuleCount {
  readonly rule: string;
  readonly count: number;
}

export interface JsonFinding {
  readonly rule: string;
  readonly stage: string;
  readonly severity: Severity;
  readonly settledBy: string;
  /** Kind and id, such as `device/pale-forceps`; the file when neither can be read. */
  readonly entity: string;
  /** The field inside the entity; empty for the whole. */
  readonly field: string;
  /** Stays the same while the fault does, whatever else changes in the file. */
  readonly fingerprint: string;
  readonly at: JsonPlace;
  readonly message: string;
  readonly says: readonly JsonSaying[];
  readonly does: string | null;
  readonly gap: string | null;
  readonly related: readonly { readonly note: string; readonly at: JsonPlace }[];
  /** With `--changed-since`: the file that changed, this one or one that the finding may rest on. */
  readonly shownBecause: JsonCause | null;
}

export interface JsonCause {
  readonly file: string;
  readonly change: Cause['change'];
}

export interface JsonSaying {
  readonly quote: string;
  readonly doc: string;
  readonly rev: string;
  readonly page: string;
  readonly at: JsonPlace;
}

export interface JsonPlace {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
}

/** Characters beyond printable ASCII that could act on a terminal or a log are written as \u escapes, which JSON readers undo. */
export function jsonReport(report: CheckReport): string {
  const json: JsonReport = {
    format: 'traywright-check',
    version: 1,
    counts: countsOf(report),
    libraries: report.libraries.map(jsonLibrary),
    notices: report.notices,
  };
  return `${jsonText(json)}\n`;
}

const acting = /[\u007f-\u009f\u00ad\u061c\u180e\u200b-\u200f\u2028-\u202e\u2060-\u206f\ufeff]/g;

export function jsonText(value: unknown): string {
  const text = JSON.stringify(value, null, 2);
  return text.replace(acting, (character) => `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`);
}

function jsonLibrary(library: LibraryReport): JsonLibrary {
  return {
    path: library.label,
    files: {
      listed: library.files.listed,
      read: library.files.read,
      reported: library.checked.length,
      leftOut: library.files.leftOut,
    },
    coverage: library.coverage,
    suppressed: ruleCounts(keptBackBy(library, 'settings')),
    waived: ruleCounts(keptBackBy(library, 'waiver')),
    baseline:
      library.baseline === undefined
        ? null
        : { known: ruleCounts(keptBackBy(library, 'baseline')), settled: library.baseline.settled },
    findings: library.findings.map((placed) => jsonFinding(placed, library)),
  };
}

function ruleCounts(counts: ReadonlyMap<string, number>): readonly JsonRuleCount[] {
  return [...counts].map(([rule, count]) => ({ rule, count }));
}

function jsonFinding({ finding, at, says, related }: PlacedFinding, library: LibraryReport): JsonFinding {
  const place = (where: PlaceInText | undefined) => jsonPlace(where ?? at, library);
  return {
    rule: finding.rule,
    stage: finding.stage,
    severity: finding.severity,
    settledBy: finding.settledBy,
    entity: finding.entity,
    field: finding.path,
    fingerprint: fingerprintOf(finding),
    at: place(at),
    message: finding.message,
    says: finding.says.map(({ quote, doc, rev, page }, index) => ({ quote, doc, rev, page, at: place(says[index]) })),
    does: finding.does ?? null,
    gap: finding.gap ?? null,
    related: finding.related.map(({ note }, index) => ({ note, at: place(related[index]) })),
    shownBecause: jsonCause(library.shownBecause?.get(finding.file), library),
  };
}

function jsonCause(cause: Cause | undefined, library: LibraryReport): JsonCause | null {
  return cause === undefined ? null : { file: pathShown(library, cause.file), change: cause.change };
}

function jsonPlace({ file, start, end }: PlaceInText, library: LibraryReport): JsonPlace {
  return {
    file: pathShown(library, file),
    line: start.line + 1,
    column: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
  };
}
