import type { Contents } from '../judge/contents.ts';
import { judgeContents, judgeDeviceContents } from '../judge/contents.ts';
import type { Judgement } from '../judge/outcome.ts';
import { judgePackaging } from '../judge/packaging.ts';
import { judgePackagingStatement } from '../judge/packaging-statement.ts';
import { judgeSterilization, optionsOf } from '../judge/sterilization.ts';
import type { EntityOf, SterilizationOption } from '../model/entities.generated.ts';
import type { Department, SterilizerMeans } from './equipment.ts';
import { idOf } from './equipment.ts';
import type { MemberFit } from './model.ts';
import type { Packing } from './packings.ts';
import { hasGate, outcomeOf, type Ranked, ranked } from './ranks.ts';

type Device = EntityOf['device'];

/** How each option of each device fits each cycle and each packaging, worked out once for all sets of one department. */
export class FitMemory {
  readonly #department: Department;
  readonly #kept = new WeakMap<object, Map<string, unknown>>();

  constructor(department: Department) {
    this.#department = department;
  }

  /** One option against every cycle of the department, packaging left aside. Dates of cycles are judged once for all members, not here. */
  inCycles(device: Device, option: SterilizationOption, quantity: number): readonly Ranked[] {
    const counted = device.lumens === undefined ? 1 : quantity;
    return this.#remember(option, `cycles ${counted}`, () =>
      this.#department.sterilizing.map(({ machine, cycle }) => {
        const { setting } = this.#department;
        const judgements = judgeSterilization({ device, option, machine, cycle, quantity: counted, setting });
        return ranked(judgements.filter(({ parameter }) => parameter !== 'evidence'));
      }),
    );
  }

  /** One option against one packaging, by what the device's page says about packaging. */
  inPackaging(device: Device, option: SterilizationOption, { packaging, namedCase, key }: Packing): Ranked {
    return this.#remember(option, `in ${key}`, () => {
      const statements = [option.packaging, device.packaging].filter((one) => one !== undefined);
      const { setting } = this.#department;
      return ranked(statements.map((one) => judgePackagingStatement(device, one, { packaging, namedCase }, setting)));
    });
  }

  /** The packaging, and the case inside it, against one cycle by their own instructions. */
  packagingInCycle(packaging: EntityOf['packaging'], means: SterilizerMeans): Ranked {
    return this.#remember(packaging, `${idOf(means.machine)} ${means.id}`, () => {
      const { machine, cycle } = means;
      return ranked(judgePackaging({ packaging, machine, cycle, setting: this.#department.setting }));
    });
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

const memories = new WeakMap<Department, FitMemory>();

export function memoryOf(department: Department): FitMemory {
  const known = memories.get(department);
  if (known !== undefined) return known;
  const made = new FitMemory(department);
  memories.set(department, made);
  return made;
}

/** What one option of a device demands of the contents around it, as far as it counts for this packing. */
export function optionContents(
  device: Device,
  option: SterilizationOption | undefined,
  contents: Contents,
  packing: Packing,
  department: Department,
): readonly Judgement[] {
  return judgeDeviceContents(device, option, contents, department.setting).filter((one) => counts(one, packing));
}

/** Packaging, contents, limits of the site and dates of the cycle: everything that does not depend on one member. */
export function commonJudgements(
  packing: Packing,
  means: SterilizerMeans,
  contents: Contents,
  department: Department,
): readonly Judgement[] {
  const memory = memoryOf(department);
  const { machine, cycle } = means;
  const judgements = [means.evidence];
  for (const packaging of [packing.packaging, packing.casePackaging]) {
    if (packaging === undefined) continue;
    judgements.push(...memory.packagingInCycle(packaging, means).judgements);
    const within = judgeContents({ packaging, contents, machine, cycle, setting: department.setting });
    for (const one of within) if (counts(one, packing)) judgements.push(one);
  }
  return judgements;
}

/** What lay in the set beside its members is chosen anew with another packaging: mats and filters are left out of the judgement. */
function counts({ parameter, outcome, given }: Judgement, packing: Packing): boolean {
  if (parameter === 'mass' && outcome === 'needs-answer' && given === '') return packing.weighed === 'weighed';
  return packing.asFiled || (parameter !== 'accessory' && parameter !== 'filter');
}

/** Every option of the device for one cycle in one packing, each as a whole tuple, in the order of the page. */
export function optionFits(
  device: Device,
  quantity: number,
  at: number,
  packing: Packing,
  contents: Contents,
  department: Department,
): readonly MemberFit[] {
  const memory = memoryOf(department);
  return optionsOf(device).map((option) => {
    const inCycle = memory.inCycles(device, option, quantity)[at];
    const judgements = [...(inCycle?.judgements ?? [])];
    const otherKind = hasGate(judgements);
    if (!otherKind) judgements.push(...memory.inPackaging(device, option, packing).judgements);
    judgements.push(...optionContents(device, otherKind ? undefined : option, contents, packing, department));
    return {
      device: idOf(device),
      option: option.id?.text ?? String(option.at.key),
      outcome: outcomeOf(ranked(judgements).rank),
      judgements,
    };
  });
}
