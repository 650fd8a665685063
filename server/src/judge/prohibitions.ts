import type { Chemistry } from '../model/entities/chemistry.generated.ts';
import type { Device } from '../model/entities/device.generated.ts';
import type { Prohibition } from '../model/entities/prohibition.generated.ts';
import type { Citation, List, Place, Requirement, Text } from '../model/node.ts';
import type { CaseFacts, Demander } from './judgement.ts';
import { judgeCase } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { holds, type Setting } from './setting.ts';
import { limitFrom } from './synthetic.ts';
import { prohibitedAgents, prohibitedModalities } from './vocabulary.ts';

/** Anyone who forbids: a device, a packaging. */
export type Forbidder = Demander & { readonly not?: List<ProhibitionLike> };

interface ProhibitionLike {
  readonly at: Place;
  readonly what?: Text;
  readonly value?: Text;
  readonly when?: Text;
  readonly src?: Citation;
}

/** Judgements of every prohibition that `caught` says is met. Nothing when none is. */
export function judgeProhibitions(
  by: Forbidder,
  caught: (what: string) => boolean,
  facts: Pick<CaseFacts, 'given' | 'factAt'>,
  setting: Setting,
): readonly Judgement[] {
  const judgements: Judgement[] = [];
  for (const prohibition of by.not?.items ?? []) {
    const { what } = prohibition;
    if (what === undefined || !caught(what.text)) continue;
    const which = holds(setting, prohibition.when) ? 'forbidden' : 'conditional';
    judgements.push(
      judgeCase('prohibition', which, { by, required: `no ${what.text}`, at: what.at, src: prohibition.src, ...facts }),
    );
  }
  return judgements;
}

/** Does this prohibition catch a sterilization of this method and use? */
export function catchesSterilization(what: string, modality: string | undefined, context: string | undefined): boolean {
  if (what === 'iuss') return context === 'iuss';
  return (
    modality !== undefined && (prohibitedModalities[what] as readonly string[] | undefined)?.includes(modality) === true
  );
}

/** Does this prohibition catch an agent: by its class, its name as written, or an ingredient? */
export function catchesAgent(what: string, word: string, agent: Chemistry | undefined): boolean {
  const caught = prohibitedAgents[what];
  if (word === what || agent?.ingredients?.items.some((one) => one.text === what) === true) return true;
  if (caught === undefined) return false;
  if (agent === undefined) return caught.words.includes(word);
  if (agent.class !== undefined && caught.classes.includes(agent.class.text)) return true;
  if (what === 'enzymatic' && agent.enzymatic?.on === true) return true;
  return agent.ingredients?.items.some((one) => caught.words.includes(one.text)) === true;
}

export interface Limit {
  readonly requirement: Requirement;
  readonly src: Citation | undefined;
}

/** Every limit of heat that holds at all stages: the device's own, and what it forbids. */
export function heatLimits(device: Device): readonly Limit[] {
  return [...stated(device.limits?.temp), ...forbiddenAbove(device, 'temp-above')];
}

function stated(requirement: Requirement | undefined): readonly Limit[] {
  return requirement === undefined ? [] : [{ requirement, src: requirement.src }];
}

function forbiddenAbove(device: Device, word: 'temp-above'): readonly Limit[] {
  return prohibitionsOf(device, word).map(({ value, src }) => ({
    requirement: limitFrom(value, 'temperature', 'at_most', src),
    src,
  }));
}

/** Every limit of pH that holds for all agents. */
export function phLimits(device: Device): readonly Limit[] {
  const above = prohibitionsOf(device, 'ph-above').map(({ value, src }) => ({
    requirement: limitFrom(value, 'ph', 'at_most', src),
    src,
  }));
  const below = prohibitionsOf(device, 'ph-below').map(({ value, src }) => ({
    requirement: limitFrom(value, 'ph', 'at_least', src),
    src,
  }));
  return [...stated(device.limits?.ph), ...above, ...below];
}

/** Every limit of pressure that holds at all stages. */
export function pressureLimits(device: Device): readonly Limit[] {
  const above = prohibitionsOf(device, 'pressure-above').map(({ value, src }) => ({
    requirement: limitFrom(value, 'pressure', 'at_most', src),
    src,
  }));
  return [...stated(device.limits?.pressure), ...above];
}

function prohibitionsOf(device: Device, word: string): readonly { value: Text; src: Citation | undefined }[] {
  const found: { value: Text; src: Citation | undefined }[] = [];
  for (const one of device.not?.items ?? ([] as Prohibition[])) {
    if (one.what?.text === word && one.value !== undefined) found.push({ value: one.value, src: one.src });
  }
  return found;
}
