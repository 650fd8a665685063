import type { Judgement } from '../judge/outcome.ts';
import { worstOf } from '../judge/outcome.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { candidateOf } from './candidates.ts';
import { allOf } from './choice.ts';
import type { Department } from './equipment.ts';
import type { CardComparison, CardCycle, MemberRoute } from './model.ts';
import { packingsOf } from './packings.ts';
import { rankOf } from './ranks.ts';
import type { Sterilizing } from './sterilizing.ts';
import type { Subject } from './subject.ts';

/** The cycles that the set's own file names, against what is derived. */
export function cardOf(
  set: EntityOf['set'] | undefined,
  subject: Subject,
  members: readonly MemberRoute[],
  sterilizing: Sterilizing,
  department: Department,
): CardComparison {
  const cycle = set?.cycle;
  const washer = set?.washer_cycle;
  return {
    ...(cycle && { cycle: sterilizerCard(cycle, subject, sterilizing, department) }),
    ...(washer && { washerCycle: washerCard(washer, members, department) }),
  };
}

type Named = { readonly text: string; readonly at: CardCycle['at'] };

/** In the set's own packaging; where that one is not possible at all, in the chosen one. */
function sterilizerCard(
  { text, at }: Named,
  subject: Subject,
  sterilizing: Sterilizing,
  department: Department,
): CardCycle {
  const index = department.sterilizing.findIndex(({ id }) => id === text);
  const packing = packingsOf(subject, department)[0];
  const candidate =
    index < 0 || packing === undefined
      ? undefined
      : candidateOf(subject, sterilizing.table.contents, packing, index, department);
  if (candidate === undefined)
    return { id: text, at, known: index >= 0, outcome: 'needs-answer', judgements: [], derived: false };
  const derived = sterilizing.feasible.some(({ fit }) => fit.cycle === text && rankOf(fit.outcome) <= 1);
  return {
    id: text,
    at,
    known: true,
    outcome: candidate.fit.outcome,
    judgements: worstFirst(allOf(candidate.fit)),
    derived,
  };
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
