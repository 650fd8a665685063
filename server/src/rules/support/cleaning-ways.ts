import type { CleaningStage, StageDemand } from '../../judge/demands.ts';
import { cleaningAlternatives } from '../../judge/demands.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import { outOfScopeTraits } from '../../judge/vocabulary.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Place } from '../../model/node.ts';

type Device = EntityOf['device'];

/** The stage as every complete way of cleaning demands it; undefined when some way does without it, or when the device is none of ours. */
export function alwaysDemanded(device: Device, stage: CleaningStage, setting: Setting): StageDemand | undefined {
  if (isOutOfScope(device)) return undefined;
  const { alternatives } = cleaningAlternatives(device, setting);
  let first: StageDemand | undefined;
  for (const { stages } of alternatives) {
    const demand = stages.find((one) => one.stage === stage && isDemand(one));
    if (demand === undefined) return undefined;
    first ??= demand;
  }
  return first;
}

const mereOffers: ReadonlySet<string> = new Set(['allowed', 'recommended', 'silent', 'forbidden']);

function isDemand({ voices }: StageDemand): boolean {
  const weak = voices.some((voice) => voice.strength?.text === 'should' || voice.strength?.text === 'may');
  return (
    !weak &&
    !voices.some((voice) => mereOffers.has(voice.use?.text ?? '')) &&
    !voices.some((voice) => voice.needed?.text === 'if-visibly-soiled')
  );
}

/** The failing judgement of the first way, when every way has one. Without any way nothing fails. */
export function failsEveryWay(
  ways: readonly (readonly StageDemand[])[],
  judge: (voice: CleaningNode) => readonly Judgement[],
): Judgement | undefined {
  let first: Judgement | undefined;
  for (const way of ways) {
    const failing = way
      .flatMap(({ voices }) => voices.flatMap(judge))
      .find((judgement) => judgement.outcome === 'fails');
    if (failing === undefined) return undefined;
    first ??= failing;
  }
  return first;
}

export interface Ban {
  readonly at: Place;
  readonly src: Citation | undefined;
}

/** Words by which a prohibition may name a stage. */
const stageWords: Readonly<Record<CleaningStage, readonly string[]>> = {
  manual: ['manual'],
  ultrasonic: ['ultrasonic', 'ultrasonics', 'sonication'],
  mechanical: ['mechanical', 'washer', 'machine', 'machine-wash', 'machine-washing'],
  disinfection: ['disinfection'],
};

/** Where the instruction forbids the stage; undefined when it does not. */
export function banOf(device: Device, stage: CleaningStage): Ban | undefined {
  const section: CleaningNode | undefined = device[stage];
  if (section?.use?.text === 'forbidden') return { at: section.at, src: section.src };
  const prohibition = device.not?.items.find(
    (one) => one.when === undefined && stageWords[stage].includes(one.what?.text ?? ''),
  );
  if (prohibition !== undefined) return { at: prohibition.at, src: prohibition.src };
  const node = device.cleaning === undefined ? undefined : bannedNode(device.cleaning, stage);
  return node === undefined ? undefined : { at: node.at, src: node.src };
}

function bannedNode(node: CleaningNode, stage: CleaningStage): CleaningNode | undefined {
  if (node.stage?.text === stage && node.use?.text === 'forbidden') return node;
  for (const child of node.all_of?.items ?? []) {
    const found = bannedNode(child, stage);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** Items that this library refuses as a whole: nothing else is said about them. */
export function isOutOfScope(device: Device): boolean {
  return device.traits?.items.some((trait) => outOfScopeTraits.has(trait.text)) === true;
}
