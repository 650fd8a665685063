import { tidy } from '../model/content.ts';
import type { Statement } from '../model/entities/statement.generated.ts';
import type { Citation } from '../model/node.ts';
import type { Quoting } from '../model/saying.ts';
import { type Alignment, align } from './align.ts';

/** A statement under its id. */
export interface NamedStatement {
  readonly id: string;
  readonly statement: Statement;
}

/** Which passage of the new side is which of the old, whatever their ids, sections and pages. */
export interface StatementAlignment extends Alignment<NamedStatement> {
  /** What a citation of the new side cites, in ids of the old; a passage that is new keeps its id with a `+`. */
  citedAfter(citation: Citation | undefined): ReadonlySet<string>;
  citedBefore(citation: Citation | undefined): ReadonlySet<string>;
}

export function alignStatements(before: Quoting, after: Quoting): StatementAlignment {
  const old = statementsOf(before);
  const now = statementsOf(after);
  const quotes = align<NamedStatement>(
    old,
    now,
    [({ id, statement }) => `${id} ${quoteOf(statement)}`, ({ statement }) => quoteOf(statement) || undefined],
    likeness,
  );
  const oldIdOf = new Map(quotes.pairs.map(([one, other]) => [other.id, one.id]));
  const fresh = new Set(quotes.added.map(({ id }) => id));
  return {
    ...quotes,
    citedBefore: (citation) => new Set(namesIn(citation)),
    citedAfter: (citation) =>
      new Set(namesIn(citation).map((id) => oldIdOf.get(id) ?? (fresh.has(id) ? `+${id}` : id))),
  };
}

function statementsOf({ statements }: Quoting): readonly NamedStatement[] {
  return [...(statements?.rows ?? [])].map(([id, { value }]) => ({ id, statement: value }));
}

/** Ids cited, and what is cited in place (`doc`, `page`) as one text. */
function namesIn(citation: Citation | undefined): readonly string[] {
  if (citation === undefined) return [];
  const inline = Object.entries(citation.inline ?? {}).map(([key, part]) => `${key} ${part?.text ?? ''}`);
  return [...citation.statements.map(({ text }) => text), ...(inline.length > 0 ? [inline.sort().join(', ')] : [])];
}

export function quoteOf(statement: Statement): string {
  return tidy(statement.quote?.text ?? '');
}

/** Share of words in common (Dice); the same id or the same section counts as one word more. */
function likeness(a: NamedStatement, b: NamedStatement): number {
  const [ours, theirs] = [wordsOf(a.statement), wordsOf(b.statement)];
  const left = new Map<string, number>();
  for (const word of ours) left.set(word, (left.get(word) ?? 0) + 1);
  let common = 0;
  for (const word of theirs) {
    const count = left.get(word) ?? 0;
    if (count === 0) continue;
    left.set(word, count - 1);
    common++;
  }
  const all = ours.length + theirs.length;
  if (all === 0) return a.id === b.id ? 1 : 0;
  return (2 * common) / all + (a.id === b.id ? 0.1 : 0);
}

function wordsOf(statement: Statement): readonly string[] {
  return (
    quoteOf(statement)
      .slice(0, 2000)
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  );
}
