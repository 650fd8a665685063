import { candidateOf, isSterilized } from './candidates.ts';
import { choiceOf, inOrderOfChoice } from './choice.ts';
import type { Department } from './equipment.ts';
import type { SterilizationFit } from './model.ts';
import { failing } from './ranks.ts';
import type { Subject } from './subject.ts';
import { type Cell, type RankTable, rankTable } from './table.ts';

/** What came of trying every packing with every cycle. */
export interface Sterilizing {
  readonly table: RankTable;
  /** What does not fail, in order of choice. */
  readonly feasible: readonly Cell[];
  /** Where everything fails: what fails least, best first. */
  readonly nearest: readonly Cell[];
  /** False when nothing in the subject goes through sterilization. */
  readonly needed: boolean;
}

const nearestShown = 3;

export function sterilizingOf(subject: Subject, department: Department): Sterilizing {
  const needed = subject.members.some(({ device }) => device !== undefined && isSterilized(device));
  const table = rankTable(subject, department);
  if (!needed) return { table, feasible: [], nearest: [], needed };
  const feasible = inOrderOfChoice(
    table.cells.filter(({ rank }) => rank < failing),
    department,
  );
  const nearest =
    feasible.length > 0
      ? []
      : table.cells.toSorted(
          (a, b) => a.failures - b.failures || a.open - b.open || a.packing.distance - b.packing.distance,
        );
  return { table, feasible, nearest: nearest.slice(0, nearestShown), needed };
}

/** A cell with every reason; the first one also with the facts of the choice. */
export function fitOf(
  subject: Subject,
  { table, feasible }: Sterilizing,
  cell: Cell,
  department: Department,
): SterilizationFit | undefined {
  const fit = candidateOf(subject, { contents: table.contents, packing: cell.packing, at: cell.cycle, department });
  return fit === undefined || cell !== feasible[0] ? fit : { ...fit, choice: choiceOf(cell, feasible, department) };
}
