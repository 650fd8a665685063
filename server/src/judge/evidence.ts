import type { SterilizerCycle } from '../model/entities/sterilizer.generated.ts';
import type { DateValue, Flag, Place } from '../model/node.ts';
import { daysBetween } from './dates.ts';
import { type CaseOf, type Demander, judgeCase } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import { longestAgeDays } from './policies.ts';
import type { Setting } from './setting.ts';

/** A machine of the department, as far as its state goes. */
export type Machine = Demander & {
  readonly proposed?: Flag;
  readonly withdrawn_on?: DateValue;
  readonly qualified?: DateValue;
};

/** Is the machine there, and in use? `undefined` when it is. */
export function machineState(machine: Machine, today: string): { which: CaseOf<'evidence'>; at: Place } | undefined {
  if (machine.proposed?.on === true) return { which: 'proposed', at: machine.proposed.at };
  if (isPast(machine.withdrawn_on, today)) return { which: 'withdrawn', at: machine.withdrawn_on?.at ?? machine.at };
  return undefined;
}

/** Is this sterilizer cycle qualified today? Its own dates count; a date of the machine alone is a question. */
export function judgeCycleEvidence(machine: Machine, cycle: SterilizerCycle, setting: Setting): Judgement {
  const state = machineState(machine, setting.today) ?? cycleState(machine, cycle, setting);
  const given = cycle.qualified === undefined ? 'not qualified' : `qualified ${cycle.qualified.text}`;
  return judgeCase('evidence', state.which, {
    by: machine,
    required: 'a current qualification',
    given,
    at: state.at,
    factAt: state.at,
  });
}

function cycleState(
  machine: Machine,
  cycle: SterilizerCycle,
  setting: Setting,
): { which: CaseOf<'evidence'>; at: Place } {
  const { qualified, qualified_until, changed, withdrawn_on } = cycle;
  const { today } = setting;
  if (withdrawn_on !== undefined && isPast(withdrawn_on, today)) return { which: 'withdrawn', at: withdrawn_on.at };
  if (qualified === undefined) {
    return { which: machine.qualified === undefined ? 'not-qualified' : 'machine-only', at: cycle.id?.at ?? cycle.at };
  }
  if (qualified.text > today) return { which: 'future', at: qualified.at };
  if (changed !== undefined && changed.text > qualified.text) return { which: 'changed-after', at: changed.at };
  if (qualified_until !== undefined && qualified_until.text < today)
    return { which: 'expired', at: qualified_until.at };
  if (isOlderThan(qualified, 'sterilizer_qualification', setting)) return { which: 'expired', at: qualified.at };
  return { which: 'current', at: qualified.at };
}

/** Older than the site accepts; never when the site sets no period. */
export function isOlderThan(date: DateValue, period: string, setting: Setting): boolean {
  const days = longestAgeDays(setting, period);
  return days !== undefined && daysBetween(date.text, setting.today) > days;
}

export function isPast(date: DateValue | undefined, today: string): boolean {
  return date !== undefined && date.text <= today;
}
