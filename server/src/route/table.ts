import { type Contents, judgeDeviceContents } from '../judge/contents.ts';
import { optionsOf } from '../judge/sterilization.ts';
import { isSterilized, withoutOption } from './candidates.ts';
import type { Department, SterilizerMeans } from './equipment.ts';
import { memoryOf } from './fit-memory.ts';
import { contentsJudgements, counts } from './fits.ts';
import { type Packing, packingsOf } from './packings.ts';
import { failing, hopeless, joined, type Score, scoreOf } from './ranks.ts';
import { contentsWithLumens, type Subject, type SubjectMember } from './subject.ts';

/** One packing with one cycle, as numbers. */
export interface Cell extends Score {
  readonly packing: Packing;
  /** Index of the cycle in the department's list. */
  readonly cycle: number;
  /** How many members fail, and one more when packaging, contents or machine fail. Counted to the end only where every cell fails. */
  readonly failures: number;
}

/** Every packing with every cycle for one subject: only worst outcomes, so that large sets stay quick. */
export class RankTable {
  readonly contents: Contents;
  /** What does not fail, in the order of packings and cycles. */
  readonly feasible: readonly Cell[];
  /** The set's own packaging in every cycle; empty where its file names none. */
  readonly asFiled: readonly Cell[];
  readonly #packings: readonly Packing[];
  readonly #trial: Trial;
  #cells: readonly Cell[] | undefined;

  constructor(subject: Subject, department: Department) {
    this.contents = contentsWithLumens(subject);
    this.#packings = packingsOf(subject, department);
    this.#trial = trialOf(subject, this.contents, department);
    this.feasible = this.#packings.flatMap((packing) => feasibleIn(packing, this.#trial));
    const depth = this.feasible.length > 0 ? 'first-failure' : 'all-failures';
    this.asFiled = cellsOf(
      this.#packings.filter(({ asFiled }) => asFiled),
      this.#trial,
      depth,
    );
  }

  /** All, failing ones too: made only for those who ask, since most of them fail. */
  cells(): readonly Cell[] {
    this.#cells ??= cellsOf(this.#packings, this.#trial, this.feasible.length > 0 ? 'first-failure' : 'all-failures');
    return this.#cells;
  }
}

interface Trial {
  readonly department: Department;
  readonly rows: readonly MemberRow[];
  readonly common: CommonScores;
  readonly cycles: readonly number[];
}

function trialOf(subject: Subject, contents: Contents, department: Department): Trial {
  const members = subject.members.filter(({ device }) => device !== undefined && isSterilized(device));
  return {
    department,
    rows: members.map((member) => memberRow(member, contents, department)),
    common: new CommonScores(contents, department),
    cycles: cyclesFor(subject, department),
  };
}

/** How many fail is worth knowing only where everything fails. */
type Depth = 'first-failure' | 'all-failures';

/** Cycles that the packaging is not for are left out before any member is looked at. */
function feasibleIn(packing: Packing, { department, rows, common, cycles }: Trial): readonly Cell[] {
  const around = memoryOf(department).aroundInCycles(packing);
  const possible = cycles.filter((cycle) => around[cycle]?.rank !== failing);
  if (possible.length === 0) return [];
  const packed = rows.map((row) => row.packed(packing));
  const feasible: Cell[] = [];
  for (const cycle of possible) {
    if (packed.some((row) => (row[cycle] ?? hopeless).rank === failing)) continue;
    const cell = cellOf(packing, cycle, packed, common, 'first-failure');
    if (cell.rank < failing) feasible.push(cell);
  }
  return feasible;
}

function cellsOf(packings: readonly Packing[], { rows, common, cycles }: Trial, depth: Depth): readonly Cell[] {
  const cells: Cell[] = [];
  for (const packing of packings) {
    const packed = rows.map((row) => row.packed(packing));
    for (const cycle of cycles) cells.push(cellOf(packing, cycle, packed, common, depth));
  }
  return cells;
}

function cellOf(
  packing: Packing,
  cycle: number,
  packed: readonly BestInCycles[],
  common: CommonScores,
  depth: Depth,
): Cell {
  let failures = 0;
  let rank = 0;
  let open = 0;
  let notes = 0;
  for (const row of packed) {
    const best = row[cycle] ?? hopeless;
    if (best.rank === failing) failures++;
    if (failures > 0 && depth === 'first-failure') return { packing, cycle, failures, ...hopeless };
    rank = Math.max(rank, best.rank);
    open += best.open;
    notes += best.notes;
  }
  // Where every member fails anyway, packaging and contents need not be looked at.
  const own = failures > 0 && failures === packed.length ? hopeless : common.of(packing, cycle);
  if (own.rank === failing) failures++;
  return { packing, cycle, failures, rank: Math.max(rank, own.rank), open: open + own.open, notes: notes + own.notes };
}

/** Cycles for the use the set is meant for. Immediate use is never put in place of a stored pack, nor the reverse. */
export function cyclesFor(subject: Subject, department: Department): readonly number[] {
  const fitting: number[] = [];
  for (const [index, { cycle }] of department.sterilizing.entries()) {
    if ((cycle.context?.text ?? 'terminal') === subject.context) fitting.push(index);
  }
  return fitting;
}

/** Packaging, contents, dates: cycles in which the contents are judged alike share the judgement of the contents. */
class CommonScores {
  readonly #contents: Contents;
  readonly #department: Department;
  readonly #known = new Map<Packing, Map<string | number, Score>>();

  constructor(contents: Contents, department: Department) {
    this.#contents = contents;
    this.#department = department;
  }

  of(packing: Packing, cycle: number): Score {
    const means = this.#department.sterilizing[cycle];
    if (means === undefined || means.evidence.outcome === 'fails') return hopeless;
    const around = memoryOf(this.#department).aroundInCycles(packing)[cycle] ?? hopeless;
    return joined(around, this.#within(packing, cycle, means));
  }

  #within(packing: Packing, cycle: number, means: SterilizerMeans): Score {
    let scores = this.#known.get(packing);
    if (scores === undefined) {
      scores = new Map();
      this.#known.set(packing, scores);
    }
    const key = contentsKey(packing, cycle, this.#department);
    let within = scores.get(key);
    if (within === undefined) {
      const pack = { packing, contents: this.#contents, at: cycle, department: this.#department };
      within = scoreOf(contentsJudgements(pack, means));
      scores.set(key, within);
    }
    return within;
  }
}

/** With a case inside, what is judged of the contents may differ from cycle to cycle. */
function contentsKey({ packaging, casePackaging }: Packing, cycle: number, department: Department): string | number {
  if (casePackaging !== undefined) return cycle;
  return packaging === undefined ? '' : (memoryOf(department).contentsKeys(packaging)[cycle] ?? '');
}

/** The best a member has in each cycle of the department, in one packing. */
type BestInCycles = readonly Score[];

interface MemberRow {
  packed(packing: Packing): BestInCycles;
}

/** Where nothing is demanded of the contents, the row of a device is the same in every set. */
function memberRow({ device, quantity }: SubjectMember, contents: Contents, department: Department): MemberRow {
  if (device === undefined) return { packed: () => [] };
  const memory = memoryOf(department);
  const options = optionsOf(device).map((option) => ({
    option,
    demands: judgeDeviceContents(device, option, contents, department.setting),
  }));
  if (options.length === 0) {
    const without = scoreOf(withoutOption(device).judgements);
    return { packed: () => department.sterilizing.map(() => without) };
  }
  if (options.every(({ demands }) => demands.length === 0))
    return { packed: (packing) => memory.bestInCycles(device, quantity, packing) };
  return {
    packed: (packing) => {
      const around = options.map(({ option, demands }) =>
        joined(memory.inPackaging(device, option, packing), scoreOf(demands.filter((one) => counts(one, packing)))),
      );
      return memory.bestOfOptions(device, quantity, around);
    },
  };
}
