import type { Judgement } from '../judge/outcome.ts';
import type { SterilizerCycle } from '../library/view.ts';
import type { Department } from './equipment.ts';
import { idOf } from './equipment.ts';
import type { ChoiceFact, ChoiceStep, SterilizationFit } from './model.ts';
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
  /** Machines by what they would do alike. */
  readonly machines: ReadonlyMap<string, ReadonlySet<string>>;
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

/** Best first. Equal in all steps: by the names of packaging and cycle. */
export function inOrderOfChoice(cells: readonly Cell[], department: Department): readonly Cell[] {
  const around = aroundOf(cells, department);
  const placed = cells.map((cell) => ({
    cell,
    ranks: steps.map((step) => step.rank(cell, around)),
    name: nameOf(cell, department),
  }));
  placed.sort((a, b) => compareRanks(a.ranks, b.ranks) || compareText(a.name, b.name));
  return placed.map(({ cell }) => cell);
}

/** The facts by which a cell stands where it stands among the others. */
export function choiceOf(cell: Cell, cells: readonly Cell[], department: Department): readonly ChoiceFact[] {
  const around = aroundOf(cells, department);
  return steps.map((step) => {
    const rank = step.rank(cell, around);
    return { by: step.by, rank, words: step.words(rank, cell, around) };
  });
}

function aroundOf(cells: readonly Cell[], department: Department): Around {
  const machines = new Map<string, Set<string>>();
  for (const cell of cells) {
    const alike = likeness(cell, department);
    const those = machines.get(alike);
    if (those === undefined) machines.set(alike, new Set([machineOf(cell, department)]));
    else those.add(machineOf(cell, department));
  }
  return { department, machines };
}

function machinesLike(cell: Cell, { machines, department }: Around): number {
  return machines.get(likeness(cell, department))?.size ?? 1;
}

/** Two machines can stand in for each other where the packaging, the method and the numbers are the same. */
function likeness({ packing, cycle }: Cell, department: Department): string {
  return `${packing.key} ${doneBy(department)[cycle]}`;
}

const known = new WeakMap<Department, readonly string[]>();

/** What each cycle of the department does, in one word: worked out once for all sets. */
function doneBy(department: Department): readonly string[] {
  let done = known.get(department);
  if (done === undefined) {
    done = department.sterilizing.map(({ cycle, machine }) => {
      const modality = (cycle.modality ?? machine.modality)?.text;
      return `${modality} ${cycle.temp?.value} ${cycle.exposure?.value} ${cycle.dry?.value}`;
    });
    known.set(department, done);
  }
  return done;
}

function cycleOf({ cycle }: Cell, { department }: Around): SterilizerCycle | undefined {
  return department.sterilizing[cycle]?.cycle;
}

function machineOf({ cycle }: Cell, department: Department): string {
  const means = department.sterilizing[cycle];
  return means === undefined ? '' : idOf(means.machine);
}

function nameOf(cell: Cell, department: Department): string {
  return `${cell.packing.key} ${machineOf(cell, department)} ${department.sterilizing[cell.cycle]?.id}`;
}

export function allOf(fit: SterilizationFit): readonly Judgement[] {
  return [...fit.common, ...fit.members.flatMap(({ judgements }) => judgements)];
}

function compareRanks(a: readonly number[], b: readonly number[]): number {
  for (let index = 0; index < a.length; index++) {
    const difference = (a[index] ?? 0) - (b[index] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

function counted(count: number, one: string): string {
  return count === 0 ? `no ${one}` : count === 1 ? `1 ${one}` : `${count} ${one}s`;
}
