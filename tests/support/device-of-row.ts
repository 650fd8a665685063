/**
 * Writes a row of the quote table as a device file: each claim in the field of the schema that it would stand in. A row with a claim that
 * no field can hold is left out.
 */
import type { Row } from '../unit/prose/rows.ts';

/** Where a parameter of the table stands in a device file. `any_of` and `all_of` stand for the first member of the list. */
const places: Readonly<Record<string, string>> = {
  temp: 'sterilization.any_of.temp',
  exposure: 'sterilization.any_of.exposure',
  dry: 'sterilization.any_of.dry',
  total_time: 'sterilization.any_of.total_time',
  concentration: 'sterilization.any_of.concentration',
  humidity: 'sterilization.any_of.humidity',
  aerate: 'sterilization.any_of.aeration.time',
  bore: 'sterilization.any_of.lumens.bore',
  length: 'sterilization.any_of.lumens.length',
  cool: 'cooling.time',
  times: 'manual.flush.times',
  volume: 'manual.flush.volume',
  flush: 'manual.flush.time',
  pressure: 'manual.flush.pressure',
  strokes: 'manual.strokes',
  soak: 'manual.soak',
  brush: 'manual.brush_time',
  ph: 'manual.detergent.ph',
  dose: 'manual.detergent.dose',
  rinse: 'rinse.time',
  bacteria: 'rinse.water.bacteria',
  hardness: 'rinse.water.hardness',
  endotoxin: 'rinse.water.endotoxin',
  conductivity: 'rinse.water.conductivity',
  sonicate: 'ultrasonic.time',
  frequency: 'ultrasonic.frequency',
  max_delay: 'point_of_use.max_delay',
  delay: 'point_of_use.max_delay',
  thermal: 'mechanical.thermal.time',
  a0: 'mechanical.thermal.a0',
  mass: 'packaging.max_mass',
  uses: 'limits.uses',
};
const methods: ReadonlySet<string> = new Set(['ultrasonic', 'mechanical', 'manual', 'immersion', 'lubrication']);
const modalities: Readonly<Record<string, string>> = {
  prevac: 'steam-prevac',
  gravity: 'steam-gravity',
  eo: 'eo',
  vh2o2: 'vh2o2',
  'dry-heat': 'dry-heat',
};
const stages: ReadonlySet<string> = new Set(['manual', 'ultrasonic', 'mechanical', 'disinfection']);

interface Fields {
  [key: string]: string | Fields | Fields[];
}

/** The device file of a row, or undefined when a claim has no place in it. */
export function deviceOfRow(row: Row, language: string): string | undefined {
  const device: Fields = {};
  for (const claim of row[1].split('|')) if (!addClaim(claim.trim().split(' '), device)) return undefined;
  const fields = Object.entries(device).map(([key, value]) => `${key}: ${written(value)}`);
  const statement = `  s1: {doc: PF-1, rev: A, page: 2, lang: ${language}, quote: ${JSON.stringify(row[0])}}`;
  return ['kind: device', 'id: pale-forceps', 'statements:', statement, ...fields, ''].join('\n');
}

function addClaim(words: readonly string[], device: Fields): boolean {
  const [first = '', second = '', ...rest] = words;
  if (first === 'use') return addUse(second, rest, device);
  if (first === 'any_of' || first === 'all_of') return addStages(first, [second, ...rest], device);
  if (first === 'ambiguous')
    return addValue('temp', { ambiguous: JSON.stringify([second, ...rest].join(' ')), ask: 'q-1' }, device);
  const [withoutReadAs = '', readAs] = rest.join(' ').split(' read_as ');
  const [values = '', tolerance] = withoutReadAs.split(' tol ');
  const value = second === 'between' ? `[${values.split('..').join(', ')}]` : values;
  const more: Fields = {
    ...(readAs !== undefined && { read_as: readAs }),
    ...(tolerance !== undefined && { tol: tolerance }),
  };
  return addValue(first, { [second]: value, ...more }, device);
}

function addValue(parameter: string, value: Fields, device: Fields): boolean {
  const path = places[parameter]?.split('.');
  const last = path?.pop();
  if (path === undefined || last === undefined) return false;
  const holder = recordAt(path, device);
  const known = holder[last];
  const isClash = Object.keys(value).some((key) => typeof known === 'object' && key in known);
  if (isClash) return false;
  holder[last] = { ...(typeof known === 'object' && !Array.isArray(known) ? known : {}), ...value, src: 's1' };
  return true;
}

/** The record at the end of the path, made where it is not there yet. */
function recordAt(path: readonly string[], device: Fields): Fields {
  let at = device;
  for (const key of path) {
    const known = at[key];
    const made: Fields = Array.isArray(known) ? (known[0] ?? {}) : typeof known === 'object' ? known : {};
    at[key] = key === 'any_of' ? [made] : made;
    at = made;
  }
  return at;
}

function addUse(subject: string, [use = '', condition]: readonly string[], device: Fields): boolean {
  const when = condition === undefined ? {} : { when: 'a condition' };
  if (methods.has(subject)) return assign(recordAt([subject], device), { use, src: 's1', ...when });
  if (subject === 'wipe') return assign(recordAt(['point_of_use', 'wipe'], device), { use, src: 's1', ...when });
  if (subject === 'stacking') {
    return assign(recordAt(['packaging'], device), { no_stack: String(use === 'forbidden'), src: 's1', ...when });
  }
  const option = recordAt(['sterilization', 'any_of'], device);
  if (subject === 'iuss') return assign(option, { context: 'iuss', src: 's1', ...when });
  const modality = modalities[subject];
  return modality !== undefined && option.modality === undefined && assign(option, { modality, src: 's1', ...when });
}

function assign(record: Fields, fields: Fields): boolean {
  Object.assign(record, fields);
  return true;
}

function addStages(structure: string, names: readonly string[], device: Fields): boolean {
  if (!names.every((name) => stages.has(name))) return false;
  recordAt(['cleaning'], device)[structure] = names.map((stage) => ({ stage, src: 's1' }));
  return true;
}

function written(value: string | Fields | readonly Fields[]): string {
  if (typeof value === 'string') return value;
  if (Array.isArray(value)) return `[${value.map((item) => written(item)).join(', ')}]`;
  return `{${Object.entries(value)
    .map(([key, inner]) => `${key}: ${written(inner)}`)
    .join(', ')}}`;
}
