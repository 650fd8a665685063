import type { Device } from '../model/entities/device.generated.ts';
import type { SterilizationOption } from '../model/entities/device-sterilization.generated.ts';
import type { Quantity, Requirement } from '../model/node.ts';
import { judgeCycleEvidence } from './evidence.ts';
import { givenOf } from './given.ts';
import { factOf, judgeCase, judgeDemand } from './judgement.ts';
import { judgeLumens, lumensOf } from './lumens.ts';
import type { Judgement, Parameter } from './outcome.ts';
import { judgePackagingStatement } from './packaging-statement.ts';
import { judgePeroxide } from './peroxide.ts';
import { judgeSterilizationGates } from './sterilization-gates.ts';
import type { SterilizationQuestion } from './sterilization-question.ts';
import { judgeHeat, judgeSetpoint } from './temperature.ts';
import { isSteam } from './vocabulary.ts';

/**
 * Every judgement on the option: gates of identity and category first. Where one of them fails, numbers are not compared: they would
 * belong to another instruction.
 */
export function judgeSterilization(question: SterilizationQuestion): readonly Judgement[] {
  const gates = judgeSterilizationGates(question);
  if (gates.some((gate) => gate.outcome === 'fails')) return gates;
  return [
    ...gates,
    ...judgePacked(question),
    ...judgeSetpoint(question),
    ...judgeHeat(question),
    ...judgeTimes(question),
    ...judgeGas(question),
    ...judgeOptionLumens(question),
    ...judgePeroxide(question),
    judgeCycleEvidence(question.machine, question.cycle, question.setting),
  ];
}

function judgePacked({ device, option, packed, cycle, setting }: SterilizationQuestion): readonly Judgement[] {
  if (packed === undefined) return [];
  const statements = [option.packaging, device.packaging].filter((one) => one !== undefined);
  if (statements.length > 0) return statements.map((one) => judgePackagingStatement(device, one, packed, setting));
  const given = packed.packaging?.id?.text ?? 'unwrapped';
  return [
    judgeCase('packaging', 'not-encoded', {
      by: device,
      required: `packaging for ${cycle.id?.text ?? 'the cycle'}`,
      given,
      at: option.at,
    }),
  ];
}

function judgeTimes(question: SterilizationQuestion): readonly Judgement[] {
  const { option, cycle } = question;
  const ofGas = option.modality?.text === 'eo';
  const judgements = [
    ...judgeIf(question, ofGas ? 'ethylene-oxide' : 'exposure', 'Exposure', option.exposure, cycle.exposure),
  ];
  if (option.exposure === undefined && isSteam(option.modality?.text))
    judgements.push(notEncoded(question, 'Exposure'));
  judgements.push(...judgeIf(question, 'pulses', 'Number of pulses', option.pulses, cycle.pulses));
  if (!isSteam(option.modality?.text)) return judgements;
  judgements.push(...judgeIf(question, 'steam-dry', undefined, option.dry, cycle.dry));
  if (option.dry === undefined && option.context?.text !== 'iuss') judgements.push(notEncoded(question, 'Drying time'));
  if (option.pressure !== undefined) {
    const { device } = question;
    judgements.push(
      judgeCase('pressure', 'informational', {
        by: device,
        required: 'nothing',
        at: option.pressure.at,
        src: option.pressure.src ?? option.src,
      }),
    );
  }
  return judgements;
}

function judgeGas(question: SterilizationQuestion): readonly Judgement[] {
  const { option, cycle } = question;
  if (option.modality?.text !== 'eo') return [];
  return [
    ...judgeIf(question, 'ethylene-oxide', 'Humidity of the gas cycle', option.humidity, cycle.humidity),
    ...judgeIf(question, 'ethylene-oxide', 'Concentration of the gas', option.concentration, cycle.concentration),
    ...judgeIf(question, 'aeration', undefined, option.aeration?.time, cycle.aeration?.time),
    ...judgeIf(question, 'aeration-temperature', undefined, option.aeration?.temp, cycle.aeration?.temp),
  ];
}

function judgeIf(
  { device, option, setting }: SterilizationQuestion,
  parameter: Parameter,
  what: string | undefined,
  requirement: Requirement | undefined,
  ours: Quantity | undefined,
): readonly Judgement[] {
  if (requirement === undefined) return [];
  const demand = { by: device, parameter, requirement, src: option.src, ...(what !== undefined && { what }) };
  return [judgeDemand(demand, factOf(ours, givenOf(ours)), setting)];
}

/** An option that leaves out what makes a cycle is not complete: it must not pass by saying nothing. */
function notEncoded({ device, option }: SterilizationQuestion, what: string): Judgement {
  return judgeCase('identity', 'unclear', {
    by: device,
    what: `${what} is not in the option`,
    required: 'a value, or "silent"',
    at: option.id?.at ?? option.at,
    src: option.src,
  });
}

function judgeOptionLumens({ device, option, quantity, setting }: SterilizationQuestion): readonly Judgement[] {
  return option.lumens === undefined
    ? []
    : judgeLumens(device, option.lumens, lumensOf(device, quantity ?? 1), setting);
}

/** The options a device offers for routine work here and others; nothing when it offers none. */
export function optionsOf(device: Device): readonly SterilizationOption[] {
  return device.sterilization?.any_of?.items ?? [];
}
