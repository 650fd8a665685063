import type { Contents } from '../judge/contents.ts';
import { judgeCase } from '../judge/judgement.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { Department } from './equipment.ts';
import { idOf } from './equipment.ts';
import { commonJudgements, optionFits } from './fits.ts';
import type { ChoiceFact, MemberFit, SterilizationFit } from './model.ts';
import type { Packing } from './packings.ts';
import { bestFit, outcomeOf, ranked, rankOf } from './ranks.ts';
import type { Subject } from './subject.ts';

/** One packing with one cycle, with every reason. `at` is the index of the cycle in the department's list. */
export interface Candidate {
  readonly packing: Packing;
  readonly at: number;
  readonly fit: SterilizationFit;
}

export function candidateOf(
  subject: Subject,
  contents: Contents,
  packing: Packing,
  at: number,
  department: Department,
): Candidate | undefined {
  const means = department.sterilizing[at];
  if (means === undefined) return undefined;
  const members: MemberFit[] = [];
  for (const { device, quantity } of subject.members) {
    if (device !== undefined && isSterilized(device))
      members.push(bestOf(device, quantity, at, packing, contents, department));
  }
  const common = commonJudgements(packing, means, contents, department);
  const rank = Math.max(ranked(common).rank, ...members.map(({ outcome }) => rankOf(outcome)));
  const packaging = packing.packaging === undefined ? '' : idOf(packing.packaging);
  const fit = {
    packaging,
    ...(packing.namedCase !== undefined && { namedCase: packing.namedCase }),
    machine: idOf(means.machine),
    cycle: means.id,
  };
  return { packing, at, fit: { ...fit, outcome: outcomeOf(rank), members, common, choice: [] } };
}

function bestOf(
  device: EntityOf['device'],
  quantity: number,
  at: number,
  packing: Packing,
  contents: Contents,
  department: Department,
): MemberFit {
  return bestFit(optionFits(device, quantity, at, packing, contents, department)) ?? withoutOption(device);
}

/** Goes through sterilization at all: its page offers it, or it is used where nothing less will do. */
export function isSterilized(device: EntityOf['device']): boolean {
  return device.sterilization?.any_of !== undefined || device.class === undefined || device.class.text === 'critical';
}

/** Silence is neither permission nor prohibition. */
export function withoutOption(device: EntityOf['device']): MemberFit {
  const at = device.sterilization?.at ?? device.id?.at ?? device.at;
  const forbidden = device.sterilization?.use?.text === 'forbidden';
  const judgement = judgeCase('identity', forbidden ? 'not-sterilized' : 'unclear', {
    by: device,
    what: 'No cycle is in the file of the device',
    required: 'a complete cycle',
    at,
    src: device.sterilization?.src,
  });
  return { device: idOf(device), option: '', outcome: judgement.outcome, judgements: [judgement] };
}

export function withChoice(candidate: Candidate, choice: readonly ChoiceFact[]): Candidate {
  return { ...candidate, fit: { ...candidate.fit, choice } };
}
