import { nearest } from '../base/nearest.ts';
import type { Dimension } from './quantity.ts';
import { ambiguousUnits, refusedUnits } from './unclear-units.ts';
import { type Unit, unitList } from './unit-list.ts';
import { unitWords } from './unit-words.ts';

/** What a unit's text was found to be. `other-kind` is a unit of the list that measures something else than the field asks for. */
export type UnitFinding =
  | { readonly found: 'unit'; readonly unit: Unit }
  | { readonly found: 'ambiguous'; readonly choices: readonly string[] }
  | { readonly found: 'other-kind'; readonly dimension: Dimension }
  | { readonly found: 'refused'; readonly hint: string }
  | { readonly found: 'unknown'; readonly suggestion?: string };

const lookAlikes: ReadonlyMap<string, string> = new Map([
  ['\u03bc', 'µ'],
  ['\u00ba', '°'],
  ['\u02da', '°'],
  ['\u00a0', ' '],
  ['\u202f', ' '],
  ['\u2009', ' '],
  ['\u2007', ' '],
  ['\u2033', '"'],
  ['\u201d', '"'],
  ['\u00b2', '2'],
  ['\u00b3', '3'],
  ['\u2083', '3'],
]);

/** Replaces characters that look like the ones in the list, one for one, so that offsets stay. */
export function foldLookAlikes(text: string): string {
  let folded = '';
  for (let i = 0; i < text.length; i++) {
    const character = text.charAt(i);
    folded += lookAlikes.get(character) ?? character;
  }
  return folded;
}

/** Every spelling of a unit that a rule file may use, the canonical one first. */
export function spellingsOf(unit: Unit): readonly string[] {
  return [unit.name, ...unit.variants, ...unit.fileOnly];
}

function addTo<Key, Value>(map: Map<Key, Value[]>, key: Key, value: Value): void {
  const values = map.get(key);
  if (values === undefined) map.set(key, [value]);
  else if (!values.includes(value)) values.push(value);
}

const byDimension = new Map<Dimension, Unit[]>();
const bySpelling = new Map<string, Unit[]>();
const byLowerCase = new Map<string, Unit[]>();
for (const unit of unitList) {
  addTo(byDimension, unit.dimension, unit);
  for (const spelling of spellingsOf(unit)) {
    addTo(bySpelling, spelling, unit);
    if (spelling.length > 1) addTo(byLowerCase, spelling.toLowerCase(), unit);
  }
}

/** Units of one dimension, the default one first. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return byDimension.get(dimension) ?? [];
}

function unitsSpelled(text: string): readonly Unit[] {
  return bySpelling.get(text) ?? (text.length > 1 ? byLowerCase.get(text.toLowerCase()) : undefined) ?? [];
}

/**
 * The unit that `text` spells, as it may stand in a rule file. With a dimension, only its units count (`F` is °F in a temperature and
 * French in a length). Without one, a spelling that names several units is `ambiguous`; °C, °F and K are then
 * taken as levels.
 */
export function findUnit(text: string, dimension?: Dimension): UnitFinding {
  const folded = bySpelling.has(text) ? text : foldLookAlikes(text.trim()).replaceAll('  ', ' ');
  if (dimension === undefined) return findUnitAnywhere(folded);
  const exact = bySpelling.get(folded)?.find((unit) => unit.dimension === dimension);
  if (exact !== undefined) return { found: 'unit', unit: exact };
  const unclear = findUnclear(folded, dimension);
  if (unclear !== undefined) return unclear;
  const spelled = folded.length > 1 ? (byLowerCase.get(folded.toLowerCase()) ?? []) : [];
  const loose = spelled.find((unit) => unit.dimension === dimension);
  if (loose !== undefined) return { found: 'unit', unit: loose };
  const other = unitsSpelled(folded)[0];
  if (other !== undefined && folded !== '') return { found: 'other-kind', dimension: other.dimension };
  return unknownUnit(folded, unitsOf(dimension));
}

function findUnclear(text: string, dimension: Dimension): UnitFinding | undefined {
  for (const ambiguous of ambiguousUnits) {
    if (ambiguous.text === text && ambiguous.in.includes(dimension)) {
      return { found: 'ambiguous', choices: ambiguous.choices };
    }
  }
  for (const refused of refusedUnits) {
    if (refused.in.includes(dimension) && refused.texts.includes(text)) return { found: 'refused', hint: refused.hint };
  }
  return undefined;
}

function findUnitAnywhere(text: string): UnitFinding {
  if (text === 'm') return { found: 'ambiguous', choices: ['min', 'm'] };
  const units = unitsSpelled(text);
  const named = units.filter((unit) => unit.name === text);
  const meant = named.length > 0 ? named : units;
  const names = [...new Set(meant.map((unit) => unit.name))];
  if (meant[0] === undefined) return unknownUnit(text, unitList);
  return names.length === 1 ? { found: 'unit', unit: meant[0] } : { found: 'ambiguous', choices: names };
}

function unknownUnit(text: string, units: readonly Unit[]): UnitFinding {
  const word = unitWords.find((one) => one.text === text && units.some((unit) => one.units.includes(unit.name)));
  if (word?.units[0] !== undefined) return { found: 'unknown', suggestion: word.units[0] };
  const near = nearest(text.slice(0, 32), units.flatMap(spellingsOf));
  const unit = near === undefined ? undefined : units.find((one) => spellingsOf(one).includes(near));
  return unit === undefined || unit.name === '' ? { found: 'unknown' } : { found: 'unknown', suggestion: unit.name };
}

/** In the base unit of the unit's dimension. Noise beyond twelve significant digits is dropped, so that 269.6 °F is exactly 132 °C. */
export function toBase(amount: number, unit: Unit): number {
  if (unit.times === 1 && unit.per === 1 && unit.zero === 0) return amount;
  return withoutNoise(((amount - unit.zero) * unit.times) / unit.per);
}

/** The amount in `unit` of a value in the base unit of its dimension. */
export function fromBase(value: number, unit: Unit): number {
  if (unit.times === 1 && unit.per === 1 && unit.zero === 0) return value;
  return withoutNoise((value * unit.per) / unit.times + unit.zero);
}

/** From one unit to another of the same dimension. Undefined when they measure different things. Pressure references are not changed. */
export function convert(amount: number, from: Unit, to: Unit): number | undefined {
  if (from === to) return amount;
  return from.dimension === to.dimension ? fromBase(toBase(amount, from), to) : undefined;
}

function withoutNoise(value: number): number {
  return Number.isFinite(value) ? Number(value.toPrecision(12)) : value;
}
