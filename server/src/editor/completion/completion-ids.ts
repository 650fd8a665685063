import { called } from '../../library/called.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Node } from '../../model/node.ts';
import { fieldOf, nodesIn } from '../../model/walk.ts';
import type { AskedChoice } from '../../panel/questions.ts';
import type { Kind } from '../../schema/kinds.ts';
import { isKind } from '../../schema/kinds.ts';
import { statementIn, whereSaid } from '../naming/cited.ts';
import { firstText } from '../naming/target-words.ts';
import type { Block } from '../writing/text-blocks.ts';

/** An id that exists, and what it names. */
export interface KnownId {
  readonly id: string;
  readonly detail: string;
  readonly about: readonly Block[];
}

/** What can be found in a library, by name: the rules and faults of reading. */
export interface NamedRule {
  readonly id: string;
  readonly why: string;
}

/** Where ids are looked up: the file being written (as far as it can be read), the library around it, the rules. */
export interface Surroundings {
  readonly entity: AnyEntity | undefined;
  readonly view: LibraryView;
  readonly rules: readonly NamedRule[];
}

/** More entries than this nobody looks through: the editor is told to ask again as letters are typed. */
export const mostOffered = 200;

/** Where things of one file that others name stand in it. */
const partsUnder: Readonly<Record<string, string>> = {
  lumen: 'lumens',
  part: 'parts',
  option: 'sterilization',
  'cleaning-node': 'cleaning',
};

/** Every id that a reference of this sort may name, in the order of its files. */
export function knownIds(refers: string, around: Surroundings): readonly KnownId[] {
  const { view, entity } = around;
  if (isKind(refers) || isNamedIn(refers)) return view.ask(idsInLibrary, refers);
  switch (refers) {
    case 'statement':
      return entity === undefined ? [] : statementsOf(entity);
    case 'rule':
      return around.rules.map(({ id, why }) => ({ id, detail: '', about: [{ block: 'line', text: why }] }));
    default:
      return entity === undefined ? [] : partsOf(entity, partsUnder[refers] ?? '');
  }
}

/** Of so many as nobody looks through only those that hold the typed letters in their order, the first of them. */
export function fittingIds(ids: readonly KnownId[], typed: string): readonly KnownId[] {
  if (ids.length <= mostOffered) return ids;
  const fitting: KnownId[] = [];
  for (const known of ids) {
    if (fitting.length === mostOffered) break;
    if (holds(known.id, typed)) fitting.push(known);
  }
  return fitting;
}

export function holds(name: string, typed: string): boolean {
  let at = 0;
  const lower = name.toLowerCase();
  for (const letter of typed.toLowerCase()) {
    at = lower.indexOf(letter, at) + 1;
    if (at === 0) return false;
  }
  return true;
}

/** One of them as an answer to a question: by its name where it has one, the id beside it. */
export function idAsked(refers: string, { id, detail }: KnownId, view: LibraryView): AskedChoice {
  if (!isKind(refers)) return { label: id, detail };
  const label = called(refers, id, view);
  return label === id ? { label, detail } : { label, detail: id, gives: id };
}

type NamedIn = 'document-number' | 'cycle' | 'washer-cycle';

function isNamedIn(refers: string): refers is NamedIn {
  return refers === 'document-number' || refers === 'cycle' || refers === 'washer-cycle';
}

/** Worked out once until a file that they stand in changes: a large library has thousands. */
const idsInLibrary: Query<Kind | NamedIn, readonly KnownId[]> = {
  name: 'known-ids',
  work: (view, refers) => {
    switch (refers) {
      case 'document-number':
        return documentNumbers(view);
      case 'cycle':
        return view.all('sterilizer').flatMap((machine) => cyclesOf(machine, machine.cycles?.items ?? []));
      case 'washer-cycle':
        return view.all('washer').flatMap((machine) => cyclesOf(machine, machine.cycles?.items ?? []));
      default:
        return view.all(refers).map((one) => entityId(one, refers));
    }
  },
};

function entityId(entity: AnyEntity, kind: string): KnownId {
  const { id, file } = rootOfEntity(entity);
  const name = firstText(entity, ['name', 'title', 'text']);
  return { id, detail: name === '' ? kind : name, about: [{ block: 'line', text: `${kind} in ${file}` }] };
}

function documentNumbers(view: LibraryView): readonly KnownId[] {
  const byNumber = new Map<string, EntityOf['document'][]>();
  for (const document of view.all('document')) {
    const number = document.doc?.text;
    if (number !== undefined) byNumber.set(number, [...(byNumber.get(number) ?? []), document]);
  }
  return [...byNumber].map(([id, documents]) => ({
    id,
    detail: documents.map((one) => `revision ${one.rev?.text ?? '?'}`).join(', '),
    about: documents.map((one) => ({
      block: 'line',
      text: `Revision ${one.rev?.text ?? '?'}${one.status === undefined ? '' : `: ${one.status.text}`}`,
    })),
  }));
}

function cyclesOf(machine: AnyEntity, cycles: readonly Node[]): readonly KnownId[] {
  return cycles.flatMap((cycle) => {
    const id = firstText(cycle, ['id']);
    if (id === '') return [];
    const facts = ['name', 'modality', 'temp', 'exposure', 'dry'].map((key) => [key, firstText(cycle, [key])] as const);
    const words = facts.filter(([, text]) => text !== '').map(([key, text]) => (key === 'dry' ? `dry ${text}` : text));
    const about: Block = { block: 'line', text: `Cycle of ${rootOfEntity(machine).id}` };
    return [{ id, detail: words.join(', '), about: [about] }];
  });
}

function statementsOf(entity: AnyEntity): readonly KnownId[] {
  const table = fieldOf(entity, 'statements');
  if (table?.node !== 'table') return [];
  return [...table.rows.keys()].map((id) => {
    const statement = statementIn(entity, id);
    const text = (key: string): string => (statement === undefined ? '' : firstText(statement, [key]));
    const quote = text('quote');
    const from = whereSaid({ doc: text('doc'), rev: text('rev'), page: text('page') });
    return { id, detail: quote, about: [{ block: 'quote', text: quote, from }] };
  });
}

function partsOf(entity: AnyEntity, field: string): readonly KnownId[] {
  const inside = fieldOf(entity, field);
  if (inside === undefined) return [];
  return nodesIn(inside).flatMap((node) => {
    const id = node.node === 'record' ? firstText(node, ['id']) : '';
    return id === '' ? [] : [{ id, detail: firstText(node, ['name', 'modality', 'stage']), about: [] }];
  });
}
