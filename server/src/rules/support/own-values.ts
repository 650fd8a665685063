import { waysThrough } from '../../judge/demands.ts';
import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import { wantedSteps } from '../../judge/manual-steps.ts';
import type { Judgement, Parameter } from '../../judge/outcome.ts';
import type { Setting } from '../../judge/setting.ts';
import { isSteam } from '../../judge/vocabulary.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { Override, ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Quantity, Rec, Requirement } from '../../model/node.ts';
import { flushing, soaking } from './cleaning-words.ts';
import { isAct } from './steps.ts';

type Device = EntityOf['device'];

/** A number that a procedure sets by itself. */
export interface OwnValue {
  readonly field: OwnField;
  readonly quantity: Quantity;
}

export type OwnField = Exclude<keyof Override, keyof Rec>;

/** How the fields are called in a sentence. */
export const ownTitles: Readonly<Record<OwnField, string>> = {
  temp: 'sterilization at',
  exposure: 'an exposure of',
  dry: 'drying for',
  cool: 'cooling for',
  soak: 'a soak of',
  flush_time: 'flushing for',
  flush_volume: 'flushing with',
  ultrasonic_time: 'ultrasonic cleaning for',
  wash_temp: 'washing at',
  aeration: 'aeration for',
  max_delay: 'a delay of up to',
  uses: 'up to',
};

/** What one page demands of such a number. */
interface PageDemand {
  readonly parameter: Parameter;
  readonly requirement: Requirement;
  readonly src: Citation | undefined;
}

/** A page that is not followed, with the requirement that says so. */
export interface Contradiction {
  readonly device: Device;
  readonly judgement: Judgement;
  readonly requirement: Requirement;
}

const fields = Object.keys(ownTitles) as readonly OwnField[];

/** Values that a procedure sets for its whole scope. */
export function overriddenBy(override: Override): readonly OwnValue[] {
  return fields.flatMap((field) => {
    const quantity = override[field];
    return quantity === undefined ? [] : [{ field, quantity }];
  });
}

/** Values that one step sets. */
export function setByStep(step: ProcedureStep): readonly OwnValue[] {
  const { stage, time, temp, volume, exposure, dry } = step;
  const values: { field: OwnField; quantity: Quantity | undefined }[] = [];
  if (stage?.text === 'steam' || stage?.text === 'sterilization') {
    values.push(
      { field: 'temp', quantity: temp },
      { field: 'exposure', quantity: exposure },
      { field: 'dry', quantity: dry },
    );
  } else if (stage?.text === 'ultrasonic') values.push({ field: 'ultrasonic_time', quantity: time });
  else if (stage?.text === 'cooling') values.push({ field: 'cool', quantity: time });
  else if (isAct(step, soaking)) values.push({ field: 'soak', quantity: time });
  else if (isAct(step, flushing)) {
    values.push({ field: 'flush_time', quantity: time }, { field: 'flush_volume', quantity: volume });
  }
  return values.flatMap(({ field, quantity }) => (quantity === undefined ? [] : [{ field, quantity }]));
}

/** The first page demand that the value breaks, when it breaks one in every way or option that the page offers. */
export function contradictionOf(value: OwnValue, device: Device, setting: Setting): Contradiction | undefined {
  let first: Contradiction | undefined;
  for (const way of waysOf(value.field, device, setting)) {
    const broken = way
      .map((demand) => judged(value, demand, device, setting))
      .find(({ judgement }) => judgement.outcome === 'fails');
    if (broken === undefined) return undefined;
    first ??= broken;
  }
  return first;
}

function judged(
  { quantity }: OwnValue,
  { parameter, requirement, src }: PageDemand,
  device: Device,
  setting: Setting,
): Contradiction {
  const demand = { by: device, parameter, requirement, src };
  return { device, requirement, judgement: judgeDemand(demand, factOf(quantity, givenOf(quantity)), setting) };
}

/** Each complete way of the page, with what it demands of the field. */
function waysOf(field: OwnField, device: Device, setting: Setting): readonly (readonly PageDemand[])[] {
  switch (field) {
    case 'temp':
      return options(device, 'steam-temperature', ({ temp }) => temp);
    case 'exposure':
      return options(device, 'exposure', ({ exposure }) => exposure);
    case 'dry':
      return options(device, 'steam-dry', ({ dry }) => dry);
    case 'aeration':
      return gasOptions(device);
    case 'soak':
      return voices(device, 'manual', setting, ({ soak, src }) => one('soak', soak, src));
    case 'flush_time':
      return voices(device, 'manual', setting, (voice) => flushes(voice, 'time'));
    case 'flush_volume':
      return voices(device, 'manual', setting, (voice) => flushes(voice, 'volume'));
    case 'ultrasonic_time':
      return voices(device, 'ultrasonic', setting, ({ time, src }) => one('ultrasonic', time, src));
    case 'wash_temp':
      return voices(device, 'mechanical', setting, ({ wash, src }) =>
        one('wash-temperature', wash?.temp, wash?.src ?? src),
      );
    case 'cool':
      return [one('cool-down', device.cooling?.time, device.cooling?.src)];
    case 'max_delay':
      return [one('delay', device.point_of_use?.max_delay, device.point_of_use?.src)];
    case 'uses':
      return [one('use-count', device.limits?.uses, undefined)];
  }
}

function one(
  parameter: Parameter,
  requirement: Requirement | undefined,
  src: Citation | undefined,
): readonly PageDemand[] {
  return requirement === undefined ? [] : [{ parameter, requirement, src }];
}

type Option = NonNullable<NonNullable<Device['sterilization']>['any_of']>['items'][number];

function options(
  device: Device,
  parameter: Parameter,
  of: (option: Option) => Requirement | undefined,
): readonly (readonly PageDemand[])[] {
  const steam = (device.sterilization?.any_of?.items ?? []).filter(
    ({ modality, context }) => isSteam(modality?.text) && context?.text !== 'iuss',
  );
  return steam.map((option) => one(parameter, of(option), option.src));
}

function gasOptions(device: Device): readonly (readonly PageDemand[])[] {
  const gas = (device.sterilization?.any_of?.items ?? []).filter(({ modality }) => modality?.text === 'eo');
  return gas.map((option) => one('aeration', option.aeration?.time, option.src));
}

function voices(
  device: Device,
  stage: 'manual' | 'ultrasonic' | 'mechanical',
  setting: Setting,
  of: (voice: CleaningNode) => readonly PageDemand[],
): readonly (readonly PageDemand[])[] {
  return waysThrough(device, stage, setting).map((way) => way.flatMap((demand) => demand.voices.flatMap(of)));
}

function flushes(voice: CleaningNode, field: 'time' | 'volume'): readonly PageDemand[] {
  return wantedSteps(voice)
    .filter(({ act }) => act === 'flush')
    .flatMap((step) => one('cleaning-amount', step[field], step.src));
}
