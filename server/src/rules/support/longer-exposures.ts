import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import type { Judgement } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import { isSteam } from '../../judge/vocabulary.ts';
import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Quantity } from '../../model/node.ts';
import type { Failure } from './failures.ts';

type Device = EntityOf['device'];

/**
 * True when an exposure is longer than a bare number, or far longer than the least the page gives: it kills more, and nobody has shown
 * that the item stands it. What is far longer stands in the table of directions.
 */
export function isLongerThanShown({ outcome }: Judgement, option: SterilizationOption | undefined): boolean {
  if (outcome === 'needs-answer') return option?.exposure?.stated !== undefined;
  return outcome === 'meets-with-note' && option?.exposure?.at_least !== undefined;
}

/** Devices for all of whose steam options this exposure is longer than shown; never those for which any option covers it. */
export function longerThanShown(devices: readonly Device[], exposure: Quantity, setting: Setting): readonly Failure[] {
  const longer: Failure[] = [];
  for (const device of devices) {
    const judgement = longerThanEveryOption(device, exposure, setting);
    if (judgement !== undefined) longer.push({ device, judgement });
  }
  return longer;
}

function longerThanEveryOption(device: Device, exposure: Quantity, setting: Setting): Judgement | undefined {
  let first: Judgement | undefined;
  for (const option of steamOptions(device)) {
    if (option.exposure === undefined) return undefined;
    const demand = { by: device, parameter: 'exposure', requirement: option.exposure, src: option.src } as const;
    const judgement = judgeDemand(demand, factOf(exposure, givenOf(exposure)), setting);
    if (!isLongerThanShown(judgement, option)) {
      if (judgement.outcome !== 'fails') return undefined;
      continue;
    }
    first ??= judgement;
  }
  return first;
}

/** Options for stored packs that are meant for routine work. */
function steamOptions(device: Device): readonly SterilizationOption[] {
  return (device.sterilization?.any_of?.items ?? []).filter(
    ({ modality, context, when, evidence }) =>
      isSteam(modality?.text) && context?.text !== 'iuss' && when === undefined && evidence?.on !== true,
  );
}
