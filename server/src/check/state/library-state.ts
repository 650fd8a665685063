/**
 * check/state/: what a check leaves behind so that the next one judges only what a change can reach: a mark of each file's content, what
 * it exports, what its findings rest on, the findings themselves. It knows nothing of rules, of the disk, or of what a finding is.
 */
import type { Coverage, FamiliesOfSet } from '../coverage.ts';
import { Rows } from './rows.ts';
import { bytesOf, numbersOf, packed, unpacked } from './sections.ts';

/** One checked library, by the places of its files in order of their ids. */
export interface LibraryState {
  readonly files: readonly string[];
  /** What tells one content from another: `markLength` bytes a file. */
  readonly marks: Uint8Array;
  /** See traits.ts. */
  readonly traits: Uint32Array;
  /** Empty where none could be made out. */
  readonly ids: readonly string[];
  /** Numbers of the keys under which readers come upon the file. */
  readonly exports: Rows<Uint32Array>;
  /** Numbers of the keys that the file's findings rest on. */
  readonly reads: Rows<Uint32Array>;
  /** What was found in the file, in whatever form its writer keeps it. Empty: nothing. */
  readonly findings: Rows<Uint8Array>;
  readonly answers: KnownAnswers;
  readonly about: AboutState;
  readonly details: Details;
}

export const markLength = 32;

/** Answers that several readers share: those who used one rest on its key, and it rests on `reads`. */
export interface KnownAnswers {
  readonly keys: Uint32Array;
  readonly reads: Rows<Uint32Array>;
  /** Those of which few words say all. */
  readonly brief: readonly BriefAnswer[];
}

export type BriefAnswer = readonly [place: number, query: string, argument: string, words: string];

/** What is looked at even if no file differs. */
export interface AboutState {
  readonly coverage: Coverage;
  /** Each kept document with what its file was; an empty text where that must be found out anew. */
  readonly documents: readonly (readonly [path: string, digest: string])[];
}

/** What is looked at only if a file differs. */
export interface Details {
  readonly families: readonly (readonly [file: string, families: FamiliesOfSet])[];
  /** Files that name a document which the library keeps. */
  readonly keeps: readonly (readonly [file: string, path: string])[];
}

const sectionCount = 16;

/** The state as bytes, for a machine that is built alike. */
export function bytesOfState(state: LibraryState): Uint8Array {
  const { exports, reads, findings, answers } = state;
  return packed([
    jsonBytes(state.files),
    state.marks,
    bytesOf(state.traits),
    jsonBytes(state.ids),
    ...[exports, reads, answers.reads].flatMap(({ ends, values }) => [bytesOf(ends), bytesOf(values)]),
    bytesOf(findings.ends),
    findings.values,
    bytesOf(answers.keys),
    jsonBytes(state.about),
    jsonBytes(state.details),
    jsonBytes(answers.brief),
  ]);
}

/** Undefined, or an exception, for what `bytesOfState` did not make. */
export function stateIn(bytes: Uint8Array): LibraryState | undefined {
  const sections = unpacked(bytes, sectionCount);
  if (sections === undefined) return undefined;
  const [files, marks, traits, ids, ...others] = sections;
  const rows = (at: number) => new Rows(numbersOf(others[at]), numbersOf(others[at + 1]));
  const details = later<Details>(others[10]);
  const idsLater = later<readonly string[]>(ids);
  const brief = later<readonly BriefAnswer[]>(others[11]);
  const state = {
    files: json<readonly string[]>(files),
    marks: marks ?? new Uint8Array(),
    traits: numbersOf(traits),
    get ids() {
      return idsLater();
    },
    exports: rows(0),
    reads: rows(2),
    findings: new Rows(numbersOf(others[6]), others[7] ?? new Uint8Array()),
    answers: {
      keys: numbersOf(others[8]),
      reads: rows(4),
      get brief() {
        return brief();
      },
    },
    about: json<AboutState>(others[9]),
    get details() {
      return details();
    },
  };
  return isWhole(state) ? state : undefined;
}

function isWhole({ files, marks, traits, exports, reads, findings, answers }: LibraryState): boolean {
  const ofFiles = [exports, reads, findings];
  const isCounted = [...ofFiles.map(({ count }) => count), traits.length].every((count) => count === files.length);
  const areRows = [...ofFiles, answers.reads].every((rows) => rows.isWhole());
  return (
    isCounted && areRows && marks.length === files.length * markLength && answers.keys.length === answers.reads.count
  );
}

function jsonBytes(value: unknown): Uint8Array {
  return new TextEncoder().encode(JSON.stringify(value));
}

function json<Value>(bytes: Uint8Array | undefined): Value {
  return JSON.parse(new TextDecoder().decode(bytes)) as Value;
}

/** Most of what is kept is not needed where nothing differs. */
function later<Value>(bytes: Uint8Array | undefined): () => Value {
  let made: Value | undefined;
  return () => {
    made ??= json<Value>(bytes);
    return made;
  };
}
