import { catchesSterilization } from '../judge/prohibitions.ts';
import { optionsOf } from '../judge/sterilization.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { sayingsOf } from '../model/saying.ts';
import { isSterilized } from './candidates.ts';
import type { GoverningRow, Governor, SterilizationFit } from './model.ts';
import type { Derivation } from './route.ts';

type Device = EntityOf['device'];

interface Offer {
  readonly device: Device;
  readonly methods: ReadonlySet<string>;
}

/** Which method is left to the set, and whose page leaves no other. Categories are intersected; prohibitions unite. */
export function methodRow({ subject, department }: Derivation, fit: SterilizationFit): readonly GoverningRow[] {
  const offers: Offer[] = [];
  for (const { device } of subject.members) {
    if (device !== undefined && isSterilized(device) && optionsOf(device).length > 0)
      offers.push({ device, methods: methodsOf(device) });
  }
  if (offers.length === 0) return [];
  const common = commonOf(offers);
  const governing = offers.filter((offer) => commonOf(offers.filter((other) => other !== offer)).size > common.size);
  const [only] = governing;
  const left = only === undefined ? new Set<string>() : commonOf(offers.filter((other) => other !== only));
  const means = department.sterilizing.find(({ id, machine }) => id === fit.cycle && machine.id?.text === fit.machine);
  return [
    {
      parameter: 'Method',
      required: common.size === 0 ? 'none that all members offer' : [...common].sort().join(' or '),
      governedBy: governing.map(({ device }) => governorOf(device, left, common)),
      gives: (means?.cycle.modality ?? means?.machine.modality)?.text ?? '',
      slack: '',
      ifLeft: governing.length === 1 && left.size > 0 ? [...left].sort().join(' or ') : '',
    },
  ];
}

function methodsOf(device: Device): ReadonlySet<string> {
  const methods = new Set<string>();
  for (const { modality, context } of optionsOf(device)) {
    const forbidden = device.not?.items.some(
      ({ what }) => what !== undefined && catchesSterilization(what.text, modality?.text, context?.text ?? 'terminal'),
    );
    if (modality !== undefined && forbidden !== true) methods.add(modality.text);
  }
  return methods;
}

function commonOf(offers: readonly Offer[]): ReadonlySet<string> {
  const [first, ...rest] = offers;
  const common = new Set(first?.methods);
  for (const method of common) if (!rest.every(({ methods }) => methods.has(method))) common.delete(method);
  return common;
}

/** The prohibition where there is one, else the options themselves. */
function governorOf(device: Device, left: ReadonlySet<string>, common: ReadonlySet<string>): Governor {
  const who = `device/${device.id?.text ?? ''}`;
  const lost = [...left].filter((method) => !common.has(method));
  const prohibition = device.not?.items.find(
    ({ what }) => what !== undefined && lost.some((method) => catchesSterilization(what.text, method, 'terminal')),
  );
  if (prohibition?.what !== undefined)
    return { who, at: prohibition.what.at, says: sayingsOf(device, prohibition.src) };
  const [option] = optionsOf(device);
  return { who, at: option?.modality?.at ?? device.at, says: sayingsOf(device, option?.src) };
}
