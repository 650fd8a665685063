/**
 * check/state/: what a check leaves behind so that the next one judges only what a change can reach: each file's bytes, what it exports,
 * what its findings rest on, the findings themselves. It is kept in two parts: the library as it was first kept, and what became of it
 * since, so that little is written after a small change. It knows nothing of rules, of the disk, or of what a finding is.
 */
import type { Coverage, FamiliesOfSet } from '../coverage.ts';
import { type FirstAnswers, type LaterAnswers, noAnswers } from './known-answers.ts';
import { Rows } from './rows.ts';

/** What is known of files by themselves, one after the other. */
export interface FileFacts {
  /** See traits.ts. */
  readonly traits: Uint32Array;
  /** Empty where none could be made out. */
  readonly ids: readonly string[];
  /** Numbers of the keys under which readers come upon the file. */
  readonly exports: Rows<Uint32Array>;
  /** The bytes of a plain file; of any other all that is to say about it. */
  readonly contents: Rows<Uint8Array>;
}

/** What was found in files. */
export interface Judgements {
  /** Numbers of the keys that the file's findings rest on. */
  readonly reads: Rows<Uint32Array>;
  /** What was found in the file, in whatever form its writer keeps it. Empty: nothing. */
  readonly findings: Rows<Uint8Array>;
}

/** What is looked at even if no file differs. */
export interface AboutState {
  readonly coverage: Coverage;
  /** How many files could not be opened. */
  readonly unread: number;
  /** The day that the library itself names; empty for none. */
  readonly dayNamed: string;
  /** Each kept document with what its file was; an empty text where that must be found out anew. */
  readonly documents: readonly (readonly [path: string, digest: string])[];
}

export type Families = readonly (readonly [file: string, families: FamiliesOfSet])[];
/** Files that name a document which the library keeps. */
export type Keeps = readonly (readonly [file: string, path: string])[];

/** One checked library as it was first kept, by the places of its files in order of their ids. */
export interface FirstState {
  /** The ids, see `namesOf`. */
  readonly names: string;
  readonly facts: FileFacts;
  readonly judgements: Judgements;
  readonly answers: FirstAnswers;
  /** Which files export a key, and which rest on it. */
  readonly exporters: Float64Array;
  readonly readers: Float64Array;
  readonly about: AboutState;
  readonly families: Families;
  readonly keeps: Keeps;
}

/** The library after changes, told by the first state and what is new. */
export interface LaterState {
  /** Empty where they are those of the first state. */
  readonly names: string;
  /** For each file its place in the first state, where what is known still holds; else -1 - its place among those told here. */
  readonly factsAt: Int32Array;
  readonly judgedAt: Int32Array;
  readonly facts: FileFacts;
  readonly judgements: Judgements;
  readonly answers: LaterAnswers;
  readonly about: AboutState;
  readonly families: Families;
  readonly keeps: Keeps;
}

const noNumbers = new Rows(new Uint32Array(), new Uint32Array());
const noBytes = new Rows(new Uint32Array(), new Uint8Array());

export const nothingFirst: FirstState = {
  names: '',
  facts: { traits: new Uint32Array(), ids: [], exports: noNumbers, contents: noBytes },
  judgements: { reads: noNumbers, findings: noBytes },
  answers: { ...noAnswers, readers: new Float64Array() },
  exporters: new Float64Array(),
  readers: new Float64Array(),
  about: { coverage: { named: 0, encoded: 0, missing: [], unreadable: [] }, unread: 0, dayNamed: '', documents: [] },
  families: [],
  keeps: [],
};

/** Ids of files as one text: no name of a file holds what is between them. */
export function namesOf(files: readonly string[]): string {
  return files.join('\0');
}

export function filesNamed(names: string): readonly string[] {
  return names === '' ? [] : names.split('\0');
}
