import type { Span } from '../../base/span.ts';
import { counted } from '../../base/words.ts';
import type { FileRecord } from '../../library/file-record.ts';
import type { SentenceContent, SentencesDone, Told } from '../../panel/sentences.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { type Sentence, sentencesOf } from '../reading/open-sentences.ts';
import { languageOf } from '../reading/quote-language.ts';
import { stepsMeant } from '../reading/quote-things.ts';
import type { WalkChoice } from '../words/walk-choice.ts';
import { caution } from '../words/walk-choice.ts';
import { aboutPasted } from './pasted-pages.ts';
import { asked } from './sentence-questions.ts';

/**
 * Part `walk`: from sentence to sentence of an instruction, what is proposed, asked, chosen or left open, as data; dialogs are the client’s.
 */

export interface WalkStep extends SentenceContent {
  /** The whole statement; nothing when the choice is about the pasted text as a whole. */
  readonly place: Span | undefined;
  readonly choices: readonly WalkChoice[];
}

/**
 * Goes through the statements of an instruction in their order. What the words of a sentence say is proposed, and taken with one key; a
 * bound word, a method or a stage that they leave open is asked and never guessed. `after`: the statement that was shown last.
 */
export function nextSentence(record: FileRecord, tree: MapTree | undefined, after: string): WalkStep | SentencesDone {
  const raw = pastedText(record, tree);
  if (raw !== undefined) return raw;
  const all = tree === undefined ? [] : sentencesOf(tree);
  const from = all.findIndex(({ id }) => id === after) + 1;
  const next = all.find(({ state }, at) => at >= from && state === 'open');
  if (tree === undefined || next === undefined) return { is: 'done', ...endWords(tree, all) };
  return sentenceStep(record, tree, next, { words: [] });
}

/** The same statement again, or the same pasted text, with what somebody has told of it. */
export function sameSentence(
  record: FileRecord,
  tree: MapTree | undefined,
  statement: string,
  told: Told,
): WalkStep | SentencesDone {
  const raw = statement === '' ? pastedText(record, tree, told) : undefined;
  if (raw !== undefined) return raw;
  const found = tree === undefined ? undefined : sentencesOf(tree).find(({ id }) => id === statement);
  return tree === undefined || found === undefined
    ? nextSentence(record, tree, statement)
    : sentenceStep(record, tree, found, told);
}

/** Text that was pasted as it is comes first: statements are made of all its sentences at once. */
function pastedText(record: FileRecord, tree: MapTree | undefined, told?: Told): WalkStep | undefined {
  const question = aboutPasted(record, tree, told);
  if (question === undefined) return undefined;
  return { is: 'sentence', statement: '', place: undefined, title: 'Pasted text', quote: '', ...question };
}

function sentenceStep(record: FileRecord, tree: MapTree, sentence: Sentence, told: Told): WalkStep {
  const all = sentencesOf(tree);
  const reading = stepsMeant(readQuote(sentence.quote, languageOf(tree, sentence)));
  const place = [sentence.page === '' ? '' : `page ${sentence.page}`, sentence.section].filter((part) => part !== '');
  const { asks, choices } = asked(record, tree, sentence, { reading, told });
  return {
    is: 'sentence',
    statement: sentence.id,
    place: { start: sentence.offset, end: sentence.node.span.end },
    title: [`Sentence ${all.findIndex(({ id }) => id === sentence.id) + 1} of ${all.length}`, ...place].join(' · '),
    quote: sentence.quote,
    asks,
    choices,
  };
}

function endWords(tree: MapTree | undefined, all: readonly Sentence[]): Omit<SentencesDone, 'is'> {
  const ids = (state: Sentence['state']): readonly string[] =>
    all.filter((one) => one.state === state).map(({ id }) => id);
  const [fields, nothing, open] = [ids('fields'), ids('nothing'), ids('open')];
  if (all.length === 0)
    return {
      counts: '',
      words: 'There are no sentences here yet: paste the text of the instruction under "statements:".',
    };
  const left =
    open.length === 0
      ? 'none is left open'
      : `${open.length} left open (${open.slice(0, 12).join(', ')}${open.length > 12 ? ', ...' : ''})`;
  const toDo = (tree?.entries ?? []).filter(({ value }) => value.node === 'empty').map(({ key }) => key.text);
  const write = toDo.length === 0 ? '' : ` Still to write: ${toDo.join(', ')}.`;
  const counts = `${counted(all.length, 'sentence')}: ${fields.length} became fields, ${nothing.length} say nothing to encode, ${left}.`;
  return { counts, words: `${counts}${write} ${caution}` };
}
