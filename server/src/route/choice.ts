import type { Judgement } from '../judge/outcome.ts';
import type { SterilizerCycle } from '../library/view.ts';
import type { Department } from './equipment.ts';
import { idOf } from './equipment.ts';
import type { ChoiceFact, ChoiceStep, SterilizationFit } from './model.ts';
import type { Packing } from './packings.ts';
import type { Cell } from './table.ts';

interface Step {
  readonly by: ChoiceStep;
  /** Smaller is preferred. */
  rank(cell: Cell, around: Around): number;
  words(rank: number, cell: Cell, around: Around): string;
}

/**
 * The order of choice, one step after the other: a later one counts only where all earlier ones are equal. It is data that every report
 * can show; the tool proposes, the educator picks.
 */
const steps: readonly Step[] = [
  { by: 'fewest-open-questions', rank: ({ open }) => open, words: (rank) => counted(rank, 'open question') },
  {
    by: 'packaging-of-the-set',
    rank: ({ packing }) => packing.distance,
    words: (rank) =>
      ['packed as the set’s file says', 'another packaging of the same kind', 'another kind of packaging'][rank] ?? '',
  },
  {
    by: 'terminal',
    rank: (cell, around) => ((cycleOf(cell, around)?.context?.text ?? 'terminal') === 'terminal' ? 0 : 1),
    words: (rank) => (rank === 0 ? 'for stored packs' : 'for immediate use'),
  },
  { by: 'no-exceptional-step', rank: ({ notes }) => notes, words: (rank) => counted(rank, 'note') },
  {
    by: 'second-machine',
    rank: (cell, around) => (machinesLike(cell, around) > 1 ? 0 : 1),
    words: (_, cell, around) => `${counted(machinesLike(cell, around), 'machine')} can do it`,
  },
  {
    by: 'usual-cycle',
    rank: (cell, around) => (cycleOf(cell, around)?.default?.on === true ? 0 : 1),
    words: (rank) => (rank === 0 ? 'the usual cycle here' : 'not the usual cycle'),
  },
  amount('lowest-heat', 'temperature', ({ temp }) => temp),
  amount('lowest-heat', 'exposure', ({ exposure }) => exposure),
  amount('lowest-heat', 'drying', ({ dry }) => dry),
  amount('shortest', 'whole cycle', ({ total_time }) => total_time),
];

interface Around {
  readonly department: Department;
  /** By packing, and by what a cycle does: the machines that can do it. */
  readonly machines: ReadonlyMap<Packing, ReadonlyMap<string, ReadonlySet<string>>>;
}

function amount(
  by: ChoiceStep,
  what: string,
  of: (cycle: SterilizerCycle) => { readonly value: number; readonly text: string } | undefined,
): Step {
  const quantityOf = (cell: Cell, around: Around) => {
    const cycle = cycleOf(cell, around);
    return cycle === undefined ? undefined : of(cycle);
  };
  return {
    by,
    rank: (cell, around) => quantityOf(cell, around)?.value || 0,
    words: (_, cell, around) => `${what} ${quantityOf(cell, around)?.text ?? 'not given'}`,
  };
}

/** Some cells in the order of choice. */
export interface Choice {
  /** Best first. Equal in all steps: by the names of packaging and cycle. */
  readonly ordered: readonly Cell[];
  /** The facts by which a cell stands where it stands among the others. */
  factsOf(cell: Cell): readonly ChoiceFact[];
}

export function choiceAmong(cells: readonly Cell[], department: Department): Choice {
  const around: Around = { department, machines: machinesOf(cells, department) };
  return {
    ordered: cells.toSorted((a, b) => compare(a, b, around)),
    factsOf: (cell) =>
      steps.map((step) => {
        const rank = step.rank(cell, around);
        return { by: step.by, rank, words: step.words(rank, cell, around) };
      }),
  };
}

function compare(a: Cell, b: Cell, around: Around): number {
  for (const step of steps) {
    const difference = step.rank(a, around) - step.rank(b, around);
    if (difference !== 0) return difference;
  }
  return compareText(nameOf(a, around), nameOf(b, around));
}

function machinesOf(cells: readonly Cell[], department: Department): Around['machines'] {
  const machines = new Map<Packing, Map<string, Set<string>>>();
  for (const cell of cells) {
    const inPacking = entryOf(machines, cell.packing, () => new Map<string, Set<string>>());
    const means = department.sterilizing[cell.cycle];
    if (means !== undefined) entryOf(inPacking, means.does, () => new Set<string>()).add(idOf(means.machine));
  }
  return machines;
}

function entryOf<Key, Value>(map: Map<Key, Value>, key: Key, make: () => Value): Value {
  const known = map.get(key);
  if (known !== undefined) return known;
  const made = make();
  map.set(key, made);
  return made;
}

/** Two machines can stand in for each other where the packaging, the method and the numbers are the same. */
function machinesLike({ packing, cycle }: Cell, { machines, department }: Around): number {
  return machines.get(packing)?.get(department.sterilizing[cycle]?.does ?? '')?.size ?? 1;
}

function cycleOf({ cycle }: Cell, { department }: Around): SterilizerCycle | undefined {
  return department.sterilizing[cycle]?.cycle;
}

function nameOf({ packing, cycle }: Cell, { department }: Around): string {
  const means = department.sterilizing[cycle];
  return `${packing.key} ${means === undefined ? '' : idOf(means.machine)} ${means?.id}`;
}

export function allOf(fit: SterilizationFit): readonly Judgement[] {
  return [...fit.common, ...fit.members.flatMap(({ judgements }) => judgements)];
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function counted(count: number, one: string): string {
  return count === 0 ? `no ${one}` : count === 1 ? `1 ${one}` : `${count} ${one}s`;
}
