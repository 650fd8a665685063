import type { Statement } from '../../model/entities/statement.generated.ts';
import type { Text } from '../../model/node.ts';
import type { QuoteFault } from '../../quantity/prose/claims.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import type { FieldClaim } from './field-claim.ts';

/** A statement with its quote, as read. */
export interface QuotedStatement {
  readonly id: string;
  readonly statement: Statement;
  readonly quote: Text;
  readonly reading: QuoteReading;
  /** How many fields cite it. */
  readonly cited: number;
}

/** One departure of the fields from a quote. Without a field it stands in the statement itself. */
export interface TranscriptionFault {
  readonly fault: QuoteFault;
  readonly quoted: QuotedStatement;
  readonly field?: FieldClaim;
}
