/** Every kind of rule file, in the order in which a person meets them. Each has one schema of the same name. */
export const kinds = [
  'library',
  'site',
  'document',
  'device',
  'response',
  'question',
  'washer',
  'ultrasonic',
  'sterilizer',
  'chemistry',
  'water',
  'packaging',
  'monitor',
  'set',
  'procedure',
  'poster',
  'training',
  'quiz',
  'waiver',
  'sign-off',
] as const;

export type Kind = (typeof kinds)[number];

const known: ReadonlySet<string> = new Set(kinds);

export function isKind(text: string): text is Kind {
  return known.has(text);
}
