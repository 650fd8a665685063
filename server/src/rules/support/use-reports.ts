import { saysOf } from '../../judge/judgement.ts';
import type { Judgement, Outcome, Parameter } from '../../judge/outcome.ts';
import { called, demanderCalled } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import type { Place } from '../../model/node.ts';
import type { Report } from '../rule.ts';
import type { CycleUse, MemberUse } from './cycle-uses.ts';
import type { Failure } from './failures.ts';
import { evidenceOf, quotesOf } from './failures.ts';
import { listed } from './lists.ts';

const words = {
  instead: (packaging: string, cycle: string) =>
    ` What the instructions do allow: ${packaging === '' ? '' : `${packaging} on `}${cycle}.`,
  does: (cycle: string, given: string) => (given === '' ? cycle : `${cycle}: ${given}`),
  asks: (who: string, required: string) => `"${who}" (${required})`,
  demanded: (who: string) => `what ${who} asks for`,
};

type Wanted = (judgement: Judgement) => boolean;

/** The members whose page is not followed in this respect, each with the first judgement that says so. */
export function membersWith(outcome: Outcome, use: CycleUse, wanted: Wanted): readonly Failure[] {
  const found: Failure[] = [];
  for (const member of use.members) {
    const judgement = member.judgements.find((one) => one.outcome === outcome && wanted(one));
    if (judgement !== undefined) found.push({ device: member.device, judgement: withPage(judgement, member) });
  }
  return found;
}

/** What stands inside an option and cites nothing itself is said by the page of the option. */
function withPage(judgement: Judgement, { device, option }: MemberUse): Judgement {
  if (judgement.says.length > 0 || option === undefined || !isInside(judgement.demandAt, option.at)) return judgement;
  return { ...judgement, says: saysOf(device, option.src) };
}

function isInside(place: Place, outer: Place): boolean {
  for (let at: Place | undefined = place; at !== undefined; at = at.parent) if (at === outer) return true;
  return false;
}

export function isAbout(...parameters: readonly Parameter[]): Wanted {
  return ({ parameter }) => parameters.includes(parameter);
}

/** Judgements by packaging, machine or site that fail in this respect; each demand once. */
export function commonWith(outcome: Outcome, use: CycleUse, wanted: Wanted): readonly Judgement[] {
  const found = new Map<Judgement['demandAt'], Judgement>();
  for (const judgement of use.common) {
    const isFirst = !found.has(judgement.demandAt);
    if (isFirst && judgement.outcome === outcome && wanted(judgement)) found.set(judgement.demandAt, judgement);
  }
  return [...found.values()];
}

/** ` What the instructions do allow: ...`, where the set has another way that leaves nothing open. */
export function insteadOf({ name, route }: CycleUse, view: LibraryView): string {
  const { chosen, status } = route ?? {};
  if (chosen === undefined || status !== 'route' || chosen.cycle === name.text) return '';
  return words.instead(called('packaging', chosen.packaging, view), chosen.cycle);
}

/** Quotes, gap and places of members, with what the cycle gives. */
export function membersEvidence(
  use: CycleUse,
  failures: readonly Failure[],
): Pick<Report, 'says' | 'does' | 'gap' | 'related'> {
  return { does: doesOf(use, failures[0]?.judgement.given), ...evidenceOf(failures) };
}

/** `S1-pv132-4-20: 20 min`. */
export function doesOf({ name }: CycleUse, given: string | undefined): string {
  return given === undefined || given === name.text ? name.text : words.does(name.text, given);
}

/** Quotes, gap and places of judgements that no member makes. */
export function evidenceOfAll(
  judgements: readonly Judgement[],
  view: LibraryView,
): Pick<Report, 'says' | 'gap' | 'related'> {
  const gap = judgements.map((one) => one.gap).find((one) => one !== undefined);
  return {
    says: quotesOf(judgements.map(({ says }) => says)),
    related: judgements.map(({ demandAt, demandedBy }) => ({
      at: demandAt,
      note: words.demanded(demanderCalled(demandedBy, view)),
    })),
    ...(gap !== undefined && { gap }),
  };
}

/** `"P3" (at least 30 min) and "lanternfield" (at most 11.3 kg)`. */
export function whoDemands(judgements: readonly Judgement[], view: LibraryView): string {
  return listed(judgements.map(({ demandedBy, required }) => words.asks(demanderCalled(demandedBy, view), required)));
}

/** `P3` of `packaging/P3`. */
export function nameIn(demandedBy: string): string {
  return demandedBy.slice(demandedBy.indexOf('/') + 1);
}

/** True when the derived route leaves the same question open: then it is asked there, once. */
export function isAskedByRoute({ demandAt }: Judgement, { route }: CycleUse): boolean {
  const chosen = route?.status === 'provisional' ? route.chosen : undefined;
  return (
    chosen?.members.some(({ judgements }) =>
      judgements.some((one) => one.outcome === 'needs-answer' && one.demandAt === demandAt),
    ) === true
  );
}
