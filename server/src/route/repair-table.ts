import type { NotOffered, RepairKind } from './model.ts';

/** Who does it, and how long it usually takes. Data. */
export const repairTable: Readonly<Record<RepairKind, { readonly owner: string; readonly lead: string }>> = {
  'take-member-out': { owner: 'department with the surgeon', lead: 'same day' },
  'split-set': { owner: 'department with the surgeon', lead: 'same day' },
  'change-packaging': { owner: 'department', lead: 'days' },
  'lighten-set': { owner: 'department with the surgeon', lead: 'same day' },
  'separate-baskets': { owner: 'department', lead: 'same day' },
  'qualify-cycle': { owner: 'biomed', lead: 'days to weeks' },
  'program-cycle': { owner: 'biomed', lead: 'days to weeks' },
  'ask-maker': { owner: 'educator', lead: 'days to weeks' },
  'change-chemistry': { owner: 'department with engineering', lead: 'weeks' },
  'buy-or-contract-out': { owner: 'purchasing committee', lead: 'months' },
  'replace-device': { owner: 'surgeon with value analysis', lead: 'months' },
};

/** Quickest first. */
export const repairOrder: readonly RepairKind[] = [
  'change-packaging',
  'take-member-out',
  'split-set',
  'lighten-set',
  'separate-baskets',
  'ask-maker',
  'qualify-cycle',
  'program-cycle',
  'change-chemistry',
  'buy-or-contract-out',
  'replace-device',
];

/** What is never offered, and why. */
export const notOffered: readonly NotOffered[] = [
  { what: 'shorten a time', why: 'below what the page demands nothing was shown to work' },
  { what: 'heat up or lengthen beyond the page', why: 'more is not safer: nobody showed that the item stands it' },
  { what: 'mix values of two options', why: 'a cycle put together from two pages is a cycle that nobody tested' },
  { what: 'count heat doses (F0, A0) instead', why: 'the same dose is not the same instruction' },
  {
    what: 'show in house that it works anyway',
    why: 'the department can verify what the page says, not write another page',
  },
  { what: 'immediate use', why: 'it is only what its own page offers, never a way round a missing route' },
];
