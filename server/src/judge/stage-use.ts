import { invariant } from '../base/assert.ts';
import type { Device } from '../model/entities/device.generated.ts';
import type { Citation, Place } from '../model/node.ts';
import type { CleaningStage, StageDemand } from './demands.ts';
import { type CaseOf, type Demander, judgeCase } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { judgeProhibitions } from './prohibitions.ts';
import type { Setting } from './setting.ts';
import { outOfScopeTraits } from './vocabulary.ts';

/** May this device go through this stage at all? Silence is a question; a prohibition anywhere is the end of it. */
export function judgeStageUse(
  device: Device,
  demand: StageDemand,
  machine: Demander,
  setting: Setting,
): readonly Judgement[] {
  const factAt = 'id' in machine ? machine.id?.at : machine.at;
  const trait = device.traits?.items.find((one) => outOfScopeTraits.has(one.text));
  if (trait !== undefined)
    return [judgeCase('identity', 'out-of-scope', { by: device, required: trait.text, at: trait.at })];
  const forbidden = judgeProhibitions(
    device,
    (what) => what === demand.stage || (what === 'immersion' && demand.stage === 'ultrasonic'),
    { given: demand.stage, factAt },
    setting,
  );
  const { which, at, src } = useOf(demand);
  const immersed = immersionBan(device, demand.stage);
  const required = which === 'forbidden' ? `no ${wordOf(demand.stage)}` : wordOf(demand.stage);
  const use = judgeCase('machine-step', which, { by: device, required, given: wordOf(demand.stage), at, factAt, src });
  return [...forbidden, ...(immersed ? [immersed] : []), use];
}

function useOf(demand: StageDemand): { which: CaseOf<'machine-step'>; at: Place; src: Citation | undefined } {
  const banned = demand.voices.find((voice) => voice.use?.text === 'forbidden');
  if (banned !== undefined) return { which: 'forbidden', at: banned.use?.at ?? banned.at, src: banned.src };
  const unclear = demand.voices.find((voice) => voice.ambiguous !== undefined);
  if (unclear !== undefined) return { which: 'unclear', at: unclear.ambiguous?.at ?? unclear.at, src: unclear.src };
  const speaking = demand.voices.find((voice) => voice.silent?.on !== true && voice.use?.text !== 'silent');
  const first = speaking ?? demand.voices[0];
  invariant(first !== undefined, 'a stage has at least one voice');
  return { which: speaking === undefined ? 'silent' : 'allowed', at: first.at, src: first.src };
}

/** An ultrasonic bath is under liquid. */
function immersionBan(device: Device, stage: CleaningStage): Judgement | undefined {
  const { immersion } = device;
  if (stage !== 'ultrasonic' || immersion === undefined) return undefined;
  const facts = {
    by: device,
    required: immersion.extent?.text ?? 'not under liquid',
    given: 'ultrasonic bath',
    at: immersion.at,
    src: immersion.src,
  };
  if (immersion.use?.text === 'forbidden') return judgeCase('immersion', 'forbidden', facts);
  return immersion.extent !== undefined && immersion.extent.text !== 'full'
    ? judgeCase('immersion', 'too-deep', facts)
    : undefined;
}

function wordOf(stage: CleaningStage): string {
  const words = {
    manual: 'cleaning by hand',
    ultrasonic: 'ultrasonic cleaning',
    mechanical: 'machine washing',
    disinfection: 'disinfection',
  };
  return words[stage];
}
