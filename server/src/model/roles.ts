/** Who can settle a finding or a question: roles, never people. */
export const settlers = [
  'educator',
  'manager',
  'manufacturer',
  'infection-prevention',
  'biomed',
  'engineering',
  'vendor',
  'OR',
] as const;

export type SettledBy = (typeof settlers)[number];
