import type { Dimension } from './quantity.ts';

const names: Readonly<Record<Dimension, string>> = {
  temperature: 'a temperature',
  'temperature-difference': 'a difference of temperatures',
  time: 'a time',
  pressure: 'a pressure',
  length: 'a length',
  volume: 'a volume',
  mass: 'a weight',
  frequency: 'a frequency',
  conductivity: 'a conductivity',
  hardness: 'a water hardness',
  concentration: 'a concentration',
  dose: 'a dose',
  bacteria: 'a count of bacteria',
  endotoxin: 'an amount of endotoxin',
  percentage: 'a percentage',
  count: 'a number of times or pieces',
  ph: 'a pH',
  a0: 'an A0 value',
  magnification: 'a magnification',
  'temperature-rate': 'a rate of heating or cooling',
  flow: 'a flow',
  energy: 'an energy',
  illuminance: 'a brightness of light',
  number: 'a plain number',
};

/** What a dimension measures, in plain words with its article. */
export function dimensionName(dimension: Dimension): string {
  return names[dimension];
}
