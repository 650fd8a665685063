import { besideSilence } from '../../model/silence.ts';
import type { Field, RecordShape } from '../../schema/shape.ts';
import { shapeOf } from '../../schema/shapes.ts';
import { unquoted } from '../writing/writing-flow.ts';

/** Fields that few files need: they stand last, so that the first page of a list is what a person looks for. */
const rare: ReadonlySet<string> = new Set([
  'excludes',
  'identifiers',
  'applies_from',
  'applies_to',
  'dims',
  'inherits',
  'overrides',
  'tse_note',
  'reuse',
  'disposal',
  'contact',
  'stock',
  'unordered',
  'prefer',
  'couples',
  'checked',
  'ambiguous',
  'ask',
  'not_applicable',
  'defers_to',
  'edition',
  'as_written',
  'strength',
  'when',
]);

/** They say nothing about the work itself: after what does. */
const general: ReadonlySet<string> = new Set(['src', 'silent', 'note', 'notes', 'review']);

/**
 * The fields that may still be written, in the order in which they are wanted: what the schema demands, then the order of the work, then what is
 * general, then what is rare. A page that is silent says nothing else, and a page that says something is not silent.
 */
export function missingFields(shape: RecordShape, present: ReadonlyMap<string, string>): readonly Field[] {
  const missing = [...shape.fields.values()].filter(({ key }) => !present.has(key) && goesWith(key, present));
  const rank = (field: Field): number => rankOf(field.key, shape, present);
  return missing.toSorted((a, b) => rank(a) - rank(b));
}

/** The first fields in that order, without what is general or rare. */
export function commonFields(shape: RecordShape): readonly Field[] {
  return missingFields(shape, new Map()).filter(({ key }) => !rare.has(key) && !general.has(key));
}

function goesWith(key: string, present: ReadonlyMap<string, string>): boolean {
  if (present.get('silent') === 'true') return besideSilence.has(key) && key !== 'use';
  return key !== 'silent' || [...present.keys()].every((one) => besideSilence.has(one) && one !== 'use');
}

function rankOf(key: string, { required, fields }: RecordShape, present: ReadonlyMap<string, string>): number {
  if (required.includes(key)) return 0;
  if (rare.has(key)) return 4;
  if (general.has(key)) return 3;
  return fields.has('stage') && fields.has('all_of') ? rankInStage(key, present) : 1;
}

const joins: ReadonlySet<string> = new Set(['stage', 'all_of', 'any_of', 'id']);

/** A node of cleaning has the fields of every way of cleaning: those of its own stage come first, or what says which stage it is. */
function rankInStage(key: string, present: ReadonlyMap<string, string>): number {
  const own = shapeOf('device').fields.get(unquoted(present.get('stage') ?? ''))?.shape;
  if (own?.form !== 'record') return joins.has(key) ? 1 : 2;
  return own.fields.has(key) ? 1 : 3.5;
}
