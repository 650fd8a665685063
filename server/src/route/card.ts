import type { Judgement } from '../judge/outcome.ts';
import { worstOf } from '../judge/outcome.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { allOf } from './choice.ts';
import type { Department } from './equipment.ts';
import type { CardComparison, CardCycle, MemberRoute, SterilizationFit } from './model.ts';
import { asking, rankOf } from './ranks.ts';
import type { Sterilizing } from './sterilizing.ts';

/** The cycles that the set's own file names, against what is derived. `asPacked`: the set in its own packaging on its card's cycle. */
export function cardOf(
  set: EntityOf['set'] | undefined,
  asPacked: SterilizationFit | undefined,
  members: readonly MemberRoute[],
  sterilizing: Sterilizing,
  department: Department,
): CardComparison {
  const cycle = set?.cycle;
  const washer = set?.washer_cycle;
  return {
    ...(cycle && { cycle: sterilizerCard(cycle, asPacked, sterilizing, department) }),
    ...(washer && { washerCycle: washerCard(washer, members, department) }),
  };
}

type Named = { readonly text: string; readonly at: CardCycle['at'] };

/** Judged in the set's own packaging. Derived: it is among the routes without open question, be it in another packaging. */
function sterilizerCard(
  { text, at }: Named,
  asPacked: SterilizationFit | undefined,
  { feasible }: Sterilizing,
  department: Department,
): CardCycle {
  const known = department.sterilizing.some(({ id }) => id === text);
  const derived = feasible.some(({ cycle, rank }) => rank < asking && department.sterilizing[cycle]?.id === text);
  if (asPacked?.cycle !== text) return { id: text, at, known, outcome: 'needs-answer', judgements: [], derived };
  return { id: text, at, known, outcome: asPacked.outcome, judgements: worstFirst(allOf(asPacked)), derived };
}

/** The washer cycle of the card for every member that goes through a washer. */
function washerCard({ text, at }: Named, members: readonly MemberRoute[], department: Department): CardCycle {
  const known = department.washing.some(({ id }) => id === text);
  const judgements: Judgement[] = [];
  let derived = known;
  for (const { cleaning } of members) {
    const stage = cleaning?.stages.find((one) => one.stage === 'mechanical');
    if (stage === undefined) continue;
    derived &&= stage.fitting.some(({ means, outcome }) => means === text && rankOf(outcome) <= 1);
    if (stage.means === text) judgements.push(...stage.judgements);
    judgements.push(...stage.others.filter(({ means }) => means === text).flatMap((one) => one.judgements));
  }
  return {
    id: text,
    at,
    known,
    outcome: known ? worstOf(judgements) : 'needs-answer',
    judgements: worstFirst(judgements),
    derived,
  };
}

function worstFirst(judgements: readonly Judgement[]): readonly Judgement[] {
  return judgements.filter(({ outcome }) => outcome !== 'meets').sort((a, b) => rankOf(b.outcome) - rankOf(a.outcome));
}
