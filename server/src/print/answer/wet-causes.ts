/*
 * What makes a load wet, and which findings of the library speak for it. Data, to be read and corrected by people who know the trade. A
 * weight says how directly such a finding leads to water in the pack; it orders the list and is no probability.
 */

export interface WetCause {
  readonly id: 'dry' | 'changed' | 'heavy' | 'water' | 'packing' | 'carried-in' | 'steam' | 'cooling';
  readonly title: string;
  /** What to look at next. */
  readonly look: string;
  readonly rules: ReadonlySet<string>;
  readonly weight: number;
}

export const wetCauses: readonly WetCause[] = [
  {
    id: 'dry',
    title: 'The drying phase is shorter than asked for',
    look: 'Compare the cycle that ran with the one on the card.',
    rules: new Set(['cycle-dry-short', 'container-dry-governs', 'dry-time-missing', 'iuss-derived-by-deleting-dry']),
    weight: 6,
  },
  {
    id: 'changed',
    title: 'The set or its packaging changed after it was last tested',
    look: 'Test the set as it is packed now, in this cycle, over several loads.',
    rules: new Set(['product-test-missing', 'card-cycle-not-derived']),
    weight: 5,
  },
  {
    id: 'heavy',
    title: 'The set is heavier, or packed on more levels, than it should be',
    look: 'Weigh it with its packaging; split it, or put heavy parts on separate levels.',
    rules: new Set(['set-overweight', 'wrap-grade-under-load', 'set-mass-unmeasured', 'load-over-cycle-limit']),
    weight: 4,
  },
  {
    id: 'water',
    title: 'Heating it leaves more water than its drying takes out',
    look: 'See the estimate below; aluminium and plastic dry worst.',
    rules: new Set(['condensate-vs-dry']),
    weight: 4,
  },
  {
    id: 'carried-in',
    title: 'Water was carried in: parts were moist when they were packed',
    look: 'Ask at assembly how lumens and hinges were dried.',
    rules: new Set(['wet-into-steam', 'drying-missing', 'drying-hotter-than-device']),
    weight: 4,
  },
  {
    id: 'packing',
    title: 'The packaging holds water back or was not meant for this',
    look: 'Look at filters, mats, liners and how packs stood beside each other.',
    rules: new Set([
      'packaging-not-listed',
      'accessory-not-listed',
      'container-parts-mismatch',
      'container-not-validated-for-cycle',
      'pouch-inside-set',
      'double-pouch-unsupported',
    ]),
    weight: 3,
  },
  {
    id: 'steam',
    title: 'The steam was wet, held air, or was superheated',
    look: 'Ask engineering for the latest readings at this sterilizer.',
    rules: new Set(['steam-quality-out', 'temperature-pressure-inconsistent']),
    weight: 3,
  },
  {
    id: 'cooling',
    title: 'Hot packs met a cold surface, cold air or a hand',
    look: 'Ask where the load stood after it came out, and for how long.',
    rules: new Set(['cool-touch-or-cold-surface', 'cool-forced', 'cool-criterion-missing', 'cool-release-below-room']),
    weight: 2,
  },
];
