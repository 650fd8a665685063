import { counted } from '../base/words.ts';
import type { FileRecord } from '../library/file-record.ts';
import type { Told } from '../panel/sentences.ts';
import type { MapTree } from '../syntax/tree.ts';
import { type MadeStatements, type PagesTold, statementsFromRaw } from './raw-statements.ts';
import type { Question, WalkChoice } from './walk-choice.ts';
import { asking, ends } from './walk-choice.ts';

/**
 * Making statements of pasted pages: what is a sentence and what is not is said, and the page is asked for once where no mark tells it. What
 * is told stands in `words`: `head` or `foot` for marks that may stand at either; else the first page and the sentences, counted from 0, that
 * begin the pages after it.
 */
export function aboutPasted(
  record: FileRecord,
  tree: MapTree | undefined,
  told: Told | undefined,
): Question | undefined {
  const { text, kind } = record;
  const words = told?.words ?? [];
  const made = kind === undefined ? undefined : statementsFromRaw(text, kind, tree, pagesTold(words));
  if (made === undefined) return undefined;
  if (told?.next !== 'page') return whatIsMade(made);
  if (made.unclear) return whereMarksStand(made);
  return words.length === 0 ? firstPage(made) : nextPage(made, words);
}

function pagesTold(words: readonly string[]): PagesTold {
  const [first, ...begins] = words;
  if (first === 'head' || first === 'foot') return { marksAt: first, begins: [] };
  const page = Number(first);
  return Number.isInteger(page) && page > 0 ? { first: page, begins: begins.map(Number) } : { begins: [] };
}

function make({ sentences }: MadeStatements): string {
  const { length } = sentences;
  return length === 1 ? 'Make a statement of the pasted sentence' : `Make ${length} statements of the pasted sentences`;
}

function putIn({ edits }: MadeStatements, label: string, detail = ''): WalkChoice {
  return { label, detail, does: 'nothing', edits };
}

function whatIsMade(made: MadeStatements): Question {
  const { sentences, headings, marks, leftOut } = made;
  const open = sentences.filter(({ page }) => page === undefined).length;
  const heads = sentences.filter(({ isTableHead }) => isTableHead).length;
  const parts = [
    marks === 0 ? '' : `${counted(marks, 'page mark')} for the pages`,
    headings === 0 ? '' : `${counted(headings, 'heading')} for the sections`,
    heads === 0 ? '' : `${counted(heads, 'table head')} noted as such`,
    leftOut.length === 0 ? '' : `left out: ${leftOut.map((words) => `“${words}”`).join(', ')}`,
    open === 0 ? '' : 'the page is asked for next',
  ].filter((part) => part !== '');
  const choice = open === 0 ? putIn(made, make(made), parts.join(', ')) : pages(make(made), [], parts.join(', '));
  return { asks: 'The sentences are kept word for word.', choices: [choice, ...ends] };
}

function pages(label: string, words: readonly string[], detail = ''): WalkChoice {
  return asking(label, { words, next: 'page' }, detail);
}

function leaveOpen(made: MadeStatements): WalkChoice {
  return putIn(made, 'Leave the pages open', 'each sentence stays a finding until its page is written');
}

function whereMarksStand(made: MadeStatements): Question {
  return {
    asks: 'Where on its page does the page number stand?',
    choices: [
      leaveOpen(made),
      pages('At the head of the page', ['head'], 'what follows it stands on that page'),
      pages('At the foot of the page', ['foot'], 'what is above it stands on that page'),
      ...ends,
    ],
  };
}

const mostPages = 60;

function firstPage(made: MadeStatements): Question {
  const first = made.sentences.find(({ page }) => page === undefined)?.sentence ?? '';
  const numbers = Array.from({ length: mostPages }, (_none, at) => String(at + 1));
  return {
    asks: 'No page number was found in it. On which page does it begin?',
    choices: [
      leaveOpen(made),
      ...numbers.map((page) => pages(`Page ${page}`, [page], page === '1' ? first : '')),
      ...ends,
    ],
  };
}

/** Once for each page: where the next one begins. */
function nextPage(made: MadeStatements, words: readonly string[]): Question {
  const { sentences } = made;
  const last = words.length === 1 ? 0 : Number(words.at(-1));
  const page = Number(words[0]) + words.length - 1;
  const rest = [...sentences.entries()].filter(([at, { isFound }]) => at > last && !isFound);
  const all = putIn(made, `None: all that follows stands on page ${page} too`);
  if (!Number.isInteger(page) || rest.length === 0)
    return { asks: 'The pages are told.', choices: [putIn(made, make(made)), ...ends] };
  return {
    asks: `Which sentence is the first of page ${page + 1}? Type to search.`,
    choices: [
      all,
      ...rest.map(([at, { sentence, section }]) => pages(sentence, [...words, String(at)], section)),
      ...ends,
    ],
  };
}
