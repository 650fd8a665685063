import type { FileId } from '../base/brand.ts';
import { type Reached, reachedFrom } from '../check/state/affected.ts';
import { type Comparison, changedHashes, compared } from '../check/state/compare.ts';
import { hashOf } from '../check/state/key-hash.ts';
import type { AboutState, LibraryState } from '../check/state/library-state.ts';
import { markLength } from '../check/state/library-state.ts';
import type { FilesState, Step } from '../check/state/next-state.ts';
import { coverageIn, filesState, nextState, nothingReached, pathsKept } from '../check/state/next-state.ts';
import { RestingFiles } from '../check/state/resting-files.ts';
import { sameAnswers } from '../check/state/same-answers.ts';
import { wasOpened } from '../check/state/traits.ts';
import type { Elsewhere } from '../check/together/elsewhere.ts';
import type { OpenedFile } from '../host/library-files.ts';
import type { FileRecord } from '../library/file-record.ts';
import { keptKey } from '../library/keys.ts';
import { recordOf } from '../library/loaded-file.ts';
import type { JudgedFile, JudgedLibrary } from './judged-library.ts';
import { aboutOf, fromKeptForm, judgedBy, keptForm } from './judged-library.ts';
import type { KeptDocuments } from './kept-documents.ts';
import type { BegunLibrary } from './open-library.ts';
import { loadedFrom } from './open-library.ts';

export interface Resuming {
  /** Each file as the disk has it, in the order of the library's. Taken over: one that is read is let go. */
  readonly opened: (OpenedFile | undefined)[];
  readonly marks: Uint8Array;
  /** Undefined where they are not looked at. */
  readonly documents: KeptDocuments | undefined;
  readonly before: LibraryState;
  /** Who judges some of the files beside us. */
  readonly elsewhere: Elsewhere;
}

/** A library taken up where an earlier check left it: only what has other bytes is read, only what that reaches is judged. */
export class ResumedLibrary {
  readonly judged: JudgedLibrary;
  /** True when there is nothing new to know of the library. */
  readonly isAsBefore: boolean;
  readonly #given: Resuming;
  readonly #step: Step;
  readonly #files: FilesState;
  readonly #about: AboutState;
  readonly #now = new Map<FileId, JudgedFile>();

  constructor(begun: BegunLibrary, given: Resuming) {
    this.#given = given;
    const { before, documents, marks, elsewhere } = given;
    const { engine, files, leftOut } = begun;
    const ids = files.map(({ file }) => file);
    const comparison = compared(before, ids, marks);
    engine.library.rest(restingIn(begun, given, comparison));
    const fresh = freshRecords(begun, given, comparison);
    const texts = comparison.was.map((was, at) => (was === undefined ? fresh.get(at)?.text : textBefore(before, was)));
    const named = ids.map((file, at) => ({ file, was: comparison.was[at], text: texts[at] ?? 'not-opened' }));
    const isSame = fresh.size === 0 && comparison.gone.length === 0;
    const step = { files: named, marks, before, engine, elsewhere, reached: nothingReached };
    this.#files = isSame ? before : filesState(step);
    const others = documents?.lookAt(isSame ? pathsIn(before) : pathsKept(this.#files), before.about.documents) ?? [];
    this.isAsBefore = isSame && others.length === 0;
    const reached = this.isAsBefore ? nothingReached : reachedBy(begun, given, comparison, fresh, others);
    this.#step = { ...step, reached };
    const coverage = isSame ? before.about.coverage : coverageIn(this.#files);
    this.#about = { coverage, documents: [] };
    const unread = texts.filter((text) => text === 'not-opened').length;
    this.judged = { files, leftOut, about: aboutOf(engine, files, { unread, coverage }), of: this.#asking(ids) };
    begun.options.progress.end();
  }

  /** What to remember of the library, every file of which was asked for; undefined where it changed meanwhile. */
  state(): LibraryState | undefined {
    const documents = this.#given.documents === undefined ? [] : this.#given.documents.digests();
    this.#given.documents?.end();
    if (documents === undefined) return undefined;
    const state = nextState(this.#step, this.#files, { ...this.#about, documents }, (file) => this.#kept(file));
    // A fault of ours is found again each time.
    for (const [at, { file }] of this.#step.files.entries())
      if (hasOwnFault(this.#now.get(file))) state.marks.fill(0, at * markLength, (at + 1) * markLength);
    return state;
  }

  #asking(ids: readonly FileId[]): (file: FileId) => JudgedFile {
    const { files, reached, before, engine, elsewhere } = this.#step;
    const places = new Map(ids.map((file, at) => [file, files[at]?.was]));
    const judge = judgedBy(engine, elsewhere);
    return (file) => {
      const place = places.get(file);
      if (place !== undefined && !reached.files.has(place)) return fromKeptForm(file, before.findings.row(place));
      const one = this.#now.get(file) ?? judge(file);
      this.#now.set(file, one);
      return one;
    };
  }

  #kept(file: FileId): Uint8Array {
    const one = this.#now.get(file);
    return one === undefined ? new Uint8Array() : keptForm(one);
  }
}

function restingIn(begun: BegunLibrary, { before, opened, documents }: Resuming, { was }: Comparison): RestingFiles {
  const places = new Map<number, number>();
  for (const [at, place] of was.entries()) if (place !== undefined) places.set(place, at);
  return new RestingFiles(before, places.keys(), {
    read: (place) => {
      const one = opened[places.get(place) ?? -1];
      if (one === undefined) throw new RangeError(`no file rests at ${place}`);
      return recordOf(loadedFrom(one, begun.options.typed));
    },
    keptFile: (path) => documents?.read(path),
  });
}

interface Fresh {
  readonly record: FileRecord;
  readonly text: 'opened' | 'not-opened';
}

/** Reads what is new or has other content into the engine. By its place among the files. */
function freshRecords(begun: BegunLibrary, { opened }: Resuming, { was }: Comparison): ReadonlyMap<number, Fresh> {
  const { engine, files, settings, options } = begun;
  const fresh = new Map<number, Fresh>();
  for (const [at, listed] of files.entries()) {
    const one = opened[at];
    if (was[at] !== undefined || one === undefined) continue;
    opened[at] = undefined;
    const loaded = loadedFrom(one, options.typed);
    const known = listed === settings?.listed ? engine.library.record(listed.file) : undefined;
    const record = known ?? recordOf(loaded);
    if (known === undefined) engine.put(record);
    fresh.set(at, { record, text: loaded.text === undefined ? 'not-opened' : 'opened' });
    options.progress.step(at + 1, files.length);
  }
  return fresh;
}

function reachedBy(
  { engine }: BegunLibrary,
  { before }: Resuming,
  { gone }: Comparison,
  fresh: ReadonlyMap<number, Fresh>,
  documents: readonly string[],
): Reached {
  const records = [...fresh.values()].map(({ record }) => record);
  const changed = new Set(changedHashes(before, gone, records));
  for (const path of documents) changed.add(hashOf(keptKey(path)));
  return reachedFrom(changed, before, sameAnswers(before, engine));
}

function textBefore(before: LibraryState, place: number): Fresh['text'] {
  return wasOpened(before.traits[place] ?? 0) ? 'opened' : 'not-opened';
}

function pathsIn({ about }: LibraryState): readonly string[] {
  return about.documents.flatMap(([path]) => (path === '' ? [] : [path]));
}

function hasOwnFault(one: JudgedFile | undefined): boolean {
  return one?.findings.some(({ finding }) => finding.rule === 'internal') === true;
}
