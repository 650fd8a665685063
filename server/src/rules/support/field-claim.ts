import type { Citation, Place, Quantity, Rec } from '../../model/node.ts';
import { fieldOf } from '../../model/walk.ts';
import type { Claim } from '../../quantity/prose/claims.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { Phrase } from './wording.ts';

/** What one field says that its statements say, and where the reader can change it. */
export interface FieldClaim {
  readonly claim: Claim;
  readonly at: Place;
  /** The record that holds the value. */
  readonly record: Rec;
  /** Ids of the statements it cites, its own or those of the nearest thing around it. */
  readonly statements: readonly string[];
  /**
   * How much of the quote the field repeats: number and bound word, a bare number only, or nothing: a setting of the department's own
   * uses a number up but need not be the page's.
   */
  readonly repeats: 'everything' | 'number' | 'nothing';
  /** When a prohibition concerns the field: only when the quote names its subject or these words. Unset: a nameless one does too. */
  readonly concern?: 'named' | readonly Phrase[];
  /** The sterilization option it stands in. */
  readonly option?: Rec;
  readonly quantities?: readonly Quantity[];
}

/** All that an entity says of its statements. */
export interface FieldClaims {
  readonly claims: readonly FieldClaim[];
  /** Every record with the statements it cites: its words may hold numbers. */
  readonly citing: readonly { readonly record: Rec; readonly statements: readonly string[] }[];
  /** Ids of statements that a prohibition cites. */
  readonly forbidden: ReadonlySet<string>;
}

/** What stands around a field. */
export interface Around {
  readonly statements: readonly string[];
  readonly citedBy: 'file' | 'field';
  readonly option?: Rec;
  readonly isEvidence: boolean;
}

/** What the walk has found so far. */
export interface Gathered {
  readonly kind: Kind;
  readonly claims: FieldClaim[];
  readonly citing: { readonly record: Rec; readonly statements: readonly string[] }[];
  readonly forbidden: Set<string>;
}

/** Ids of the statements that a citation names. */
export function idsOf(citation: Citation): readonly string[] {
  return citation.statements.map((statement) => statement.text);
}

/** What a record adds to the things around it: its own citation, and whether it is evidence. */
export function inside(record: Rec, around: Around): Around {
  const src = fieldOf(record, 'src');
  const evidence = fieldOf(record, 'evidence');
  const cites: Pick<Around, 'statements' | 'citedBy'> =
    src?.node === 'citation' ? { statements: idsOf(src), citedBy: 'field' } : around;
  const isEvidence = around.isEvidence || (evidence?.node === 'flag' && evidence.on);
  const option = fieldOf(record, 'modality') === undefined ? around.option : record;
  return { statements: cites.statements, citedBy: cites.citedBy, isEvidence, ...(option !== undefined && { option }) };
}

/** A claim with the place and the citation that it stands under. */
export function placed(claim: Claim, at: Place, record: Rec, around: Around) {
  const { option } = around;
  return { claim, at, record, statements: around.statements, ...(option !== undefined && { option }) };
}
