import type { Span } from '../base/span.ts';
import type { Finding } from './finding.ts';

/** One root cause, one finding: where `cause` is found for an entity, the findings in `symptoms` of the same entity are its explanation. */
export interface Absorption {
  readonly cause: string;
  readonly symptoms: readonly string[];
  /**
   * `entity`: anywhere in the entity; `field`: only at the same field or inside it; `inside`: the cause stands in what the symptom is
   * about; `quote`: both show the same passage.
   */
  readonly within: 'entity' | 'field' | 'inside' | 'quote';
  /** Only a cause of this weight. */
  readonly as?: Finding['severity'];
}

/** Each says why the cycle of a card can't be derived, with the numbers, and what can. */
const cardFaults = [
  'cycle-modality-mismatch',
  'modality-prohibited',
  'cycle-temperature-differs',
  'cycle-exposure-short',
  'cycle-exposure-longer-unstated',
  'cycle-dry-short',
  'container-dry-governs',
  'flush-pulse-assumed-equal',
  'peroxide-cycle-not-listed',
  'peroxide-lumen-outside',
  'eo-aeration-short',
  'strictest-picked-not-intersected',
];

export const absorptions: readonly Absorption[] = [
  // Steps that cannot be read are not missing: what is written in their place is told.
  ...['wrong-form', 'unknown-field'].map(
    (cause) => ({ cause, symptoms: ['disassembly-missing', 'disassembly-part-left'], within: 'inside' }) as const,
  ),
  // A number that was copied wrongly into the quote departs from the page and from the field: the page decides.
  {
    cause: 'quote-not-on-page',
    as: 'error',
    symptoms: ['quote-number-mismatch', 'quote-number-not-encoded', 'quote-bound-changed', 'bare-number-promoted'],
    within: 'quote',
  },
  { cause: 'loaner-document-missing', symptoms: ['unknown-id'], within: 'field' },
  // What may not be washed at all needs no better detergent.
  {
    cause: 'prion-routed-to-routine',
    symptoms: [
      'detergent-ph-outside',
      'mechanical-where-manual-only',
      'manual-preclean-dropped',
      'final-rinse-grade-low',
      'drying-missing',
    ],
    within: 'entity',
  },
  // Moisture that stops a low-temperature cycle is the same missing drying, with the reason why it matters most.
  { cause: 'wet-into-low-temperature', symptoms: ['drying-missing'], within: 'entity' },
  // Where nothing here processes the set, the smallest clash names what keeps single members away; what can be mended by itself stays.
  {
    cause: 'set-route-none',
    symptoms: ['modality-prohibited', 'cycle-modality-mismatch', 'peroxide-cycle-not-listed', 'washer-route-none'],
    within: 'entity',
  },
  // The members that need different baths are named there, each with what it demands.
  { cause: 'set-cleaning-clash', symptoms: ['detergent-ph-outside'], within: 'entity' },
  // A card that is out of date says which of its numbers are.
  { cause: 'card-stale', symptoms: ['governing-changed'], within: 'entity' },
  // Where no washer here does, what is wrong with the one on the card explains it.
  {
    cause: 'washer-route-none',
    symptoms: [
      'washer-hotter-than-device',
      'washer-phase-missing',
      'washer-phase-short-or-cool',
      'washer-connector-missing',
    ],
    within: 'entity',
  },
  // A cool-down without one of its two limits is told with what the site has adopted.
  { cause: 'cool-criterion-missing', symptoms: ['cool-short-of-policy'], within: 'field' },
  { cause: 'container-not-validated-for-cycle', symptoms: ['card-cycle-not-derived'], within: 'entity' },
  // Paper in peroxide is the reason why its maker does not cover the cycle.
  {
    cause: 'cellulose-in-peroxide',
    symptoms: ['container-not-validated-for-cycle', 'container-parts-mismatch', 'accessory-not-listed'],
    within: 'field',
  },
  ...cardFaults.map((cause) => ({ cause, symptoms: ['card-cycle-not-derived'], within: 'field' }) as const),
];

/** Findings without those that another finding of the same entity already explains. */
export function withoutAbsorbed(
  findings: readonly Finding[],
  table: readonly Absorption[] = absorptions,
): readonly Finding[] {
  return findings.filter(
    (finding) => !table.some((row) => row.symptoms.includes(finding.rule) && hasCause(row, finding, findings)),
  );
}

function hasCause(row: Absorption, finding: Finding, findings: readonly Finding[]): boolean {
  return findings.some(
    (other) =>
      other.rule === row.cause &&
      other.entity === finding.entity &&
      (row.as === undefined || other.severity === row.as) &&
      isWithin(row.within, other, finding),
  );
}

function isWithin(within: Absorption['within'], cause: Finding, symptom: Finding): boolean {
  switch (within) {
    case 'entity':
      return true;
    case 'field':
      return symptom.path === cause.path || symptom.path.startsWith(`${cause.path}.`);
    case 'inside':
      return symptom.about !== undefined && holds(symptom.about, cause.span);
    case 'quote':
      return cause.says.some(({ file, span }) =>
        symptom.says.some((other) => other.file === file && other.span.start === span.start),
      );
  }
}

function holds(outer: Span, inner: Span): boolean {
  return outer.start <= inner.start && inner.end <= outer.end;
}
