/*
 * Heat capacities of what sets are made of, near room temperature. Data with its source; no arithmetic. A value from memory or
 * with a wide range is marked uncertain, and every estimate made with it says so.
 */

/** `published`: read in the source named. `memory`: to be confirmed. `derived`: from other rows of this table. */
export type MaterialTag = 'published' | 'memory' | 'derived';

export interface LoadMaterial {
  /** As it stands in rule files. */
  readonly id: string;
  readonly name: string;
  readonly group: 'metal' | 'aluminium' | 'polymer';
  /** kJ to warm one kilogram by one kelvin. */
  readonly heatKJPerKgK: number;
  /** Range where sources or grades differ; both equal to `heatKJPerKgK` where one value is known. */
  readonly lowKJPerKgK: number;
  readonly highKJPerKgK: number;
  readonly tag: MaterialTag;
  readonly source: string;
}

const TABLE = 'material-properties.org heat-capacity table';
const DATA_BOOK = "Mechanical Engineer's Data Handbook 3.4.4";
const DATASHEET = 'datasheet-type value, from memory';

export const LOAD_MATERIALS: readonly LoadMaterial[] = [
  row('stainless-austenitic', 'austenitic stainless steel', 'metal', [0.5], 'published', TABLE),
  row('stainless-martensitic', 'martensitic stainless steel', 'metal', [0.46], 'published', TABLE),
  row(
    'steel',
    'steel, kind not stated',
    'metal',
    [0.5, 0.46, 0.5],
    'derived',
    'the larger of the two stainless steels',
  ),
  row('aluminium', 'aluminium', 'aluminium', [0.897], 'published', DATA_BOOK),
  row('titanium', 'titanium', 'metal', [0.523], 'published', DATA_BOOK),
  row('brass', 'brass', 'metal', [0.377], 'published', DATA_BOOK),
  row('tungsten-carbide', 'tungsten carbide', 'metal', [0.292], 'published', TABLE),
  row('polypropylene', 'polypropylene', 'polymer', [1.7], 'published', TABLE),
  row('rubber', 'natural rubber', 'polymer', [2.01], 'published', DATA_BOOK),
  row('peek', 'PEEK', 'polymer', [1.34], 'memory', DATASHEET),
  row('ppsu', 'PPSU', 'polymer', [1.2], 'memory', DATASHEET),
  row('silicone', 'silicone rubber', 'polymer', [1.3, 1.1, 1.5], 'memory', DATASHEET),
  row(
    'polymer',
    'plastic, kind not stated',
    'polymer',
    [1.7, 1.1, 2.01],
    'derived',
    'polypropylene, and the range of the plastics here',
  ),
];

const BY_ID: ReadonlyMap<string, LoadMaterial> = new Map(LOAD_MATERIALS.map((material) => [material.id, material]));

/** The row for a material as rule files name it, or undefined. */
export function loadMaterial(id: string): LoadMaterial | undefined {
  return BY_ID.get(id);
}

/** True when an estimate with this material must be called uncertain. */
export function isUncertain(material: LoadMaterial): boolean {
  return material.tag === 'memory' || material.lowKJPerKgK !== material.highKJPerKgK;
}

function row(
  id: string,
  name: string,
  group: LoadMaterial['group'],
  [value, low = value, high = value]: readonly [number, number?, number?],
  tag: MaterialTag,
  source: string,
): LoadMaterial {
  return { id, name, group, heatKJPerKgK: value, lowKJPerKgK: low, highKJPerKgK: high, tag, source };
}
