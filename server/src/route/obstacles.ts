import type { Judgement } from '../judge/outcome.ts';
import { AtomRegister, type Trial } from './atoms.ts';
import { isSterilized, withoutOption } from './candidates.ts';
import { cleaningFits } from './cleaning.ts';
import { commonJudgements, optionFits } from './fits.ts';
import type { Formula } from './formula.ts';
import type { MemberFit } from './model.ts';
import { hasGate } from './ranks.ts';
import type { Derivation } from './route.ts';
import { calledIn } from './subject.ts';
import type { Cell } from './table.ts';

/** One thing without which there is no route: sterilization together, or the cleaning of one member. */
export interface Block {
  readonly about: 'sterilization' | 'cleaning';
  /** The set, or the member. */
  readonly of: string;
  readonly formula: Formula;
}

export interface Obstacles {
  readonly register: AtomRegister;
  readonly blocks: readonly Block[];
  /** What people call the members, by id. */
  readonly called: ReadonlyMap<string, string>;
}

/** Everything that stands in the way of a route, as formulas over requirements and facts. */
export function obstaclesOf(derivation: Derivation): Obstacles {
  const { subject, sterilizing, department } = derivation;
  const called = calledIn(subject);
  const register = new AtomRegister(called);
  const blocks: Block[] = [];
  if (sterilizing.needed) {
    const cells = sterilizing.table
      .cells()
      .toSorted((a, b) => a.failures - b.failures || a.packing.distance - b.packing.distance);
    blocks.push({
      about: 'sterilization',
      of: subject.id,
      formula: { is: 'any', parts: cells.map((cell) => cellFormula(derivation, cell, register)) },
    });
  }
  for (const { device, quantity, id } of subject.members) {
    if (device === undefined) continue;
    const ways = cleaningFits(device, quantity, department).map((fit): Formula => {
      const stages = fit.stages.map((stage): Formula => {
        const means = [stage, ...stage.others].map((one) =>
          freeOf(one.judgements, { register, where: one.means || one.machine || 'the department', trial: one }),
        );
        return { is: 'any', parts: means };
      });
      return { is: 'all', parts: [freeOf(fit.common, { register, where: fit.alternative, trial: fit }), ...stages] };
    });
    blocks.push({ about: 'cleaning', of: id, formula: { is: 'any', parts: ways } });
  }
  return { register, blocks, called };
}

function cellFormula({ subject, sterilizing, department }: Derivation, cell: Cell, register: AtomRegister): Formula {
  const { packing, cycle } = cell;
  const means = department.sterilizing[cycle];
  const pack = { contents: sterilizing.table.contents, packing, at: cycle, department };
  const parts: Formula[] = [];
  if (means !== undefined) {
    const seen: Seen = { register, where: means.id, trial: cell };
    parts.push(freeOf(commonJudgements(pack), seen));
    for (const { device, quantity } of subject.members) {
      if (device === undefined || !isSterilized(device)) continue;
      const fits = optionFits({ device, quantity }, pack);
      parts.push(memberFormula(fits.length === 0 ? [withoutOption(device)] : fits, seen));
    }
  }
  return { is: 'all', parts };
}

/** Any of the options that are for this kind of cycle; where none is, what the page offers at all stands in the way. */
function memberFormula(fits: readonly MemberFit[], seen: Seen): Formula {
  const ofKind = fits.filter(({ judgements }) => !hasGate(judgements));
  const counting = ofKind.length > 0 ? ofKind : fits;
  return { is: 'any', parts: counting.map(({ judgements }) => freeOf(judgements, seen)) };
}

interface Seen {
  readonly register: AtomRegister;
  readonly where: string;
  readonly trial: Trial;
}

function freeOf(judgements: readonly Judgement[], { register, where, trial }: Seen): Formula {
  return { is: 'free-of', atoms: register.keysOf(judgements, where, trial) };
}
