/**
 * judge/: does this cycle, machine, agent, water or package satisfy this requirement? Answers with reasons, from the table in
 * directions.ts. It must not know sets, routes, rules or how answers are shown.
 */
import type { Place } from '../model/node.ts';
import type { SettledBy } from '../model/roles.ts';
import type { Saying } from '../model/saying.ts';

/** The four truth values, best first. Silence is neither permission nor prohibition: it is never `meets` by itself. */
export const outcomes = ['meets', 'meets-with-note', 'needs-answer', 'fails'] as const;

export type Outcome = (typeof outcomes)[number];

/** One requirement judged against one fact of the department. Hover, card, report and question print the same explanation from it. */
export interface Judgement {
  readonly outcome: Outcome;
  /** Row of the direction table, such as `exposure`, `steam-dry`, `modality`, `packaging`. */
  readonly parameter: Parameter;
  /** Who demands: `device/pale-forceps`, `packaging/P3-rigid-container`, `site/lanternfield`, ... */
  readonly demandedBy: string;
  /** What is demanded, in words with units: `at least 30 min`. */
  readonly required: string;
  /** What the department's choice gives: `20 min`. Empty when it gives nothing. */
  readonly given: string;
  /** The same in the base unit of what is measured, from lowest to highest, where it is a number. */
  readonly givenRange?: { readonly low: number; readonly high: number } | undefined;
  /** One sentence: why this outcome. */
  readonly reason: string;
  /** The gap in numbers, when there is one: `10 min short`. */
  readonly gap?: string | undefined;
  /** Who can settle anything that is not `meets`. */
  readonly settledBy: SettledBy;
  readonly says: readonly Saying[];
  /** Where the demand stands. */
  readonly demandAt: Place;
  /** Where the fact stands. */
  readonly factAt?: Place | undefined;
}

export type Parameter =
  | 'identity'
  | 'modality'
  | 'context'
  | 'prohibition'
  | 'packaging'
  | 'container-cycle'
  | 'steam-temperature'
  | 'control-band'
  | 'exposure'
  | 'pulses'
  | 'steam-dry'
  | 'packaging-dry'
  | 'cool-down'
  | 'wash-temperature'
  | 'first-rinse-temperature'
  | 'delay'
  | 'cleaning-amount'
  | 'pressure'
  | 'soak'
  | 'ultrasonic'
  | 'ph'
  | 'thermal-disinfection'
  | 'water-grade'
  | 'peroxide-cycle'
  | 'ethylene-oxide'
  | 'aeration'
  | 'aeration-temperature'
  | 'mass'
  | 'levels'
  | 'lumen'
  | 'connector'
  | 'boiling'
  | 'drying-temperature'
  | 'manual-step'
  | 'immersion'
  | 'brush'
  | 'filter'
  | 'accessory'
  | 'cellulose'
  | 'load'
  | 'use-count'
  | 'immediate-use'
  | 'heat-limit'
  | 'chemistry'
  | 'machine-step'
  | 'evidence';

/** Place in `outcomes`: asked millions of times for a large library. */
export const outcomeRanks: Readonly<Record<Outcome, number>> = {
  meets: 0,
  'meets-with-note': 1,
  'needs-answer': 2,
  fails: 3,
};

/** The worse of two outcomes. */
export function worse(a: Outcome, b: Outcome): Outcome {
  return outcomeRanks[a] >= outcomeRanks[b] ? a : b;
}

/** The worst outcome of all; `meets` when there is nothing to judge. */
export function worstOf(judgements: Iterable<{ readonly outcome: Outcome }>): Outcome {
  let worst: Outcome = 'meets';
  for (const { outcome } of judgements) worst = worse(worst, outcome);
  return worst;
}
