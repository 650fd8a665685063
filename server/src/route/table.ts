import { type Contents, judgeDeviceContents } from '../judge/contents.ts';
import { optionsOf } from '../judge/sterilization.ts';
import { isSterilized, withoutOption } from './candidates.ts';
import type { Department, SterilizerMeans } from './equipment.ts';
import { memoryOf } from './fit-memory.ts';
import { contentsJudgements, counts } from './fits.ts';
import { type Packing, packingsOf } from './packings.ts';
import { failing, hopeless, joined, nothing, type Score, scoreOf } from './ranks.ts';
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
export interface RankTable {
  readonly contents: Contents;
  readonly cells: readonly Cell[];
}

export function rankTable(subject: Subject, department: Department): RankTable {
  const contents = contentsWithLumens(subject);
  const members = subject.members.filter(({ device }) => device !== undefined && isSterilized(device));
  const rows = members.map((member) => memberRow(member, contents, department));
  const trial: Trial = { rows, common: new CommonScores(contents, department), cycles: cyclesFor(subject, department) };
  const packings = packingsOf(subject, department);
  const quick = cellsOf(packings, trial, 'first-failure');
  return {
    contents,
    cells: quick.some(({ rank }) => rank < failing) ? quick : cellsOf(packings, trial, 'all-failures'),
  };
}

interface Trial {
  readonly rows: readonly MemberRow[];
  readonly common: CommonScores;
  readonly cycles: readonly number[];
}

/** How many fail is worth knowing only where everything fails. */
type Depth = 'first-failure' | 'all-failures';

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
    const own = joined(scoreOf([means.evidence]), packagingScore(packing, cycle, this.#department));
    return joined(own, this.#within(packing, cycle, means));
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

function packagingScore({ packaging, casePackaging }: Packing, cycle: number, department: Department): Score {
  const memory = memoryOf(department);
  const own = packaging === undefined ? nothing : (memory.packagingInCycles(packaging)[cycle] ?? hopeless);
  return casePackaging === undefined ? own : joined(own, memory.packagingInCycles(casePackaging)[cycle] ?? hopeless);
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
