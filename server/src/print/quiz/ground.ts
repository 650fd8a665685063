import type { EntityOf } from '../../model/entities.generated.ts';
import type { Requirement } from '../../model/node.ts';
import type { SterilizationFit } from '../../route/model.ts';
import { type Derivation, deriveSet } from '../../route/route.ts';
import { blocksJudgement } from '../../route/trust.ts';
import type { Printing } from '../amounts.ts';
import type { OpenFinding } from '../card/draft.ts';
import { decidedFit } from '../card/source.ts';

/** What questions may be asked about: nothing that is ambiguous, silent, doubted, or open. */
export interface Ground {
  readonly printing: Printing;
  readonly devices: readonly EntityOf['device'][];
  readonly sets: readonly GroundSet[];
}

export interface GroundSet {
  readonly set: EntityOf['set'];
  readonly derivation: Derivation;
  /** The way the department runs it. */
  readonly fit: SterilizationFit;
}

export function groundOf(printing: Printing, findings: readonly OpenFinding[]): Ground {
  const { view } = printing;
  const faulty = new Set(findings.filter(({ severity }) => severity === 'error').map(({ entity }) => entity));
  const twins = namedAlike(view.all('device'));
  const isSound = (id: string | undefined): boolean =>
    id !== undefined && !faulty.has(`device/${id}`) && !twins.has(id);
  const sets: GroundSet[] = [];
  const alike = namedAlike(view.all('set'));
  for (const set of view.all('set')) {
    if (alike.has(set.id?.text ?? '')) continue;
    const derivation = deriveSet(view, set);
    const fit = decidedFit(set, derivation.route);
    const members = derivation.route.members;
    if (fit === undefined || derivation.route.status !== 'route') continue;
    if (members.every(({ device, unknown }) => isSound(device) && !unknown.some(blocksJudgement)))
      sets.push({ set, derivation, fit });
  }
  return { printing, devices: view.all('device').filter((device) => isSound(device.id?.text)), sets };
}

/** Ids of those whose name another one bears: a question could not say which is meant. */
function namedAlike(entities: readonly (EntityOf['device'] | EntityOf['set'])[]): ReadonlySet<string> {
  const ids = new Map<string, string[]>();
  for (const { id, name } of entities) {
    const shown = (name ?? id)?.text ?? '';
    ids.set(shown, [...(ids.get(shown) ?? []), id?.text ?? '']);
  }
  return new Set([...ids.values()].filter((all) => all.length > 1).flat());
}

/** Anything that makes a demand say more than one thing, or bind only now and then. */
const doubts = [
  'ambiguous',
  'ask',
  'conflict',
  'about',
  'not_applicable',
  'defers_to',
  'when',
  'specific',
] as const satisfies readonly (keyof Requirement)[];

/** A demand that says one thing only. */
export function isClear(requirement: Requirement): boolean {
  const { strength, silent } = requirement;
  const binds = strength === undefined || strength.text === 'must';
  return binds && silent?.on !== true && doubts.every((doubt) => requirement[doubt] === undefined);
}
