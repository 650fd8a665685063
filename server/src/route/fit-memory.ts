import type { Judgement } from '../judge/outcome.ts';
import { bestEntry, judgePackaging } from '../judge/packaging.ts';
import { judgePackagingStatement } from '../judge/packaging-statement.ts';
import { judgeSterilization, optionsOf } from '../judge/sterilization.ts';
import { isOfAnotherKind } from '../judge/sterilization-gates.ts';
import type { SterilizationQuestion } from '../judge/sterilization-question.ts';
import type { SterilizationOption } from '../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { Department, SterilizerMeans } from './equipment.ts';
import { idOf } from './equipment.ts';
import type { Packing } from './packings.ts';
import { failing, hopeless, isBetter, joined, nothing, type Ranked, ranked, type Score, scoreOf } from './ranks.ts';

type Device = EntityOf['device'];

/** How each option of each device fits each cycle and each packaging, worked out once for all sets of one department. */
export class FitMemory {
  readonly #department: Department;
  readonly #kept = new WeakMap<object, Map<string, unknown>>();
  #likeness: readonly number[] | undefined;

  constructor(department: Department) {
    this.#department = department;
  }

  /**
   * One option against every cycle of the department as numbers, packaging left aside. Cycles with the same numbers are judged once. Dates
   * of cycles are judged once for all members, not here.
   */
  inCycles(device: Device, option: SterilizationOption, quantity: number): readonly Score[] {
    const counted = countedOf(device, quantity);
    const sharing = option.listed === undefined;
    return this.#remember(option, `cycles ${counted}`, () => {
      const scores: Score[] = [];
      for (const at of this.#department.sterilizing.keys()) {
        const first = sharing ? this.#alike(at) : at;
        scores.push(scores[first] ?? this.#scoreIn(device, option, counted, at));
      }
      return scores;
    });
  }

  /** The best option in each cycle, for a device of whose contents nothing is demanded. */
  bestInCycles(device: Device, quantity: number, packing: Packing): readonly Score[] {
    return this.#remember(device, `best ${countedOf(device, quantity)} ${packing.key}`, () =>
      this.bestOfOptions(
        device,
        quantity,
        optionsOf(device).map((option) => this.inPackaging(device, option, packing)),
      ),
    );
  }

  /** The best option in each cycle; `around`: the score of each option with the cycle left aside. */
  bestOfOptions(device: Device, quantity: number, around: readonly Score[]): readonly Score[] {
    const rows = optionsOf(device).map((option) => this.inCycles(device, option, quantity));
    const best: Score[] = [];
    const cycles = this.#department.sterilizing.length;
    for (let at = 0; at < cycles; at++) {
      let found: Score = hopeless;
      for (let index = 0; index < rows.length; index++) {
        const own = rows[index]?.[at] ?? hopeless;
        const outer = around[index] ?? nothing;
        if (own.rank === failing || outer.rank === failing) continue;
        const score = joined(outer, own);
        if (isBetter(score, found)) found = score;
      }
      best.push(found);
    }
    return best;
  }

  /** One option against one cycle with its reasons: kept for the few cycles that are shown. */
  inCycle(device: Device, option: SterilizationOption, quantity: number, at: number): readonly Judgement[] {
    const counted = countedOf(device, quantity);
    return this.#remember(option, `cycle ${at} ${counted}`, () => this.#judge(device, option, counted, at));
  }

  /** Most cycles are of another kind, and what else does not fit there counts for nothing. */
  #scoreIn(device: Device, option: SterilizationOption, counted: number, at: number): Score {
    const question = this.#question(device, option, counted, at);
    if (question === undefined) return nothing;
    return isOfAnotherKind(question) ? hopeless : scoreOf(withoutDates(judgeSterilization(question)));
  }

  #judge(device: Device, option: SterilizationOption, counted: number, at: number): readonly Judgement[] {
    const question = this.#question(device, option, counted, at);
    return question === undefined ? [] : withoutDates(judgeSterilization(question));
  }

  #question(
    device: Device,
    option: SterilizationOption,
    quantity: number,
    at: number,
  ): SterilizationQuestion | undefined {
    const { setting, sterilizing } = this.#department;
    const means = sterilizing[at];
    return means === undefined
      ? undefined
      : { device, option, machine: means.machine, cycle: means.cycle, quantity, setting };
  }

  /** The first cycle that asks and gives the same. Peroxide cycles are known by name, so that none is like another. */
  #alike(at: number): number {
    this.#likeness ??= firstAlike(this.#department.sterilizing);
    return this.#likeness[at] ?? at;
  }

  /** One option against one packaging, by what the device's page says about packaging. */
  inPackaging(device: Device, option: SterilizationOption, { key, ...packed }: Packing): Ranked {
    return this.#remember(option, `in ${key}`, () => {
      const statements = [option.packaging, device.packaging].filter((one) => one !== undefined);
      const { setting } = this.#department;
      return ranked(statements.map((one) => judgePackagingStatement(device, one, packed, setting)));
    });
  }

  /** The packaging, and the case inside it, against one cycle by their own instructions. */
  packagingInCycle(packaging: EntityOf['packaging'], means: SterilizerMeans): Ranked {
    return this.#remember(packaging, `${idOf(means.machine)} ${means.id}`, () => {
      const { machine, cycle } = means;
      return ranked(judgePackaging({ packaging, machine, cycle, setting: this.#department.setting }));
    });
  }

  /** Which of the packaging's entries is for the cycle: its place in the list, -1 for none. */
  entryFor(packaging: EntityOf['packaging'], { machine, cycle }: Pick<SterilizerMeans, 'machine' | 'cycle'>): number {
    return this.#remember(cycle, `entry ${idOf(packaging)}`, () => {
      const { entry } = bestEntry({ packaging, machine, cycle, setting: this.#department.setting });
      return entry === undefined ? -1 : (packaging.validated?.items.indexOf(entry) ?? -1);
    });
  }

  /** The same for every cycle of the department, as numbers. */
  packagingInCycles(packaging: EntityOf['packaging']): readonly Score[] {
    return this.#remember(packaging, 'in all cycles', () =>
      this.#department.sterilizing.map((means) => this.packagingInCycle(packaging, means)),
    );
  }

  /** Packaging, the case inside it, and the dates of the machine, in every cycle: all that does not depend on what is packed. */
  aroundInCycles({ packaging, casePackaging }: Packing): readonly Score[] {
    return this.#remember(
      packaging ?? this,
      `around with ${casePackaging === undefined ? '' : idOf(casePackaging)}`,
      () =>
        this.#department.sterilizing.map((means, at) => {
          const inside = [packaging, casePackaging].map((one) =>
            one === undefined ? nothing : (this.packagingInCycles(one)[at] ?? hopeless),
          );
          return inside.reduce(joined, scoreOf([means.evidence]));
        }),
    );
  }

  /** For every cycle, a name of all on which the judgement of contents in this packaging depends. */
  contentsKeys(packaging: EntityOf['packaging']): readonly string[] {
    return this.#remember(packaging, 'keys of contents', () =>
      this.#department.sterilizing.map((means) => this.#contentsKey(packaging, means)),
    );
  }

  #contentsKey(packaging: EntityOf['packaging'], { machine, cycle }: SterilizerMeans): string {
    const entry = this.entryFor(packaging, { machine, cycle });
    const load = (cycle.load_max ?? machine.chamber?.load_max)?.text ?? '';
    return `${entry} ${load} ${cycle.item_mass_max?.text ?? ''} ${(cycle.modality ?? machine.modality)?.text === 'vh2o2'}`;
  }

  #remember<Answer>(about: object, key: string, work: () => Answer): Answer {
    let known = this.#kept.get(about);
    if (known === undefined) {
      known = new Map();
      this.#kept.set(about, known);
    }
    const before = known.get(key);
    if (before !== undefined) return before as Answer;
    const made = work();
    known.set(key, made);
    return made;
  }
}

/** Only what has lumens is counted: they are what a load has at most so many of. */
function countedOf(device: Device, quantity: number): number {
  return device.lumens === undefined ? 1 : quantity;
}

function withoutDates(judgements: readonly Judgement[]): readonly Judgement[] {
  return judgements.filter(({ parameter }) => parameter !== 'evidence');
}

function firstAlike(sterilizing: readonly SterilizerMeans[]): readonly number[] {
  const first = new Map<string, number>();
  return sterilizing.map(({ machine, cycle }, at) => {
    const modality = (cycle.modality ?? machine.modality)?.text;
    if (modality === undefined || modality === 'vh2o2' || cycle.lumens !== undefined) return at;
    const { temp, exposure, pulses, dry, humidity, concentration } = cycle;
    const amounts = [
      temp,
      exposure,
      pulses,
      dry,
      humidity,
      concentration,
      cycle.band?.minus,
      cycle.band?.plus,
      cycle.aeration?.time,
      cycle.aeration?.temp,
    ];
    const key = [modality, cycle.context?.text ?? 'terminal', ...amounts.map((one) => one?.text ?? '')].join('|');
    const known = first.get(key);
    if (known === undefined) first.set(key, at);
    return known ?? at;
  });
}

const memories = new WeakMap<Department, FitMemory>();

export function memoryOf(department: Department): FitMemory {
  const known = memories.get(department);
  if (known !== undefined) return known;
  const made = new FitMemory(department);
  memories.set(department, made);
  return made;
}
