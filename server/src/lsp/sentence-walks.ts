import { afterSentences, isDescribed } from '../editor/walk/after-sentences.ts';
import { nextSentence, sameSentence, type WalkStep } from '../editor/walk/sentence-walk.ts';
import type { WalkChoice } from '../editor/words/walk-choice.ts';
import type { Told } from '../panel/sentences.ts';
import type { DocumentAt, DocumentPlaces } from './document-places.ts';
import { treeOf } from './document-places.ts';
import { fieldIn } from './params.ts';
import { rangeOf } from './places.ts';
import { addressOf } from './uris.ts';
import { textEditsOf } from './workspace-edit.ts';

const mostWords = 100;
const mostLetters = 1_000;

/** The next sentence of an instruction that nothing was made of yet, or the same one again with what was told of it. */
export async function nextOfSentences(
  params: unknown,
  places: DocumentPlaces,
  versions: ReadonlyMap<string, number>,
): Promise<unknown> {
  const uri = fieldIn(params, 'uri');
  const at = typeof uri === 'string' ? await places.text(uri) : undefined;
  if (typeof uri !== 'string' || at === undefined) return null;
  const tree = treeOf(at.record);
  const told = toldIn(fieldIn(params, 'told'));
  const statement = textOf(fieldIn(params, 'statement'));
  const step =
    told === undefined ? nextSentence(at.record, tree, statement) : sameSentence(at.record, tree, statement, told);
  const version = versions.get(addressOf(uri)) ?? null;
  if (step.is === 'done') return { ...step, next: await furtherPieces(uri, places), version };
  return { ...sent(await withoutKnownFiles(step, uri, places), at), version };
}

/** The file of a document is asked for where the library has none. Only then are other files needed, so that only then anybody waits for them. */
async function withoutKnownFiles(step: WalkStep, uri: string, places: DocumentPlaces): Promise<WalkStep> {
  if (step.choices.every(({ file }) => file === undefined)) return step;
  const view = (await places.document(uri))?.home.engine.view();
  const isNeeded = ({ file }: WalkChoice): boolean =>
    view !== undefined && !isDescribed(file?.known.doc?.[0] ?? '', file?.known.rev?.[0] ?? '', view);
  return {
    ...step,
    choices: step.choices.map((choice) => {
      const { file: _none, ...rest } = choice;
      return isNeeded(choice) ? choice : rest;
    }),
  };
}

/** Only here are other files needed, so that only here anybody waits for them. */
async function furtherPieces(uri: string, places: DocumentPlaces): Promise<unknown> {
  const at = await places.document(uri);
  const tree = at === undefined ? undefined : treeOf(at.record);
  if (at === undefined || tree === undefined) return [];
  return afterSentences(at.record, tree, at.home.engine.view()).map(({ at: place, edits, ...piece }) => ({
    ...piece,
    place: place === undefined ? null : rangeOf(at.record, place),
    edits: textEditsOf(at.record, edits),
  }));
}

function sent({ is, statement, title, quote, asks, place, choices }: WalkStep, { record }: DocumentAt) {
  return {
    is,
    statement,
    title,
    quote,
    asks,
    place: place === undefined ? null : rangeOf(record, place),
    choices: choices.map(({ edits, ...choice }) => ({ ...choice, edits: textEditsOf(record, edits) })),
  };
}

function textOf(value: unknown): string {
  return typeof value === 'string' ? value : '';
}

/** As it was sent out with a choice; anything else counts as nothing told. */
function toldIn(value: unknown): Told | undefined {
  const words = fieldIn(value, 'words');
  if (!Array.isArray(words) || words.length > mostWords) return undefined;
  const way = fieldIn(value, 'way');
  const next = fieldIn(value, 'next');
  const field = fieldIn(value, 'field');
  const text = fieldIn(value, 'text');
  return {
    words: words.map(textOf),
    ...(typeof way === 'string' && { way }),
    ...(typeof field === 'string' && { field }),
    ...(typeof text === 'string' && { text: text.slice(0, mostLetters) }),
    ...(isNext(next) && { next }),
  };
}

const nexts: readonly unknown[] = ['bounds', 'reason', 'field', 'more', 'instead', 'page'] satisfies Told['next'][];

function isNext(value: unknown): value is NonNullable<Told['next']> {
  return nexts.includes(value);
}
