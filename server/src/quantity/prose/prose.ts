/**
 * quantity/prose/: reads one quoted sentence of an instruction (English, German, French) into numbers with their units and bound words,
 * negations, joins and flags, each with offsets, and says where a claimed field departs from it. It must not know YAML, schemas, kinds,
 * rules or files: a string in, mentions and faults out. All functions are pure.
 */
import type { Span } from '../../base/span.ts';
import type { QuantityValue } from '../quantity.ts';
import type { Unit } from '../unit-list.ts';
import type { FlagKind, JoinKind, NegationKind, ProseBound, StageWord } from './meaning.ts';
import type { NumberReading } from './number-forms.ts';
import type { Language } from './token.ts';

/** Longer quotes are read up to here: a citation is a sentence or two, and the reader's time must stay bounded. */
export const longestQuote = 2000;

/** One number of the quote. Indices point into `QuoteReading.numbers`. Spans are offsets into the quote. */
export interface NumberMention {
  /** The number and its unit. */
  readonly span: Span;
  readonly numberSpan: Span;
  /** The number as printed, in the likeliest reading. */
  readonly amount: number;
  /** Likeliest first. */
  readonly readings: readonly NumberReading[];
  /** What the unit may be; empty when no unit is printed. Several when the print does not decide. */
  readonly units: readonly Unit[];
  /** The likeliest reading in each of `units`. */
  readonly quantities: readonly QuantityValue[];
  /** Where the unit was taken from: beside the number, or shared with a later number of a list or range. */
  readonly unitFrom: 'printed' | 'shared' | 'none';
  /** Given as a word or a count word (`twice`, `dreimal`). */
  readonly written: 'digits' | 'word';
  readonly bound: ProseBound;
  readonly boundSpan?: Span;
  /** The other end of a range (`3-18 min`). */
  readonly range?: { readonly part: 'low' | 'high'; readonly partner: number };
  /** The same quantity in a second unit (`270 °F (132 °C)`). */
  readonly pair?: number;
  /** `±3 °C`, `+3/-0 °C`: a difference, the sides it allows, and the number it belongs to when there is one. */
  readonly tolerance?: { readonly of?: number; readonly side: 'both' | 'plus' | 'minus' };
  /** A difference or tolerance, not a level. */
  readonly isDifference: boolean;
  /** Page, figure, step, standard, catalogue number, power of ten, date: not a quantity. */
  readonly isReference: boolean;
  /** Half-cycle figures and total times, told apart from exposure. */
  readonly about?: Extract<FlagKind, 'total-time' | 'half-cycle'>;
  /** How `min` beside this number reads, when it stands there. */
  readonly minToken?: 'minutes' | 'minimum' | 'ambiguous';
  readonly sentence: number;
}

export interface Negation {
  readonly kind: NegationKind;
  readonly span: Span;
  /** What is negated, as far as the sentence shows. */
  readonly target: Span;
  readonly targetText: string;
}

/** A stage or method named in the quote. */
export interface StageMention {
  readonly stage: StageWord;
  readonly span: Span;
}

/** How two stages that stand beside each other in the text are joined. */
export interface Join {
  readonly join: JoinKind;
  readonly span: Span;
  readonly before: StageMention;
  readonly after: StageMention;
}

export interface Flag {
  readonly flag: FlagKind | 'pictogram';
  readonly span: Span;
}

export interface QuoteReading {
  readonly quote: string;
  readonly language: Language;
  readonly numbers: readonly NumberMention[];
  readonly negations: readonly Negation[];
  readonly stages: readonly StageMention[];
  readonly joins: readonly Join[];
  readonly flags: readonly Flag[];
}
