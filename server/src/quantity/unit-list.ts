import type { Dimension, PressureReference } from './quantity.ts';

/** A unit of the closed list. `base = (amount - zero) * times / per`, in the base unit that `Dimension` names. */
export interface Unit {
  /** The one spelling we print and suggest. '' where the dimension is written without a unit. */
  readonly name: string;
  readonly dimension: Dimension;
  readonly times: number;
  readonly per: number;
  readonly zero: number;
  /** Pressure units only. */
  readonly reference?: PressureReference;
  /** Other spellings accepted in a rule file and recognised in prose. */
  readonly variants: readonly string[];
  /** Spellings accepted in a rule file only: in running text they would swallow the next word ("3 bar a minute"). */
  readonly fileOnly: readonly string[];
}

interface Scale {
  readonly times?: number;
  readonly per?: number;
  readonly zero?: number;
}

function unit(dimension: Dimension, name: string, scale: Scale, variants: readonly string[]): Unit {
  const { times = 1, per = 1, zero = 0 } = scale;
  return { name, dimension, times, per, zero, variants, fileOnly: [] };
}

const celsius = ['C', '℃', 'deg C', 'degC', 'deg.C', 'deg. C', '° C', 'degrees C', 'degrees Celsius', 'Celsius'];
const fahrenheit = [
  'F',
  '℉',
  'deg F',
  'degF',
  'deg.F',
  'deg. F',
  '° F',
  'degrees F',
  'degrees Fahrenheit',
  'Fahrenheit',
];

function withTail(spellings: readonly string[], tails: readonly string[]): string[] {
  return spellings.flatMap((spelling) => tails.map((tail) => `${spelling}${tail}`));
}

const perMinute = ['/min', '/minute', ' per minute', ' per min'];

/** Fahrenheit: exact, (F - 32) / 1.8; an interval is F / 1.8. */
const temperatures: readonly Unit[] = [
  unit('temperature', '°C', {}, celsius),
  unit('temperature', '°F', { per: 1.8, zero: 32 }, fahrenheit),
  unit('temperature', 'K', { zero: 273.15 }, ['kelvin', 'kelvins']),
  unit('temperature-difference', 'K', {}, ['kelvin', 'kelvins']),
  unit('temperature-difference', '°C', {}, celsius),
  unit('temperature-difference', '°F', { per: 1.8 }, fahrenheit),
  unit('temperature-rate', 'K/min', {}, withTail(['K', 'kelvin'], perMinute)),
  unit('temperature-rate', '°C/min', {}, withTail(['°C', ...celsius], perMinute)),
  unit('temperature-rate', '°F/min', { per: 1.8 }, withTail(['°F', ...fahrenheit], perMinute)),
  unit('temperature-rate', 'K/s', { times: 60 }, []),
  unit('temperature-rate', '°C/s', { times: 60 }, ['C/s']),
];

/** A month is a twelfth of a year of 365.25 days (UCUM `mo`, `a`): good for comparing spans, not for reckoning a due date. */
const times: readonly Unit[] = [
  unit('time', 'ms', { per: 1000 }, ['msec', 'millisecond', 'milliseconds']),
  unit('time', 's', {}, ['sec', 'secs', 'sec.', 'second', 'seconds']),
  unit('time', 'min', { times: 60 }, ['mins', 'min.', 'mins.', 'minute', 'minutes']),
  unit('time', 'h', { times: 3600 }, ['hr', 'hrs', 'hr.', 'hrs.', 'hour', 'hours']),
  unit('time', 'd', { times: 86_400 }, ['day', 'days']),
  unit('time', 'weeks', { times: 604_800 }, ['week', 'wk', 'wks']),
  unit('time', 'months', { times: 2_629_800 }, ['month', 'mo']),
  unit('time', 'years', { times: 31_557_600 }, ['year', 'yr', 'yrs']),
];

const gaugeTails = ['(g)', ' (g)', ' gauge', '(gauge)', ' (gauge)', ' (gage)', ' gage'];
const absoluteTails = ['(a)', ' (a)', ' abs', ' abs.', '(abs)', ' (abs)', ' absolute', '(absolute)', ' (absolute)'];

function pressure(name: string, times: number, variants: readonly string[]): Unit[] {
  const spelled = [name, ...variants];
  const same = { dimension: 'pressure', times, per: 1, zero: 0 } as const;
  const short = name === 'psi';
  return [
    { ...same, name, reference: 'unstated', variants, fileOnly: [] },
    {
      ...same,
      name: short ? 'psig' : `${name}(g)`,
      reference: 'gauge',
      variants: [...withTail(spelled, gaugeTails), `${name}g`],
      fileOnly: [`${name} g`],
    },
    {
      ...same,
      name: short ? 'psia' : `${name}(a)`,
      reference: 'absolute',
      variants: [...withTail(spelled, absoluteTails), `${name}a`],
      fileOnly: [`${name} a`],
    },
  ];
}

/**
 * Factors to kPa. bar, atm, kgf/cm2: exact by definition. psi: from the exact pound, inch and standard gravity. inHg (0 °C) and mmHg:
 * conventional values (NIST SP 811, from memory).
 */
const pressures: readonly Unit[] = [
  ...pressure('kPa', 1, ['kilopascal', 'kilopascals']),
  ...pressure('bar', 100, ['bars']),
  ...pressure('mbar', 0.1, ['millibar', 'millibars']),
  ...pressure('psi', 6.894757293, ['lbf/in2', 'lb/in2', 'lbs/in2', 'PSI']),
  ...pressure('Pa', 0.001, ['pascal', 'pascals']),
  ...pressure('hPa', 0.1, []),
  ...pressure('MPa', 1000, ['megapascal', 'megapascals']),
  ...pressure('mmHg', 0.1333224, ['mm Hg', 'Torr', 'torr']),
  ...pressure('inHg', 3.386389, ['in Hg', '"Hg', 'inches Hg', 'inches of mercury', 'in. Hg']),
  ...pressure('kgf/cm2', 98.0665, ['kg/cm2', 'kp/cm2']),
  ...pressure('atm', 101.325, ['atmosphere', 'atmospheres']),
];

/** Inch and foot: exact. French gauge: millimetres times three, by definition. */
const lengths: readonly Unit[] = [
  unit('length', 'mm', {}, ['millimeter', 'millimeters', 'millimetre', 'millimetres']),
  unit('length', 'cm', { times: 10 }, ['centimeter', 'centimeters', 'centimetre', 'centimetres']),
  unit('length', 'm', { times: 1000 }, ['meter', 'meters', 'metre', 'metres']),
  unit('length', 'in', { times: 25.4 }, ['inch', 'inches', '"', "''", 'in.']),
  unit('length', 'ft', { times: 304.8 }, ['foot', 'feet', 'ft.']),
  unit('length', 'µm', { per: 1000 }, ['um', 'micron', 'microns', 'micrometer', 'micrometers', 'micrometre']),
  unit('length', 'Fr', { per: 3 }, ['F', 'Fr.', 'French', 'Ch', 'CH', 'Charr', 'Charrière', 'Charriere']),
];

/** US fluid ounce and gallon: exact from the inch. */
const volumes: readonly Unit[] = [
  unit('volume', 'mL', {}, ['ml', 'cc', 'cm3', 'milliliter', 'milliliters', 'millilitre', 'millilitres']),
  unit('volume', 'L', { times: 1000 }, ['l', 'liter', 'liters', 'litre', 'litres', 'ltr']),
  unit('volume', 'dL', { times: 100 }, ['dl']),
  unit('volume', 'cL', { times: 10 }, ['cl']),
  unit('volume', 'µL', { per: 1000 }, ['µl', 'uL', 'ul', 'microliter', 'microliters', 'microlitre', 'microlitres']),
  unit('volume', 'US fl oz', { times: 29.5735295625 }, ['fl oz', 'fl. oz.', 'fl.oz', 'fluid ounce', 'fluid ounces']),
  unit('volume', 'US gal', { times: 3785.411784 }, [
    'US gallon',
    'US gallons',
    'U.S. gallon',
    'U.S. gallons',
    'U.S. gal',
  ]),
];

/** Avoirdupois pound: exact. */
const masses: readonly Unit[] = [
  unit('mass', 'kg', {}, ['kgs', 'kilogram', 'kilograms', 'kilo', 'kilos']),
  unit('mass', 'g', { per: 1000 }, ['gram', 'grams', 'gramme', 'grammes', 'gm']),
  unit('mass', 'mg', { per: 1_000_000 }, ['milligram', 'milligrams']),
  unit('mass', 'lb', { times: 0.45359237 }, ['lbs', 'lb.', 'lbs.', 'pound', 'pounds']),
  unit('mass', 'oz', { times: 0.028349523125 }, ['oz.', 'ounce', 'ounces']),
];

/** gpg: exact grain and US gallon. Degrees and mmol/L: as CaCO3 of 100.087 g/mol; °dH and °fH from their definitions (from memory). */
const waterQuality: readonly Unit[] = [
  unit('conductivity', 'µS/cm', {}, ['uS/cm', 'micros/cm', 'microS/cm', 'µmho/cm', 'umho/cm', 'microsiemens/cm']),
  unit('conductivity', 'mS/m', { times: 10 }, []),
  unit('conductivity', 'mS/cm', { times: 1000 }, []),
  unit('conductivity', 'S/m', { times: 10_000 }, []),
  unit('hardness', 'mg/L CaCO3', {}, [
    'mg/L',
    'mg/l',
    'mg/L as CaCO3',
    'mg/l CaCO3',
    'ppm',
    'ppm CaCO3',
    'ppm as CaCO3',
  ]),
  unit('hardness', 'gpg', { times: 17.1181 }, [
    'gr/gal',
    'grain/gal',
    'grains/gal',
    'grains per gallon',
    'grain per gallon',
  ]),
  unit('hardness', '°dH', { times: 17.848 }, ['dH', 'degdH', 'deg dH', '°d', '° dH']),
  unit('hardness', '°fH', { times: 10 }, ['fH', 'degfH', 'deg fH', '°f', '° fH']),
  unit('hardness', '°e', { times: 14.2538 }, [
    '°Clark',
    'degClark',
    'deg Clark',
    'Clark',
    '°eH',
    '° Clark',
    '°e(Clark)',
  ]),
  unit('hardness', 'mmol/L', { times: 100.087 }, ['mmol/l']),
  unit('hardness', 'meq/L', { times: 50.0435 }, ['meq/l', 'mEq/L', 'mval/L']),
  unit('concentration', 'mg/L', {}, ['mg/l', 'ppm']),
  unit('concentration', 'g/L', { times: 1000 }, ['g/l']),
  unit('concentration', 'µg/L', { per: 1000 }, ['µg/l', 'ug/L', 'ug/l', 'ppb']),
  unit('concentration', 'µg/mL', {}, ['µg/ml', 'ug/mL', 'ug/ml']),
  unit('concentration', 'mg/mL', { times: 1000 }, ['mg/ml']),
  unit('concentration', '% w/v', { times: 10_000 }, ['%(w/v)', '% (w/v)', '%w/v']),
  unit('bacteria', 'CFU/mL', {}, ['cfu/mL', 'cfu/ml', 'CFU/ml', 'CFU per mL']),
  unit('bacteria', 'CFU/100 mL', { per: 100 }, [
    'cfu/100 mL',
    'cfu/100 ml',
    'cfu/100mL',
    'cfu/100ml',
    'CFU per 100 mL',
  ]),
  unit('bacteria', 'CFU/L', { per: 1000 }, ['cfu/L', 'cfu/l']),
  unit('endotoxin', 'EU/mL', {}, ['EU/ml', 'IU/mL', 'IU/ml', 'EU per mL']),
];

/** One US fluid ounce in a US gallon is one part in 128. */
const doses: readonly Unit[] = [
  unit('dose', 'mL/L', {}, [
    'ml/l',
    'ml/L',
    'mL per L',
    'ml per litre',
    'ml per liter',
    'mL per liter',
    'mL per litre',
  ]),
  unit('dose', '% v/v', { times: 10 }, ['%(v/v)', '% (v/v)', '%v/v', 'vol%', 'vol.-%', 'vol %']),
  unit('dose', 'US fl oz/gal', { times: 1000, per: 128 }, [
    'oz/gal',
    'fl oz/gal',
    'oz/US gal',
    'oz per gallon',
    'ounces per gallon',
  ]),
];

function count(name: string, variants: readonly string[]): Unit {
  return unit('count', name, {}, variants);
}

const counts: readonly Unit[] = [
  count('times', ['time', 'x', '×', 'X', 'repeats', 'repetitions']),
  count('cycles', ['cycle']),
  count('uses', ['use']),
  count('strokes', ['stroke', 'pass', 'passes']),
  count('drops', ['drop']),
  count('pieces', ['piece', 'pcs', 'pc', 'pcs.', 'items', 'item']),
  count('pulses', ['pulse']),
  count('layers', ['layer']),
  count('sets', ['set']),
  count('loads', ['load']),
  count('exposures', ['exposure']),
];

const others: readonly Unit[] = [
  unit('frequency', 'kHz', {}, ['kilohertz']),
  unit('frequency', 'Hz', { per: 1000 }, ['hertz']),
  unit('frequency', 'MHz', { times: 1000 }, ['megahertz']),
  unit('percentage', '%', {}, ['percent', 'per cent', '% RH', '%RH', '% rh', 'pct']),
  unit('ph', '', {}, ['pH']),
  unit('a0', '', {}, []),
  unit('number', '', {}, []),
  unit('magnification', '×', {}, ['x', 'X', 'times']),
  unit('flow', 'mL/min', {}, ['ml/min', 'cc/min']),
  unit('flow', 'L/min', { times: 1000 }, ['l/min', 'lpm', 'LPM']),
  unit('flow', 'mL/s', { times: 60 }, ['ml/s', 'mL/sec', 'ml/sec']),
  unit('flow', 'L/h', { times: 1000, per: 60 }, ['l/h']),
  unit('flow', 'US gal/min', { times: 3785.411784 }, ['gpm', 'GPM', 'gal/min']),
  unit('energy', 'kJ', {}, ['kilojoule', 'kilojoules']),
  unit('energy', 'J', { per: 1000 }, ['joule', 'joules']),
  unit('energy', 'MJ', { times: 1000 }, []),
  unit('energy', 'kWh', { times: 3600 }, []),
  unit('illuminance', 'lx', {}, ['lux']),
  unit('illuminance', 'fc', { times: 10.7639104 }, ['foot-candle', 'foot-candles', 'footcandle', 'footcandles']),
];

/** The closed list. The first unit of a dimension is its base unit or the unit printed by default. */
export const unitList: readonly Unit[] = [
  ...temperatures,
  ...times,
  ...pressures,
  ...lengths,
  ...volumes,
  ...masses,
  ...waterQuality,
  ...doses,
  ...counts,
  ...others,
];
