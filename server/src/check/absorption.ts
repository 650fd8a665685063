import type { Finding } from './finding.ts';

/** One root cause, one finding: where `cause` is found for an entity, the findings in `symptoms` of the same entity are its explanation. */
export interface Absorption {
  readonly cause: string;
  readonly symptoms: readonly string[];
  /** `entity`: anywhere in the entity; `field`: only at the same field or inside it. */
  readonly within: 'entity' | 'field';
}

export const absorptions: readonly Absorption[] = [
  { cause: 'loaner-document-missing', symptoms: ['unknown-id'], within: 'field' },
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
      (row.within === 'entity' || finding.path === other.path || finding.path.startsWith(`${other.path}.`)),
  );
}
