import type { Query } from '../library/view.ts';
import { clashesOf } from './clash.ts';
import { departmentOf } from './equipment.ts';
import { governingTable } from './governing.ts';
import type { Clash, GoverningRow, NearMissRow, NotOffered, Repair, SetRoute } from './model.ts';
import { nearMisses } from './near-miss.ts';
import { notOffered } from './repair-table.ts';
import { repairsAtHand, repairsFor } from './repairs.ts';
import { type Derivation, derive, deriveSet } from './route.ts';
import { subjectOfDevice } from './subject.ts';

/** A route with everything that explains it. */
export interface RouteExplanation {
  readonly route: SetRoute;
  readonly governing: readonly GoverningRow[];
  readonly clashes: readonly Clash[];
  readonly repairs: readonly Repair[];
  readonly notOffered: readonly NotOffered[];
  readonly nearMisses: readonly NearMissRow[];
}

/** Everything about one set; undefined when no file holds it. Dearer than the route alone: for one set at a time. */
export const explanationOfSet: Query<string, RouteExplanation | undefined> = {
  name: 'explanation-of-set',
  work: (view, id) => {
    const set = view.get('set', id);
    return set === undefined ? undefined : explained(deriveSet(view, set));
  },
};

/** The same for one device family alone. */
export const explanationOfDevice: Query<string, RouteExplanation | undefined> = {
  name: 'explanation-of-device',
  work: (view, id) => {
    const device = view.get('device', id);
    return device === undefined
      ? undefined
      : explained(derive(subjectOfDevice(view, device), view.ask(departmentOf, '')));
  },
};

/** The governing table of one set, for hovers and cards. */
export const governingOfSet: Query<string, readonly GoverningRow[]> = {
  name: 'governing-of-set',
  work: (view, id) => {
    const set = view.get('set', id);
    return set === undefined ? [] : governingTable(deriveSet(view, set));
  },
};

/** The smallest clashes of one set; empty for a set with a route. */
export const clashesOfSet: Query<string, readonly Clash[]> = {
  name: 'clashes-of-set',
  work: (view, id) => {
    const set = view.get('set', id);
    return set === undefined ? [] : clashesOf(deriveSet(view, set));
  },
};

/** Why there is no route, and what can be done at once. Undefined where there is one. */
export interface RouteGap {
  readonly route: SetRoute;
  readonly clashes: readonly Clash[];
  readonly ways: readonly Repair[];
}

export const gapOfSet: Query<string, RouteGap | undefined> = {
  name: 'gap-of-set',
  work: (view, id) => {
    const set = view.get('set', id);
    return set === undefined ? undefined : gapIn(deriveSet(view, set));
  },
};

export const gapOfDevice: Query<string, RouteGap | undefined> = {
  name: 'gap-of-device',
  work: (view, id) => {
    const device = view.get('device', id);
    return device === undefined ? undefined : gapIn(derive(subjectOfDevice(view, device), view.ask(departmentOf, '')));
  },
};

function gapIn(derivation: Derivation): RouteGap | undefined {
  const { route } = derivation;
  if (route.status !== 'none') return undefined;
  return { route, clashes: clashesOf(derivation), ways: repairsAtHand(derivation) };
}

function explained(derivation: Derivation): RouteExplanation {
  const { route } = derivation;
  return {
    route,
    governing: governingTable(derivation),
    clashes: clashesOf(derivation),
    repairs: repairsFor(derivation),
    notOffered: route.status === 'route' ? [] : notOffered,
    nearMisses: route.status === 'route' ? [] : nearMisses(derivation),
  };
}
