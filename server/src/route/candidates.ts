import { judgeCase } from '../judge/judgement.ts';
import { optionsOf } from '../judge/sterilization.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { SterilizerMeans } from './equipment.ts';
import { idOf } from './equipment.ts';
import { commonJudgements, type Judged, leastOpen, optionFit, type Pack } from './fits.ts';
import type { MemberFit, RouteOption, SterilizationFit } from './model.ts';
import type { Packing } from './packings.ts';
import { bestFit, outcomeOf, ranked, rankOf } from './ranks.ts';
import type { Subject } from './subject.ts';

/** One packing with one cycle, with every reason. */
export function candidateOf(subject: Subject, pack: Pack): SterilizationFit | undefined {
  const means = pack.department.sterilizing[pack.at];
  if (means === undefined) return undefined;
  const members: MemberFit[] = [];
  for (const { device, quantity } of subject.members) {
    if (device !== undefined && isSterilized(device)) members.push(bestOf({ device, quantity }, pack));
  }
  const common = commonJudgements(pack);
  const rank = Math.max(ranked(common).rank, ...members.map(({ outcome }) => rankOf(outcome)));
  return { ...optionOf(pack.packing, means, rank), members, common, choice: [] };
}

/** The names of one packing with one cycle. */
export function optionOf(
  { packaging, namedCase }: Packing,
  { machine, id }: SterilizerMeans,
  rank: number,
): RouteOption {
  return {
    packaging: packaging === undefined ? '' : idOf(packaging),
    ...(namedCase !== undefined && { namedCase }),
    machine: idOf(machine),
    cycle: id,
    outcome: outcomeOf(rank),
  };
}

/** The best option of one member; where one does not fail, the others need not be judged with their reasons. */
function bestOf(member: Judged, pack: Pack): MemberFit {
  const options = optionsOf(member.device);
  const promising = options.length < 2 ? undefined : leastOpen(member, pack);
  const looked = promising === undefined ? options : [promising];
  return bestFit(looked.map((option) => optionFit(option, member, pack))) ?? withoutOption(member.device);
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
