import type { Node, Quantity, Rec } from '../../model/node.ts';
import { fieldOf, isRequirement } from '../../model/walk.ts';
import { amountsIn } from './uncited.ts';

/** Which number a window of the site is for: a field by its key, and what it stands in. Data: an educator can read and correct it. */
interface WindowField {
  readonly window: string;
  readonly key: string;
  /** The record the field stands in, by its own key or that of its list. */
  readonly under?: readonly string[];
  /** A word the record holds: its method, its stage, what is done. */
  readonly beginsWith?: { readonly field: string; readonly word: string };
}

const waterPhases = [
  'first_rinse',
  'rinse',
  'final_rinse',
  'prewash',
  'enzyme_wash',
  'wash',
  'neutralise',
  'thermal',
] as const;
const inSteam = { field: 'modality', word: 'steam' } as const;

const windowFields: readonly WindowField[] = [
  { window: 'steam_temp', key: 'temp', beginsWith: inSteam },
  { window: 'steam_exposure', key: 'exposure', beginsWith: inSteam },
  { window: 'dry_time', key: 'dry', beginsWith: inSteam },
  { window: 'wash_temp', key: 'temp', under: waterPhases },
  { window: 'wash_temp', key: 'soak_temp' },
  { window: 'soak_time', key: 'soak' },
  { window: 'flush_volume', key: 'volume', under: ['flush'] },
  { window: 'flush_volume', key: 'volume', beginsWith: { field: 'do', word: 'flush' } },
  { window: 'flush_volume', key: 'flush_now' },
  { window: 'ultrasonic_frequency', key: 'frequency' },
  { window: 'ultrasonic_time', key: 'time', under: ['ultrasonic'] },
  { window: 'ultrasonic_time', key: 'time', beginsWith: { field: 'stage', word: 'ultrasonic' } },
  { window: 'lumen_bore', key: 'bore', under: ['lumens'] },
  { window: 'lumen_length', key: 'length', under: ['lumens'] },
];

/** A number for which a site may have a window. */
export interface WindowedNumber {
  readonly quantity: Quantity;
  readonly window: string;
}

const fieldsByKey = new Map<string, WindowField[]>();
for (const row of windowFields) fieldsByKey.set(row.key, [...(fieldsByKey.get(row.key) ?? []), row]);

/** All numbers of an entity that have a window by their field. */
export function windowedNumbers(entity: Rec): readonly WindowedNumber[] {
  const found: WindowedNumber[] = [];
  addNumbersIn(entity, found);
  return found;
}

function addNumbersIn(record: Rec, found: WindowedNumber[]): void {
  for (const key of Object.keys(record)) {
    const node = fieldOf(record, key);
    if (node === undefined) continue;
    const window = windowOf(key, record);
    if (window !== undefined) for (const quantity of amountsOf(node)) found.push({ quantity, window });
    addNumbersWithin(node, found);
  }
}

function addNumbersWithin(node: Node, found: WindowedNumber[]): void {
  if (node.node === 'record' && !isRequirement(node)) addNumbersIn(node, found);
  else if (node.node === 'list') for (const item of node.items) addNumbersWithin(item, found);
}

function amountsOf(node: Node): readonly Quantity[] {
  if (node.node === 'quantity') return [node];
  return node.node === 'record' && isRequirement(node) ? amountsIn(node) : [];
}

function windowOf(key: string, record: Rec): string | undefined {
  return fieldsByKey.get(key)?.find((row) => stands(row, record))?.window;
}

function stands({ under, beginsWith }: WindowField, record: Rec): boolean {
  const { at } = record;
  const name = typeof at.key === 'string' && !at.key.startsWith('[') ? at.key : at.parent?.key;
  if (under !== undefined && !under.includes(String(name))) return false;
  if (beginsWith === undefined) return true;
  const word = fieldOf(record, beginsWith.field);
  return word?.node === 'text' && word.text.startsWith(beginsWith.word);
}
