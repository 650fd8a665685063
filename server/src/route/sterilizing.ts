import { type Candidate, candidateOf, isSterilized } from './candidates.ts';
import { inOrderOfChoice } from './choice.ts';
import type { Department } from './equipment.ts';
import { failing } from './ranks.ts';
import type { Subject } from './subject.ts';
import { type Cell, type RankTable, rankTable } from './table.ts';

/** What came of trying every packing with every cycle. */
export interface Sterilizing {
  readonly table: RankTable;
  /** Candidates that do not fail, in order of choice. */
  readonly feasible: readonly Candidate[];
  /** The few that fail least, best first. */
  readonly nearest: readonly Candidate[];
  /** False when nothing in the subject goes through sterilization. */
  readonly needed: boolean;
}

const nearestShown = 3;
/** More ways than this are not told apart any more: those with least open are kept. */
const feasibleKept = 40;

export function sterilizingOf(subject: Subject, department: Department): Sterilizing {
  const needed = subject.members.some(({ device }) => device !== undefined && isSterilized(device));
  const table = rankTable(subject, department);
  if (!needed) return { table, feasible: [], nearest: [], needed };
  const full = (cell: Cell): Candidate[] => {
    const candidate = candidateOf(subject, table.contents, cell.packing, cell.cycle, department);
    return candidate === undefined ? [] : [candidate];
  };
  const passing = table.cells.filter(({ rank }) => rank < failing);
  const kept = passing.sort(byPromise).slice(0, feasibleKept);
  const failed = table.cells
    .filter(({ rank }) => rank === failing)
    .sort((a, b) => a.failures - b.failures || byPromise(a, b));
  return {
    table,
    feasible: inOrderOfChoice(kept.flatMap(full), department),
    nearest: failed.slice(0, nearestShown).flatMap(full),
    needed,
  };
}

function byPromise(a: Cell, b: Cell): number {
  return a.rank - b.rank || a.open - b.open || a.packing.distance - b.packing.distance;
}
