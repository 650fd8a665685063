import type { Washer, WasherCycle } from '../model/entities/washer.generated.ts';
import type { Place } from '../model/node.ts';
import { isOlderThan, isPast, machineState } from './evidence.ts';
import { type CaseOf, judgeCase } from './judgement.ts';
import type { Judgement } from './outcome.ts';
import type { Setting } from './setting.ts';

/** Is the cycle in use, unchanged, and tested for cleaning within the site's interval? */
export function judgeWasherEvidence(machine: Washer, cycle: WasherCycle, setting: Setting): Judgement {
  const state = machineState(machine, setting.today) ?? cycleState(cycle, setting);
  const tested = cycle.last_cleaning_test?.text;
  const given = tested === undefined ? 'not tested' : `tested ${tested}`;
  return judgeCase('evidence', state.which, {
    by: machine,
    required: 'a current test of cleaning',
    given,
    at: state.at,
    factAt: state.at,
  });
}

function cycleState(cycle: WasherCycle, setting: Setting): { which: CaseOf<'evidence'>; at: Place } {
  const { withdrawn_on, last_cleaning_test: tested, changed } = cycle;
  if (withdrawn_on !== undefined && isPast(withdrawn_on, setting.today))
    return { which: 'withdrawn', at: withdrawn_on.at };
  if (tested === undefined) return { which: 'not-tested', at: cycle.id?.at ?? cycle.at };
  if (tested.text > setting.today) return { which: 'future', at: tested.at };
  if (changed !== undefined && changed.text > tested.text) return { which: 'changed-after', at: changed.at };
  return { which: isOlderThan(tested, 'washer_cleaning_test', setting) ? 'test-stale' : 'current', at: tested.at };
}
