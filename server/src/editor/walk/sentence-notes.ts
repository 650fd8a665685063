import type { Edit } from '../../base/problem.ts';
import type { FileRecord } from '../../library/file-record.ts';
import { columnsIn } from '../../quantity/prose/column-titles.ts';
import { nothingNeeded, sentToService } from '../../quantity/prose/named/acts.ts';
import { untried } from '../../quantity/prose/named/untried.ts';
import { shapeOf } from '../../schema/shapes.ts';
import { appendItem, insertEntry } from '../../syntax/edits.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { Sentence } from '../reading/open-sentences.ts';
import { intoCleaning } from '../reading/quote-into-cleaning.ts';
import type { WalkChoice } from '../words/walk-choice.ts';
import { asValue } from '../writing/bare.ts';
import { insertFields, type NewField } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';

/** Why a sentence needs no field, in words that stand in the file. */
const reasons = [
  'general advice',
  'describes the device',
  'said in another sentence',
  'contact, warranty or disposal',
  'about another device',
];

export function reasonChoices(record: FileRecord, sentence: Sentence): readonly WalkChoice[] {
  return reasons.flatMap((reason) => {
    const edits = noted(record, sentence, reason);
    return edits === undefined ? [] : [{ label: reason, detail: '', does: 'nothing' as const, edits }];
  });
}

/** Titles and catalogue numbers, materials without a verb, the heading of a table: lines that name and ask for nothing. */
export function reasonIn({ kind }: FileRecord, { quote }: Sentence): string | undefined {
  if (kind !== 'device' && kind !== 'packaging') return undefined;
  if (columnsIn(quote) !== undefined) return 'heading of a table';
  if (sentToService.test(quote)) return 'service by the maker, for which there is no field';
  if (nothingNeeded.test(quote)) return 'asks for nothing';
  if (/^(?:please\s)?(?:read|keep|retain)\s(?:this|these|the)\s(?:documents?|instructions?|manuals?)\b/i.test(quote))
    return 'general advice';
  if (asks.test(quote) || /[°%]|\d\s?(?:min|s|h|ml|l|bar|kg)\b/i.test(quote)) return undefined;
  if (
    /\b(?:instructions? for (?:use|reprocessing)|reprocessing instructions?|rev(?:ision|\.)\s?\w|issued|gebrauchsanweisung|mode d.emploi)\b/i.test(
      quote,
    )
  )
    return 'title of the document';
  return named.test(quote) ? 'describes the device' : undefined;
}

const asks =
  /\b(?:must|shall|should|do not|never|only|not|may|read|follow|keep|use|clean|rinse|flush|check|remove|discard|before|after|muss|müssen|nicht|nur|vor|nach|doit|doivent|ne|pas|seulement|avant|après)\b/i;
const named =
  /\b(?:cat(?:alogue)?\. ?n[or]s?\b|catalogue numbers?|article numbers?|REF\b|Art\.-Nr|reusable|wiederverwendbar|réutilisable)|^(?:made of\s|material:?\s)?\p{L}*\s?(?:stainless steel|titanium|silicone|peek|aluminium|edelstahl|acier inoxydable)\b[^.]{0,60}\.?$/iu;

/** `not_needed` with the sentence as it stands, so that none of its numbers is left over, and the reason. */
export function noted({ text }: FileRecord, { node, quote }: Sentence, reason: string): readonly Edit[] | undefined {
  const value = `{text: ${quoteScalar(quote)}, reason: ${asValue(reason)}}`;
  const known = valueUnder(node, 'not_needed');
  const edit =
    known?.node === 'list' ? appendItem(text, known, [value]) : insertEntry(text, node, 'not_needed', [`[${value}]`]);
  return edit === undefined ? undefined : [edit];
}

/** What no field holds stays in the words of the page, with the reason. */
export function keepQuoted(
  record: FileRecord,
  sentence: Sentence,
  reason = 'no field is for it',
): readonly WalkChoice[] {
  const edits = noted(record, sentence, reason);
  return edits === undefined
    ? []
    : [{ label: 'Keep it as a quoted statement', detail: `noted: ${reason}`, does: 'nothing', edits }];
}

/** `has not been tested for this device`: the page neither permits nor forbids it. */
export function isUntried(quote: string): boolean {
  return untried.test(quote);
}

const longestQuoted = 200;

/** The sentence, of which a very long one ends between two words. */
function shortened(quote: string): string {
  return quote.length <= longestQuoted ? quote : `${quote.slice(0, quote.lastIndexOf(' ', longestQuoted))} …`;
}

/** The field that the sentence is about, or a step with nothing but what is done, with its words as what is unclear. */
export function leftUnclear(
  { text, kind }: FileRecord,
  root: MapTree,
  { id, quote }: Sentence,
  field: NewField | undefined,
): readonly Edit[] | undefined {
  if (kind === undefined || field === undefined) return undefined;
  const { path, head, value } = field;
  const isItem = path.endsWith('[]');
  // A plain text has no place for what is unclear.
  if (!isItem && !value.startsWith('{')) return undefined;
  if (isItem && (head === undefined || marked.pieces(head).length !== 1)) return undefined;
  const parts = [...(isItem ? [head] : []), `ambiguous: ${quoteScalar(shortened(quote))}`, `src: ${asValue(id)}`];
  const { fields } = intoCleaning(root, [{ path, value: `{${parts.join(', ')}}` }], id);
  const { edits, made } = insertFields(text, root, shapeOf(kind), fields);
  return made.length === 0 ? undefined : edits;
}
