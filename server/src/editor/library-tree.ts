import type { FileId } from '../base/brand.ts';
import type { Severity } from '../base/problem.ts';
import type { Coverage } from '../check/coverage.ts';
import { coverageOf } from '../check/coverage.ts';
import type { Finding } from '../check/finding.ts';
import type { FileRecord } from '../library/file-record.ts';
import type { Library } from '../library/library.ts';
import type { LibraryView } from '../library/view.ts';
import type { AnyEntity } from '../model/entity.ts';
import { fieldOf } from '../model/walk.ts';
import type { Kind } from '../schema/kinds.ts';
import { shapeOf } from '../schema/shapes.ts';

/** A library kept checked. */
export interface CheckedLibrary {
  readonly library: Library;
  view(): LibraryView;
  findings(file: FileId): readonly Finding[];
}

export type Counts = Readonly<Record<Severity, number>>;

/** One stage of work, with all its files taken together. */
export interface StageSummary {
  readonly id: string;
  readonly title: string;
  readonly files: number;
  readonly withFindings: number;
  readonly counts: Counts;
  /** Files whose review is late. */
  readonly overdue: number;
}

export interface LibraryTree {
  readonly stages: readonly StageSummary[];
  readonly coverage: Coverage;
}

export interface TreeFile {
  readonly file: FileId;
  /** The name in the file, else its id, else its path. */
  readonly label: string;
  /** What it describes: `Washer W1`. */
  readonly detail: string;
  readonly counts: Counts;
  readonly overdue: boolean;
}

/** Stages in the order of the work, with the kinds of files that belong to each. */
const stages: readonly { readonly id: string; readonly title: string; readonly kinds: readonly Kind[] }[] = [
  { id: 'department', title: 'Department', kinds: ['library', 'site'] },
  { id: 'documents', title: 'Documents, questions, replies', kinds: ['document', 'question', 'response'] },
  { id: 'devices', title: 'Devices', kinds: ['device'] },
  {
    id: 'machines',
    title: 'Chemistry, water, machines',
    kinds: ['chemistry', 'water', 'washer', 'ultrasonic', 'sterilizer'],
  },
  { id: 'packaging', title: 'Packaging and indicators', kinds: ['packaging', 'monitor'] },
  { id: 'sets', title: 'Sets', kinds: ['set'] },
  { id: 'procedures', title: 'Procedures and posters', kinds: ['procedure', 'poster'] },
  { id: 'teaching', title: 'Teaching', kinds: ['training', 'quiz'] },
  { id: 'decisions', title: 'Waivers and sign-offs', kinds: ['waiver', 'sign-off'] },
];

const unreadable = { id: 'unreadable', title: 'Not readable', kinds: [] as readonly Kind[] };

/** The library by stage of work; stages without a file are left out. */
export function libraryTree(checked: CheckedLibrary): LibraryTree {
  const records = recordsIn(checked.library);
  const summaries = [...stages, unreadable].map((stage) => {
    const own = records.filter((record) => stageOf(record) === stage.id).map((record) => fileIn(record, checked));
    return {
      id: stage.id,
      title: stage.title,
      files: own.length,
      withFindings: own.filter(({ counts }) => counts.error + counts.warning + counts.advice > 0).length,
      counts: sumOf(own.map(({ counts }) => counts)),
      overdue: own.filter(({ overdue }) => overdue).length,
    };
  });
  return { stages: summaries.filter(({ files }) => files > 0), coverage: coverageOf(checked.view()) };
}

/** The files of one stage by name. */
export function filesOfStage(checked: CheckedLibrary, stage: string): readonly TreeFile[] {
  return recordsIn(checked.library)
    .filter((record) => stageOf(record) === stage)
    .map((record) => fileIn(record, checked))
    .sort((a, b) => compare(a.label, b.label) || compare(a.file, b.file));
}

function recordsIn(library: Library): readonly FileRecord[] {
  return library.files().flatMap((file) => library.record(file) ?? []);
}

function stageOf({ kind }: FileRecord): string {
  if (kind === undefined) return unreadable.id;
  return stages.find(({ kinds }) => kinds.includes(kind))?.id ?? unreadable.id;
}

function fileIn({ file, kind, id, entity }: FileRecord, checked: CheckedLibrary): TreeFile {
  const findings = checked.findings(file);
  const label = (entity === undefined ? '' : nameIn(entity)) || id || file;
  const detail = kind === undefined ? file : `${shapeOf(kind).title} ${id ?? ''}`.trim();
  return { file, label, detail, counts: countsOf(findings), overdue: findings.some(isLateReview) };
}

function nameIn(entity: AnyEntity): string {
  for (const key of ['name', 'title']) {
    const node = fieldOf(entity, key);
    if (node?.node === 'text') return node.text;
  }
  return '';
}

/** A review that can't be judged has the same name, but no gap. */
function isLateReview({ rule, gap }: Finding): boolean {
  return rule === 'review-overdue' && gap !== undefined;
}

function countsOf(findings: readonly Finding[]): Counts {
  const counts = { error: 0, warning: 0, advice: 0 };
  for (const { severity } of findings) counts[severity]++;
  return counts;
}

function sumOf(all: readonly Counts[]): Counts {
  const sum = { error: 0, warning: 0, advice: 0 };
  for (const counts of all)
    for (const severity of ['error', 'warning', 'advice'] as const) sum[severity] += counts[severity];
  return sum;
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
