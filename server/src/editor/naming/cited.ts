import type { AnyEntity } from '../../model/entity.ts';
import type { Citation, Node, Rec, Text } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import { sayingOf } from '../../model/saying.ts';
import { childrenOf, fieldOf, rowOf } from '../../model/walk.ts';

/** A quote and where it stands, in words. */
export interface CitedQuote {
  readonly quote: string;
  readonly from: string;
}

/** The citation that speaks for the innermost of these nodes: its own, else that of the nearest thing around it. */
export function citationsAt(chain: readonly Node[]): Citation | undefined {
  for (let i = chain.length - 1; i >= 0; i--) {
    const node = chain[i];
    if (node?.node === 'citation') return node;
    if (node?.node !== 'record') continue;
    const src = citationBeside(node, chain[i + 1]) ?? fieldOf(node, 'src');
    if (src?.node === 'citation') return src;
  }
  return undefined;
}

/** `mass_src`, for `mass_max` beside it. */
function citationBeside(record: Rec, field: Node | undefined): Citation | undefined {
  const key = String(field?.at.key ?? '');
  for (const node of childrenOf(record)) {
    const [, stem] = /^(.+)_src$/.exec(String(node.at.key)) ?? [];
    if (node.node === 'citation' && stem !== undefined && (key === stem || key.startsWith(`${stem}_`))) return node;
  }
  return undefined;
}

/** The quotes that a citation of this entity leads to; ids without a statement are left out. */
export function sayingsAt(entity: AnyEntity, citation: Citation | undefined): readonly CitedQuote[] {
  if (citation === undefined) return [];
  const sayings: Saying[] = [];
  for (const id of citation.statements) {
    const statement = statementIn(entity, id.text);
    if (statement?.node === 'record') sayings.push(sayingOf(textsOf(statement), statement.at));
  }
  const { inline } = citation;
  if (inline !== undefined)
    sayings.push(sayingOf({ ...inline, ...(inline.text && { quote: inline.text }) }, citation.at));
  return sayings
    .filter(({ quote, doc }) => quote !== '' || doc !== '')
    .map((saying) => ({ quote: saying.quote, from: whereSaid(saying) }));
}

/** The statement of an entity under an id. Several kinds have statements. */
export function statementIn(entity: AnyEntity, id: string): Node | undefined {
  const statements = fieldOf(entity, 'statements');
  return statements?.node === 'table' ? rowOf(statements, id) : undefined;
}

function textsOf(statement: Extract<Node, { node: 'record' }>): { quote?: Text; doc?: Text; rev?: Text; page?: Text } {
  const found: { quote?: Text; doc?: Text; rev?: Text; page?: Text } = {};
  for (const key of ['quote', 'doc', 'rev', 'page'] as const) {
    const node = fieldOf(statement, key);
    if (node?.node === 'text' || node?.node === 'quantity') found[key] = { node: 'text', at: node.at, text: node.text };
  }
  return found;
}

/** `DW-REP-077, revision D, page 3`. */
export function whereSaid({ doc, rev, page }: Pick<Saying, 'doc' | 'rev' | 'page'>): string {
  return [
    doc === '' ? 'document not named' : doc,
    rev === '' ? '' : `revision ${rev}`,
    page === '' ? 'no page given' : `page ${page}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}
