import type { Judgement, Outcome } from '../judge/outcome.ts';
import type { LibraryView, Query } from '../library/view.ts';
import { allOf } from '../route/choice.ts';
import type { MemberRoute, StageFit } from '../route/model.ts';
import { asking, failing, rankOf } from '../route/ranks.ts';
import type { Derivation } from '../route/route.ts';
import { deriveSet } from '../route/route.ts';
import { fitOf } from '../route/sterilizing.ts';
import type { Cell } from '../route/table.ts';

/** A cycle of the department as a choice for one set. Smaller `rank` first; `words` say why it stands there. */
export interface CycleChoice {
  readonly id: string;
  readonly rank: number;
  readonly words: string;
}

export interface CycleChoices {
  readonly sterilizing: readonly CycleChoice[];
  readonly washing: readonly CycleChoice[];
}

/** Every cycle for a set as its file packs it: what is consistent with all encoded instructions first, the reason beside the others. */
export const cycleChoices: Query<string, CycleChoices | undefined> = {
  name: 'cycle-choices',
  work: (view: LibraryView, id: string) => {
    const set = view.get('set', id);
    if (set === undefined) return undefined;
    const derivation = deriveSet(view, set);
    return { sterilizing: sterilizingChoices(derivation), washing: washingChoices(derivation) };
  },
};

const elsewhere = failing + 1;

function sterilizingChoices(derivation: Derivation): readonly CycleChoice[] {
  const { sterilizing, department } = derivation;
  if (!sterilizing.needed) return [];
  const all = sterilizing.table.cells();
  return department.sterilizing.map(({ id }, index) => {
    const cells = all.filter((cell) => cell.cycle === index);
    const own = cells.filter(({ packing }) => packing.asFiled).sort((a, b) => a.rank - b.rank)[0];
    if (own === undefined && cells.length === 0) return { id, rank: elsewhere, words: 'not for this use' };
    if (own !== undefined && own.rank < failing) return { id, rank: own.rank, words: wordsFor(own, derivation) };
    const other = cells.filter(({ rank }) => rank < failing)[0];
    if (other !== undefined) {
      const packaging = other.packing.packaging?.id?.text ?? 'another packaging';
      return {
        id,
        rank: failing,
        words: `only in ${packaging}${own === undefined ? '' : `: ${whyNot(own, derivation)}`}`,
      };
    }
    const cell = own ?? cells[0];
    return { id, rank: elsewhere, words: cell === undefined ? '' : whyNot(cell, derivation) };
  });
}

function wordsFor(cell: Cell, derivation: Derivation): string {
  return cell.rank < asking ? goodWords(cell.rank) : `open: ${reasonOf(cell, 'needs-answer', derivation)}`;
}

function goodWords(rank: number): string {
  const words = 'consistent with the encoded instructions';
  return rank === 0 ? words : `${words}, with a note`;
}

function whyNot(cell: Cell, derivation: Derivation): string {
  return reasonOf(cell, 'fails', derivation);
}

function reasonOf(cell: Cell, outcome: Outcome, { subject, sterilizing, department }: Derivation): string {
  const fit = fitOf(subject, sterilizing, cell, department);
  return fit === undefined ? '' : reasonIn(allOf(fit), outcome);
}

function reasonIn(judgements: readonly Judgement[], wanted: Outcome): string {
  const those = judgements.filter(({ outcome }) => outcome === wanted);
  const [first] = those;
  if (first === undefined) return '';
  const gap = first.gap === undefined || first.gap === '' ? '' : ` (${first.gap})`;
  const more = those.length > 1 ? `; ${those.length - 1} more` : '';
  return `${first.reason}${gap}${more}`;
}

/** A member that may be cleaned by hand or in a machine counts with its way through the machine. */
function washingChoices({ department, route }: Derivation): readonly CycleChoice[] {
  const stages = route.members.flatMap(({ cleaning, otherCleaning }: MemberRoute) => {
    const ways = cleaning === undefined ? otherCleaning : [cleaning, ...otherCleaning];
    const inMachine = ways.map((way) => way.stages.filter(({ stage }) => stage === 'mechanical'));
    return inMachine.find((found) => found.length > 0) ?? [];
  });
  if (stages.length === 0) return [];
  return department.washing.map(({ id }) => washingChoice(id, stages));
}

function washingChoice(id: string, stages: readonly StageFit[]): CycleChoice {
  let rank = 0;
  const judged: Judgement[] = [];
  for (const { means, outcome, judgements, fitting, others } of stages) {
    const fits = means === id ? { outcome } : fitting.find((one) => one.means === id);
    rank = Math.max(rank, fits === undefined ? failing : rankOf(fits.outcome));
    if (means === id) judged.push(...judgements);
    judged.push(...others.filter((one) => one.means === id).flatMap((one) => one.judgements));
  }
  if (rank < asking) return { id, rank, words: goodWords(rank) };
  if (rank === asking) return { id, rank, words: `open: ${reasonIn(judged, 'needs-answer')}` };
  return { id, rank, words: reasonIn(judged, 'fails') };
}
