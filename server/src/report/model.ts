import type { FileId } from '../base/brand.ts';
import type { Position } from '../base/line-index.ts';
import { LineIndex } from '../base/line-index.ts';
import type { Severity } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import type { Coverage } from '../check/coverage.ts';
import type { Finding } from '../check/finding.ts';

/** All that one check of one or more libraries has to say. Plain data; the same input gives the same report. */
export interface CheckReport {
  readonly libraries: readonly LibraryReport[];
  /** Things outside every library that a person should know: files not read, links not followed. */
  readonly notices: readonly string[];
}

export interface LibraryReport {
  /** Where the library lies, relative to where the check was started: `samples/lanternfield`, or `.`. */
  readonly label: string;
  readonly files: FileCounts;
  /** The day that the library itself names (`as_of`), when it was checked as of that day. */
  readonly asOf?: string;
  /** The files whose findings were asked for, in order. */
  readonly checked: readonly FileId[];
  /** Why each of them is among these, where only those were asked for that a change concerns. */
  readonly shownBecause?: ReadonlyMap<FileId, Cause>;
  /** In order of file, then place. */
  readonly findings: readonly PlacedFinding[];
  /** What was found and is not shown, in the same order. */
  readonly keptBack: readonly KeptBack[];
  readonly coverage: Coverage;
  /** Only where the library has a baseline. */
  readonly baseline?: SinceBaseline;
}

/** A file that is not what it was: the shown one itself, or one that its findings rest on, such as a kept document. */
export interface Cause {
  readonly file: string;
  readonly change: 'changed' | 'new' | 'gone';
}

/** A finding that the library's own settings, a waiver in force or the baseline hold back. */
export interface KeptBack {
  readonly placed: PlacedFinding;
  readonly by: 'settings' | 'waiver' | 'baseline';
}

export interface SinceBaseline {
  /** Findings of the baseline that are settled since, so that it can be written smaller; 0 when only a part was asked for. */
  readonly settled: number;
  /** Those of the report's findings, shown or not, that were found when the baseline was written. */
  readonly old: ReadonlySet<PlacedFinding>;
  /** What was found then and is not any more, in order of fingerprints; nothing when only a part was asked for. */
  readonly absent: readonly AbsentFinding[];
}

export interface AbsentFinding {
  readonly fingerprint: string;
  /** Its line in the file of the baseline, from 1. */
  readonly line: number;
}

export interface FileCounts {
  /** Rule files below the root, without those left out. */
  readonly listed: number;
  /** Those that could be opened. */
  readonly read: number;
  /** In folders that the library's own settings leave out. */
  readonly leftOut: number;
}

/** How often each rule was kept back by one of them, in the order of the rules' names. */
export function keptBackBy({ keptBack }: LibraryReport, holder: KeptBack['by']): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { placed, by } of keptBack) {
    const { rule } = placed.finding;
    if (by === holder) counts.set(rule, (counts.get(rule) ?? 0) + 1);
  }
  return new Map([...counts].sort(([a], [b]) => (a < b ? -1 : 1)));
}

export interface PlacedFinding {
  readonly finding: Finding;
  readonly at: PlaceInText;
  readonly says: readonly PlaceInText[];
  readonly related: readonly PlaceInText[];
}

/** A range as people count: lines and columns from zero (printed from one), columns in UTF-16 units as editors have them. */
export interface PlaceInText {
  readonly file: FileId;
  readonly start: Position;
  readonly end: Position;
  /** The line at `start`, without its end. */
  readonly line: string;
}

/** Turns offsets to places, one index a file. */
export class Placer {
  readonly #textOf: (file: FileId) => string;
  readonly #known = new Map<FileId, { text: string; lines: LineIndex }>();

  constructor(textOf: (file: FileId) => string) {
    this.#textOf = textOf;
  }

  placed(finding: Finding): PlacedFinding {
    return {
      finding,
      at: this.place(finding.file, finding.span),
      says: finding.says.map((saying) => this.place(saying.file, saying.span)),
      related: finding.related.map((place) => this.place(place.file, place.span)),
    };
  }

  place(file: FileId, span: Span): PlaceInText {
    const { text, lines } = this.#linesOf(file);
    const start = lines.position(span.start);
    const from = lines.lineStart(start.line);
    const line = text.slice(from, lines.lineStart(start.line + 1)).replace(/[\r\n]{1,2}$/, '');
    return { file, start, end: lines.position(span.end), line };
  }

  #linesOf(file: FileId): { text: string; lines: LineIndex } {
    const known = this.#known.get(file);
    if (known !== undefined) return known;
    const text = this.#textOf(file);
    const made = { text, lines: new LineIndex(text) };
    this.#known.set(file, made);
    return made;
  }
}

export type Counts = Readonly<Record<Severity, number>>;

export function countsOf(report: CheckReport): Counts {
  const counts = { error: 0, warning: 0, advice: 0 };
  for (const library of report.libraries) for (const { finding } of library.findings) counts[finding.severity]++;
  return counts;
}

/** What made a finding of a file worth showing that did not change itself. */
export function causeElsewhere({ shownBecause }: LibraryReport, file: FileId): Cause | undefined {
  const cause = shownBecause?.get(file);
  return cause?.file === file ? undefined : cause;
}

/** The file's path for a reader who stands where the check was started. */
export function pathShown(library: LibraryReport, file: string): string {
  return library.label === '.' ? file : `${library.label}/${file}`;
}
