import type { ChangeClass, DefaultAction, EffectHere } from '../revision/change.ts';
import type { ReviewedChange, RevisionReview } from '../revision/review.ts';
import type { DecisionState } from '../revision/sign-off.ts';

/** What is compared, as the reader named it. */
export interface CompareHead {
  readonly old: string;
  readonly now: string;
  /** Whether effects were derived, and for which department. */
  readonly department: string;
  readonly notices: readonly string[];
  /** How the record of the decisions is begun, where that is not with the option of "compare". */
  readonly recording?: string;
}

export const classWords: Readonly<Record<ChangeClass, string>> = {
  'new-prohibition': 'new prohibition',
  different: 'different',
  stricter: 'stricter',
  'became-silent': 'became silent',
  'option-removed': 'option removed',
  'step-added': 'step added',
  'step-removed': 'step removed',
  'step-reordered': 'steps in another order',
  scope: 'scope',
  'prohibition-removed': 'prohibition removed',
  'became-stated': 'became stated',
  correction: 'correction',
  looser: 'looser',
  'option-added': 'option added',
  clarification: 'clarification',
  're-citation': 're-citation',
  editorial: 'editorial',
};

const effectWords: Readonly<Record<EffectHere, string>> = {
  'route-breaks': 'route breaks',
  'card-changes': 'route holds, card text changes',
  'nothing-visible': 'route holds, nothing visible',
  'route-opens': 'new route opens',
  'unused-only': 'only unused options touched',
};

/** Where there is no route, none holds. */
const effectWithoutRoute: Readonly<Partial<Record<EffectHere, string>>> = {
  'card-changes': 'no route before or after, card text changes',
  'nothing-visible': 'no route before or after',
};

export const actionWords: Readonly<Record<DefaultAction, string>> = {
  block: 'hold until the impact is signed',
  'block-as-new-instruction': 'hold; treat it as a new instruction',
  'block-and-stop': 'hold; put it on the stop list at once',
  confirm: 'a reviewer confirms that it was meant, not left out',
  ask: 'ask the maker; neither unchanged nor free',
  review: 'review',
  'check-encoding': 'check which of the two was encoded',
  accept: 'take over',
  'accept-with-tick': 'take over, with a tick of the reviewer',
};

export const decisionWords: Readonly<Record<DecisionState, string>> = {
  agreed: 'signed',
  disputed: 'disputed',
  asked: 'the maker is asked',
  reopened: 'open again: a side was edited after the decision',
  expired: 'open again: the record is past its day',
  open: 'nobody has decided',
  'none-needed': 'no decision needed',
};

export function effectOf({ here }: ReviewedChange): string {
  if (here === undefined) return 'not derived';
  const { effect, routes } = here;
  if (effect === 'nothing-visible' && routes === 'not-asked') return 'nothing visible';
  return (routes === 'none' ? effectWithoutRoute[effect] : undefined) ?? effectWords[effect];
}

export function decisionOf(review: RevisionReview, { fingerprint }: ReviewedChange): DecisionState {
  return review.signOffs.decisions.find((one) => one.fingerprint === fingerprint)?.state ?? 'open';
}

/** `device pale-scissors, sterilization.dry`. */
export function placeWords({ entity, path }: ReviewedChange): string {
  return `${entity.replace('/', ' ')}${path === '' ? '' : `, ${path}`}`;
}

/** Old and new in one line. */
export function valueWords({ before, after }: ReviewedChange): string {
  return `${before?.words ?? 'nothing'} -> ${after?.words ?? 'nothing'}`;
}

/** `2 stricter, 1 looser`, in order of weight. */
export function countWords(review: RevisionReview): string {
  const parts = Object.entries(review.counts).map(([type, number]) => `${number} ${classWords[type as ChangeClass]}`);
  return parts.length === 0 ? 'no change of meaning' : parts.join(', ');
}

export function quoteWords(side: ReviewedChange['before']): readonly string[] {
  return (side?.says ?? []).filter(({ quote }) => quote !== '').map((one) => `“${one.quote}” (${citation(one)})`);
}

export function citation({
  doc,
  rev,
  page,
}: {
  readonly doc: string;
  readonly rev: string;
  readonly page: string;
}): string {
  return [doc, rev && `rev ${rev}`, page && `p. ${page}`].filter((part) => part !== '').join(', ');
}

/** What is printed under every comparison. */
export const compareCautions: readonly string[] = [
  'The manufacturer’s current document is the instruction; this compares two encodings of it. Where they differ from the page, follow the document and report the difference.',
  '"Consistent with the encoded instruction" is the strongest statement made here. Effects are derived from what is encoded; people decide on each change.',
  'Silence in a document is shown as silence: neither permission nor prohibition.',
];
