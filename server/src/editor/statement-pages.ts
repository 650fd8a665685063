import type { Edit } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import { counted } from '../base/words.ts';
import { insertEntry } from '../syntax/edits.ts';
import type { MapTree } from '../syntax/tree.ts';
import { type Sentence, sentencesOf } from './reading/open-sentences.ts';
import { lineEndAt } from './writing/writing-scan.ts';

/** Statements of which a page is told that is not theirs: those that are selected, or all of the section around the cursor, go to another at once. */
export interface MovedStatements {
  readonly title: string;
  readonly edits: readonly Edit[];
}

const mostPagesOffered = 4;

export function movedToPages(text: string, root: MapTree, asked: Span): readonly MovedStatements[] {
  const all = sentencesOf(root);
  const chosen = all.filter(({ offset, node }) => offset <= asked.end && asked.start <= lineEndAt(text, node.span.end));
  const [first, second] = chosen;
  if (first === undefined) return [];
  if (second !== undefined) return moves(text, all, chosen, `these ${chosen.length} statements`);
  // The page of a single one is a number to type.
  const section = sectionAround(all, first);
  return section.length < 2
    ? []
    : moves(text, all, section, `the ${counted(section.length, 'statement')} of “${first.section}”`);
}

/** Those of the same section that stand beside it in one row. */
function sectionAround(all: readonly Sentence[], { id, section }: Sentence): readonly Sentence[] {
  if (section === '') return [];
  const at = all.findIndex((one) => one.id === id);
  const isOther = (one: Sentence): boolean => one.section !== section;
  const begin = all.slice(0, at).findLastIndex(isOther) + 1;
  const end = all.findIndex((one, index) => index > at && isOther(one));
  return all.slice(begin, end < 0 ? all.length : end);
}

/** The pages of the other statements, and one more, the nearest first. */
function moves(
  text: string,
  all: readonly Sentence[],
  chosen: readonly Sentence[],
  what: string,
): readonly MovedStatements[] {
  const known = all.flatMap(({ page }) => (/^[1-9]\d{0,3}$/.test(page) ? [Number(page)] : []));
  const last = known.reduce((most, page) => Math.max(most, page), 0);
  const own = Number(chosen[0]?.page ?? '') || 1;
  const pages = [...new Set([...known, last + 1])].filter((page) => chosen.some((one) => one.page !== String(page)));
  return pages
    .toSorted((a, b) => Math.abs(a - own) - Math.abs(b - own) || b - a)
    .slice(0, mostPagesOffered)
    .map((page) => ({
      title: `Move ${what} to page ${page}`,
      edits: chosen.flatMap((one) => onPage(text, one, page)),
    }));
}

function onPage(text: string, { node, page }: Sentence, wanted: number): readonly Edit[] {
  if (page === String(wanted)) return [];
  const entry = node.entries.find(({ key }) => key.text === 'page');
  if (entry === undefined) {
    const edit = insertEntry(text, node, 'page', [String(wanted)]);
    return edit === undefined ? [] : [edit];
  }
  if (entry.value.node !== 'empty') return [{ span: entry.value.span, text: String(wanted) }];
  const colon = text.indexOf(':', entry.key.span.end) + 1;
  const end = text[colon] === ' ' ? colon + 1 : colon;
  return [{ span: { start: colon, end }, text: ` ${wanted}` }];
}
