import type { Statement } from './entities/statement.generated.ts';
import type { Citation, Place, Quantity, Table, Text } from './node.ts';
import { rowOf } from './walk.ts';

/** What a document says at one place, ready to be shown: the words, and where they stand. */
export interface Saying {
  readonly quote: string;
  readonly doc: string;
  readonly rev: string;
  /** As written: `5`, `11-12`, or empty when not given. */
  readonly page: string;
  readonly at: Place;
}

/** Any entity that quotes documents: devices, packaging, chemistry, machines, procedures, ... */
export interface Quoting {
  readonly statements?: Table<Statement>;
}

/** The statement of this entity under `id`, or undefined when there is none. */
export function statementOf(entity: Quoting, id: string): Statement | undefined {
  return rowOf(entity.statements, id);
}

/** The statements that a citation names, in its order; ids without a statement are left out. */
export function statementsOf(entity: Quoting, citation: Citation | undefined): readonly Statement[] {
  const found: Statement[] = [];
  for (const id of citation?.statements ?? []) {
    const statement = statementOf(entity, id.text);
    if (statement !== undefined) found.push(statement);
  }
  return found;
}

/** What the cited document says, for people. */
export function sayingsOf(entity: Quoting, citation: Citation | undefined): readonly Saying[] {
  const sayings = statementsOf(entity, citation).map((statement) => sayingOf(statement, statement.at));
  const inline = citation?.inline;
  if (citation === undefined || inline === undefined) return sayings;
  return [...sayings, sayingOf({ ...inline, ...(inline.text && { quote: inline.text }) }, citation.at)];
}

interface Stated {
  readonly quote?: Text | undefined;
  readonly doc?: Text | undefined;
  readonly rev?: Text | undefined;
  readonly page?: Text | Quantity | undefined;
}

export function sayingOf(stated: Stated, at: Place): Saying {
  return {
    quote: stated.quote?.text ?? '',
    doc: stated.doc?.text ?? '',
    rev: stated.rev?.text ?? '',
    page: stated.page?.text ?? '',
    at,
  };
}
