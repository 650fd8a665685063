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

/** All that one department has, in order of ids, so that names of files never change an answer. `stock` and `packagingById`: of the whole library. */
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
    const setting = routineSetting(view.today, site, view.answersOfMakers());
    // What a file names is found wherever it is used; only what nobody named is looked for here alone.
    const { packagings, packagingById, chemistry, chemistryById } = view.ask(suppliesOf, '');
    const water = byId(here(view.all('water'), siteId));
    const waterById = mapById(water);
    return {
      setting,
      stock: { chemistry: (id) => chemistryById.get(id), water: (id) => waterById.get(id) },
      sterilizing: sterilizing(view, siteId, setting),
      washing: washing(view, siteId),
      baths: byId(here(view.all('ultrasonic'), siteId)),
      chemistry: here(chemistry, siteId),
      water,
      packagings: here(packagings, siteId),
      packagingById,
    };
  },
};

/** Packaging and chemistry of the whole library, put in order once for all departments. */
interface Supplies {
  readonly packagings: readonly Packaging[];
  readonly packagingById: ReadonlyMap<string, Packaging>;
  readonly chemistry: readonly EntityOf['chemistry'][];
  readonly chemistryById: ReadonlyMap<string, EntityOf['chemistry']>;
}

const suppliesOf: Query<'', Supplies> = {
  name: 'supplies',
  work(view) {
    const packagings = byId(view.all('packaging'));
    const chemistry = byId(view.all('chemistry'));
    return { packagings, packagingById: mapById(packagings), chemistry, chemistryById: mapById(chemistry) };
  },
};

function mapById<One extends { readonly id?: Text }>(all: readonly One[]): ReadonlyMap<string, One> {
  return new Map(all.map((one) => [idOf(one), one]));
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

/** What names another site is not here; what names none is everywhere. */
function here<One extends { readonly site?: Text }>(all: readonly One[], siteId: string): readonly One[] {
  return siteId === '' ? all : all.filter(({ site }) => site === undefined || site.text === siteId);
}

export function idOf(entity: { readonly id?: Text }): string {
  return entity.id?.text ?? '';
}

export function byId<One extends Rec & { readonly id?: Text }>(entities: readonly One[]): readonly One[] {
  return [...entities].sort((a, b) => (idOf(a) < idOf(b) ? -1 : idOf(a) > idOf(b) ? 1 : 0));
}

/** What people call a packaging of the department: its name, with the id in brackets where two share one. */
export function packagingCalled({ packagings }: Pick<Department, 'packagings'>, id: string): string {
  const name = packagings.find((one) => idOf(one) === id)?.name?.text;
  if (name === undefined) return id;
  return packagings.some((one) => idOf(one) !== id && one.name?.text === name) ? `${name} (${id})` : name;
}
