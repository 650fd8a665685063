import type { StageDemand } from '../../judge/demands.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import { judgeUltrasonic } from '../../judge/ultrasonic.ts';
import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { banOf, isOutOfScope, waysThrough } from './cleaning-ways.ts';
import type { Failure } from './failures.ts';
import { settingFor, stockIn } from './judging.ts';

type Device = EntityOf['device'];
type Bath = EntityOf['ultrasonic'];

/** The bath that a step means: the one it names, else the only one there is. */
export function bathOf(step: ProcedureStep, view: LibraryView): Bath | undefined {
  if (step.machine !== undefined) return view.get('ultrasonic', step.machine.text);
  const baths = bathsInService(view);
  return baths.length === 1 ? baths[0] : undefined;
}

export function bathsInService(view: LibraryView): readonly Bath[] {
  return view
    .all('ultrasonic')
    .filter(({ proposed, withdrawn_on }) => proposed?.on !== true && withdrawn_on === undefined);
}

/** One item in one bath, where its page speaks of ultrasonic cleaning and does not forbid it; every way of the page, each judged. */
export function inBath(
  device: Device,
  machine: Bath,
  step: ProcedureStep | undefined,
  view: LibraryView,
): readonly (readonly Judgement[])[] {
  if (isOutOfScope(device) || banOf(device, 'ultrasonic') !== undefined) return [];
  const setting = settingFor(machine, view);
  const stock = stockIn(view);
  return waysOf(device, setting).map((way) =>
    way.flatMap((demand) =>
      judgeUltrasonic({ device, demand, machine, stock, setting, ...(step !== undefined && { step }) }),
    ),
  );
}

/** The stage in the order of cleaning, else the section that says what holds if it is done. */
function waysOf(device: Device, setting: Setting): readonly (readonly StageDemand[])[] {
  const ways = waysThrough(device, 'ultrasonic', setting);
  const { ultrasonic } = device;
  if (ways.length > 0 || ultrasonic === undefined) return ways;
  return [[{ stage: 'ultrasonic', voices: [ultrasonic] }]];
}

/** The first judgement of an item that fails in this respect in every way. */
export function bathFailure(
  device: Device,
  ways: readonly (readonly Judgement[])[],
  wanted: (judgement: Judgement) => boolean,
): Failure | undefined {
  let first: Judgement | undefined;
  for (const way of ways) {
    const failing = way.find((one) => one.outcome === 'fails' && wanted(one));
    if (failing === undefined) return undefined;
    first ??= failing;
  }
  return first === undefined ? undefined : { device, judgement: first };
}
