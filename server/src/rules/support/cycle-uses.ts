import type { Judgement } from '../../judge/outcome.ts';
import type { LibraryView, Query } from '../../library/view.ts';
import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { candidateOf } from '../../route/candidates.ts';
import { departmentOf } from '../../route/equipment.ts';
import type { SetRoute, SterilizationFit } from '../../route/model.ts';
import { filedPacking } from '../../route/packings.ts';
import { routeOfSet } from '../../route/route.ts';
import type { Subject } from '../../route/subject.ts';
import { contentsWithLumens, subjectOfSet } from '../../route/subject.ts';
import { devicesOfStep } from './applies.ts';
import { stepsOf } from './steps.ts';

type Device = EntityOf['device'];

/** One sterilizer cycle that a card or a step names, with everything judged that meets in it. */
export interface CycleUse {
  /** The name of the cycle, where it can be changed. */
  readonly name: Text;
  readonly members: readonly MemberUse[];
  /** Packaging, contents, limits of the site. Empty for a step of a procedure. */
  readonly common: readonly Judgement[];
  /** What is derived for the set. */
  readonly route?: SetRoute;
}

export interface MemberUse {
  readonly device: Device;
  /** The option that comes nearest; undefined when the page gives none. */
  readonly option: SterilizationOption | undefined;
  readonly judgements: readonly Judgement[];
}

/** Cycles that a set's card names, or that steps of a procedure name for certain devices. */
export function cycleUses(entity: AnyEntity, view: LibraryView): readonly CycleUse[] {
  const { id } = rootOfEntity(entity);
  if (isOfKind(entity, 'set')) return view.ask(usesOfSet, id);
  return isOfKind(entity, 'procedure') ? view.ask(usesOfProcedure, id) : [];
}

/** The set in its packaging, on the cycle of its card, else on the one that comes nearest: what is said of the packing itself. */
export function asPacked(set: EntityOf['set'], view: LibraryView): CycleUse | undefined {
  const { id } = rootOfEntity(set);
  const onCard = view.ask(usesOfSet, id).find(({ name }) => name === set.cycle);
  const route = view.ask(routeOfSet, id);
  if (onCard !== undefined || route?.asPacked === undefined) return onCard;
  const name = set.packaging ?? set.id;
  return name === undefined ? undefined : { ...asUse(name, route.asPacked, view), route };
}

const usesOfSet: Query<string, readonly CycleUse[]> = {
  name: 'sterilizer cycles on the card of a set, judged',
  work(view, id) {
    const set = view.get('set', id);
    if (set === undefined) return [];
    const route = view.ask(routeOfSet, id);
    const subject = subjectOfSet(view, set);
    const cards = [{ cycle: set.cycle, packaging: set.packaging }, ...(set.routes?.items ?? [])];
    const uses: CycleUse[] = [];
    for (const { cycle, packaging = set.packaging } of cards) {
      const fit = cycle === undefined ? undefined : fitOn(cycle.text, packaging?.text, subject, view);
      if (cycle === undefined || fit === undefined) continue;
      uses.push({ ...asUse(cycle, fit, view), ...(route && { route }) });
    }
    return uses;
  },
};

const usesOfProcedure: Query<string, readonly CycleUse[]> = {
  name: 'sterilizer cycles that a procedure names, judged',
  work(view, id) {
    const procedure = view.get('procedure', id);
    if (procedure === undefined || procedure.when !== undefined) return [];
    const uses: CycleUse[] = [];
    for (const step of stepsOf(procedure)) {
      const devices = step.when === undefined ? devicesOfStep(step, procedure, view) : [];
      if (step.cycle === undefined || devices.length === 0) continue;
      const fit = fitOn(step.cycle.text, undefined, subjectOf(devices, step.cycle), view);
      if (fit === undefined) continue;
      const { members, ...use } = asUse(step.cycle, fit, view);
      uses.push({ ...use, common: [], members: members.map(withoutPackaging) });
    }
    return uses;
  },
};

function subjectOf(devices: readonly Device[], { at }: Text): Subject {
  const members = devices.map((device) => {
    const { id } = rootOfEntity(device);
    return { id, name: id, quantity: 1, at, device, unknown: [] };
  });
  const contents = { accessories: [], others: [], inner: [], at };
  return { of: 'device', id: '', at, members, contents, weighed: 'not-yet', context: 'terminal' };
}

/** How a step packs is told by other steps. */
function withoutPackaging({ judgements, ...member }: MemberUse): MemberUse {
  return { ...member, judgements: judgements.filter(({ parameter }) => parameter !== 'packaging') };
}

/** Undefined when no machine here has the cycle. */
function fitOn(
  cycle: string,
  packaging: string | undefined,
  subject: Subject,
  view: LibraryView,
): SterilizationFit | undefined {
  const department = view.ask(departmentOf, subject.site ?? '');
  const at = department.sterilizing.findIndex(({ id }) => id === cycle);
  if (at < 0) return undefined;
  const packing = filedPacking(subject, department, packaging);
  return candidateOf(subject, { contents: contentsWithLumens(subject), packing, at, department });
}

function asUse(name: Text, fit: SterilizationFit, view: LibraryView): CycleUse {
  const members: MemberUse[] = [];
  for (const { device: id, option: optionId, judgements } of fit.members) {
    const device = view.get('device', id);
    if (device === undefined) continue;
    const option = device.sterilization?.any_of?.items.find((one) => (one.id?.text ?? String(one.at.key)) === optionId);
    members.push({ device, option, judgements });
  }
  return { name, members, common: fit.common };
}
