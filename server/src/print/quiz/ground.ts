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
  const isSound = (id: string | undefined): boolean => id !== undefined && !faulty.has(`device/${id}`);
  const sets: GroundSet[] = [];
  for (const set of view.all('set')) {
    const derivation = deriveSet(view, set);
    const fit = decidedFit(set, derivation.route);
    const members = derivation.route.members;
    if (fit === undefined || derivation.route.status !== 'route') continue;
    if (members.every(({ device, unknown }) => isSound(device) && !unknown.some(blocksJudgement)))
      sets.push({ set, derivation, fit });
  }
  return { printing, devices: view.all('device').filter((device) => isSound(device.id?.text)), sets };
}

/** A demand that says one thing only. */
export function isClear({
  ambiguous,
  ask,
  conflict,
  silent,
  about,
  not_applicable,
  defers_to,
  when,
}: Requirement): boolean {
  return (
    ambiguous === undefined &&
    ask === undefined &&
    conflict === undefined &&
    silent?.on !== true &&
    about === undefined &&
    not_applicable === undefined &&
    defers_to === undefined &&
    when === undefined
  );
}
