import type { Quantity } from '../model/node.ts';
import { type Given, givenOf, givenValue } from './given.ts';
import { factOf, judgeCase, judgeDemand } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { heatLimits } from './prohibitions.ts';
import type { SterilizationQuestion } from './sterilization-question.ts';
import { isSteam } from './vocabulary.ts';

/** The setpoint against the page, and what the control band does around it. */
export function judgeSetpoint({ device, option, cycle, setting }: SterilizationQuestion): readonly Judgement[] {
  const requirement = option.temp;
  const setpoint = givenOf(cycle.temp);
  if (requirement === undefined) {
    if (!isSteam(option.modality?.text)) return [];
    const what = 'Sterilization temperature is not in the option';
    return [
      judgeCase('identity', 'unclear', {
        by: device,
        what,
        required: 'a value, or "silent"',
        at: option.id?.at ?? option.at,
        src: option.src,
      }),
    ];
  }
  const parameter = option.modality?.text === 'eo' ? 'ethylene-oxide' : 'steam-temperature';
  const what = parameter === 'ethylene-oxide' ? { what: 'Temperature of the gas cycle' } : {};
  const main = judgeDemand(
    { by: device, parameter, requirement, src: option.src, ...what },
    factOf(cycle.temp, setpoint),
    setting,
  );
  if (main.outcome === 'fails' || setpoint === undefined || cycle.band === undefined) return [main];
  const fact = { given: bandOf(setpoint, cycle.band), at: cycle.band.at };
  const band = judgeDemand({ by: device, parameter: 'control-band', requirement, src: option.src }, fact, setting);
  return band.outcome === 'fails' ? [main, band] : [main];
}

interface Spread {
  readonly minus?: Quantity;
  readonly plus?: Quantity;
}

const bands = new WeakMap<Given, { readonly band: Spread; readonly around: Given }>();

/** From the coldest to the hottest that the control band allows around a setpoint. Worked out once for each setpoint. */
export function bandOf(setpoint: Given, band: Spread | undefined): Given {
  if (band === undefined) return setpoint;
  const known = bands.get(setpoint);
  if (known?.band === band) return known.around;
  const around = spread(setpoint, givenOf(band.minus)?.high ?? 0, givenOf(band.plus)?.high ?? 0);
  bands.set(setpoint, { band, around });
  return around;
}

function spread(setpoint: Given, minus: number, plus: number): Given {
  if (minus === 0 && plus === 0) return setpoint;
  const low = setpoint.low - Math.abs(minus);
  const high = setpoint.high + Math.abs(plus);
  const words = `${setpoint.words} (${givenValue(low, 'temperature').words} to ${givenValue(high, 'temperature').words})`;
  return { low, high, words, ...(setpoint.written && { written: setpoint.written }) };
}

const hottestEnds = new WeakMap<Given, Given>();

/** The hot end of a band alone, said with the whole band: what a limit of heat is compared with. */
export function hotEnd(around: Given): Given {
  if (around.low === around.high) return around;
  const known = hottestEnds.get(around);
  if (known !== undefined) return known;
  const end = { low: around.high, high: around.high, words: around.words };
  hottestEnds.set(around, end);
  return end;
}

/** The hottest moment of the cycle against every limit of heat on the device and on the option. */
export function judgeHeat({ device, option, cycle, setting }: SterilizationQuestion): readonly Judgement[] {
  const setpoint = givenOf(cycle.temp);
  if (setpoint === undefined) return [];
  const given = hotEnd(bandOf(setpoint, cycle.band));
  const limits = [...heatLimits(device)];
  for (const requirement of [option.max_temp, device.sterilization?.max_temp]) {
    if (requirement !== undefined) limits.push({ requirement, src: requirement.src ?? option.src });
  }
  return limits.map(({ requirement, src }) =>
    judgeDemand({ by: device, parameter: 'heat-limit', requirement, src }, factOf(cycle.temp, given), setting),
  );
}
