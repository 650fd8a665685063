import type { FileId } from '../../base/brand.ts';
import type { FileRecord } from '../../library/file-record.ts';
import { keptPath } from '../../library/kept-file.ts';
import { isOfKind } from '../../model/entity.ts';
import { type Coverage, coverageBy, type Encoding, familiesIn } from '../coverage.ts';
import type { KnownLibrary } from './known-library.ts';
import type { Families, Keeps } from './library-state.ts';
import { isReadable, kindIn } from './traits.ts';

/** The known library with what is new in it, as far as its details are concerned. */
export interface ChangedFiles {
  readonly known: KnownLibrary;
  readonly was: Int32Array;
  readonly gone: readonly number[];
  /** Files that are new or have other content. */
  readonly records: readonly FileRecord[];
}

export function familiesOf(records: readonly FileRecord[]): Families {
  return records.flatMap(({ file, entity }) =>
    entity !== undefined && isOfKind(entity, 'set') ? [[file, familiesIn(entity)] as const] : [],
  );
}

export function keepsOf(records: readonly FileRecord[]): Keeps {
  return records.flatMap(({ file, entity }) => {
    if (entity === undefined || !isOfKind(entity, 'document') || entity.file === undefined) return [];
    const path = keptPath(entity.file);
    return typeof path === 'string' ? [[file, path] as const] : [];
  });
}

/** Every path at which some document keeps its file, each once. */
export function pathsKept({ known, gone, records }: ChangedFiles): readonly string[] {
  const keeps = [...still(known, gone, known.keeps), ...keepsOf(records)];
  return [...new Set(keeps.map(([, path]) => path))].sort();
}

export function coverageNow(changed: ChangedFiles): Coverage {
  const { known, was, gone, records } = changed;
  if (!touchesCoverage(changed)) return known.about.coverage;
  const devices = new Map<string, Encoding>();
  const note = (id: string, encoding: Encoding) => {
    if (devices.get(id) !== 'encoded') devices.set(id, encoding);
  };
  for (const place of was) {
    const traits = place < 0 ? 0 : known.traits(place);
    if (kindIn(traits) === 'device') note(known.id(place), isReadable(traits) ? 'encoded' : 'unreadable');
  }
  for (const { kind, id, entity } of records)
    if (kind === 'device') note(id ?? '', entity === undefined ? 'unreadable' : 'encoded');
  const families = [...still(known, gone, known.families), ...familiesOf(records)];
  return coverageBy(
    families.map(([, one]) => one),
    (family) => devices.get(family) ?? 'missing',
  );
}

/** False where every changed file counts as it did: most changes are of what a device says. */
function touchesCoverage({ known, gone, records }: ChangedFiles): boolean {
  const now = new Map<string, FileRecord>(records.map((record) => [record.file, record]));
  for (const place of gone) {
    const traits = known.traits(place);
    const file = known.files[place] ?? '';
    const record = now.get(file);
    const kind = kindIn(traits);
    if (kind === 'set') return true;
    if (kind !== 'device') continue;
    const isAlike = record?.kind === kind && record.id === known.id(place);
    if (!isAlike || (record.entity !== undefined) !== isReadable(traits)) return true;
    now.delete(file);
  }
  return [...now.values()].some(({ kind }) => kind === 'set' || kind === 'device');
}

function still<Row extends readonly [file: string, ...rest: unknown[]]>(
  known: KnownLibrary,
  gone: readonly number[],
  rows: readonly Row[],
): readonly Row[] {
  const names = new Set<string>(gone.map((place) => known.files[place] as FileId));
  return rows.filter(([file]) => !names.has(file));
}
