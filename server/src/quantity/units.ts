import { nearest } from '../base/nearest.ts';
import { Remembered } from '../base/remembered.ts';
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

/** What each spelling names, as it is written and in lower case. */
interface Spelled {
  readonly exact: ReadonlyMap<string, readonly Unit[]>;
  readonly loose: ReadonlyMap<string, readonly Unit[]>;
}

/** Made for a dimension when its first value is read, for all units (undefined) when something is wrong: a check of one file meets few. */
const spelled = new Remembered(100, (dimension: Dimension | undefined): Spelled => {
  const exact = new Map<string, Unit[]>();
  const loose = new Map<string, Unit[]>();
  for (const unit of dimension === undefined ? unitList : unitsOf(dimension)) {
    for (const spelling of spellingsOf(unit)) {
      addTo(exact, spelling, unit);
      if (spelling.length > 1) addTo(loose, spelling.toLowerCase(), unit);
    }
  }
  return { exact, loose };
});

function addTo(map: Map<string, Unit[]>, key: string, unit: Unit): void {
  const units = map.get(key);
  if (units === undefined) map.set(key, [unit]);
  else if (!units.includes(unit)) units.push(unit);
}

const ofDimension = new Remembered(100, (dimension: Dimension) =>
  unitList.filter((unit) => unit.dimension === dimension),
);

/** Units of one dimension, the default one first. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return ofDimension.of(dimension);
}

function unitsSpelled(text: string, dimension?: Dimension): readonly Unit[] {
  const { exact, loose } = spelled.of(dimension);
  return exact.get(text) ?? (text.length > 1 ? loose.get(text.toLowerCase()) : undefined) ?? [];
}

/**
 * The unit that `text` spells, as it may stand in a rule file. With a dimension, only its units count (`F` is °F in a temperature and
 * French in a length). Without one, a spelling that names several units is `ambiguous`; °C, °F and K are then
 * taken as levels.
 */
export function findUnit(text: string, dimension?: Dimension): UnitFinding {
  if (dimension === undefined) return findUnitAnywhere(tidied(text));
  const { exact } = spelled.of(dimension);
  const unit = exact.get(text)?.[0];
  if (unit !== undefined) return { found: 'unit', unit };
  const folded = tidied(text);
  const unclear = exact.has(folded) ? undefined : findUnclear(folded, dimension);
  if (unclear !== undefined) return unclear;
  const own = unitsSpelled(folded, dimension)[0];
  if (own !== undefined) return { found: 'unit', unit: own };
  const other = folded === '' ? undefined : unitsSpelled(folded)[0];
  if (other !== undefined) return { found: 'other-kind', dimension: other.dimension };
  return unknownUnit(folded, unitsOf(dimension));
}

/** In the characters and spaces of the list, where nothing but these differs from it. */
function tidied(text: string): string {
  return foldLookAlikes(text.trim()).replaceAll('  ', ' ');
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
