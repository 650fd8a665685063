// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as cardCycleNotDerived } from './card-cycle-not-derived.ts';
import { rule as departmentNotEncoded } from './department-not-encoded.ts';
import { rule as governingChanged } from './governing-changed.ts';
import { rule as memberNeedsOwnRoute } from './member-needs-own-route.ts';
import { rule as routeNeedsAnswer } from './route-needs-answer.ts';
import { rule as routeSinglePoint } from './route-single-point.ts';
import { rule as setCleaningClash } from './set-cleaning-clash.ts';
import { rule as setRouteNone } from './set-route-none.ts';
import { rule as strictestPickedNotIntersected } from './strictest-picked-not-intersected.ts';

export const routeRules: readonly AnyRule[] = [
  cardCycleNotDerived,
  departmentNotEncoded,
  governingChanged,
  memberNeedsOwnRoute,
  routeNeedsAnswer,
  routeSinglePoint,
  setCleaningClash,
  setRouteNone,
  strictestPickedNotIntersected,
];
