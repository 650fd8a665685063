import type { Edit } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import { cleanPaste } from '../quantity/prose/clean-paste.ts';
import { numberSentences } from '../quantity/prose/sentences.ts';
import { tokenize } from '../quantity/prose/token.ts';
import type { Kind } from '../schema/kinds.ts';
import { shapeOf } from '../schema/shapes.ts';
import { fileForm } from '../syntax/edits.ts';
import { quoteScalar } from '../syntax/quote.ts';
import type { MapTree } from '../syntax/tree.ts';
import { type RawBlock, rawBlock } from './raw-lines.ts';

/**
 * Sentences of a page that were pasted under `statements:` as they are: each becomes a statement with an id that the file does not use yet,
 * the document of the file's first source, and its words between quotation marks. The page is left open: which one it is cannot be known.
 */
export interface MadeStatements {
  /** From the line of `statements:` to the end of what stands under it. */
  readonly span: Span;
  readonly count: number;
  readonly edits: readonly Edit[];
}

export function statementsFromRaw(text: string, kind: Kind, tree: MapTree | undefined): MadeStatements | undefined {
  const keys = new Set(shapeOf(kind).fields.keys());
  const block = keys.has('statements') ? rawBlock(text, keys) : undefined;
  if (block === undefined || block.runs.length === 0) return undefined;
  const { lineEnd, step } = fileForm(text);
  const indent = block.indent ?? ' '.repeat(step);
  const source = sourceIn(text, tree);
  let next = freeNumber(text, block);
  let count = 0;
  const edits: Edit[] = [];
  for (const { span, paragraphs } of block.runs) {
    const lines = paragraphs.flatMap(sentencesOf).map((sentence) => {
      count++;
      return `${indent}s${next++}: {${source}, page: , quote: ${doubleQuoted(sentence)}}`;
    });
    edits.push({ span, text: lines.join(lineEnd) });
  }
  return { span: block.span, count, edits };
}

/** A number that no id of the file has and that nothing cites: a citation left over must not come to mean another sentence. */
function freeNumber(text: string, { runs }: RawBlock): number {
  let rest = '';
  let from = 0;
  for (const { span } of runs) {
    rest += `${text.slice(from, span.start)}\n`;
    from = span.end;
  }
  rest += text.slice(from);
  let highest = 0;
  for (const [, digits] of rest.matchAll(/\bs(\d{1,6})\b/g)) highest = Math.max(highest, Number(digits));
  return highest + 1;
}

function sourceIn(text: string, tree: MapTree | undefined): string {
  const sources = tree?.entries.find(({ key }) => key.text === 'sources')?.value;
  const first = sources?.node === 'list' ? sources.items[0] : undefined;
  const written = (name: string): string => {
    const value = first?.node === 'map' ? first.entries.find(({ key }) => key.text === name)?.value : undefined;
    return value?.node === 'scalar' ? text.slice(value.span.start, value.span.end) : '';
  };
  return `doc: ${written('doc')}, rev: ${written('rev')}`;
}

/** A semicolon joins what belongs together on the page, so that it ends no quote. */
function sentencesOf(paragraph: string): readonly string[] {
  const clean = cleanPaste(paragraph).text.replace(/\s+/g, ' ').trim();
  const tokens = tokenize(clean, 'en');
  const numbers = numberSentences(tokens, clean);
  const found: string[] = [];
  let from = 0;
  for (const [at, token] of tokens.entries()) {
    const ends = numbers[at + 1] !== numbers[at] && token.text !== ';';
    if (!ends && at + 1 < tokens.length) continue;
    const end = at + 1 < tokens.length ? token.end : clean.length;
    const sentence = clean.slice(from, end).trim();
    if (/\p{L}/u.test(sentence)) found.push(sentence);
    from = end;
  }
  return found;
}

function doubleQuoted(text: string): string {
  const quoted = quoteScalar(text);
  return quoted.startsWith('"') ? quoted : JSON.stringify(text);
}
