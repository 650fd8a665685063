import type { Edit } from '../../base/problem.ts';
import { span } from '../../base/span.ts';
import { shapeOf } from '../../schema/shapes.ts';
import { fileForm } from '../../syntax/edits.ts';
import type { MapTree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import { insertFields, type NewField } from '../writing/insert-fields.ts';
import { linesOfList } from '../writing/list-lines.ts';
import { intoCleaning } from './quote-into-cleaning.ts';
import type { FieldsFromQuote, Into } from './quote-to-fields.ts';
import { insertionOf } from './quote-to-fields.ts';

/**
 * The same fields with their new stage as another way of cleaning: what stood there is one way, the new stage the other. Undefined where no
 * stage is new, or where the file has more than a plain list of stages.
 */
export function asOtherWay({ record, kind, tree }: Into, found: FieldsFromQuote): FieldsFromQuote | undefined {
  const { fields } = intoCleaning(tree, found.fields, found.statement);
  const stage = fields.find(({ path }) => path === 'cleaning.all_of[]');
  const edit = stage === undefined ? undefined : besideAll(record.text, tree, stage);
  if (edit === undefined) return undefined;
  const others = fields.filter((one) => one !== stage);
  const { edits } = insertFields(record.text, tree, shapeOf(kind), others);
  // A step that goes into the list that is written anew.
  const isInside = edits.some((one) => one.span.start <= edit.span.end && one.span.end >= edit.span.start);
  if (isInside) return undefined;
  return { ...found, insertions: [...edits, edit].map(insertionOf) };
}

/** A further way beside the stages that are there; undefined where they are not a plain list of stages that are all done. */
export function besideAll(
  text: string,
  tree: MapTree,
  { value, lines = [value] }: Pick<NewField, 'value' | 'lines'>,
): Edit | undefined {
  const cleaning = valueUnder(tree, 'cleaning');
  const [entry, other] = cleaning?.node === 'map' ? cleaning.entries : [];
  if (entry?.key.text !== 'all_of' || other !== undefined || entry.value.node !== 'list') return undefined;
  const own = linesOfList(text, entry.value);
  if (own === undefined) return undefined;
  const { lineEnd } = fileForm(text);
  const dash = ' '.repeat(own.column);
  const before =
    entry.value.items.length === 1 ? own.lines : [`${dash}- all_of:`, ...own.lines.map((line) => `    ${line}`)];
  const added = lines.map((line, at) => `${dash}${at === 0 ? '- ' : '  '}${line}`);
  return {
    span: span(entry.key.span.start, own.end),
    text: ['any_of:', ...before, ...added].join(lineEnd),
  };
}
