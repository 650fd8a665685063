import type { Contents } from '../judge/contents.ts';
import { optionsOf } from '../judge/sterilization.ts';
import { isSterilized, withoutOption } from './candidates.ts';
import type { Department } from './equipment.ts';
import { commonJudgements, memoryOf, optionContents } from './fits.ts';
import { type Packing, packingsOf } from './packings.ts';
import { failing, type Ranked, ranked, rankOf } from './ranks.ts';
import { contentsWithLumens, type Subject, type SubjectMember } from './subject.ts';

/** One packing with one cycle, as numbers. */
export interface Cell {
  readonly packing: Packing;
  /** Index of the cycle in the department's list. */
  readonly cycle: number;
  /** Index in `outcomes` of the worst judgement. */
  readonly rank: number;
  /** How many members fail, and one more when packaging, contents or machine fail: for near misses. */
  readonly failures: number;
  /** How many judgements are questions. */
  readonly open: number;
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
  const cells: Cell[] = [];
  for (const packing of packingsOf(subject, department)) {
    const packed = rows.map((row) => row.packed(packing));
    for (const cycle of cyclesFor(subject, department)) {
      const best = packed.map((options) => bestOf(options, cycle));
      const failures = best.filter(({ rank }) => rank === failing).length;
      const common =
        failures > 0 && failures === best.length ? hopeless : commonScore(packing, cycle, contents, department);
      cells.push({
        packing,
        cycle,
        rank: Math.max(common.rank, ...best.map(({ rank }) => rank)),
        failures: failures + (common.rank === failing ? 1 : 0),
        open: best.reduce((sum, { open }) => sum + open, common.open),
      });
    }
  }
  return { contents, cells };
}

/** Cycles for the use the set is meant for. Immediate use is never put in place of a stored pack, nor the reverse. */
export function cyclesFor(subject: Subject, department: Department): readonly number[] {
  const fitting: number[] = [];
  for (const [index, { cycle }] of department.sterilizing.entries()) {
    if ((cycle.context?.text ?? 'terminal') === subject.context) fitting.push(index);
  }
  return fitting;
}

interface Score {
  readonly rank: number;
  readonly open: number;
}

/** Where every member fails anyway, packaging and contents need not be looked at. */
const hopeless: Score = { rank: failing, open: 0 };

function commonScore(packing: Packing, cycle: number, contents: Contents, department: Department): Score {
  const means = department.sterilizing[cycle];
  return means === undefined ? hopeless : ranked(commonJudgements(packing, means, contents, department));
}

/** One option of a member, packed: its score around the cycle, and in each cycle of the department. */
interface PackedOption {
  readonly around: Score;
  readonly inCycles: readonly Score[];
}

interface MemberRow {
  packed(packing: Packing): readonly PackedOption[];
}

function memberRow({ device, quantity }: SubjectMember, contents: Contents, department: Department): MemberRow {
  if (device === undefined) return { packed: () => [] };
  const memory = memoryOf(department);
  const options = optionsOf(device).map((option) => ({ option, inCycles: memory.inCycles(device, option, quantity) }));
  const without = { around: { rank: rankOf(withoutOption(device).outcome), open: 1 }, inCycles: [] };
  return {
    packed: (packing) =>
      options.length === 0
        ? [without]
        : options.map(({ option, inCycles }) => ({
            inCycles,
            around: aroundOf(
              memory.inPackaging(device, option, packing),
              ranked(optionContents(device, option, contents, packing, department)),
            ),
          })),
  };
}

function aroundOf(a: Ranked, b: Ranked): Score {
  return { rank: Math.max(a.rank, b.rank), open: a.open + b.open };
}

function bestOf(options: readonly PackedOption[], cycle: number): Score {
  let best: Score = hopeless;
  for (const { around, inCycles } of options) {
    const own = inCycles[cycle];
    const rank = Math.max(around.rank, own?.rank ?? 0);
    const open = around.open + (own?.open ?? 0);
    if (rank < best.rank || (rank === best.rank && rank < failing && open < best.open)) best = { rank, open };
  }
  return best;
}
