import type { Parameter } from '../judge/outcome.ts';
import type { Dimension } from '../quantity/quantity.ts';

/** A section, a field inside it (or any), and the row of the direction table by which it is judged. The first that fits counts. */
type Row = readonly [section: string, field: string, parameter: Parameter];

const rows: readonly Row[] = [
  ['limits', 'temp', 'heat-limit'],
  ['limits', 'uses', 'use-count'],
  ['', 'ph', 'ph'],
  ['', 'max_delay', 'delay'],
  ['aeration', 'temp', 'aeration-temperature'],
  ['aeration', '', 'aeration'],
  ['lumen_limits', '', 'lumen'],
  ['validated.lumens', '', 'lumen'],
  ['validated', 'dry', 'packaging-dry'],
  ['sterilization', 'dry', 'steam-dry'],
  ['', 'exposure', 'exposure'],
  ['', 'pulses', 'pulses'],
  ['sterilization', 'temp', 'steam-temperature'],
  ['validated', 'temp', 'steam-temperature'],
  ['cooling', '', 'cool-down'],
  ['', 'soak', 'soak'],
  ['ultrasonic', '', 'ultrasonic'],
  ['first_rinse', 'temp', 'first-rinse-temperature'],
  ['disinfection', '', 'thermal-disinfection'],
  ['drying', 'temp', 'drying-temperature'],
  ['brush', '', 'brush'],
  ['', 'mass', 'mass'],
  ['', 'levels', 'levels'],
  ['', 'pressure', 'pressure'],
  ['cleaning', 'temp', 'wash-temperature'],
  ['mechanical', 'temp', 'wash-temperature'],
];

const ofWater: ReadonlySet<Dimension> = new Set(['conductivity', 'hardness', 'bacteria', 'endotoxin']);
const ofDose: ReadonlySet<Dimension> = new Set(['time', 'volume', 'count']);

/** The row of the direction table for a demand at this path; undefined where none fits, and then a bare number counts as the one value. */
export function parameterOf(path: string, dimension: Dimension): Parameter | undefined {
  const parts = path.replace(/\[[^\]]*\]/g, '').split('.');
  const field = parts.at(-1) ?? '';
  for (const [section, name, parameter] of rows) {
    const within = section === '' || `.${parts.join('.')}.`.includes(`.${section}.`);
    if (within && (name === '' || name === field)) return parameter;
  }
  if (ofWater.has(dimension)) return 'water-grade';
  return ofDose.has(dimension) ? 'cleaning-amount' : undefined;
}
