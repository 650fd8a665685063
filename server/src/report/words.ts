import type { CatalogueEntry } from '../check/catalogue.ts';
import { isNeverHidden } from '../check/waivers.ts';
import type { SettledBy } from '../model/roles.ts';

/** Who can settle a finding, in a sentence. */
export const settlerWords: Readonly<Record<SettledBy, string>> = {
  educator: 'the educator',
  manufacturer: 'the manufacturer',
  'infection-prevention': 'infection prevention',
  biomed: 'biomedical engineering',
  engineering: 'facility engineering',
  vendor: 'the vendor',
  OR: 'the operating room',
  manager: 'the manager',
};

/** Whether the department may live with a finding for a time. */
export function waiverWords({ id, isRule }: CatalogueEntry): string {
  if (isNeverHidden(id)) return 'none: nobody in the department can waive it';
  return isRule
    ? 'possible for a time, with a reason, a role that carries the risk and an end'
    : 'none: the file has to be put right';
}

/** Printed under every summary: what these findings, or their absence, do not say. */
export const cautions: readonly string[] = [
  'The manufacturer’s current document is the instruction; this is an index to it. Where they differ, follow the document and report the difference.',
  '"Consistent with the encoded instruction" is the strongest statement made here; no finding in a library with gaps means little.',
];

/** `1 file`, `2 files`, `3,000 files`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}

/** `3,000`. */
export function grouped(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, ',');
}
