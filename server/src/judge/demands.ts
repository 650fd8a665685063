import type { Device } from '../model/entities/device.generated.ts';
import type { Disinfection } from '../model/entities/device-disinfection.generated.ts';
import type { CleaningNode, ManualCleaning } from '../model/entities/device-manual.generated.ts';
import type { MechanicalWashing } from '../model/entities/device-mechanical.generated.ts';
import type { UltrasonicCleaning } from '../model/entities/device-ultrasonic.generated.ts';
import type { Text } from '../model/node.ts';
import { holds, type Setting, situationsIn } from './setting.ts';

export type CleaningStage = 'manual' | 'ultrasonic' | 'mechanical' | 'disinfection';

/** One place of the instruction that speaks about a stage: the branch of the cleaning order, or the section of the device. All bind. */
export type StageVoice = CleaningNode | ManualCleaning | UltrasonicCleaning | MechanicalWashing | Disinfection;

/** What one stage of one alternative demands. */
export interface StageDemand {
  readonly stage: CleaningStage;
  /** Never empty. Prohibitions and limits of the device are not repeated here: every judgement adds them. */
  readonly voices: readonly CleaningNode[];
}

/** One complete way to clean the device: every stage of it, in order. Never mixed with another. */
export interface CleaningAlternative {
  /** Ids of the branches taken, or `cleaning` where there is only one way. */
  readonly id: string;
  readonly stages: readonly StageDemand[];
  /** True when the page prefers this one. */
  readonly preferred: boolean;
  /** Choices with which alone it is valid, as the page words them. */
  readonly couples: readonly Text[];
}

export interface CleaningAlternatives {
  readonly alternatives: readonly CleaningAlternative[];
  /** True when the page combines into more ways than are looked at; the first ones are kept. */
  readonly tooMany: boolean;
}

/** More complete ways than this are a mistake in the file. */
const mostAlternatives = 64;

interface Way {
  readonly ids: readonly string[];
  readonly leaves: readonly CleaningNode[];
  readonly preferred: boolean;
  readonly couples: readonly Text[];
}

const known = new WeakMap<Device, Map<string, CleaningAlternatives>>();

/**
 * The complete ways to clean a device, from its cleaning order, or from its sections where it has no order. Kept: many ask for them. Of a
 * setting only the situations matter here, so that departments share them.
 */
export function cleaningAlternatives(device: Device, setting: Setting): CleaningAlternatives {
  let ofDevice = known.get(device);
  if (ofDevice === undefined) {
    ofDevice = new Map();
    known.set(device, ofDevice);
  }
  const situations = situationsIn(setting);
  let alternatives = ofDevice.get(situations);
  if (alternatives === undefined) {
    alternatives = alternativesOf(device, setting);
    ofDevice.set(situations, alternatives);
  }
  return alternatives;
}

const stageWays = new WeakMap<CleaningAlternatives, Map<CleaningStage, readonly StageWay[]>>();

/** What one stage demands in one complete way of cleaning: more than once where the order comes back to it. */
export type StageWay = readonly StageDemand[];

/** What the stage demands in each complete way of cleaning that has the stage. One way is followed, never a mixture. */
export function waysThrough(device: Device, stage: CleaningStage, setting: Setting): readonly StageWay[] {
  const all = cleaningAlternatives(device, setting);
  let byStage = stageWays.get(all);
  if (byStage === undefined) {
    byStage = new Map();
    stageWays.set(all, byStage);
  }
  let ways = byStage.get(stage);
  if (ways === undefined) {
    ways = all.alternatives
      .map(({ stages }) => stages.filter((demand) => demand.stage === stage))
      .filter((through) => through.length > 0);
    byStage.set(stage, ways);
  }
  return ways;
}

function alternativesOf(device: Device, setting: Setting): CleaningAlternatives {
  const walk = { tooMany: false, setting };
  const ways = device.cleaning === undefined ? waysOfSections(device, setting) : waysOf(device.cleaning, walk);
  const alternatives = ways.filter((way) => way.leaves.length > 0).map((way) => asAlternative(device, way));
  return { alternatives, tooMany: walk.tooMany };
}

interface Walk {
  tooMany: boolean;
  readonly setting: Setting;
}

function waysOf(node: CleaningNode, walk: Walk): readonly Way[] {
  const own = {
    ids: node.id === undefined ? [] : [node.id.text],
    preferred: false,
    couples: node.couples === undefined ? [] : [node.couples],
  };
  let ways: readonly Way[] = [{ ...own, leaves: node.stage === undefined ? [] : [node] }];
  for (const child of node.all_of?.items ?? []) {
    if (holds(walk.setting, child.when)) ways = combined(ways, waysOf(child, walk), walk);
  }
  if (node.any_of !== undefined) ways = combined(ways, eitherOf(node, walk), walk);
  return ways;
}

function eitherOf(node: CleaningNode, walk: Walk): readonly Way[] {
  const either: Way[] = [];
  for (const [index, child] of (node.any_of?.items ?? []).entries()) {
    if (!holds(walk.setting, child.when) || child.use?.text === 'forbidden') continue;
    const preferred = node.prefer !== undefined && child.id?.text === node.prefer.text;
    for (const way of waysOf(child, walk)) {
      const ids = way.ids.length > 0 ? way.ids : [String(index + 1)];
      either.push({ ...way, ids, preferred: preferred || way.preferred });
    }
  }
  return capped(either, walk);
}

/** Every way of one with every way of the other, in order. */
function combined(before: readonly Way[], after: readonly Way[], walk: Walk): readonly Way[] {
  const both: Way[] = [];
  for (const first of before) {
    for (const then of after) {
      if (both.length > mostAlternatives) break;
      both.push({
        ids: [...first.ids, ...then.ids],
        leaves: [...first.leaves, ...then.leaves],
        preferred: first.preferred || then.preferred,
        couples: [...first.couples, ...then.couples],
      });
    }
  }
  return capped(both, walk);
}

function capped(ways: readonly Way[], walk: Walk): readonly Way[] {
  if (ways.length <= mostAlternatives) return ways;
  walk.tooMany = true;
  return ways.slice(0, mostAlternatives);
}

/**
 * Without an order, every section that is described is demanded, except what the page merely allows: that is a way of its own only where
 * nothing is demanded.
 */
function waysOfSections(device: Device, setting: Setting): readonly Way[] {
  const demanded: CleaningNode[] = [];
  const allowed: CleaningNode[] = [];
  const instead: CleaningNode[] = [];
  for (const stage of ['manual', 'ultrasonic', 'mechanical', 'disinfection'] as const) {
    const section: CleaningNode | undefined = device[stage];
    if (section === undefined || !isSpokenOf(section) || !holds(setting, section.when)) continue;
    const leaf: CleaningNode = { ...section, stage: { node: 'text', at: section.at, text: stage } };
    if (stage === 'manual' && section.needed?.text === 'instead-of-machine') instead.push(leaf);
    else if (section.use?.text === 'allowed') allowed.push(leaf);
    else demanded.push(leaf);
  }
  const together = demanded.length > 0 ? [demanded] : allowed.map((leaf) => [leaf]);
  const ways = [...together, ...(instead.length > 0 ? [instead] : [])];
  return ways.map((leaves) => ({
    ids: ways.length > 1 ? [leaves[0]?.stage?.text ?? ''] : [],
    leaves,
    preferred: false,
    couples: [],
  }));
}

/** A section that says only "forbidden", "silent" or "does not apply" is no way to clean. */
function isSpokenOf(section: CleaningNode): boolean {
  return (
    section.use?.text !== 'forbidden' &&
    section.use?.text !== 'silent' &&
    section.silent?.on !== true &&
    section.not_applicable === undefined
  );
}

function asAlternative(device: Device, way: Way): CleaningAlternative {
  const stages: StageDemand[] = [];
  for (const leaf of way.leaves) {
    const stage = leaf.stage?.text;
    if (stage === undefined) continue;
    const section: CleaningNode | undefined = device[stage];
    const same = section !== undefined && section.at === leaf.at;
    stages.push({ stage, voices: same || section === undefined ? [leaf] : [leaf, section] });
  }
  return { id: way.ids.join('+') || 'cleaning', stages, preferred: way.preferred, couples: way.couples };
}
