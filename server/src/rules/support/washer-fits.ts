import { judgeConnectors } from '../../judge/connectors.ts';
import type { Judgement } from '../../judge/outcome.ts';
import { judgeWashHeat } from '../../judge/wash-heat.ts';
import { judgePhases } from '../../judge/wash-phases.ts';
import type { WashQuestion } from '../../judge/wash-question.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import type { WasherCycle } from '../../model/entities/washer.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { listOfIds } from './brief.ts';
import type { Failure } from './failures.ts';
import { settingFor, stockIn } from './judging.ts';
import { isAbout } from './use-reports.ts';
import { failingInEach, isInService, machineWays, sentTo, waysThroughMachine } from './washer-uses.ts';

type Device = EntityOf['device'];
type Washer = EntityOf['washer'];

export function isTooHot(judgement: Judgement): boolean {
  return isAbout('heat-limit', 'drying-temperature')(judgement) && judgement.gap?.endsWith('low') !== true;
}

/** Limits of heat, and what the page says of drying in the machine. */
function heatOf(question: WashQuestion): readonly Judgement[] {
  return [...judgeWashHeat(question), ...question.demand.voices.flatMap((voice) => judgePhases(question, voice))];
}

export function isConnector(judgement: Judgement): boolean {
  return judgement.parameter === 'connector';
}

/** A respect in which a washer may not suit an item: what is judged, and what of it counts. */
const respects = {
  heat: { judge: heatOf, wanted: isTooHot },
  connectors: { judge: judgeConnectors, wanted: isConnector },
} as const;

export type Respect = keyof typeof respects;

/**
 * Items that no cycle of the machine suits in this respect, each with the judgement of the first cycle. Those that a card or a procedure
 * sends into it are told there.
 */
export function unfitForMachine(machine: Washer, respect: Respect, view: LibraryView): readonly Failure[] {
  const cycles = cyclesOf(machine);
  if (cycles.length === 0) return [];
  const { id } = rootOfEntity(machine);
  const unfit = view.ask(washedAt, machine.site?.text ?? '').flatMap((device) => {
    const failing = view.ask(unfitFor, `${id}\n${device}`);
    return failing.filter((one) => one.respect === respect && one.machine === machine);
  });
  if (unfit.length === 0) return [];
  const sent = sentTo(cycles, view);
  return unfit.filter(({ device }) => !sent.has(device));
}

interface Unfit extends Failure {
  readonly machine: Washer;
  readonly respect: Respect;
}

/** One answer for each machine and item, so that an item that changes leaves the machine and all others alone. */
export const unfitFor: Query<string, readonly Unfit[]> = {
  name: 'what fails of a device in every cycle of a washer',
  work(view, argument) {
    const [machineId = '', deviceId = ''] = argument.split('\n');
    return view.claimants('washer', machineId).flatMap((machine) =>
      view.claimants('device', deviceId).flatMap((device) =>
        (['heat', 'connectors'] as const).flatMap((respect) => {
          const judgement = unfitIn(machine, device, respect, view);
          return judgement === undefined ? [] : { machine, device, respect, judgement };
        }),
      ),
    );
  },
  brief: { inWords: (found) => (found.length === 0 ? '' : undefined), fromWords: () => [] },
};

function cyclesOf(machine: Washer): readonly WasherCycle[] {
  if (!isInService(machine)) return [];
  return (machine.cycles?.items ?? []).filter(({ id, withdrawn_on }) => id !== undefined && withdrawn_on === undefined);
}

/** The failing judgement of the first cycle, when every cycle has one. */
function unfitIn(machine: Washer, device: Device, respect: Respect, view: LibraryView): Judgement | undefined {
  const { judge, wanted } = respects[respect];
  const around = { stock: stockIn(view), setting: settingFor(machine, view) };
  let first: Judgement | undefined;
  for (const cycle of cyclesOf(machine)) {
    const ways = machineWays(device, view).map((way) =>
      way.flatMap((demand) =>
        judge({ device, demand, machine, cycle, ...around }).filter(({ outcome }) => outcome === 'fails'),
      ),
    );
    const [failing] = failingInEach(ways, wanted);
    if (failing === undefined) return undefined;
    first ??= failing;
  }
  return first;
}

/** Items that their page sends through a machine and that may come to a site: a washer takes whatever its rack takes. */
export const washedAt: Query<string, readonly string[]> = {
  name: 'devices whose instruction sends them through a washer, of one site',
  work: (view, site) =>
    [...view.ids('device')].filter((id) => {
      const sites = view.ask(washedWhere, id);
      return sites !== undefined && (site === '' || sites.length === 0 || sites.includes(site));
    }),
  brief: listOfIds,
};

/** The sites of all sets that hold a device which a washer may wash: none where it may be anywhere. Undefined where no washer may. */
export const washedWhere: Query<string, readonly string[] | undefined> = {
  name: 'sites at which a device is washed by a machine',
  work(view, id) {
    if (view.ask(waysThroughMachine, id).length === 0) return undefined;
    const sites = view.users('device', id, 'set').map(({ site }) => site?.text);
    return sites.includes(undefined) ? [] : [...new Set(sites)].flatMap((site) => site ?? []).sort();
  },
  brief: {
    inWords: (sites) => (sites === undefined ? '-' : JSON.stringify(sites)),
    fromWords: (words) => (words === '-' ? undefined : (JSON.parse(words) as readonly string[])),
  },
};
