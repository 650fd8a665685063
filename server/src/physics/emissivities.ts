/*
 * Infrared emissivities of surfaces that a thermometer is aimed at, as instrument makers' tables give them (8 to 14 micrometre
 * instruments). Data with its source; ranges and disagreements are kept, not averaged.
 */

export interface SurfaceEmissivity {
  readonly id: string;
  readonly name: string;
  readonly low: number;
  readonly high: number;
  /** `mirror`: shows mostly the room. `fair`: needs the thermometer set to it. `black`: a usual setting of 0.95 nearly fits. */
  readonly aim: 'mirror' | 'fair' | 'black';
  readonly source: string;
  /** Where tables disagree. */
  readonly note?: string;
}

export const SURFACE_EMISSIVITIES: readonly SurfaceEmissivity[] = [
  { id: 'paper', name: 'paper', low: 0.88, high: 0.97, aim: 'black', source: 'three instrument tables' },
  { id: 'plastic', name: 'PE, PP or PVC plastic', low: 0.94, high: 0.94, aim: 'black', source: 'thermography table' },
  { id: 'cotton', name: 'cotton cloth', low: 0.77, high: 0.77, aim: 'fair', source: 'two instrument tables' },
  {
    id: 'stainless-polished',
    name: 'polished stainless steel',
    low: 0.07,
    high: 0.07,
    aim: 'mirror',
    source: 'sensor manual, 8-14 µm, 70 °C',
  },
  {
    id: 'stainless-sheet',
    name: 'untreated stainless steel sheet',
    low: 0.28,
    high: 0.28,
    aim: 'mirror',
    source: 'sensor manual, 8-14 µm, 70 °C',
  },
  {
    id: 'stainless',
    name: 'stainless steel, finish not stated',
    low: 0.07,
    high: 0.28,
    aim: 'mirror',
    source: 'camera manual look-up table and sensor manual',
    note: 'The camera manual gives 0.16; the sensor manual 0.07 polished and 0.28 untreated.',
  },
  {
    id: 'aluminium-bright',
    name: 'bright aluminium sheet',
    low: 0.03,
    high: 0.09,
    aim: 'mirror',
    source: 'three instrument tables',
  },
  {
    id: 'aluminium-anodized-dull',
    name: 'anodized aluminium, light grey, dull',
    low: 0.95,
    high: 0.97,
    aim: 'black',
    source: 'sensor manual, 8-14 µm',
    note: 'Another table gives 0.55 for chromic-acid anodizing: the finish decides.',
  },
  {
    id: 'aluminium-anodized-chromic',
    name: 'anodized aluminium, chromic acid',
    low: 0.55,
    high: 0.55,
    aim: 'fair',
    source: 'camera manual look-up table',
    note: 'Another table gives 0.95 to 0.97 for a dull light grey finish: the finish decides.',
  },
  { id: 'chrome', name: 'chrome plating', low: 0.06, high: 0.08, aim: 'mirror', source: 'thermography table' },
  {
    id: 'water',
    name: 'water',
    low: 0.67,
    high: 0.96,
    aim: 'fair',
    source: 'two instrument tables',
    note: 'Most tables give 0.96; one camera table also lists 0.67.',
  },
];

const BY_ID: ReadonlyMap<string, SurfaceEmissivity> = new Map(SURFACE_EMISSIVITIES.map((row) => [row.id, row]));

/** The row for a surface by its id, or undefined. */
export function surfaceEmissivity(id: string): SurfaceEmissivity | undefined {
  return BY_ID.get(id);
}
