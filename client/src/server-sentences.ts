import type {
  AddedItem,
  FurtherFile,
  FurtherPiece,
  SentenceChoice,
  SentenceContent,
  SentencesDone,
  Told,
} from '../../server/src/panel/sentences.ts';
import { either, type Is, isCount, isText, listOf, maybe, recordOf, word } from '../page/forms.ts';

interface Position {
  readonly line: number;
  readonly character: number;
}

export interface SentenceRange {
  readonly start: Position;
  readonly end: Position;
}

export interface ServerEdit {
  readonly range: SentenceRange;
  readonly newText: string;
}

export interface ServerChoice extends SentenceChoice {
  readonly edits: readonly ServerEdit[];
}

/** A sentence as the server sends it: with its place, the version of the text, and what each choice puts in. */
export interface ServerSentence extends SentenceContent {
  readonly place: SentenceRange | null;
  readonly version: number | null;
  readonly choices: readonly ServerChoice[];
}

export const isNull: Is<null> = (value): value is null => value === null;
const isPosition = recordOf<Position>({ line: isCount, character: isCount });
const isRange = recordOf<SentenceRange>({ start: isPosition, end: isPosition });
const isTold = recordOf<Told>({
  way: maybe(isText),
  words: listOf(isText),
  next: maybe(word('bounds', 'reason', 'field', 'more', 'instead', 'page')),
  field: maybe(isText),
  text: maybe(isText),
});
/** Text that is put in may be long: all statements of the pages at once. */
const isNewText: Is<string> = (value): value is string => typeof value === 'string';
export const isServerEdit = recordOf<ServerEdit>({ range: isRange, newText: isNewText });
const isWords: Is<AddedItem['known']> = (value): value is AddedItem['known'] =>
  typeof value === 'object' && value !== null && Object.values(value).every((one) => isText(one));
const isAnswers: Is<FurtherFile['known']> = (value): value is FurtherFile['known'] =>
  typeof value === 'object' && value !== null && Object.values(value).every((one) => listOf(isText)(one));
const isFile = recordOf<FurtherFile>({ kind: isText, known: isAnswers });
const isChoice = recordOf<ServerChoice>({
  label: isText,
  detail: isText,
  does: word('fields', 'nothing', 'open', 'ask', 'stop'),
  told: maybe(isTold),
  types: maybe(isText),
  file: maybe(isFile),
  adds: maybe(recordOf<AddedItem>({ list: isText, known: isWords })),
  edits: listOf(isServerEdit),
});

export const isServerSentence: Is<ServerSentence> = recordOf<ServerSentence>({
  is: word('sentence'),
  statement: isText,
  title: isText,
  quote: isText,
  asks: isText,
  place: either(isRange, isNull),
  version: either(isCount, isNull),
  choices: listOf(isChoice),
});

/** The end, with what is still to be done: where it is, and what is written there first. */
export interface ServerDone extends SentencesDone {
  readonly version: number | null;
  readonly next: readonly ServerPiece[];
}

export interface ServerPiece extends FurtherPiece {
  readonly place: SentenceRange | null;
  readonly edits: readonly ServerEdit[];
}

const isPiece = recordOf<ServerPiece>({
  label: isText,
  detail: isText,
  file: maybe(isFile),
  place: either(isRange, isNull),
  edits: listOf(isServerEdit),
});

export const isSentencesDone: Is<ServerDone> = recordOf<ServerDone>({
  is: word('done'),
  counts: isText,
  words: isText,
  version: either(isCount, isNull),
  next: listOf(isPiece),
});
