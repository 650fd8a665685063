import type { Judgement } from '../judge/outcome.ts';
import type { LibraryView } from '../library/view.ts';
import { allOf } from '../route/choice.ts';
import { departmentOf } from '../route/equipment.ts';
import { governingTable } from '../route/governing.ts';
import type { CardCycle, GoverningRow, RouteStatus, SetRoute, SterilizationFit } from '../route/model.ts';
import { asking, failing, rankOf } from '../route/ranks.ts';
import { type Derivation, derive, deriveSet } from '../route/route.ts';
import { subjectOfDevice } from '../route/subject.ts';

/** How a set (or a device that is in no set) stands: what it uses, and what it could use. */
export interface Standing {
  /** `set/LAP-CHOLE-B`. */
  readonly id: string;
  readonly status: RouteStatus;
  /** The cycle of its card in its own packaging; without a card the route that was chosen. */
  readonly used: Used | undefined;
  readonly washer: CardCycle | undefined;
  /** `packaging on cycle` of all that leaves nothing open. */
  readonly ways: ReadonlySet<string>;
  /** All that is asked and given on the way that is used: when it differs, a card does. */
  readonly lines: ReadonlySet<string>;
  /** `device option` and `device way-of-cleaning` in use. */
  readonly options: ReadonlySet<string>;
  readonly derivation: Derivation;
}

export interface Used {
  /** `S1-pv132-4-30 in P3-rigid-container`. */
  readonly words: string;
  /** False when it fails for the set, whoever demands it. */
  readonly holds: boolean;
  /** Why it does not hold, where no judgement says it. */
  readonly why: string;
  readonly judgements: readonly Judgement[];
}

export function standingOfSet(view: LibraryView, id: string): Standing | undefined {
  const set = view.get('set', id);
  return set === undefined ? undefined : standingOf(deriveSet(view, set));
}

export function standingOfDevice(view: LibraryView, id: string): Standing | undefined {
  const device = view.get('device', id);
  return device === undefined
    ? undefined
    : standingOf(derive(subjectOfDevice(view, device), view.ask(departmentOf, '')));
}

function standingOf(derivation: Derivation): Standing {
  const { route } = derivation;
  const fit = fitInUse(route);
  return {
    id: `${route.of}/${route.id}`,
    status: route.status,
    used: usedOf(route, fit),
    washer: route.card.washerCycle,
    ways: waysOf(route),
    lines: new Set([...(fit === undefined ? [] : allOf(fit)), ...cleaningJudgements(route)].map(lineOf)),
    options: optionsOf(route, fit),
    derivation,
  };
}

/** A card that names a cycle which no machine has now can't be followed, whatever else the set could use. */
function usedOf({ card }: SetRoute, fit: SterilizationFit | undefined): Used | undefined {
  if (card.cycle !== undefined && !card.cycle.known)
    return { words: card.cycle.id, holds: false, why: 'no machine here has this cycle', judgements: [] };
  return fit && { words: wayWords(fit), holds: rankOf(fit.outcome) < failing, why: '', judgements: allOf(fit) };
}

function fitInUse({ card, asPacked, chosen }: SetRoute): SterilizationFit | undefined {
  return card.cycle !== undefined && asPacked?.cycle === card.cycle.id ? asPacked : chosen;
}

export function wayWords({
  cycle,
  packaging,
  namedCase,
}: Pick<SterilizationFit, 'cycle' | 'packaging' | 'namedCase'>): string {
  const packed = packaging === '' ? '' : ` in ${packaging}`;
  return `${cycle}${packed}${namedCase === undefined ? '' : ` with ${namedCase}`}`;
}

function waysOf({ chosen, alternatives }: SetRoute): ReadonlySet<string> {
  const all = chosen === undefined ? alternatives : [chosen, ...alternatives];
  return new Set(all.filter(({ outcome }) => rankOf(outcome) < asking).map(wayWords));
}

function cleaningJudgements({ members }: SetRoute): readonly Judgement[] {
  return members.flatMap(({ cleaning }) =>
    cleaning === undefined ? [] : [...cleaning.common, ...cleaning.stages.flatMap(({ judgements }) => judgements)],
  );
}

function lineOf({ demandedBy, parameter, required, given, outcome }: Judgement): string {
  return `${demandedBy}|${parameter}|${required}|${given}|${outcome}`;
}

function optionsOf({ members }: SetRoute, fit: SterilizationFit | undefined): ReadonlySet<string> {
  const options = new Set<string>();
  for (const { device, option } of fit?.members ?? []) options.add(`${device} ${option}`);
  for (const { device, cleaning } of members)
    for (const way of cleaning?.alternative.split('+') ?? []) options.add(`${device} ${way}`);
  return options;
}

/** Rows of the governing table that differ, in words: `Drying time: at least 30 min before, at least 40 min after (pale-scissors)`. */
export function governorChanges(before: Standing, after: Standing): readonly string[] {
  const old = new Map(governingTable(before.derivation).map((row) => [row.parameter, row]));
  const words: string[] = [];
  for (const row of governingTable(after.derivation)) {
    const was = old.get(row.parameter);
    if (was === undefined || (was.required === row.required && governors(was) === governors(row))) continue;
    words.push(
      `${row.parameter}: ${was.required} before (${governors(was)}), ${row.required} after (${governors(row)})`,
    );
  }
  return words;
}

function governors({ governedBy }: GoverningRow): string {
  return governedBy.map(({ who }) => who.slice(who.indexOf('/') + 1)).join(', ');
}
