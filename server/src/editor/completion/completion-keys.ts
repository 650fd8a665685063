import { sayingWords } from '../../schema/saying-words.ts';
import type { Field, Shape } from '../../schema/shape.ts';
import { examplesLine, whereLine } from '../words/field-words.ts';
import type { Offer, Piece } from '../writing/offer.ts';
import type { Block } from '../writing/text-blocks.ts';
import type { Wanted } from '../writing/writing-shape.ts';
import type { Measure } from './completion-bounds.ts';
import { amountPieces, sayingPieces, saysSomething, wordsOfRequirement } from './completion-bounds.ts';
import { missingFields } from './completion-order.ts';

/** How a file is laid out where something is inserted. */
export interface Layout {
  readonly style: 'block' | 'flow';
  /** Column of the key that is inserted. */
  readonly column: number;
  readonly step: number;
  readonly today: string;
  readonly text: string;
}

/** The keys that are not there yet: those that must be first, then in the order of the work. */
export function keyOffers(wanted: Wanted, layout: Layout): readonly Offer[] {
  const { shape, slot, named, typical } = wanted;
  const present = new Map(wanted.present);
  if (slot.hasColon) present.delete(keyAt(wanted));
  if (shape.form === 'table') return rowOffers(wanted, present, layout);
  if (shape.form !== 'record') return [];
  if (shape.dimension !== undefined) {
    const measure = {
      dimension: named?.dimension ?? shape.dimension,
      examples: [...typical, ...examplesOf(shape)],
      today: layout.today,
    };
    const words = saysSomething(present.keys()) ? [] : wordsOfRequirement(shape);
    const rest = missingFields(shape, present).filter(({ key }) => !sayingWords.has(key));
    return [...words.map((field) => wordOffer(field, wanted, measure, layout)), ...fieldOffers(rest, wanted, layout)];
  }
  return fieldOffers(missingFields(shape, present), wanted, layout);
}

function keyAt({ slot, around }: Wanted): string {
  const written = [...(around?.present.keys() ?? [])];
  return written.find((key) => key.length === slot.word.end - slot.word.start) ?? '';
}

function fieldOffers(fields: readonly Field[], wanted: Wanted, layout: Layout): readonly Offer[] {
  return fields.map((field) =>
    offerOf(field.key, field.title, aboutField(field), behindKey(field.shape, field, layout), wanted),
  );
}

function wordOffer(field: Field, wanted: Wanted, measure: Measure, layout: Layout): Offer {
  const pieces =
    layout.style === 'block' && field.key === 'silent'
      ? [`silent: true\n${' '.repeat(layout.column)}checked: ${layout.today}`]
      : sayingPieces(field.key, measure);
  const [head = '', ...rest] = pieces;
  const withoutKey = typeof head === 'string' ? head.slice(field.key.length + 1) : '';
  return offerOf(field.key, field.description, aboutField(field), [withoutKey, ...rest], wanted, 'word');
}

function offerOf(
  key: string,
  detail: string,
  about: readonly Block[],
  behind: readonly Piece[],
  { slot }: Wanted,
  of: Offer['of'] = 'field',
): Offer {
  const pieces = slot.hasColon ? [`${slot.lead}${key}`] : [`${slot.lead}${key}:`, ...behind, slot.tail];
  const goesOn = !slot.hasColon && behind.some((piece) => typeof piece !== 'string' && piece.hole === 'rest');
  return { label: key, detail, about, of, pieces, span: slot.word, ...(goesOn && { goesOn }) };
}

/** Names that a table knows; of any other the writer must think. */
function rowOffers(wanted: Wanted, present: ReadonlyMap<string, string>, layout: Layout): readonly Offer[] {
  const { shape } = wanted;
  if (shape.form !== 'table') return [];
  const rows = [...shape.keys].filter(([key]) => !present.has(key));
  return rows.map(([key, { title, description }]) => {
    const about: readonly Block[] = description === '' ? [] : [{ block: 'line', text: description }];
    return offerOf(key, title, about, behindKey(shape.value, undefined, layout), wanted);
  });
}

/** What follows the colon: the form that the value has, with holes. */
export function behindKey(shape: Shape, field: Field | undefined, layout: Layout): readonly Piece[] {
  const inner = ' '.repeat(layout.column + layout.step);
  switch (shape.form) {
    case 'record':
    case 'table':
      if (shape.form === 'record' && shape.dimension !== undefined) return [' ', { hole: 'rest' }];
      return layout.style === 'flow' ? [' {', { hole: 'rest' }, '}'] : [`\n${inner}`, { hole: 'rest' }];
    case 'list':
      if (shape.item.form !== 'record' || shape.item.dimension !== undefined) return [' [', { hole: 'rest' }, ']'];
      return layout.style === 'flow' ? [' [{', { hole: 'rest' }, '}]'] : [`\n${inner}- `, { hole: 'rest' }];
    case 'quantity': {
      const examples = [...(field?.examples ?? []), ...shape.examples];
      return [' ', ...amountPieces({ dimension: shape.dimension, examples, today: layout.today })];
    }
    case 'text':
    case 'link':
      if (isProse(field)) return [' "', { hole: 'words' }, '"'];
      return field?.suggestions === undefined ? [' ', { hole: 'words' }] : [' ', { hole: 'rest' }];
    default:
      return [' ', { hole: 'rest' }];
  }
}

/** Words taken from a page hold colons and number signs: they always stand between quotes. */
function isProse(field: Field | undefined): boolean {
  return field !== undefined && ['quote', 'as_written', 'ambiguous', 'reason', 'text', 'note'].includes(field.key);
}

/** The examples of numbers with units in a requirement's own examples: `{at_least: 4 min, src: s1}` gives `4 min`. */
export function examplesOf(shape: Shape): readonly string[] {
  if (shape.form !== 'record') return shape.examples;
  const own = shape.examples.flatMap((example) => /: ([^,}\]]{1,30})[,}]/.exec(example)?.[1] ?? []);
  const inner = shape.fields.get('at_least')?.shape.examples ?? [];
  return [...own, ...inner];
}

export function aboutField(field: Field): readonly Block[] {
  const { shape } = field;
  const texts = [field.description || shape.description, examplesLine(field), whereLine(field.where ?? shape.where)];
  return texts.filter((text) => text !== '').map((text) => ({ block: 'line', text }));
}
