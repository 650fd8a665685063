import type { Contents } from '../judge/contents.ts';
import { judgeContents, judgeDeviceContents } from '../judge/contents.ts';
import type { Judgement } from '../judge/outcome.ts';
import { optionsOf } from '../judge/sterilization.ts';
import type { SterilizationOption } from '../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { Department, SterilizerMeans } from './equipment.ts';
import { idOf } from './equipment.ts';
import { memoryOf } from './fit-memory.ts';
import type { MemberFit } from './model.ts';
import type { Packing } from './packings.ts';
import { hasGate, hopeless, isBetter, joined, outcomeOf, type Score, scoreOf } from './ranks.ts';

/** What is tried: these contents, packed so, in this cycle of the department. */
export interface Pack {
  readonly contents: Contents;
  readonly packing: Packing;
  /** Index of the cycle in the department's list. */
  readonly at: number;
  readonly department: Department;
}

/** A member that can be judged. */
export interface Judged {
  readonly device: EntityOf['device'];
  readonly quantity: number;
}

/** Packaging, contents, limits of the site and dates of the cycle: everything that does not depend on one member. */
export function commonJudgements(pack: Pack): readonly Judgement[] {
  const { packing, at, department } = pack;
  const means = department.sterilizing[at];
  if (means === undefined) return [];
  const memory = memoryOf(department);
  const own = [packing.packaging, packing.casePackaging].flatMap((packaging) =>
    packaging === undefined ? [] : memory.packagingInCycle(packaging, means).judgements,
  );
  return [means.evidence, ...own, ...contentsJudgements(pack, means)];
}

/** The contents against the packaging, the case inside it, the load of the cycle and the site. */
export function contentsJudgements(
  { packing, contents, department }: Pack,
  { machine, cycle }: SterilizerMeans,
): readonly Judgement[] {
  const judgements: Judgement[] = [];
  for (const packaging of [packing.packaging, packing.casePackaging]) {
    if (packaging === undefined) continue;
    const within = judgeContents({ packaging, contents, machine, cycle, setting: department.setting });
    for (const one of within) if (counts(one, packing)) judgements.push(one);
  }
  return judgements;
}

/** What lay in the set beside its members is chosen anew with another packaging: mats and filters are left out of the judgement. */
export function counts({ parameter, outcome, given }: Judgement, packing: Packing): boolean {
  if (parameter === 'mass' && outcome === 'needs-answer' && given === '') return packing.weighed === 'weighed';
  return packing.asFiled || (parameter !== 'accessory' && parameter !== 'filter');
}

/** What one option of a device demands of the contents around it, as far as it counts for this packing. */
function optionContents(
  { device }: Judged,
  option: SterilizationOption | undefined,
  { contents, packing, department }: Pack,
): readonly Judgement[] {
  return judgeDeviceContents(device, option, contents, department.setting).filter((one) => counts(one, packing));
}

/** The option that fits best, where any does not fail: by outcome, then by what is open, then by notes, then as the page orders them. */
export function leastOpen(member: Judged, pack: Pack): SterilizationOption | undefined {
  const { device, quantity } = member;
  const memory = memoryOf(pack.department);
  let best: SterilizationOption | undefined;
  let bestScore: Score = hopeless;
  for (const option of optionsOf(device)) {
    const around = joined(
      memory.inPackaging(device, option, pack.packing),
      scoreOf(optionContents(member, option, pack)),
    );
    const score = joined(memory.inCycles(device, option, quantity)[pack.at] ?? hopeless, around);
    if (!isBetter(score, bestScore)) continue;
    best = option;
    bestScore = score;
  }
  return best;
}

/** Every option of the device for one cycle in one packing, each as a whole tuple, in the order of the page. */
export function optionFits(member: Judged, pack: Pack): readonly MemberFit[] {
  return optionsOf(member.device).map((option) => optionFit(option, member, pack));
}

/** One option with every reason. */
export function optionFit(option: SterilizationOption, member: Judged, pack: Pack): MemberFit {
  const { device, quantity } = member;
  const memory = memoryOf(pack.department);
  const judgements = [...memory.inCycle(device, option, quantity, pack.at)];
  const otherKind = hasGate(judgements);
  if (!otherKind) judgements.push(...memory.inPackaging(device, option, pack.packing).judgements);
  judgements.push(...optionContents(member, otherKind ? undefined : option, pack));
  const outcome = outcomeOf(scoreOf(judgements).rank);
  return { device: idOf(device), option: option.id?.text ?? String(option.at.key), outcome, judgements };
}
