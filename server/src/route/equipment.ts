import { judgeCycleEvidence } from '../judge/evidence.ts';
import type { Judgement } from '../judge/outcome.ts';
import { routineSetting, type Setting, type Stock } from '../judge/setting.ts';
import type { LibraryView, Query, SterilizerCycle, WasherCycle } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { Rec, Text } from '../model/node.ts';

type Packaging = EntityOf['packaging'];

/** A cycle of a real machine, with what its dates say. */
export interface SterilizerMeans {
  readonly id: string;
  readonly machine: EntityOf['sterilizer'];
  readonly cycle: SterilizerCycle;
  readonly evidence: Judgement;
  /** Its method and numbers in one word: what two machines that can stand in for each other have alike. */
  readonly does: string;
}

export interface WasherMeans {
  readonly id: string;
  readonly machine: EntityOf['washer'];
  readonly cycle: WasherCycle;
}

/** All that one department has, in order of ids, so that names of files never change an answer. */
export interface Department {
  readonly setting: Setting;
  readonly stock: Stock;
  readonly sterilizing: readonly SterilizerMeans[];
  readonly washing: readonly WasherMeans[];
  readonly baths: readonly EntityOf['ultrasonic'][];
  readonly chemistry: readonly EntityOf['chemistry'][];
  readonly water: readonly EntityOf['water'][];
  readonly packagings: readonly Packaging[];
  readonly packagingById: ReadonlyMap<string, Packaging>;
}

/** The department of a site; of the only site when the argument is empty. Read once for all sets. */
export const departmentOf: Query<string, Department> = {
  name: 'department',
  work: (view, siteId) => {
    const site = siteId === '' ? view.site() : (view.get('site', siteId) ?? view.site());
    const setting = routineSetting(view.today, site, view.all('response'));
    const packagings = byId(view.all('packaging'));
    const chemistry = byId(view.all('chemistry'));
    const water = byId(here(view.all('water'), siteId));
    return {
      setting,
      stock: stockOf(chemistry, water),
      sterilizing: sterilizing(view, siteId, setting),
      washing: washing(view, siteId),
      baths: byId(here(view.all('ultrasonic'), siteId)),
      chemistry,
      water,
      packagings,
      packagingById: new Map(packagings.map((one) => [idOf(one), one])),
    };
  },
};

export function stockOf(chemistry: readonly EntityOf['chemistry'][], water: readonly EntityOf['water'][]): Stock {
  const agents = new Map(chemistry.map((one) => [idOf(one), one]));
  const points = new Map(water.map((one) => [idOf(one), one]));
  return { chemistry: (id) => agents.get(id), water: (id) => points.get(id) };
}

function sterilizing(view: LibraryView, siteId: string, setting: Setting): readonly SterilizerMeans[] {
  return byId(here(view.all('sterilizer'), siteId)).flatMap((machine) =>
    (machine.cycles?.items ?? []).flatMap((cycle) => {
      return cycle.id === undefined ? [] : [meansOf(cycle.id.text, machine, cycle, setting)];
    }),
  );
}

export function meansOf(
  id: string,
  machine: EntityOf['sterilizer'],
  cycle: SterilizerCycle,
  setting: Setting,
): SterilizerMeans {
  const modality = (cycle.modality ?? machine.modality)?.text;
  const does = `${modality} ${cycle.temp?.value} ${cycle.exposure?.value} ${cycle.dry?.value}`;
  return { id, machine, cycle, evidence: judgeCycleEvidence(machine, cycle, setting), does };
}

function washing(view: LibraryView, siteId: string): readonly WasherMeans[] {
  return byId(here(view.all('washer'), siteId)).flatMap((machine) =>
    (machine.cycles?.items ?? []).flatMap((cycle) =>
      cycle.id === undefined ? [] : [{ id: cycle.id.text, machine, cycle }],
    ),
  );
}

/** A machine that names another site is not here; one that names none is everywhere. */
function here<Machine extends { readonly site?: Text }>(
  machines: readonly Machine[],
  siteId: string,
): readonly Machine[] {
  return siteId === '' ? machines : machines.filter(({ site }) => site === undefined || site.text === siteId);
}

export function idOf(entity: { readonly id?: Text }): string {
  return entity.id?.text ?? '';
}

export function byId<One extends Rec & { readonly id?: Text }>(entities: readonly One[]): readonly One[] {
  return [...entities].sort((a, b) => (idOf(a) < idOf(b) ? -1 : idOf(a) > idOf(b) ? 1 : 0));
}
