import type { Detergent } from '../model/entities/detergent.generated.ts';
import type { CleaningNode } from '../model/entities/device-manual.generated.ts';
import type { FinalRinse } from '../model/entities/final-rinse.generated.ts';
import type { Washer, WasherCycle } from '../model/entities/washer.generated.ts';
import { type Agent, isDetergent, judgeAgent, judgeWindow } from './agents.ts';
import { judgeConnectors } from './connectors.ts';
import { judgeCase } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import type { Stock } from './setting.ts';
import { judgeStageUse } from './stage-use.ts';
import { judgeWasherEvidence } from './wash-evidence.ts';
import { judgeWashHeat } from './wash-heat.ts';
import { judgePhases, phaseHeat, phasesNamed } from './wash-phases.ts';
import type { WashQuestion } from './wash-question.ts';
import { judgeThermal } from './wash-thermal.ts';
import { judgeWater } from './water.ts';

/** Every judgement on washing this device in this cycle. The whole sequence is the instruction, not its single numbers. */
export function judgeWash(question: WashQuestion): readonly Judgement[] {
  const use = judgeStageUse(question.device, question.demand, question.machine, question.setting);
  if (use.some((one) => one.outcome === 'fails')) return use;
  return [
    ...use,
    ...question.demand.voices.flatMap((voice) => [...judgePhases(question, voice), ...judgeMachine(question, voice)]),
    ...judgeThermal(question),
    ...judgeWashHeat(question),
    ...judgeChemistry(question),
    ...judgeConnectors(question),
    ...judgeFinalWater(question),
    judgeWasherEvidence(question.machine, question.cycle, question.setting),
  ];
}

/** Everything the cycle doses, by its own list, the machine's, and its phases; each agent once. */
export function agentsOf(machine: Washer, cycle: WasherCycle, stock: Stock): readonly Agent[] {
  const words = [...(machine.doses?.items ?? []), ...(cycle.doses?.items ?? [])];
  for (const phase of cycle.phases?.items ?? []) if (phase.chemistry !== undefined) words.push(phase.chemistry);
  const seen = new Set<string>();
  const agents: Agent[] = [];
  for (const word of words) {
    if (seen.has(word.text)) continue;
    seen.add(word.text);
    agents.push({ word, chemistry: stock.chemistry(word.text) });
  }
  return agents;
}

function judgeChemistry(question: WashQuestion): readonly Judgement[] {
  const { device, demand, machine, cycle, setting } = question;
  const agents = agentsOf(machine, cycle, question.stock);
  const detergents = demand.voices.flatMap(detergentsAsked);
  const judgements = agents.flatMap((agent) => [
    ...judgeAgent({ device, detergents, agent, method: 'mechanical', setting }),
    ...judgeExtra(question, agent),
    ...judgeUse(question, agent),
  ]);
  if (detergents.length > 0 && !agents.some(isDetergent)) {
    const first = detergents[0];
    const which = agents.length === 0 ? 'none-dosed' : 'unknown';
    const given = agents.map((agent) => agent.word.text).join(', ');
    judgements.push(
      judgeCase('chemistry', which, {
        by: device,
        required: 'a detergent as the page asks',
        given,
        at: first?.at ?? device.at,
        factAt: cycle.doses?.at ?? cycle.at,
        src: first?.src,
      }),
    );
  }
  return judgements;
}

/** The detergents a voice asks for; a pH given for a phase counts as one of the detergent. */
function detergentsAsked(voice: CleaningNode): readonly Detergent[] {
  const asked: (Detergent | undefined)[] = [voice.detergent];
  for (const phase of [voice.wash, voice.enzyme_wash, voice.prewash]) {
    const src = phase?.src ?? voice.src;
    asked.push(phase?.detergent, phase?.ph && { node: 'record', at: phase.ph.at, ph: phase.ph, ...(src && { src }) });
  }
  return asked.filter((one) => one !== undefined);
}

/** Lubricant that the machine adds though the page forbids it, or accepts none. */
function judgeExtra({ device, demand }: WashQuestion, agent: Agent): readonly Judgement[] {
  const isLubricant =
    agent.chemistry === undefined
      ? agent.word.text.includes('lubricant') || agent.word.text === 'instrument-milk'
      : agent.chemistry.class?.text === 'lubricant';
  if (!isLubricant) return [];
  const bans = [...demand.voices.map((voice) => voice.lubricant), device.lubrication].filter(
    (one) => one?.use?.text === 'forbidden',
  );
  const acceptsNone = device.lubrication?.allowed?.items.find((one) => one.text === 'none');
  const places = [
    ...bans.map((ban) => ({ at: ban?.use?.at, src: ban?.src })),
    ...(acceptsNone ? [{ at: acceptsNone.at, src: device.lubrication?.src }] : []),
  ];
  return places.map(({ at, src }) =>
    judgeCase('prohibition', 'forbidden', {
      by: device,
      required: 'no lubricant',
      given: agent.word.text,
      at: at ?? device.at,
      factAt: agent.word.at,
      src,
    }),
  );
}

/** The agent's own instruction in this cycle: its temperature window, and the step that must follow it. */
function judgeUse(question: WashQuestion, agent: Agent): readonly Judgement[] {
  const { cycle, setting } = question;
  const { chemistry } = agent;
  if (chemistry === undefined) return [];
  const own = (cycle.phases?.items ?? []).filter((phase) => phase.chemistry?.text === agent.word.text);
  const phases = own.length > 0 ? own : isDetergent(agent) ? phasesNamed(cycle, 'wash') : [];
  const judgements = phases.flatMap((phase) =>
    judgeWindow(
      agent,
      `phase ${phase.phase?.text ?? ''}`,
      { given: phaseHeat(cycle, phase), at: phase.temp?.at },
      setting,
    ),
  );
  const partner = chemistry.couples;
  if (partner !== undefined && !(cycle.phases?.items ?? []).some((phase) => phase.phase?.text === partner.text)) {
    judgements.push(
      judgeCase('chemistry', 'partner-missing', {
        by: chemistry,
        required: partner.text,
        given: cycle.id?.text,
        at: partner.at,
        factAt: cycle.phases?.at,
        src: chemistry.src,
      }),
    );
  }
  return judgements;
}

/** A phase that goes with another, a machine of a standard, a certain rack. */
function judgeMachine({ device, machine, cycle }: WashQuestion, voice: CleaningNode): readonly Judgement[] {
  const judgements: Judgement[] = [];
  const facts = { by: device, src: voice.src, factAt: machine.id?.at };
  for (const standard of voice.conforms_to?.items ?? []) {
    if (machine.conforms_to?.items.some((one) => one.text === standard.text) === true) continue;
    const given = machine.conforms_to?.items.map((one) => one.text).join(', ');
    judgements.push(
      judgeCase('machine-step', 'not-conforming', { ...facts, required: standard.text, given, at: standard.at }),
    );
  }
  if (voice.rack !== undefined) {
    judgements.push(
      judgeCase('machine-step', 'rack-unknown', {
        ...facts,
        required: voice.rack.text,
        given: machine.rack?.note?.text,
        at: voice.rack.at,
      }),
    );
  }
  for (const phase of [voice.wash, voice.enzyme_wash, voice.prewash]) {
    const partner = phase?.couples;
    if (partner === undefined || (cycle.phases?.items ?? []).some((one) => one.phase?.text === partner.text)) continue;
    judgements.push(
      judgeCase('machine-step', 'phase-missing', {
        ...facts,
        required: partner.text,
        given: cycle.id?.text,
        at: partner.at,
        factAt: cycle.phases?.at,
      }),
    );
  }
  return judgements;
}

/** The water that dries on the device. */
function judgeFinalWater({ device, demand, cycle, stock, setting }: WashQuestion): readonly Judgement[] {
  const places: (FinalRinse | undefined)[] = [device.rinse?.final];
  for (const voice of demand.voices) places.push(voice.final_rinse, voice.rinse?.final);
  const asked = new Set(places.filter((one) => one !== undefined));
  const name = cycle.final_water?.text;
  const water = name === undefined ? undefined : stock.water(name);
  return [...asked].flatMap((quality) =>
    judgeWater({ by: device, quality, water, waterName: name, factAt: cycle.final_water?.at, setting }),
  );
}
