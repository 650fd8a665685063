import type { FileId } from '../base/brand.ts';
import { type Reached, reachedFrom } from '../check/state/affected.ts';
import { type Comparison, changedHashes, compared } from '../check/state/compare.ts';
import { type ChangedFiles, coverageNow, pathsKept } from '../check/state/details.ts';
import { hashOf } from '../check/state/key-hash.ts';
import type { KnownLibrary } from '../check/state/known-library.ts';
import { type AboutState, type LaterState, namesOf } from '../check/state/library-state.ts';
import { type FreshFile, laterState, type Step } from '../check/state/next-state.ts';
import { RestingFiles } from '../check/state/resting-files.ts';
import { sameAnswers } from '../check/state/same-answers.ts';
import { isPlain, wasOpened } from '../check/state/traits.ts';
import type { Elsewhere } from '../check/together/elsewhere.ts';
import { contentOf, isStill, type OpenedFile } from '../host/library-files.ts';
import { keptKey } from '../library/keys.ts';
import type { ListedFile } from '../library/listed-files.ts';
import { recordInPassing, recordOf } from '../library/loaded-file.ts';
import type { AskedFile, JudgedFile, JudgedLibrary } from './judged-library.ts';
import { aboutOf, dayNamedIn, fromKeptForm, judgedBy, judgeTogether, keptForm } from './judged-library.ts';
import type { KeptDocuments } from './kept-documents.ts';
import type { BegunLibrary } from './open-library.ts';
import { loadedFrom } from './open-library.ts';

export interface Resuming {
  readonly known: KnownLibrary;
  /** Undefined where they are not looked at. */
  readonly documents: KeptDocuments | undefined;
  /** Who judges some of the files beside us. */
  readonly elsewhere: Elsewhere;
}

/** The files of a library as the disk has them beside what is known of them. */
export interface LookedAt extends Comparison {
  readonly ids: readonly FileId[];
  readonly names: string;
  /** By their places: each file that is new or has other content. */
  readonly opened: ReadonlyMap<number, OpenedFile>;
  /** Of the others those that bytes alone do not tell. */
  readonly odd: ReadonlyMap<number, OpenedFile>;
}

/** Looks at every file's bytes. `open` gives a file as it is now. */
export function lookedAt(
  { found, files, settings }: BegunLibrary,
  known: KnownLibrary,
  open: (listed: ListedFile) => OpenedFile,
): LookedAt {
  const ids = files.map(({ file }) => file);
  const names = namesOf(ids);
  const opened = new Map<number, OpenedFile>();
  const odd = new Map<number, OpenedFile>();
  const isSame = (place: number, at: number): boolean => {
    const listed = files[at];
    if (listed === undefined) return false;
    const isOnDisk = isPlain(known.traits(place)) && listed !== settings?.listed;
    if (isOnDisk && isStill(found.root, listed, known.contentIn(place))) return true;
    const one = open(listed);
    const content = contentOf(one);
    const isAlike = content.is === (isPlain(known.traits(place)) ? 'plain' : 'odd');
    const isStillSo = isAlike && Buffer.compare(content.bytes, known.content(place)) === 0;
    (isStillSo ? odd : opened).set(at, one);
    return isStillSo;
  };
  const comparison = compared(known, names, ids, isSame);
  for (let at = comparison.was.indexOf(-1); at >= 0; at = comparison.was.indexOf(-1, at + 1)) {
    const listed = files[at];
    if (listed !== undefined && !opened.has(at)) opened.set(at, open(listed));
  }
  return { ...comparison, ids, names, opened, odd };
}

/** A library taken up where an earlier check left it: only what has other bytes is read, only what that reaches is judged. */
export class ResumedLibrary {
  readonly judged: JudgedLibrary;
  /** True when there is nothing new to know of the library. */
  readonly isAsBefore: boolean;
  readonly #documents: KeptDocuments | undefined;
  readonly #step: Step;
  readonly #about: Omit<AboutState, 'documents'>;
  readonly #now = new Map<FileId, JudgedFile>();

  constructor(begun: BegunLibrary, looked: LookedAt, { known, documents, elsewhere }: Resuming) {
    this.#documents = documents;
    const { engine, files, leftOut } = begun;
    const { was, gone, ids, names } = looked;
    engine.library.rest(restingIn(begun, known, looked, documents));
    const fresh = freshFiles(begun, looked);
    const isSame = fresh.size === 0 && gone.length === 0;
    const changed = { known, was, gone, records: [...fresh.values()].map(({ record }) => record) };
    const paths = isSame ? pathsIn(known) : pathsKept(changed);
    const others = documents?.lookAt(paths, known.about.documents) ?? [];
    this.isAsBefore = isSame && others.length === 0;
    const reached = this.isAsBefore ? nothingReached : reachedBy(begun, changed, others);
    this.#step = { known, names, files: ids, was, fresh, reached, engine, elsewhere };
    const coverage = isSame ? known.about.coverage : coverageNow(changed);
    const unread = isSame ? known.about.unread : unreadIn(changed, fresh);
    this.#about = { coverage, unread, dayNamed: isSame ? known.about.dayNamed : dayNamedIn(engine) };
    this.judged = {
      files,
      leftOut,
      about: aboutOf(engine, files, this.#about),
      prepare: this.#preparing(),
      of: this.#asking(),
    };
    begun.options.progress.end();
  }

  /** What to remember of the library, every file of which was asked for; undefined where it changed meanwhile. */
  state(): LaterState | undefined {
    const documents = this.#documents === undefined ? [] : this.#documents.digests();
    this.#documents?.end();
    if (documents === undefined) return undefined;
    return laterState(
      this.#step,
      { ...this.#about, documents },
      {
        findings: (file) => this.#kept(file),
        // A fault of ours is found again each time.
        isDoubtful: (file) => hasOwnFault(this.#now.get(file)),
      },
    );
  }

  #preparing(): (asked: readonly AskedFile[]) => void {
    const { engine, elsewhere } = this.#step;
    return (asked) => {
      const open = asked.filter(({ file, at }) => this.#settledAt(at) === undefined && !this.#now.has(file));
      judgeTogether(engine, elsewhere, open);
    };
  }

  /** The place among the files of the earlier check, where what was found there still holds. */
  #settledAt(at: number): number | undefined {
    const place = this.#step.was[at] ?? -1;
    return place >= 0 && !this.#step.reached.files.has(place) ? place : undefined;
  }

  #asking(): (file: FileId, at: number) => JudgedFile {
    const { known, engine, elsewhere } = this.#step;
    const judge = judgedBy(engine, elsewhere);
    return (file, at) => {
      const place = this.#settledAt(at);
      if (place !== undefined) return fromKeptForm(file, known.findings(place));
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

const nothingReached: Reached = { files: new Set(), answers: new Set() };

function restingIn(
  begun: BegunLibrary,
  known: KnownLibrary,
  { was, odd }: LookedAt,
  documents: KeptDocuments | undefined,
): RestingFiles {
  return new RestingFiles(known, was, {
    read: (place) => {
      const at = was.indexOf(place);
      const listed = begun.files[at];
      if (listed === undefined) throw new RangeError(`no file rests at ${place}`);
      const { file, problems } = listed;
      const opened = odd.get(at) ?? { file, problems, content: { bytes: known.content(place) } };
      return recordInPassing(loadedFrom(opened, begun.options.typed));
    },
    keptFile: (path) => documents?.read(path),
  });
}

/** Reads what is new or has other content into the engine. By its place among the files. */
function freshFiles(begun: BegunLibrary, { opened }: LookedAt): ReadonlyMap<number, FreshFile> {
  const { engine, files, settings, options } = begun;
  const fresh = new Map<number, FreshFile>();
  for (const [at, one] of [...opened].sort(([a], [b]) => a - b)) {
    const listed = files[at];
    if (listed === undefined) continue;
    const loaded = loadedFrom(one, options.typed);
    const known = listed === settings?.listed ? engine.library.record(listed.file) : undefined;
    const record = known ?? recordOf(loaded);
    if (known === undefined) engine.put(record);
    const text = loaded.text === undefined ? 'not-opened' : 'opened';
    fresh.set(at, { record, text, content: contentOf(one) });
    options.progress.step(at + 1, files.length);
  }
  return fresh;
}

function reachedBy({ engine }: BegunLibrary, { known, gone, records }: ChangedFiles, documents: readonly string[]) {
  const changed = new Set(changedHashes(known, gone, records));
  for (const path of documents) changed.add(hashOf(keptKey(path)));
  return reachedFrom(changed, known, sameAnswers(known, engine));
}

function unreadIn({ known, was }: ChangedFiles, fresh: ReadonlyMap<number, FreshFile>): number {
  let unread = [...fresh.values()].filter(({ text }) => text === 'not-opened').length;
  for (let at = 0; at < was.length; at++) {
    const place = was[at] ?? -1;
    if (place >= 0 && !wasOpened(known.traits(place))) unread++;
  }
  return unread;
}

function pathsIn({ about }: KnownLibrary): readonly string[] {
  return about.documents.flatMap(([path]) => (path === '' ? [] : [path]));
}

function hasOwnFault(one: JudgedFile | undefined): boolean {
  return one?.findings.some(({ finding }) => finding.rule === 'internal') === true;
}
