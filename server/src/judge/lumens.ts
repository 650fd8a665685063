import type { Device, Lumen } from '../model/entities/device.generated.ts';
import type { LumenLimit } from '../model/entities/lumen-limit.generated.ts';
import type { Citation } from '../model/node.ts';
import { givenOf, givenValue } from './given.ts';
import { type CaseOf, type Demander, factOf, judgeCase, judgeDemand } from './judgement.ts';
import { type Judgement, worstOf } from './outcome.ts';
import type { Setting } from './setting.ts';

/** A lumen in the load, and of how many devices. */
export interface LoadedLumen {
  readonly device: Device;
  readonly lumen: Lumen;
  readonly quantity: number;
}

export function lumensOf(device: Device, quantity: number): readonly LoadedLumen[] {
  return (device.lumens?.items ?? []).map((lumen) => ({ device, lumen, quantity }));
}

/** Every lumen against the limits of whoever sets them (a container, a peroxide cycle, the option itself), and their number. */
export function judgeLumens(
  by: Demander,
  limit: LumenLimit,
  lumens: readonly LoadedLumen[],
  setting: Setting,
): readonly Judgement[] {
  if (lumens.length === 0) return [];
  const judgements = lumens.flatMap((one) => judgeLumen(by, limit, one, setting));
  if (limit.count !== undefined) {
    const total = lumens.reduce((sum, one) => sum + one.quantity, 0);
    const given = givenValue(total, 'count', 'pieces');
    judgements.push(
      judgeDemand(
        { by, parameter: 'lumen', what: 'Number of lumens', requirement: limit.count, src: limit.src },
        { given },
        setting,
      ),
    );
  }
  return judgements;
}

function judgeLumen(by: Demander, limit: LumenLimit, one: LoadedLumen, setting: Setting): readonly Judgement[] {
  const byMaterial = limit.by_material?.items ?? [];
  const material = one.lumen.material?.text;
  if (byMaterial.length === 0) return judgeByLimit(by, limit, one, setting);
  const matching = byMaterial.find((each) => material !== undefined && each.material?.text === material);
  if (matching !== undefined) return judgeByLimit(by, matching, one, setting);
  if (limit.bore !== undefined || limit.length !== undefined) return judgeByLimit(by, limit, one, setting);
  if (material !== undefined) return [unclear('material-not-covered', by, limit, one)];
  return judgeUnknownMaterial(by, limit, byMaterial, one, setting);
}

/** The material is not known: only what every material refuses, or accepts, is certain. */
function judgeUnknownMaterial(
  by: Demander,
  limit: LumenLimit,
  each: readonly LumenLimit[],
  one: LoadedLumen,
  setting: Setting,
): readonly Judgement[] {
  const answers = each.map((part) => judgeSizes(by, part, one, setting));
  const outcomes = new Set(answers.map(worstOf));
  return outcomes.size === 1 ? (answers[0] ?? []) : [unclear('material-unknown', by, limit, one)];
}

function judgeByLimit(by: Demander, limit: LumenLimit, one: LoadedLumen, setting: Setting): readonly Judgement[] {
  const { lumen } = one;
  if (limit.material !== undefined && lumen.material?.text !== limit.material.text) {
    return [unclear(lumen.material === undefined ? 'material-unknown' : 'material-not-covered', by, limit, one)];
  }
  return judgeSizes(by, limit, one, setting);
}

/** Ends, bore and length; whether the limit is for the material of the lumen is settled before. */
function judgeSizes(by: Demander, limit: LumenLimit, one: LoadedLumen, setting: Setting): readonly Judgement[] {
  const { lumen } = one;
  const judgements: Judgement[] = [];
  if (limit.ends !== undefined && lumen.ends?.text !== limit.ends.text)
    judgements.push(unclear('ends-not-covered', by, limit, one));
  for (const part of ['bore', 'length'] as const) {
    const requirement = limit[part];
    if (requirement === undefined) continue;
    const ours = lumen[part];
    if (ours === undefined) judgements.push(unclear('size-unknown', by, limit, one));
    else
      judgements.push(
        judgeDemand(
          { by, parameter: 'lumen', what: nameOf(one, part), requirement, src: limit.src },
          factOf(ours, givenOf(ours)),
          setting,
        ),
      );
  }
  return judgements;
}

function nameOf({ device, lumen }: LoadedLumen, part: string): string {
  return `${part === 'bore' ? 'Bore' : 'Length'} of ${lumen.name?.text ?? lumen.id?.text ?? 'the lumen'} of ${calledDevice(device)}`;
}

function calledDevice({ name, id }: LoadedLumen['device']): string {
  return name?.text ?? id?.text ?? 'the device';
}

function unclear(
  which: CaseOf<'lumen'>,
  by: Demander,
  limit: { readonly at: LumenLimit['at']; readonly src?: Citation },
  { device, lumen }: LoadedLumen,
): Judgement {
  const what = `Lumen ${lumen.name?.text ?? lumen.id?.text ?? ''} of ${calledDevice(device)}`.replaceAll('  ', ' ');
  return judgeCase('lumen', which, {
    by,
    what,
    required: 'a lumen inside the limits',
    at: limit.at,
    factAt: lumen.at,
    src: limit.src,
  });
}
