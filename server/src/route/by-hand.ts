import { isDetergent, judgeAgent } from '../judge/agents.ts';
import type { StageDemand } from '../judge/demands.ts';
import type { Judgement } from '../judge/outcome.ts';
import { worstOf } from '../judge/outcome.ts';
import { judgeStageUse } from '../judge/stage-use.ts';
import { judgeWater } from '../judge/water.ts';
import type { Detergent } from '../model/entities/detergent.generated.ts';
import type { CleaningNode } from '../model/entities/device-manual.generated.ts';
import type { FinalRinse } from '../model/entities/final-rinse.generated.ts';
import type { WaterQuality } from '../model/entities/water-quality.generated.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { Department } from './equipment.ts';
import { idOf } from './equipment.ts';
import type { Means } from './means.ts';
import { bestFit } from './ranks.ts';

type Device = EntityOf['device'];

/**
 * Work by hand: does the department have an agent and water as the page asks? Whether the written procedure follows the steps is judged
 * with the procedure, not here. One means for each agent that comes into question; one without agent where the page asks for none.
 */
export function byHand(device: Device, demand: StageDemand, department: Department): readonly Means[] {
  const around = [
    ...judgeStageUse(device, demand, device, department.setting),
    ...watersOf(device, demand, department),
  ];
  const detergents = demand.voices.flatMap(detergentsOf);
  if (detergents.length === 0) return [{ machine: '', means: '', judgements: around }];
  const means = agentsFor(device, detergents, demand, department).map((agent) => ({
    ...agent,
    judgements: [...around, ...agent.judgements],
  }));
  return means.length > 0 ? means : [{ machine: '', means: '', judgements: [...around, noAgent(device, detergents)] }];
}

/** What is asked of a detergent; "does not apply" and silence ask nothing. */
function detergentsOf(voice: CleaningNode): readonly Detergent[] {
  const asked = [voice.detergent, ...(voice.steps?.items ?? []).map(({ detergent }) => detergent)];
  return asked
    .filter((one) => one !== undefined && one.not_applicable === undefined && one.silent?.on !== true)
    .filter((one) => one !== undefined);
}

function agentsFor(
  device: Device,
  detergents: readonly Detergent[],
  demand: StageDemand,
  department: Department,
): readonly Means[] {
  const { setting } = department;
  const method = demand.stage === 'disinfection' ? 'disinfection' : 'manual';
  const means: Means[] = [];
  for (const chemistry of department.chemistry) {
    if (chemistry.id === undefined || chemistry.proposed?.on === true) continue;
    const agent = { word: chemistry.id, chemistry };
    if (!isDetergent(agent) || chemistry.methods?.items.every(({ text }) => text !== method) === true) continue;
    means.push({
      machine: '',
      means: idOf(chemistry),
      judgements: judgeAgent({ device, detergents, agent, method, setting }),
    });
  }
  return means;
}

function noAgent(device: Device, detergents: readonly Detergent[]): Judgement {
  const asked = detergents[0];
  return {
    outcome: 'needs-answer',
    parameter: 'chemistry',
    demandedBy: `device/${idOf(device)}`,
    required: 'a detergent as the page asks',
    given: '',
    reason: 'Chemistry: the files name no detergent for use by hand.',
    settledBy: 'educator',
    says: [],
    demandAt: asked?.at ?? device.at,
  };
}

/** For every rinse, the water point that fits best. */
function watersOf(device: Device, demand: StageDemand, department: Department): readonly Judgement[] {
  const { setting, water } = department;
  const judgements: Judgement[] = [];
  for (const quality of new Set(demand.voices.flatMap(qualitiesOf))) {
    const fits = water.map((point) => {
      const answers = judgeWater({ by: device, quality, water: point, waterName: idOf(point), setting });
      return { judgements: answers, outcome: worstOf(answers) };
    });
    judgements.push(
      ...(bestFit(fits)?.judgements ??
        judgeWater({ by: device, quality, water: undefined, waterName: undefined, setting })),
    );
  }
  return judgements;
}

function qualitiesOf(voice: CleaningNode): readonly (WaterQuality | FinalRinse)[] {
  const asked: (WaterQuality | FinalRinse | undefined)[] = [voice.final_rinse, voice.rinse?.water, voice.rinse?.final];
  for (const step of voice.steps?.items ?? []) asked.push(step.water);
  return asked.filter((one) => one !== undefined);
}
