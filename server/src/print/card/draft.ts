import { asking, rankOf } from '../../route/ranks.ts';
import { packagingOf } from './packing.ts';
import type { CardSource } from './source.ts';

/** As much of a finding as a card needs: check/ knows the rest. */
export interface OpenFinding {
  readonly rule: string;
  readonly severity: string;
  /** `device/pale-forceps`, or the path of a file that can't be read. */
  readonly entity: string;
}

/** A stale card on the wall is what printing settles. */
const settledByPrinting: ReadonlySet<string> = new Set(['card-stale']);

/** Why this card is a draft: errors open in what it is made from, a route that rests on a question, or none. */
export function draftReasons(source: CardSource, findings: readonly OpenFinding[]): readonly string[] {
  const { head } = source.printing.words.card;
  const reasons: string[] = [];
  const { route } = source.derivation;
  if (route.status === 'none') reasons.push(head.draftNoRoute);
  else if (route.status === 'provisional' || isAsking(source)) reasons.push(head.draftProvisional);
  const open = errorsOn(source, findings);
  if (open.length > 0) reasons.push(head.draftFindings(open.length));
  return reasons;
}

function isAsking({ members, way }: CardSource): boolean {
  return (
    (way !== undefined && rankOf(way.fit.outcome) >= asking) ||
    members.some(({ cleaning }) => cleaning !== undefined && rankOf(cleaning.outcome) >= asking)
  );
}

export function errorsOn(source: CardSource, findings: readonly OpenFinding[]): readonly OpenFinding[] {
  const names = entitiesOf(source);
  return findings.filter(
    ({ rule, severity, entity }) => severity === 'error' && names.has(entity) && !settledByPrinting.has(rule),
  );
}

/** Every file that the card takes a line from. */
function entitiesOf(source: CardSource): ReadonlySet<string> {
  const { set, members, way, printing } = source;
  const names = new Set<string>();
  const add = (kind: string, id: string | undefined): void => {
    if (id !== undefined && id !== '') names.add(`${kind}/${id}`);
  };
  add('set', set.id?.text);
  add('site', printing.view.site()?.id?.text);
  add('packaging', packagingOf(source)?.id?.text);
  add('packaging', way?.fit.namedCase);
  add('sterilizer', way?.fit.machine);
  add('monitor', set.indicator?.text);
  for (const { member, cleaning } of members) {
    add('device', member.device);
    for (const { machine, means, stage } of cleaning?.stages ?? []) {
      if (stage === 'mechanical') add('washer', machine);
      else if (stage === 'ultrasonic') add('ultrasonic', machine);
      else add('chemistry', means);
    }
  }
  return names;
}
