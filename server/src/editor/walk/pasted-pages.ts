import { counted } from '../../base/words.ts';
import type { FileRecord } from '../../library/file-record.ts';
import type { FurtherFile, Told } from '../../panel/sentences.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { pageHead } from '../page/page-head.ts';
import { type MadeStatements, type PagesTold, statementsFromRaw } from '../page/raw-statements.ts';
import type { Question, WalkChoice } from '../words/walk-choice.ts';
import { asking, ends } from '../words/walk-choice.ts';

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
  const found = kind === undefined ? undefined : statementsFromRaw(text, kind, tree, pagesTold(words));
  if (found === undefined) return undefined;
  const made = { ...found, ...documentIn(text, found) };
  if (told?.next !== 'page') return whatIsMade(made);
  if (made.unclear) return whereMarksStand(made);
  return words.length === 0 ? firstPage(made) : nextPage(made, words);
}

/** Pasted pages, and the file of their document as far as their head tells it. */
interface Made extends MadeStatements {
  readonly file?: FurtherFile;
}

function documentIn(text: string, { span, source }: MadeStatements): Pick<Made, 'file'> {
  if (source.doc === '') return {};
  const pages = text.slice(text.indexOf('\n', span.start) + 1, span.end);
  const { document } = pageHead(pages);
  // What the file says of its source counts, whatever else the page has.
  const own = Object.entries(source).flatMap(([key, words]) => (words === '' ? [] : [[key, [words]] as const]));
  return { file: { kind: 'document', known: { ...document, ...Object.fromEntries(own) } } };
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

function putIn({ edits, file }: Made, label: string, detail = ''): WalkChoice {
  return { label, detail, does: 'nothing', edits, ...(file !== undefined && { file }) };
}

function whatIsMade(made: Made): Question {
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

function leaveOpen(made: Made): WalkChoice {
  return putIn(made, 'Leave the pages open', 'each sentence stays a finding until its page is written');
}

function whereMarksStand(made: Made): Question {
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

/** What happens to the sentences that are not asked about. */
function laterMarks({ sentences, marks }: Made): string {
  return sentences.some(({ isFound }) => isFound)
    ? 'Only sentences without a page mark are asked about: further marks are found by themselves.'
    : marks === 0
      ? 'No page mark stands in it.'
      : '';
}

const mostPages = 60;

function firstPage(made: Made): Question {
  const first = made.sentences.find(({ page }) => page === undefined)?.sentence ?? '';
  const numbers = Array.from({ length: mostPages }, (_none, at) => String(at + 1));
  return {
    asks: `Which page of the document does the pasted text begin on? ${laterMarks(made)}`,
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
  const isMarked = sentences.some(({ isFound }, at) => isFound && at > last);
  const upTo = isMarked ? 'up to the next page mark' : 'up to its end';
  const all = putIn(made, `No: it all stands on page ${page}, ${upTo}`, 'no other page begins in between');
  if (!Number.isInteger(page) || rest.length === 0)
    return { asks: 'The pages are told.', choices: [putIn(made, make(made)), ...ends] };
  return {
    asks: `Does page ${page + 1} begin in what follows? If so, choose its first sentence; type to search.`,
    choices: [
      all,
      ...rest.map(([at, { sentence, section }]) => pages(sentence, [...words, String(at)], section)),
      ...ends,
    ],
  };
}
