import type { Dimension } from './quantity.ts';

/** A spelling that two readers would read as two units. `in` lists where; nowhere else is it looked at. */
export interface AmbiguousUnit {
  readonly text: string;
  readonly in: readonly Dimension[];
  readonly choices: readonly string[];
}

export const ambiguousUnits: readonly AmbiguousUnit[] = [
  // In a length the metre is meant (altitude); anywhere else a lone m may be minutes or metres.
  { text: 'm', in: ['time'], choices: ['min', 'months'] },
  { text: 'M', in: ['time', 'length'], choices: ['min', 'm'] },
  { text: '°', in: ['temperature', 'temperature-difference'], choices: ['°C', '°F'] },
  { text: 'deg', in: ['temperature', 'temperature-difference'], choices: ['°C', '°F'] },
  { text: 'degrees', in: ['temperature', 'temperature-difference'], choices: ['°C', '°F'] },
  { text: '°/min', in: ['temperature-rate'], choices: ['°C/min', '°F/min'] },
  { text: '%', in: ['dose'], choices: ['% v/v', 'mL/L'] },
  { text: '%', in: ['concentration'], choices: ['% w/v', 'mg/L'] },
  { text: 'gal', in: ['volume'], choices: ['US gal', 'L'] },
  { text: 'gallon', in: ['volume'], choices: ['US gal', 'L'] },
  { text: 'gallons', in: ['volume'], choices: ['US gal', 'L'] },
  { text: 'oz', in: ['volume'], choices: ['US fl oz', 'mL'] },
  { text: '°H', in: ['hardness'], choices: ['°dH', '°fH', '°e'] },
  { text: '°', in: ['hardness'], choices: ['°dH', '°fH', '°e'] },
];

/** A unit that no factor converts. `hint` says what to write. */
export interface RefusedUnit {
  readonly texts: readonly string[];
  readonly in: readonly Dimension[];
  readonly hint: string;
}

export const refusedUnits: readonly RefusedUnit[] = [
  {
    texts: ['G', 'ga', 'gauge', 'Ga', 'GA', 'g'],
    in: ['length'],
    hint: 'needle gauge is a table of outside diameters, not a length: write the diameter in mm or Fr as the document gives it, or ask the manufacturer',
  },
  {
    texts: ['MΩ·cm', 'MΩcm', 'MΩ cm', 'MΩ.cm', 'Mohm cm', 'Mohm·cm', 'megohm', 'megohm-cm', 'megohms'],
    in: ['conductivity'],
    hint: 'this is resistivity, the inverse of conductivity: write the conductivity in µS/cm',
  },
  { texts: ['rpm'], in: ['frequency'], hint: 'turns a minute are not an ultrasonic frequency: write kHz' },
];
