import type { Judgement, Outcome } from '../../judge/outcome.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import { allOf } from '../../route/choice.ts';
import type { MemberRoute, StageFit } from '../../route/model.ts';
import type { Nearness } from '../../route/nearness.ts';
import { compareNearness, nearnesses } from '../../route/nearness.ts';
import { asking, failing, rankOf } from '../../route/ranks.ts';
import type { Derivation } from '../../route/route.ts';
import { deriveSet } from '../../route/route.ts';
import { fitOf } from '../../route/sterilizing.ts';
import type { Cell } from '../../route/table.ts';

/** A cycle of the department as a choice for one set; `words` say why it stands where it stands. */
export interface CycleChoice {
  readonly id: string;
  readonly words: string;
}

/** In the order in which they are offered. */
export interface CycleChoices {
  readonly sterilizing: readonly CycleChoice[];
  readonly washing: readonly CycleChoice[];
}

/**
 * Every cycle for a set as its file packs it: what is consistent with all encoded instructions first, then what
 * is open, then what fails by the fewest and smallest gaps, then what would need another packaging; the reason beside each of them.
 */
export const cycleChoices: Query<string, CycleChoices | undefined> = {
  name: 'cycle-choices',
  work: (view: LibraryView, id: string) => {
    const set = view.get('set', id);
    if (set === undefined) return undefined;
    const derivation = deriveSet(view, set);
    return { sterilizing: sterilizingChoices(derivation), washing: washingChoices(derivation) };
  },
};

interface Placed extends CycleChoice {
  /** As in `ranks.ts`, and beyond it what no number bridges. */
  readonly rank: number;
  readonly nearness: Nearness;
}

const otherPackaging = failing + 1;
const elsewhere = failing + 2;
const far: Nearness = { kinds: Number.POSITIVE_INFINITY, numbers: 0, size: 0 };

function inOrder(choices: readonly Placed[]): readonly CycleChoice[] {
  return choices
    .toSorted((a, b) => a.rank - b.rank || compareNearness(a.nearness, b.nearness))
    .map(({ id, words }) => ({ id, words }));
}

function sterilizingChoices(derivation: Derivation): readonly CycleChoice[] {
  const { sterilizing, department } = derivation;
  if (!sterilizing.needed) return [];
  const all = sterilizing.table.cells();
  const own = department.sterilizing.map((_, cycle) => ownCell(all, cycle));
  const judged = own.map((cell) => (cell === undefined ? [] : judgementsOf(cell, derivation)));
  const near = nearnesses(judged, derivation);
  return inOrder(
    department.sterilizing.map(({ id }, cycle): Placed => {
      const nearness = (own[cycle] === undefined ? undefined : near[cycle]) ?? far;
      const judgements = judged[cycle] ?? [];
      const rank = own[cycle]?.rank ?? elsewhere;
      if (rank < failing) return { id, nearness, rank, words: wordsFor(rank, judgements) };
      const words = reasonIn(judgements, 'fails');
      if (rank === failing && nearness.kinds === 0) return { id, nearness, rank, words };
      const other = all.find((cell) => cell.cycle === cycle && cell.rank < failing);
      if (other === undefined)
        return { id, nearness, rank: elsewhere, words: words === '' ? 'not for this use' : words };
      const pack = other.packing.packaging;
      const packaging = pack?.name?.text ?? pack?.id?.text ?? 'another packaging';
      return { id, nearness, rank: otherPackaging, words: withReason(`only in ${packaging}`, words) };
    }),
  );
}

/** The best as the set's file packs it. */
function ownCell(cells: readonly Cell[], cycle: number): Cell | undefined {
  let best: Cell | undefined;
  for (const cell of cells)
    if (cell.cycle === cycle && cell.packing.asFiled && (best === undefined || cell.rank < best.rank)) best = cell;
  return best;
}

function judgementsOf(cell: Cell, { subject, sterilizing, department }: Derivation): readonly Judgement[] {
  const fit = fitOf(subject, sterilizing, cell, department);
  return fit === undefined ? [] : allOf(fit);
}

/** What does not fail: the note, or what is open, beside it. */
function wordsFor(rank: number, judgements: readonly Judgement[]): string {
  if (rank >= asking) return withReason('open', reasonIn(judgements, 'needs-answer'));
  const words = 'consistent with the encoded instructions';
  return rank === 0 ? words : withReason(`${words}, with a note`, reasonIn(judgements, 'meets-with-note'));
}

function withReason(words: string, reason: string): string {
  return reason === '' ? words : `${words}: ${reason}`;
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
function washingChoices(derivation: Derivation): readonly CycleChoice[] {
  const { department, route } = derivation;
  const stages = route.members.flatMap(({ cleaning, otherCleaning }: MemberRoute) => {
    const ways = cleaning === undefined ? otherCleaning : [cleaning, ...otherCleaning];
    const inMachine = ways.map((way) => way.stages.filter(({ stage }) => stage === 'mechanical'));
    return inMachine.find((found) => found.length > 0) ?? [];
  });
  if (stages.length === 0) return [];
  const judged = department.washing.map(({ id }) => judgedIn(id, stages));
  const near = nearnesses(judged, derivation);
  return inOrder(
    department.washing.map(({ id }, index): Placed => {
      const judgements = judged[index] ?? [];
      const rank = Math.max(0, ...stages.map((stage) => rankIn(id, stage)));
      const words = rank < failing ? wordsFor(rank, judgements) : reasonIn(judgements, 'fails');
      return { id, rank, nearness: near[index] ?? far, words };
    }),
  );
}

function rankIn(id: string, { means, outcome, fitting }: StageFit): number {
  const fits = means === id ? { outcome } : fitting.find((one) => one.means === id);
  return fits === undefined ? failing : rankOf(fits.outcome);
}

function judgedIn(id: string, stages: readonly StageFit[]): readonly Judgement[] {
  return stages.flatMap(({ means, judgements, others }) => [
    ...(means === id ? judgements : []),
    ...others.filter((one) => one.means === id).flatMap((one) => one.judgements),
  ]);
}
