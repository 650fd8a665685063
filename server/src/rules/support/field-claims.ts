import type { AnyEntity } from '../../model/entity.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { BoundWord, Node, Quantity, Rec, Requirement } from '../../model/node.ts';
import { fieldOf, isRequirement } from '../../model/walk.ts';
import { isFault, parseQuantity } from '../../quantity/parse.ts';
import type { NumberClaim } from '../../quantity/prose/claims.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { Around, FieldClaims, Gathered } from './field-claim.ts';
import { idsOf, inside, placed } from './field-claim.ts';
import { ownCitations, prohibitionBounds } from './field-stages.ts';
import { structureClaims } from './structure-claims.ts';
import { useClaimOf } from './use-claims.ts';

/** Kinds whose bare numbers are the maker's. In the others they are settings of the department. */
const makersKinds: ReadonlySet<Kind> = new Set<Kind>(['device', 'packaging', 'chemistry', 'monitor']);
const notFields: ReadonlySet<string> = new Set([
  'node',
  'at',
  'kind',
  'id',
  'statements',
  'sources',
  'review',
  'notes',
  'src',
]);
const boundWords = [
  'at_least',
  'at_most',
  'between',
  'exactly',
  'stated',
  'about',
] as const satisfies readonly BoundWord[];

/** All that an entity says of its statements, in the order of its fields. */
export function claimsOf(entity: AnyEntity): FieldClaims {
  const found: Gathered = { kind: rootOfEntity(entity).kind, claims: [], citing: [], forbidden: new Set() };
  const src = fieldOf(entity, 'src');
  const statements = src?.node === 'citation' ? idsOf(src) : [];
  addFields(entity, { statements, citedBy: 'file', isEvidence: false }, found);
  return found;
}

function addFields(record: Rec, around: Around, found: Gathered): void {
  for (const key of Object.keys(record)) {
    if (notFields.has(key)) continue;
    const node = fieldOf(record, key);
    if (node !== undefined) addNode(key, node, record, around, found);
  }
}

function addNode(key: string, node: Node, holder: Rec, around: Around, found: Gathered): void {
  switch (node.node) {
    case 'record':
      addRecord(key, node, inside(node, around), found);
      return;
    case 'list':
      for (const item of node.items) addNode(key, item, holder, around, found);
      return;
    case 'table':
      for (const row of node.rows.values()) addNode(key, row.value, holder, around, found);
      return;
    case 'quantity':
      addBareNumber(key, node, holder, around, found);
      return;
    default:
  }
}

function addRecord(key: string, record: Rec, around: Around, found: Gathered): void {
  if (around.statements.length > 0) found.citing.push({ record, statements: around.statements });
  if (isRequirement(record)) {
    addRequirement(key, record, record.doc === undefined ? around : { ...around, statements: [] }, found);
    return;
  }
  addAmbiguous(record, around, found);
  addProhibition(key, record, around, found);
  const use = useClaimOf(key, record, around, found);
  if (use !== undefined) found.claims.push(use);
  found.claims.push(...structureClaims(record, around));
  addFields(record, around, found);
}

function addRequirement(key: string, requirement: Requirement, around: Around, found: Gathered): void {
  const { at, tol, read_as, conflict, specific } = requirement;
  addAmbiguous(requirement, around, found);
  const parameter = `${key} ${found.claims.length}`;
  for (const bound of around.statements.length === 0 ? [] : boundWords) {
    const quantities = quantitiesUnder(requirement[bound]);
    if (quantities.length === 0) continue;
    const claim: NumberClaim = {
      claim: 'number',
      parameter,
      bound,
      values: quantities,
      ...(tol !== undefined && tol.problem === undefined && { tolerance: tol }),
      ...(read_as !== undefined && { readAs: read_as.text }),
      ...(around.isEvidence && { isEvidence: true }),
    };
    found.claims.push({ ...placed(claim, at, requirement, around), repeats: 'everything', quantities });
  }
  for (const nested of [...(conflict?.items ?? []), ...(specific === undefined ? [] : [specific])]) {
    addRecord(key, nested, inside(nested, around), found);
  }
}

const none: readonly Quantity[] = [];

function quantitiesUnder(value: Requirement[BoundWord]): readonly Quantity[] {
  if (value === undefined) return none;
  return (value.node === 'list' ? value.items : [value]).filter((quantity) => quantity.problem === undefined);
}

function addBareNumber(key: string, quantity: Quantity, holder: Rec, around: Around, found: Gathered): void {
  if (quantity.problem !== undefined) return;
  const own = fieldOf(holder, ownCitations.get(key) ?? '');
  const under: Around = own?.node === 'citation' ? { ...around, statements: idsOf(own), citedBy: 'field' } : around;
  if (under.statements.length === 0) return;
  const isMakers = makersKinds.has(found.kind) && under.citedBy === 'field';
  const claim: NumberClaim = {
    claim: 'number',
    parameter: `${key} ${found.claims.length}`,
    bound: 'stated',
    values: [quantity],
  };
  found.claims.push({
    ...placed(claim, quantity.at, holder, under),
    repeats: isMakers ? 'number' : 'nothing',
    quantities: [quantity],
  });
}

function addAmbiguous(record: Rec, around: Around, found: Gathered): void {
  const ambiguous = fieldOf(record, 'ambiguous');
  if (ambiguous?.node !== 'text' || around.statements.length === 0) return;
  found.claims.push({
    ...placed({ claim: 'ambiguous', text: ambiguous.text }, ambiguous.at, record, around),
    repeats: 'everything',
  });
}

function addProhibition(key: string, record: Rec, around: Around, found: Gathered): void {
  if (key !== 'not' && key !== 'avoid') {
    if (fieldOf(record, 'without') !== undefined) for (const id of around.statements) found.forbidden.add(id);
    return;
  }
  for (const id of around.statements) found.forbidden.add(id);
  const what = fieldOf(record, 'what');
  const value = fieldOf(record, 'value');
  const meant = what?.node === 'text' ? prohibitionBounds.get(what.text) : undefined;
  if (meant === undefined || value?.node !== 'text' || around.statements.length === 0) return;
  const quantity = parseQuantity(value.text, meant.dimension);
  if (isFault(quantity)) return;
  const claim: NumberClaim = {
    claim: 'number',
    parameter: `not ${found.claims.length}`,
    bound: meant.bound,
    values: [quantity],
  };
  found.claims.push({
    ...placed(claim, value.at, record, around),
    repeats: 'everything',
    quantities: [{ node: 'quantity', at: value.at, text: value.text, ...quantity }],
  });
}
