import { candidateOf, isSterilized } from './candidates.ts';
import { type Choice, choiceAmong } from './choice.ts';
import type { Department } from './equipment.ts';
import type { SterilizationFit } from './model.ts';
import type { Subject } from './subject.ts';
import { type Cell, RankTable } from './table.ts';

/** What came of trying every packing with every cycle. */
export interface Sterilizing {
  readonly table: RankTable;
  /** What does not fail, in order of choice. */
  readonly feasible: readonly Cell[];
  readonly choice: Choice;
  /** Where everything fails: what fails least, best first. */
  readonly nearest: readonly Cell[];
  /** False when nothing in the subject goes through sterilization. */
  readonly needed: boolean;
}

const nearestShown = 3;

export function sterilizingOf(subject: Subject, department: Department): Sterilizing {
  const needed = subject.members.some(({ device }) => device !== undefined && isSterilized(device));
  const table = new RankTable(subject, department);
  const choice = choiceAmong(needed ? table.feasible : [], department);
  const nearest = needed && table.feasible.length === 0 ? failingLeast(table.cells()) : [];
  return { table, feasible: choice.ordered, choice, nearest, needed };
}

function failingLeast(cells: readonly Cell[]): readonly Cell[] {
  const sorted = cells.toSorted(
    (a, b) => a.failures - b.failures || a.open - b.open || a.packing.distance - b.packing.distance,
  );
  return sorted.slice(0, nearestShown);
}

/** A cell with every reason; the first one also with the facts of the choice. */
export function fitOf(
  subject: Subject,
  { table, feasible, choice }: Sterilizing,
  cell: Cell,
  department: Department,
): SterilizationFit | undefined {
  const fit = candidateOf(subject, { contents: table.contents, packing: cell.packing, at: cell.cycle, department });
  return fit === undefined || cell !== feasible[0] ? fit : { ...fit, choice: choice.factsOf(cell) };
}
