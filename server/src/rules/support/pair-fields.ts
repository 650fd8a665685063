import type { Quantity } from '../../model/node.ts';
import { usesAny } from './answered-faults.ts';
import type { FieldClaim } from './field-claim.ts';
import { claimsOf } from './field-claims.ts';
import type { Transcribed } from './transcription.ts';
import type { TranscriptionFault } from './transcription-fault.ts';

/** A field that takes one number of a doubtful pair, with that number. */
export interface PairField {
  readonly field: FieldClaim;
  readonly quantity: Quantity;
}

/** The fields that cite the statement and take one of the two numbers that do not agree, in file order. */
export function pairFields(entity: Transcribed, { fault, quoted }: TranscriptionFault): readonly PairField[] {
  const fields: PairField[] = [];
  for (const field of claimsOf(entity).claims) {
    if (!field.statements.includes(quoted.id)) continue;
    const quantity = field.quantities?.find((one) =>
      usesAny(
        quoted.reading,
        { ...field, claim: { claim: 'number', parameter: '', bound: 'stated', values: [one] } },
        fault.spans,
      ),
    );
    if (quantity !== undefined) fields.push({ field, quantity });
  }
  return fields.sort((a, b) => a.quantity.at.span.start - b.quantity.at.span.start);
}
