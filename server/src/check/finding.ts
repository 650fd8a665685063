/**
 * check/: runs the rules over a library and makes findings of what they report: settings, waivers, baseline, one cause one finding,
 * order. It must not know what any rule means, nor how findings are shown.
 */
import type { FileId } from '../base/brand.ts';
import type { Fix, Problem, Severity } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import type { Place } from '../model/node.ts';
import { pathOf, rootOf } from '../model/node.ts';
import type { SettledBy } from '../model/roles.ts';
import type { Saying } from '../model/saying.ts';
import type { AnyRule, Report, Stage } from '../rules/rule.ts';

/** What a person is told about one fault. Everything in it is data: places as offsets, texts without markup. */
export interface Finding {
  readonly rule: string;
  readonly stage: Stage;
  readonly severity: Severity;
  readonly settledBy: SettledBy;
  readonly file: FileId;
  readonly span: Span;
  /** All of what the report is about, of which `span` shows a part. */
  readonly about?: Span;
  /** `device/pale-forceps`, or the file when it can't be read. */
  readonly entity: string;
  /** Field path inside the entity. */
  readonly path: string;
  readonly message: string;
  readonly says: readonly SayingInFile[];
  readonly does?: string;
  readonly gap?: string;
  readonly related: readonly RelatedPlace[];
  readonly fixes: readonly Fix[];
  /** Why somebody keeps it back; only where somebody does. */
  readonly excuse?: Excuse;
}

/** The words of whoever keeps a finding back: the reason, and for a waiver who carries the risk and through which day. */
export interface Excuse {
  readonly reason: string;
  readonly owner?: string;
  readonly until?: string;
}

/** A quote with the file and range of its statement. */
export interface SayingInFile extends Omit<Saying, 'at'> {
  readonly file: FileId;
  readonly span: Span;
}

export interface RelatedPlace {
  readonly file: FileId;
  readonly span: Span;
  readonly note: string;
}

/** Survives edits elsewhere, reordering and rewording: rule, entity and field path; never a line number or the message. */
export function fingerprintOf(finding: Pick<Finding, 'rule' | 'entity' | 'path'>): string {
  return `${finding.rule} ${finding.entity} ${finding.path}`;
}

/** A rule's report as a finding, with places resolved to files and ranges. */
export function findingOf(rule: AnyRule, report: Report): Finding {
  const root = rootOf(report.at);
  return {
    rule: rule.id,
    stage: rule.stage,
    severity: report.severity ?? rule.severity,
    settledBy: report.settledBy ?? rule.settledBy,
    file: root.file,
    span: report.span ?? focusOf(report.at),
    about: report.at.span,
    entity: `${root.kind}/${root.id}`,
    path: pathOf(report.at),
    message: report.message,
    says: (report.says ?? []).map(({ at, ...saying }) => ({ ...saying, file: rootOf(at).file, span: focusOf(at) })),
    ...(report.does !== undefined && { does: report.does }),
    ...(report.gap !== undefined && { gap: report.gap }),
    related: (report.related ?? []).map(({ at, note }) => ({ file: rootOf(at).file, span: focusOf(at), note })),
    fixes: report.fixes ?? [],
  };
}

/** A problem of the file by itself as a finding. */
export function findingOfProblem(problem: Problem, file: FileId, entity: string): Finding {
  return {
    rule: problem.rule,
    stage: 'file',
    severity: problem.severity,
    settledBy: 'educator',
    file,
    span: problem.span,
    entity,
    path: '',
    message: problem.message,
    says: [],
    related: (problem.related ?? []).map((place) => ({ file, ...place })),
    fixes: problem.fixes ?? [],
  };
}

/** The range to underline for a place: a short value itself, else the key that names it. */
export function focusOf(place: Place): Span {
  return place.focus ?? place.keySpan ?? place.span;
}

/** Errors first within a file only where two findings share a place; otherwise reading order. */
export function inReadingOrder(a: Finding, b: Finding): number {
  return (
    compare(a.file, b.file) ||
    a.span.start - b.span.start ||
    a.span.end - b.span.end ||
    compare(a.rule, b.rule) ||
    compare(a.message, b.message)
  );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
