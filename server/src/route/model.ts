/**
 * route/: what the department can really do with a set: claims, candidate routes, the governing table, the smallest clash, repairs,
 * questions that would unlock sets, near misses and what-if. Pure functions over a LibraryView. It must not know rules, findings,
 * reports, editors or the disk, and it never says more than "consistent with the encoded instruction".
 */
import type { Judgement, Outcome } from '../judge/outcome.ts';
import type { Place } from '../model/node.ts';
import type { Saying } from '../model/saying.ts';
import type { Interval } from '../quantity/interval.ts';
import type { QuantityValue } from '../quantity/quantity.ts';

/**
 * `route`: consistent with every encoded instruction. `provisional`: only if an open question is answered favourably, or some member is
 * unknown. `none`: no packaging, cycle and cleaning of the department meets all members together.
 */
export type RouteStatus = 'route' | 'provisional' | 'none';

/** The route of one set, or of one device family as if it were a set of one. */
export interface SetRoute {
  readonly of: 'set' | 'device';
  readonly id: string;
  readonly at: Place;
  readonly status: RouteStatus;
  readonly members: readonly MemberRoute[];
  /** The best sterilization candidate by the order of choice; undefined when every candidate fails. */
  readonly chosen?: SterilizationFit;
  /** Further ways that do not fail, in order of choice. */
  readonly alternatives: readonly RouteOption[];
  /** Where everything fails: the candidates that fail in fewest respects, best first. */
  readonly failing: readonly SterilizationFit[];
  /** The set packed as its file says, on the cycle of its card, else on the one that comes nearest. Undefined when no packaging is named. */
  readonly asPacked?: SterilizationFit;
  /** Set when the chosen route needs another packaging than the set's file names. */
  readonly packagingChange?: { readonly from: string; readonly to: string };
  readonly card: CardComparison;
  readonly washing: WashingTogether;
  /** Ids of machines able to sterilize the set in its chosen packaging; one only is a single point of failure. */
  readonly machines: readonly string[];
}

/** One line of the set, judged. Containers and instrument cases are members too. */
export interface MemberRoute {
  readonly device: string;
  /** Shown to people: the name in the file, or the id. */
  readonly name: string;
  /** Pieces in the set. */
  readonly quantity: number;
  /** Where the set (or the device itself) names it. */
  readonly at: Place;
  /** Why nothing can be said about this member; empty when it is judged. */
  readonly unknown: readonly UnknownReason[];
  /** The best way to clean it, apart from the others. Undefined for unknown members. */
  readonly cleaning?: CleaningFit;
  /** The other ways the page offers, best first. */
  readonly otherCleaning: readonly CleaningFit[];
}

export interface UnknownReason {
  readonly because: 'no-file' | 'unreadable' | 'out-of-scope' | 'no-document' | 'conflict' | 'untrusted' | 'unmapped';
  /** In plain words: `no instruction for use is on file`. */
  readonly words: string;
  readonly at: Place;
}

/** One packaging with one cycle for the whole set. */
export interface RouteOption {
  /** Id of the packaging; empty when none is known (a set without packaging). */
  readonly packaging: string;
  /** The case or basket inside the packaging, where there is one. */
  readonly namedCase?: string;
  readonly machine: string;
  readonly cycle: string;
  readonly outcome: Outcome;
}

/** The same with every reason. */
export interface SterilizationFit extends RouteOption {
  /** Each member's best option as a whole tuple: options are never mixed. */
  readonly members: readonly MemberFit[];
  /** Packaging, contents, site limits and the machine's own facts, which do not depend on one member. */
  readonly common: readonly Judgement[];
  /** For the chosen one: the facts by which it was placed first, in the order in which they count. */
  readonly choice: readonly ChoiceFact[];
}

export interface MemberFit {
  readonly device: string;
  /** Id of the option; empty when the device gives none. */
  readonly option: string;
  readonly outcome: Outcome;
  readonly judgements: readonly Judgement[];
}

/** One step of the visible order of choice: smaller `rank` is preferred. */
export interface ChoiceFact {
  readonly by: ChoiceStep;
  readonly rank: number;
  /** `2 machines can do it`, `dry 30 min`. */
  readonly words: string;
}

export type ChoiceStep =
  | 'fewest-open-questions'
  | 'packaging-of-the-set'
  | 'terminal'
  | 'no-exceptional-step'
  | 'second-machine'
  | 'usual-cycle'
  | 'lowest-heat'
  | 'shortest';

/** One way of cleaning that a page offers, with the department's best means for each of its stages. */
export interface CleaningFit {
  readonly alternative: string;
  readonly outcome: Outcome;
  readonly stages: readonly StageFit[];
  /** Judgements that hold for the alternative as a whole. */
  readonly common: readonly Judgement[];
}

export interface StageFit {
  readonly stage: 'manual' | 'ultrasonic' | 'mechanical' | 'disinfection';
  /** Washer or bath; empty for work by hand, or when the department has none. */
  readonly machine: string;
  /** Washer cycle, or the agent used by hand; empty when there is none. */
  readonly means: string;
  readonly outcome: Outcome;
  readonly judgements: readonly Judgement[];
  /** Every washer cycle, bath or agent that does not fail. */
  readonly fitting: readonly FittingMeans[];
  /** Every other means that was judged: for near misses and for the card. */
  readonly others: readonly OtherMeans[];
}

export interface FittingMeans {
  readonly machine: string;
  readonly means: string;
  readonly outcome: Outcome;
}

export interface OtherMeans {
  readonly machine: string;
  readonly means: string;
  readonly judgements: readonly Judgement[];
}

/** Cleaning may be done apart: a clash costs a further basket, not the set. */
export interface WashingTogether {
  /** Fewest baskets in which every member that needs a washer can be washed, each with one washer cycle. */
  readonly baskets: readonly Basket[];
  /** Members for which no washer cycle fits, though their page demands a machine. */
  readonly without: readonly string[];
}

export interface Basket {
  readonly machine: string;
  readonly cycle: string;
  readonly outcome: Outcome;
  readonly devices: readonly string[];
}

/** What the set's card says, against what is derived. */
export interface CardComparison {
  readonly cycle?: CardCycle;
  readonly washerCycle?: CardCycle;
}

export interface CardCycle {
  readonly id: string;
  readonly at: Place;
  /** `known`: no machine has a cycle of this name when false. */
  readonly known: boolean;
  /** Outcome in the set's own packaging. */
  readonly outcome: Outcome;
  /** The judgements that are not `meets`, worst first. */
  readonly judgements: readonly Judgement[];
  /** True when it is among the derived routes without open question, be it in another packaging. */
  readonly derived: boolean;
}

/** One row of the governing table. */
export interface GoverningRow {
  readonly parameter: string;
  /** `at least 30 min`, `steam-prevac`. */
  readonly required: string;
  readonly governedBy: readonly Governor[];
  /** What the chosen route gives: `30 min`. */
  readonly gives: string;
  /** Where our side of it stands: the cycle, the set's mass. */
  readonly givenAt?: Place;
  /** How much room is left, in words; empty where it has no meaning. */
  readonly slack: string;
  /** What would be required if the governor left the set: `20 min`, or empty when nothing would change. */
  readonly ifLeft: string;
}

export interface Governor {
  /** `device/wristed-grasper`, `packaging/P3-rigid-container`, `site/lanternfield`. */
  readonly who: string;
  readonly at: Place;
  readonly says: readonly Saying[];
}

/** A requirement or fact that cannot be divided further: one statement of a page, one fact of a machine, one limit of the site. */
export interface Atom {
  /** Stable key: who demands, the field, and the fact where the fact is the cause. */
  readonly key: string;
  readonly rank: AtomRank;
  /** One sentence. */
  readonly words: string;
  readonly who: string;
  readonly at: Place;
  readonly says: readonly Saying[];
  readonly parameter: Judgement['parameter'];
  /** Where our side of it stands: the set's mass, the machine's date. */
  readonly factAt?: Place;
}

/** Order in which facts are named: what a device's page says before packaging, before equipment, before policy. */
export type AtomRank = 'device' | 'packaging' | 'equipment' | 'policy';

/** A smallest clash: with any one of its atoms gone, a route appears as far as this clash goes. */
export interface Clash {
  readonly about: 'sterilization' | 'cleaning';
  /** The set, or the member whose cleaning it is. */
  readonly of: string;
  readonly atoms: readonly Atom[];
  /** Further statements that demand the same as one of the atoms. */
  readonly alsoDemanded: readonly Atom[];
  /** The whole explanation as sentences; where another about the same precedes it, what that one said first is not said again. */
  readonly words: string;
}

export type RepairKind =
  | 'take-member-out'
  | 'split-set'
  | 'change-packaging'
  | 'program-cycle'
  | 'qualify-cycle'
  | 'ask-maker'
  | 'change-chemistry'
  | 'separate-baskets'
  | 'lighten-set'
  | 'buy-or-contract-out'
  | 'replace-device';

/** A human action that would give the set a route. Nothing is offered that was not tried out on the derivation. */
export interface Repair {
  readonly kind: RepairKind;
  /** Imperative, with names: `Take the camera head out and process it alone in P5-polyolefin-pouch on S3:surface.` */
  readonly words: string;
  readonly owner: string;
  /** `same day`, `days`, `days to weeks`, `months`. */
  readonly lead: string;
  /** What was worked out about it: `both parts have a route`. */
  readonly verified: readonly string[];
  /** What it still leaves open. */
  readonly leaves: readonly string[];
  /** `route`: with it the set has a route; `part`: it settles one clash, others stay; `unverified`: needs facts that no file holds. */
  readonly effect: 'route' | 'provisional' | 'part' | 'unverified';
  /** Devices, cycle or packaging it is about. */
  readonly about: readonly string[];
  /** The change that was tried, so that it can be tried again; none for what no file can show. */
  readonly trial?: RepairTrial;
}

/** A change of the set or the department, exactly as it was derived again. */
export type RepairTrial =
  | { readonly change: 'packs'; readonly packs: readonly (readonly string[])[] }
  | { readonly change: 'packaging'; readonly packaging: string; readonly namedCase?: string }
  | { readonly change: 'qualify'; readonly cycle: string }
  | { readonly change: 'cycle'; readonly like: string; readonly exposure?: QuantityValue; readonly dry?: QuantityValue }
  | { readonly change: 'detergent'; readonly washerCycle: string; readonly chemistry?: string; readonly ph?: Interval }
  | { readonly change: 'answers'; readonly questions: readonly string[] };

/** What is never offered, and why. */
export interface NotOffered {
  readonly what: string;
  readonly why: string;
}

/** A question whose favourable answer would settle a judgement. */
export interface UnlockingQuestion {
  /** Stable: device (or packaging) and field. */
  readonly key: string;
  readonly maker: string;
  readonly about: string;
  readonly words: string;
  readonly says: readonly Saying[];
  readonly at: Place;
  /** Sets that would have a route without open questions once this alone is answered favourably. */
  readonly unlocks: readonly string[];
  /** Sets in whose chosen route it is open. */
  readonly openIn: readonly string[];
}

/** One letter a maker: all questions merged, those that free most sets first. */
export interface MakerLetter {
  readonly maker: string;
  readonly questions: readonly UnlockingQuestion[];
  readonly unlocks: readonly string[];
}

/** How far each cycle is from what is required of one parameter. */
export interface NearMissRow {
  readonly parameter: Judgement['parameter'];
  readonly required: string;
  readonly who: string;
  /** Where the demand stands. */
  readonly at: Place;
  readonly says: readonly Saying[];
  /** The required numbers in the base unit, where they are numbers. */
  readonly allowed?: Interval;
  readonly cycles: readonly NearMissCycle[];
}

export interface NearMissCycle {
  readonly cycle: string;
  readonly packaging: string;
  readonly outcome: Outcome;
  readonly given: string;
  /** The same in the base unit, from lowest to highest. */
  readonly givenRange?: Interval;
  readonly gap: string;
}

/** What a change would do, without touching a file. */
export interface WhatIf {
  /** Sets that have a route (or a provisional one) only with the change, or a better status. */
  readonly gained: readonly StatusChange[];
  readonly lost: readonly StatusChange[];
  /** Devices judged alone that gain or lose. */
  readonly devicesGained: readonly StatusChange[];
  readonly devicesLost: readonly StatusChange[];
  /** Sets whose status stays but whose clash, cycle or packaging differs. */
  readonly changed: readonly StatusChange[];
}

export interface StatusChange {
  readonly id: string;
  readonly before: RouteStatus;
  readonly after: RouteStatus;
  /** What is different, in words: `dry settled; still: mass, washing`. */
  readonly words: string;
}
