import type { FileId } from '../../base/brand.ts';
import type { FileRecord } from '../../library/file-record.ts';
import { keptPath } from '../../library/kept-file.ts';
import { isOfKind } from '../../model/entity.ts';
import { type Coverage, coverageBy, type Encoding, familiesIn } from '../coverage.ts';
import type { Engine } from '../engine.ts';
import type { Elsewhere } from '../together/elsewhere.ts';
import type { Reached } from './affected.ts';
import { KeyHashes } from './key-hash.ts';
import type { AboutState, Details, LibraryState } from './library-state.ts';
import { answersGiven, nextAnswers } from './next-answers.ts';
import { Rows, RowsWriter } from './rows.ts';
import { isReadable, kindIn, traitsOf } from './traits.ts';

/** One file of the library as it is now. */
export interface FileNow {
  readonly file: FileId;
  /** Its place in the state before, where its content is the same. */
  readonly was: number | undefined;
  readonly text: 'opened' | 'not-opened';
}

/** What became of the library since the state before. */
export interface Step {
  readonly files: readonly FileNow[];
  /** As in the state: one after the other. */
  readonly marks: Uint8Array;
  readonly before: LibraryState;
  readonly reached: Reached;
  readonly engine: Engine;
  readonly elsewhere: Elsewhere;
}

export const nothingKnown: LibraryState = {
  files: [],
  marks: new Uint8Array(),
  traits: new Uint32Array(),
  ids: [],
  exports: new Rows(new Uint32Array(), new Uint32Array()),
  reads: new Rows(new Uint32Array(), new Uint32Array()),
  findings: new Rows(new Uint32Array(), new Uint8Array()),
  answers: { keys: new Uint32Array(), reads: new Rows(new Uint32Array(), new Uint32Array()), brief: [] },
  about: { coverage: { named: 0, encoded: 0, missing: [], unreadable: [] }, documents: [] },
  details: { families: [], keeps: [] },
};

export const nothingReached: Reached = { files: new Set(), answers: new Set() };

/** What is known of the files by themselves. */
export type FilesState = Pick<LibraryState, 'files' | 'traits' | 'ids' | 'details'>;

/** The part of the next state that needs no judgement. */
export function filesState({ files, before, engine }: Step): FilesState {
  const records = files.map(({ file, was }) => (was === undefined ? engine.library.record(file) : undefined));
  const traits = files.map(({ was, text }, at) => {
    const record = records[at];
    return record === undefined ? (before.traits[was ?? -1] ?? 0) : traitsOf(record, text);
  });
  return {
    files: files.map(({ file }) => file),
    traits: Uint32Array.from(traits),
    ids: files.map(({ was }, at) => records[at]?.id ?? before.ids[was ?? -1] ?? ''),
    details: detailsOf(files, before, records),
  };
}

function detailsOf(
  files: readonly FileNow[],
  before: LibraryState,
  records: readonly (FileRecord | undefined)[],
): Details {
  const same = new Set<string>(files.flatMap(({ file, was }) => (was === undefined ? [] : [file])));
  const families = before.details.families.filter(([file]) => same.has(file));
  const keeps = before.details.keeps.filter(([file]) => same.has(file));
  for (const record of records) {
    if (record?.entity === undefined) continue;
    if (isOfKind(record.entity, 'set')) families.push([record.file, familiesIn(record.entity)]);
    const path = isOfKind(record.entity, 'document') && record.entity.file && keptPath(record.entity.file);
    if (typeof path === 'string') keeps.push([record.file, path]);
  }
  return { families, keeps };
}

/** Every path at which some document keeps its file, each once. */
export function pathsKept({ details }: FilesState): readonly string[] {
  return [...new Set(details.keeps.map(([, path]) => path))].sort();
}

export function coverageIn({ traits, ids, details }: FilesState): Coverage {
  const devices = new Map<string, Encoding>();
  for (const [at, id] of ids.entries()) {
    const trait = traits[at] ?? 0;
    if (kindIn(trait) !== 'device' || devices.get(id) === 'encoded') continue;
    devices.set(id, isReadable(trait) ? 'encoded' : 'unreadable');
  }
  const sets = details.families.map(([, families]) => families);
  return coverageBy(sets, (family) => devices.get(family) ?? 'missing');
}

/** The whole of it. `findings`: what was found in a file that was judged now, in the form in which it is kept. */
export function nextState(
  step: Step,
  known: FilesState,
  about: AboutState,
  findings: (file: FileId) => Uint8Array,
): LibraryState {
  const { files, before, reached, engine, elsewhere } = step;
  const hashes = new KeyHashes();
  const same = files.map(({ was }) => was);
  const settled = same.map((was) => (was === undefined || reached.files.has(was) ? undefined : was));
  const fileAt = (at: number) => files[at]?.file as FileId;
  return {
    ...known,
    marks: step.marks,
    exports: continued(before.exports, same, Uint32Array, (at) =>
      hashes.of(engine.library.record(fileAt(at))?.exports ?? []),
    ),
    reads: continued(before.reads, settled, Uint32Array, (at) => {
      const file = fileAt(at);
      return elsewhere.reads(file) ?? hashes.of(engine.readsOf(file));
    }),
    findings: continued(before.findings, settled, Uint8Array, (at) => findings(fileAt(at))),
    answers: nextAnswers(before.answers, reached.answers, [
      answersGiven(engine.answers(), hashes),
      ...elsewhere.answers(),
    ]),
    about,
  };
}

/** Lists as they were where `from` names their place, made now where it doesn't. */
function continued<N extends Uint8Array | Uint32Array>(
  before: Rows<N>,
  from: readonly (number | undefined)[],
  make: new (length: number) => N,
  now: (at: number) => ArrayLike<number>,
): Rows<N> {
  const writer = new RowsWriter(make);
  for (let at = 0; at < from.length; ) {
    const first = from[at];
    const begin = at++;
    if (first === undefined) {
      writer.add(now(begin));
      continue;
    }
    while (from[at] === first + at - begin) at++;
    writer.addRows(before, first, first + at - begin);
  }
  return writer.done();
}
