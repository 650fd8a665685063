import type { Site } from '../model/entities/site.generated.ts';
import type { MachinePhase } from '../model/entities/washer.generated.ts';
import type { Place, Requirement } from '../model/node.ts';
import { boilingPointAtAltitudeC } from '../physics/atmosphere.ts';
import { saturationTemperatureC } from '../physics/steam.ts';
import { type Given, givenOf } from './given.ts';
import { type Demand, judgeDemand } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { thresholdOf } from './policies.ts';
import { heatLimits, type Limit } from './prohibitions.ts';
import type { Setting } from './setting.ts';
import { hotEnd } from './temperature.ts';
import { dryPhases } from './vocabulary.ts';
import { phaseHeat } from './wash-phases.ts';
import type { WashQuestion } from './wash-question.ts';

/** The hottest phase against the device, the first phase against fixing protein, and water against boiling here. */
export function judgeWashHeat(question: WashQuestion): readonly Judgement[] {
  return [...judgeHottest(question), ...judgeDryAir(question), ...judgeFirstWater(question), ...judgeBoiling(question)];
}

interface HotPhase {
  readonly phase: MachinePhase;
  readonly heat: Given;
}

function hottestOf(question: WashQuestion, wanted: (phase: MachinePhase) => boolean): HotPhase | undefined {
  let hottest: HotPhase | undefined;
  for (const phase of question.cycle.phases?.items ?? []) {
    const heat = wanted(phase) ? phaseHeat(question.cycle, phase) : undefined;
    if (heat !== undefined && (hottest === undefined || heat.high > hottest.heat.high)) hottest = { phase, heat };
  }
  return hottest;
}

/** The drying air is usually the hottest thing in the cycle. */
function judgeHottest(question: WashQuestion): readonly Judgement[] {
  const hottest = hottestOf(question, () => true);
  return hottest === undefined
    ? []
    : heatLimits(question.device).map((limit) => judgeAgainst(question, 'heat-limit', limit, hottest));
}

function judgeDryAir(question: WashQuestion): readonly Judgement[] {
  const requirement = question.device.drying?.temp;
  const dry = hottestOf(question, (phase) => phase.phase?.text === 'dry');
  if (requirement === undefined || dry === undefined) return [];
  return [
    judgeAgainst(
      question,
      'drying-temperature',
      { requirement, src: requirement.src ?? question.device.drying?.src },
      dry,
    ),
  ];
}

function judgeAgainst(
  question: WashQuestion,
  parameter: Demand['parameter'],
  { requirement, src }: Limit,
  { phase, heat }: HotPhase,
): Judgement {
  const name = phase.phase?.text ?? 'phase';
  const what = `${parameter === 'heat-limit' ? 'Heat limit' : 'Drying temperature'} in the phase ${name}`;
  return judgeDemand(
    { by: question.device, parameter, what, requirement, src },
    { given: hotEnd(heat), at: phase.temp?.at },
    question.setting,
  );
}

/** The first water the device meets must not be hot: the device's own limit, and the site's. */
function judgeFirstWater(question: WashQuestion): readonly Judgement[] {
  const { device, cycle, setting } = question;
  const first = cycle.phases?.items.find((phase) => phase.phase !== undefined && !dryPhases.has(phase.phase.text));
  const given = givenOf(first?.temp);
  if (first === undefined || given === undefined || first.phase?.text === 'thermal') return [];
  const judgements: Judgement[] = [];
  const what = 'First water in the machine';
  const fact = { given, at: first.temp?.at };
  for (const voice of question.demand.voices) {
    const requirement = voice.first_rinse?.temp;
    if (requirement !== undefined && voice.stage?.text === 'mechanical') {
      judgements.push(
        judgeDemand(
          { by: device, parameter: 'first-rinse-temperature', what, requirement, src: voice.first_rinse?.src },
          fact,
          setting,
        ),
      );
    }
  }
  const adopted = thresholdOf(setting, 'prewash_temp', 'temperature');
  if (adopted !== undefined && setting.site !== undefined) {
    judgements.push(
      judgeDemand(
        { by: setting.site, parameter: 'first-rinse-temperature', what, requirement: adopted },
        fact,
        setting,
      ),
    );
  }
  return judgements;
}

/** Temperature at which water boils at the site, in °C: by its usual air pressure, else by its altitude. Undefined when neither is given. */
export function boilingHereC(setting: Setting): number | undefined {
  const { site } = setting;
  const pressure = givenOf(site?.atmosphere);
  const altitude = givenOf(site?.altitude);
  if (pressure !== undefined) {
    const boiling = saturationTemperatureC(pressure.low);
    if (boiling.ok) return boiling.value;
  }
  if (altitude === undefined) return undefined;
  const boiling = boilingPointAtAltitudeC(altitude.low / 1000);
  return boiling.ok ? boiling.value : undefined;
}

/** Phases of water at or near boiling: the hold is never reached. The margin is the site's; without one only boiling itself counts. */
function judgeBoiling(question: WashQuestion): readonly Judgement[] {
  const { setting } = question;
  const requirement = hottestWater(setting);
  const hottest = hottestOf(question, (phase) => phase.phase !== undefined && !dryPhases.has(phase.phase.text));
  const given = givenOf(hottest?.phase.temp);
  if (requirement === undefined || given === undefined || setting.site === undefined) return [];
  const fact = { given, at: hottest?.phase.temp?.at };
  const judged = judgeDemand({ by: setting.site, parameter: 'boiling', requirement }, fact, setting);
  return judged.outcome === 'meets' ? [] : [judged];
}

const limits = new WeakMap<Site, Requirement>();

/** How hot water can get at the site, as a limit. Worked out once for a site. */
function hottestWater(setting: Setting): Requirement | undefined {
  const { site } = setting;
  if (site === undefined) return undefined;
  const known = limits.get(site);
  const boiling = known === undefined ? boilingHereC(setting) : undefined;
  if (boiling === undefined) return known;
  const margin = thresholdOf(setting, 'boiling_margin', 'temperature-difference');
  const highest = boiling - (givenOf(margin?.at_least ?? margin?.exactly)?.high ?? 0);
  const limit = asLimit(highest, (site.altitude ?? site.atmosphere ?? site).at);
  limits.set(site, limit);
  return limit;
}

function asLimit(highest: number, at: Place): Requirement {
  const amount = Math.round(highest * 10) / 10;
  const words = { node: 'quantity', at, text: `${amount} °C`, unit: '°C', decimals: 1 } as const;
  return {
    node: 'record',
    at,
    dimension: 'temperature',
    at_most: { ...words, dimension: 'temperature', value: highest, amount },
  };
}
