/**
 * rules/: what can be wrong, one rule a file, under the stage of the work it concerns. A rule detects and words one fault; it must not
 * know settings, waivers, other rules, editors or the disk, and reaches other files only through its context.
 */
import type { IsoDate } from '../base/brand.ts';
import type { Fix, Severity } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import type { LibraryView } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import type { Place } from '../model/node.ts';
import type { SettledBy } from '../model/roles.ts';
import type { Saying } from '../model/saying.ts';
import type { Kind } from '../schema/kinds.ts';

/** Stages of domain work by which the catalogue is ordered. */
export const stages = {
  file: 'Reading the file',
  source: 'Source and transcription',
  revision: 'Revisions and document control',
  'point-of-use': 'Point of use, transport, receipt, loaners',
  cleaning: 'Disassembly and manual cleaning',
  washing: 'Ultrasonic and mechanical washing',
  rinsing: 'Rinse water and drying',
  inspection: 'Inspection, function, lubrication, use limits',
  packaging: 'Packaging and set build',
  monitoring: 'Indicators and release',
  sterilization: 'Sterilization',
  'immediate-use': 'Immediate-use steam',
  storage: 'Cooling and storage',
  route: 'Set and route',
  governance: 'Procedures and governance',
  teaching: 'Teaching and outputs',
} as const;

export type Stage = keyof typeof stages;

/** Where the rule comes from: a published standard or guideline (recalled from memory unless a handbook source says seen), common practice, or logic. */
export type SourceTag = 'standard' | 'guideline' | 'practice' | 'logic';

/** One fault found. `at` is in the judged entity's own file: the place the reader can change. */
export interface Report {
  readonly at: Place;
  /** A part of the value, when the whole is not to blame. */
  readonly span?: Span;
  readonly message: string;
  /** What the instruction says. */
  readonly says?: readonly Saying[];
  /** What we do, in words with numbers. */
  readonly does?: string;
  /** The gap in numbers. */
  readonly gap?: string;
  /** When this case is settled by someone else than the rule usually is. */
  readonly settledBy?: SettledBy;
  /** When this case weighs differently than the rule usually does. */
  readonly severity?: Severity;
  readonly related?: readonly { readonly at: Place; readonly note: string }[];
  readonly fixes?: readonly Fix[];
}

export interface RuleContext {
  readonly today: IsoDate;
  readonly view: LibraryView;
  report(report: Report): void;
}

/** Marked files: a line of carets under a line marks the span of the finding, followed by its message. See rules/examples.ts. */
export interface Examples {
  readonly bad: readonly string[];
  readonly good: readonly string[];
}

/** What every page, hover and report about a rule is made from. */
export interface RuleAbout {
  /** Kebab-case; names the fault. */
  readonly id: string;
  readonly stage: Stage;
  readonly severity: Severity;
  readonly settledBy: SettledBy;
  /** One sentence: why it matters. */
  readonly why: string;
  readonly source: SourceTag;
  /** What the offered fix does, when there is one. */
  readonly fix?: string;
}

export interface Rule<K extends Kind> extends RuleAbout {
  readonly kinds: readonly K[];
  check(entity: EntityOf[K], context: RuleContext): void;
  readonly examples: Examples;
}

/** A rule whose kinds are no longer known to the compiler; `kinds` still says which entities it takes. */
export interface AnyRule extends RuleAbout {
  readonly kinds: readonly Kind[];
  check(entity: EntityOf[Kind], context: RuleContext): void;
  readonly examples: Examples;
}

/** The engine calls `check` only with entities of the rule's own kinds, so forgetting them is sound. */
export function defineRule<K extends Kind>(rule: Rule<K>): AnyRule {
  return rule as unknown as AnyRule;
}
