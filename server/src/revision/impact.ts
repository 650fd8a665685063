import type { LibraryView } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { rootOfEntity } from '../model/entity.ts';
import type { Rec } from '../model/node.ts';
import { hasTrait, membersOf } from '../rules/support/applies.ts';
import type { Kind } from '../schema/kinds.ts';
import type { Change } from './change.ts';
import type { ChangeEffect } from './effect.ts';
import { needsDecision } from './sign-off.ts';

/** Whom and what a change reaches, down to the shelf. Ids, in order. */
export interface Impact {
  readonly sets: readonly string[];
  /** Sets whose card has to be printed again. */
  readonly cards: readonly string[];
  readonly procedures: readonly string[];
  readonly posters: readonly string[];
  /** Open questions about it, some of which may be answered by it. */
  readonly questions: readonly string[];
  readonly responses: readonly string[];
  readonly quizzes: readonly string[];
  readonly training: readonly string[];
  /** Roles that those trainings name: `technician`. Never people. */
  readonly roles: readonly string[];
  /** Waivers whose ground may be gone. */
  readonly waivers: readonly string[];
  /** Machines and chemistry on the ways in use: `sterilizer/S1`. */
  readonly equipment: readonly string[];
  readonly stock: readonly ShelfStock[];
  /** Whether a person has to choose what happens to packs processed under the old words. Nothing is chosen for them. */
  readonly shelfChoice: 'needed' | 'not-needed';
}

export interface ShelfStock {
  readonly set: string;
  /** Packs in circulation, as the file says; unknown where it does not say. */
  readonly packs: number | undefined;
  readonly usesAMonth: number | undefined;
}

/** Wording and moved pages reach nobody. */
export function impactOf(change: Change, effect: ChangeEffect, entity: Rec, view: LibraryView): Impact | undefined {
  if (!needsDecision(change)) return undefined;
  const { kind, id } = rootOfEntity(entity);
  const sets = setsReached(kind, id, effect, view);
  const setIds = sets.map((set) => rootOfEntity(set).id);
  const cards = effect.on
    .filter((one) => one.effect === 'route-breaks' || one.effect === 'card-changes')
    .map(({ of }) => of);
  const named = <K extends Kind>(of: K) => idsOf(view.users(kind, id, of));
  return {
    sets: setIds,
    cards: sorted(cards.filter((of) => of.startsWith('set/')).map((of) => of.slice(4))),
    procedures: proceduresFor(change, kind, id, view),
    posters: named('poster'),
    questions: idsOf(view.users(kind, id, 'question').filter((one) => one.closed === undefined)),
    responses: named('response'),
    quizzes: quizzesAbout(change, kind, id, view),
    training: named('training'),
    roles: rolesIn(view.users(kind, id, 'training')),
    waivers: idsOf(view.all('waiver').filter((waiver) => concerns(waiver, [id, ...setIds]))),
    equipment: equipmentOf(sets, view),
    stock: sets.map(stockOf),
    shelfChoice:
      change.class === 'clarification' || sets.length === 0 || effect.effect === 'unused-only'
        ? 'not-needed'
        : 'needed',
  };
}

/** Every set that holds the device; of the department's own things those on which a change does something. */
function setsReached(kind: Kind, id: string, effect: ChangeEffect, view: LibraryView): readonly EntityOf['set'][] {
  if (kind === 'device') return view.users('device', id, 'set');
  const ids = kind === 'set' ? [id] : effect.on.filter(({ of }) => of.startsWith('set/')).map(({ of }) => of.slice(4));
  return ids.flatMap((one) => view.get('set', one) ?? []);
}

/** Stages of the work that a section of an instruction speaks of. A section that stands nowhere here may speak of any. */
const stagesOf: Readonly<Record<string, ReadonlySet<string>>> = {
  point_of_use: new Set(['point-of-use', 'transport']),
  transport: new Set(['transport']),
  receipt: new Set(['receipt', 'quarantine']),
  disassembly: new Set(['disassembly', 'assembly']),
  cleaning: new Set(['manual', 'ultrasonic', 'mechanical', 'rinse', 'disinfection']),
  manual: new Set(['manual', 'rinse']),
  ultrasonic: new Set(['ultrasonic', 'rinse']),
  mechanical: new Set(['mechanical', 'rinse']),
  disinfection: new Set(['disinfection', 'mechanical']),
  drying: new Set(['drying']),
  inspection: new Set(['inspection']),
  lubrication: new Set(['lubrication']),
  packaging: new Set(['packaging', 'assembly']),
  sterilization: new Set(['steam', 'low-temperature', 'sterilization', 'loading', 'aeration', 'release']),
  cooling: new Set(['cooling']),
  storage: new Set(['storage']),
};

/** Procedures that name it or its sets; and those for everything, or for a trait of it, that have a step of the stage concerned. */
function proceduresFor(change: Change, kind: Kind, id: string, view: LibraryView): readonly string[] {
  const found = new Set(idsOf(view.users(kind, id, 'procedure')));
  if (kind !== 'device') return sorted(found);
  const device = view.get('device', id);
  for (const procedure of view.all('procedure')) {
    const traits = procedure.applies_to_traits?.items ?? [];
    const bySet = (procedure.applies_to_sets?.items ?? []).some(({ text }) => holds(view, text, id));
    const byTrait = device !== undefined && traits.some(({ text }) => hasTrait(device, text));
    const byScope = procedure.applies_to_all?.on === true || byTrait;
    if (bySet || (byScope && speaksOf(procedure, change))) found.add(rootOfEntity(procedure).id);
  }
  return sorted(found);
}

function speaksOf(procedure: EntityOf['procedure'], { path }: Change): boolean {
  const stages = stagesOf[/^[a-z_]{1,40}/.exec(path)?.[0] ?? ''];
  if (stages === undefined || procedure.overrides !== undefined) return true;
  return (procedure.steps?.items ?? []).some(({ stage }) => stage !== undefined && stages.has(stage.text));
}

function holds(view: LibraryView, set: string, device: string): boolean {
  const entity = view.get('set', set);
  return entity !== undefined && membersOf(entity, view).some((member) => rootOfEntity(member).id === device);
}

/** Quiz items about this very value; where an item names no value, those about the device. */
function quizzesAbout(change: Change, kind: Kind, id: string, view: LibraryView): readonly string[] {
  const about = view.users(kind, id, 'quiz').filter(({ path }) => {
    const asked = path?.text ?? '';
    return (
      asked === '' ||
      asked.endsWith(`.${change.path}`) ||
      asked.includes(`.${change.path}.`) ||
      asked.includes(`.${change.path}[`)
    );
  });
  return idsOf(about);
}

function concerns({ scope }: EntityOf['waiver'], ids: readonly string[]): boolean {
  return (scope?.items ?? []).some(({ text }) => ids.includes(text));
}

function equipmentOf(sets: readonly EntityOf['set'][], view: LibraryView): readonly string[] {
  const found = new Set<string>();
  for (const { cycle, washer_cycle, packaging } of sets) {
    const steam = cycle && view.sterilizerCycle(cycle.text);
    const wash = washer_cycle && view.washerCycle(washer_cycle.text);
    if (steam) found.add(`sterilizer/${rootOfEntity(steam.machine).id}`);
    if (wash) found.add(`washer/${rootOfEntity(wash.machine).id}`);
    for (const agent of wash?.cycle.doses?.items ?? []) found.add(`chemistry/${agent.text}`);
    if (packaging) found.add(`packaging/${packaging.text}`);
  }
  return sorted(found);
}

function stockOf(set: EntityOf['set']): ShelfStock {
  return { set: rootOfEntity(set).id, packs: set.stock?.value, usesAMonth: set.in_use_month?.value };
}

function rolesIn(trainings: readonly EntityOf['training'][]): readonly string[] {
  const readers = trainings.flatMap((training) => training.readers?.items ?? []);
  return sorted(readers.flatMap(({ role }) => role?.text ?? []));
}

function idsOf(entities: readonly Rec[]): readonly string[] {
  return sorted(entities.map((entity) => rootOfEntity(entity).id));
}

function sorted(ids: Iterable<string>): readonly string[] {
  return [...new Set(ids)].sort();
}
