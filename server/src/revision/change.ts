/**
 * revision/: two states of an instruction, or of the department, compared by meaning: what changed, of which class, what it does here, whom
 * it reaches, and who decided on it. Pure functions over entities and views. It must not know reports, editors, git or the disk, and it
 * never says that a change is harmless: at most that our routes stay consistent with the encoded instruction.
 */
import type { List, Node, Place, Rec, Row, Table } from '../model/node.ts';
import type { Saying } from '../model/saying.ts';

/** Worst first: the order within one effect. The words are those of the sign-off file. */
export const changeClasses = [
  'new-prohibition',
  'different',
  'stricter',
  'became-silent',
  'option-removed',
  'step-added',
  'step-removed',
  'step-reordered',
  'scope',
  'prohibition-removed',
  'became-stated',
  'correction',
  'looser',
  'option-added',
  'clarification',
  're-citation',
  'editorial',
] as const;

export type ChangeClass = (typeof changeClasses)[number];

/** Worst first. */
export const effectsHere = ['route-breaks', 'card-changes', 'nothing-visible', 'route-opens', 'unused-only'] as const;

export type EffectHere = (typeof effectsHere)[number];

/** What is to be done unless a person decides otherwise. */
export type DefaultAction =
  | 'block'
  | 'block-as-new-instruction'
  | 'block-and-stop'
  | 'confirm'
  | 'ask'
  | 'review'
  | 'check-encoding'
  | 'accept'
  | 'accept-with-tick';

export const defaultActions: Readonly<Record<ChangeClass, DefaultAction>> = {
  'new-prohibition': 'block-and-stop',
  different: 'block-as-new-instruction',
  stricter: 'block',
  'became-silent': 'ask',
  'option-removed': 'block',
  'step-added': 'block',
  'step-removed': 'block',
  'step-reordered': 'block',
  scope: 'review',
  'prohibition-removed': 'confirm',
  'became-stated': 'review',
  correction: 'check-encoding',
  looser: 'review',
  'option-added': 'review',
  clarification: 'accept',
  're-citation': 'accept',
  editorial: 'accept-with-tick',
};

/** One side of a change. */
export interface Side {
  /** Field path in that side's file. Options and steps go by name, so that it outlives reordering. */
  readonly path: string;
  readonly at: Place;
  /** What stands there, in words with units. */
  readonly words: string;
  readonly says: readonly Saying[];
}

/** One change of meaning. At least one side is there. */
export interface Change {
  /** Stable: entity, field, what it said and what it says. Layout and unit spelling have no part in it. */
  readonly fingerprint: string;
  /** `device/pale-forceps`, as it is called after the change (before it, where it is gone). */
  readonly entity: string;
  readonly path: string;
  readonly class: ChangeClass;
  readonly action: DefaultAction;
  /** Why this class, where it needs saying. */
  readonly because?: string;
  readonly before?: Side;
  readonly after?: Side;
  /** How to make this change alone; none where nothing that is derived could notice it. */
  readonly edit?: Edit;
}

/** One replacement in the old entity's tree. `node` or `row` undefined: taken away. */
export type Edit =
  | { readonly is: 'field'; readonly owner: Rec; readonly key: string; readonly node?: Node | undefined }
  | { readonly is: 'list'; readonly owner: List<Node>; readonly items: readonly Node[] }
  | { readonly is: 'row'; readonly owner: Table<Node>; readonly key: string; readonly row?: Row<Node> | undefined };

/** An old passage that no passage of the new side resembles: text that was dropped without a word is the dangerous kind. */
export interface LostStatement {
  readonly entity: string;
  readonly id: string;
  readonly saying: Saying;
  /** Fingerprints of the changes that report what went with it. Never empty. */
  readonly reportedBy: readonly string[];
}

/** All that differs between two states of one entity. */
export interface EntityComparison {
  readonly entity: string;
  readonly before?: Rec;
  readonly after?: Rec;
  readonly changes: readonly Change[];
  readonly lost: readonly LostStatement[];
  /** Paths at which only the record of reading differs: who looked, and when. No change of what is demanded. */
  readonly recordKeeping: readonly string[];
}
