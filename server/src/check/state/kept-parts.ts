import { KnownLibrary } from './known-library.ts';
import type { FileFacts, FirstState, Judgements, LaterState } from './library-state.ts';
import { mostRows } from './number-index.ts';
import { Rows } from './rows.ts';
import { bytesOf, packed, Sections } from './sections.ts';

/** A state as it is kept: what was first kept, and what became of it since; each one file, beginning at a multiple of eight in memory. */
export interface KeptParts {
  readonly first: Uint8Array;
  readonly later: Uint8Array | undefined;
}

const first = {
  key: 0,
  names: 1,
  about: 2,
  traits: 3,
  findingEnds: 4,
  findings: 5,
  contentEnds: 6,
  exportEnds: 7,
  exports: 8,
  exporters: 9,
  readEnds: 10,
  reads: 11,
  readers: 12,
  answerKeys: 13,
  answerReadEnds: 14,
  answerReads: 15,
  answerReaders: 16,
  briefEnds: 17,
  ids: 18,
  families: 19,
  keeps: 20,
  /** From here on nothing is looked at as a whole: a damaged content is that of no file, a damaged brief answer none. */
  contents: 21,
  brief: 22,
} as const;

/** What is looked at whatever the library came to. */
const always: readonly number[] = [
  first.key,
  first.names,
  first.about,
  first.traits,
  first.findingEnds,
  first.findings,
  first.contentEnds,
];
const firstCount = 23;
const onlyWhenChanged = Array.from({ length: first.contents }, (_, at) => at).filter((at) => !always.includes(at));

/** Undefined where it can't be kept: so many files are no library. */
export function bytesOfFirst(key: string, state: FirstState): readonly Uint8Array[] | undefined {
  const { names, about, facts, judgements, exporters, readers, answers, families, keeps } = state;
  if (facts.traits.length > mostRows || answers.keys.length > mostRows) return undefined;
  const pieces: Record<keyof typeof first, Uint8Array> = {
    key: textBytes(key),
    names: textBytes(names),
    about: jsonBytes(about),
    traits: bytesOf(facts.traits),
    findingEnds: bytesOf(judgements.findings.ends),
    findings: judgements.findings.values,
    contentEnds: bytesOf(facts.contents.ends),
    exportEnds: bytesOf(facts.exports.ends),
    exports: bytesOf(facts.exports.values),
    exporters: bytesOf(exporters),
    readEnds: bytesOf(judgements.reads.ends),
    reads: bytesOf(judgements.reads.values),
    readers: bytesOf(readers),
    answerKeys: bytesOf(answers.keys),
    answerReadEnds: bytesOf(answers.reads.ends),
    answerReads: bytesOf(answers.reads.values),
    answerReaders: bytesOf(answers.readers),
    briefEnds: bytesOf(answers.brief.ends),
    ids: jsonBytes(facts.ids),
    families: jsonBytes(families),
    keeps: jsonBytes(keeps),
    contents: facts.contents.values,
    brief: answers.brief.values,
  };
  return packed(Object.entries(pieces).map(([, piece]) => piece));
}

const laterCount = 21;

/** `of`: the name of the first state, as it is kept. */
export function bytesOfLater(of: string, state: LaterState): readonly Uint8Array[] {
  const { names, factsAt, judgedAt, facts, judgements, answers, about, families, keeps } = state;
  return packed([
    textBytes(of),
    textBytes(names),
    bytesOf(factsAt),
    bytesOf(judgedAt),
    bytesOf(facts.traits),
    jsonBytes(facts.ids),
    ...rowsBytes(facts.exports),
    ...rowsBytes(facts.contents),
    ...rowsBytes(judgements.reads),
    ...rowsBytes(judgements.findings),
    bytesOf(Uint32Array.from(answers.gone)),
    bytesOf(answers.added.keys),
    ...rowsBytes(answers.added.reads),
    ...rowsBytes(answers.added.brief),
    jsonBytes({ about, families, keeps }),
  ]);
}

export interface ReadParts {
  readonly known: KnownLibrary;
  /** The name of the first state, and how long it is. */
  readonly name: string;
  readonly length: number;
  /** Whether what is looked at only after a change is undamaged. */
  readonly isWhole: () => boolean;
}

/** What was kept under exactly this key. Undefined for anything else, be it damaged, cut short or written by another program. */
export function partsIn(key: string, kept: KeptParts): ReadParts | undefined {
  const sections = Sections.in(kept.first, firstCount);
  if (sections === undefined || text(sections.piece(first.key)) !== key || !sections.areWhole(always)) return undefined;
  const begun = firstIn(sections);
  const later = kept.later === undefined ? undefined : laterIn(sections.name, kept.later);
  return {
    known: new KnownLibrary(begun, later),
    name: sections.name,
    length: kept.first.length,
    isWhole: () => sections.areWhole(onlyWhenChanged),
  };
}

function firstIn(sections: Sections): FirstState {
  const rows = (ends: number, values: number) => new Rows(sections.numbers(ends), sections.numbers(values));
  const bytes = (ends: number, values: number) => new Rows(sections.numbers(ends), sections.piece(values));
  const floats = (at: number) => floatsOf(sections.piece(at));
  const ids = later(() => json<readonly string[]>(sections.piece(first.ids)));
  const families = later(() => json<FirstState['families']>(sections.piece(first.families)));
  const keeps = later(() => json<FirstState['keeps']>(sections.piece(first.keeps)));
  return {
    names: text(sections.piece(first.names)),
    about: json(sections.piece(first.about)),
    facts: {
      traits: sections.numbers(first.traits),
      get ids() {
        return ids();
      },
      exports: rows(first.exportEnds, first.exports),
      contents: bytes(first.contentEnds, first.contents),
    },
    judgements: {
      reads: rows(first.readEnds, first.reads),
      findings: bytes(first.findingEnds, first.findings),
    },
    exporters: floats(first.exporters),
    readers: floats(first.readers),
    answers: {
      keys: sections.numbers(first.answerKeys),
      reads: rows(first.answerReadEnds, first.answerReads),
      brief: bytes(first.briefEnds, first.brief),
      readers: floats(first.answerReaders),
    },
    get families() {
      return families();
    },
    get keeps() {
      return keeps();
    },
  };
}

function laterIn(of: string, whole: Uint8Array): LaterState | undefined {
  const sections = Sections.in(whole, laterCount);
  if (sections === undefined || !sections.areWhole(Array.from({ length: laterCount }, (_, at) => at))) return undefined;
  if (text(sections.piece(0)) !== of) return undefined;
  const rows = (ends: number) => new Rows(sections.numbers(ends), sections.numbers(ends + 1));
  const bytes = (ends: number) => new Rows(sections.numbers(ends), sections.piece(ends + 1));
  const facts: FileFacts = {
    traits: sections.numbers(4),
    ids: json(sections.piece(5)),
    exports: rows(6),
    contents: bytes(8),
  };
  const judgements: Judgements = { reads: rows(10), findings: bytes(12) };
  return {
    names: text(sections.piece(1)),
    factsAt: signed(sections.piece(2)),
    judgedAt: signed(sections.piece(3)),
    facts,
    judgements,
    answers: {
      gone: new Set(sections.numbers(14)),
      added: { keys: sections.numbers(15), reads: rows(16), brief: bytes(18) },
    },
    ...json<Pick<LaterState, 'about' | 'families' | 'keeps'>>(sections.piece(20)),
  };
}

function rowsBytes({ ends, values }: Rows<Uint8Array | Uint32Array>): readonly [Uint8Array, Uint8Array] {
  return [bytesOf(ends), values instanceof Uint32Array ? bytesOf(values) : values];
}

function signed(bytes: Uint8Array): Int32Array {
  return new Int32Array(bytes.buffer, bytes.byteOffset, bytes.length / 4);
}

function floatsOf(bytes: Uint8Array): Float64Array {
  return new Float64Array(bytes.buffer, bytes.byteOffset, bytes.length / 8);
}

function textBytes(words: string): Uint8Array {
  return new TextEncoder().encode(words);
}

function text(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes);
}

function jsonBytes(value: unknown): Uint8Array {
  return textBytes(JSON.stringify(value));
}

function json<Value>(bytes: Uint8Array): Value {
  return JSON.parse(text(bytes)) as Value;
}

/** Most of what is kept is not needed where nothing differs. */
function later<Value>(make: () => Value): () => Value {
  let made: Value | undefined;
  return () => {
    made ??= make();
    return made;
  };
}
