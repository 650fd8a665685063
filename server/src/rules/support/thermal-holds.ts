import type { MachinePhase } from '../../model/entities/washer.generated.ts';
import type { List } from '../../model/node.ts';
import { A0_SCALE, amountOf, lethalityOfHold } from '../../physics/lethality.ts';

/** A phase whose setpoint and length can be read. */
export interface ThermalHold {
  readonly phase: MachinePhase;
  readonly temperatureC: number;
  readonly holdS: number;
}

/** The thermal disinfection of a cycle; drying heat is no part of it. Undefined when a thermal phase lacks a number. */
export function thermalHolds(phases: List<MachinePhase> | undefined): readonly ThermalHold[] | undefined {
  const holds: ThermalHold[] = [];
  for (const phase of phases?.items ?? []) {
    if (phase.phase?.text !== 'thermal') continue;
    const { temp, time } = phase;
    if (temp === undefined || time === undefined || temp.problem !== undefined || time.problem !== undefined)
      return undefined;
    holds.push({ phase, temperatureC: temp.value, holdS: time.value });
  }
  return holds;
}

/** A0 in seconds of the holds together; undefined where the physics gives no answer. */
export function a0Of(holds: readonly Pick<ThermalHold, 'temperatureC' | 'holdS'>[]): number | undefined {
  let sum = 0;
  for (const { temperatureC, holdS } of holds) {
    const dose = lethalityOfHold(A0_SCALE, { temperatureC, holdS, uncertaintyK: 0 });
    if (!dose.ok) return undefined;
    sum += amountOf(dose.value);
  }
  return sum;
}

/** `190`: A0 without more digits than a setpoint can carry. */
export function a0InWords(a0: number): string {
  return a0 < 1 ? '0' : String(Number(a0.toPrecision(a0 < 100 ? 2 : 3)));
}
