import type { Span } from '../../base/span.ts';
import type { QuantityValue } from '../quantity.ts';
import type { StageWord } from './meaning.ts';

export type QuoteFaultName =
  | 'quote-number-mismatch'
  | 'quote-bound-changed'
  | 'bare-number-promoted'
  | 'quote-negation-lost'
  | 'quote-and-or-changed'
  | 'unit-pair-mismatch'
  | 'delta-converted-as-absolute'
  | 'min-token-ambiguous'
  | 'decimal-or-footnote-suspect'
  | 'approximate-used-as-limit'
  | 'exposure-vs-total-time'
  | 'half-cycle-encoded'
  | 'quote-number-not-encoded';

/** A number that a field says the quote holds. */
export interface NumberClaim {
  readonly claim: 'number';
  /** The field's key: `exposure`, `dry`, `total_time`, ... Fields of one parameter are read together. */
  readonly parameter: string;
  readonly bound: 'at_least' | 'at_most' | 'between' | 'exactly' | 'stated' | 'about';
  /** One value, or the two ends of `between` in any order. */
  readonly values: readonly QuantityValue[];
  readonly tolerance?: QuantityValue;
  /** The writer has said how `min` reads. */
  readonly readAs?: 'minutes' | 'minimum';
  /** Marked as evidence, not as an instruction: half-cycle figures may stand there. */
  readonly isEvidence?: boolean;
}

/** A field that says whether something is done. */
export interface UseClaim {
  readonly claim: 'use';
  /** The stage or method, when the field is about one; otherwise every prohibition of the quote counts. */
  readonly subject?: StageWord;
  readonly use: 'allowed' | 'required' | 'recommended' | 'forbidden';
  /** The writer has encoded an exception or a condition beside it. */
  readonly hasCondition?: boolean;
}

/** Stages that stand under one `all_of` or `any_of` and cite the quote. */
export interface StructureClaim {
  readonly claim: 'structure';
  readonly structure: 'all_of' | 'any_of';
  readonly stages: readonly StageWord[];
}

/** The field is marked ambiguous, with the words it is about. */
export interface AmbiguousClaim {
  readonly claim: 'ambiguous';
  readonly text: string;
}

export type Claim = NumberClaim | UseClaim | StructureClaim | AmbiguousClaim;

/** Something in a quote that a claim does not say, or says otherwise. `claim` is an index into the claims given. */
export interface QuoteFault {
  readonly fault: QuoteFaultName;
  readonly claim?: number;
  /** The words of the quote that show it. */
  readonly spans: readonly Span[];
  /** Those of `spans` whose number another claim holds. */
  readonly taken?: readonly Span[];
  /** What the quote has in place of the claimed thing, for messages and fixes. */
  readonly quoted?: string;
  /** The claimed value that is at fault. */
  readonly value?: QuantityValue;
  /** The bound the quote gives, where the bound is at fault. */
  readonly bound?: NumberClaim['bound'];
}
