import type { Dimension } from '../quantity.ts';

/** What a bound word says about its number. `between` stands for both ends of a range, `none` for a bare number. */
export type ProseBound = 'at_least' | 'at_most' | 'exactly' | 'about' | 'between' | 'none';

export type NegationKind =
  /** Not, never, avoid, forbidden: the action is not to be done. */
  | 'prohibition'
  /** "Not necessary": may be left out, and may be done. */
  | 'not-required'
  /** "Except", "unless": the action has a hole in it. */
  | 'exception'
  /** "Without": the thing after it is left out. */
  | 'without';

export type JoinKind = 'and' | 'then' | 'or' | 'and/or';

export type FlagKind = 'total-time' | 'half-cycle' | 'full-cycle' | 'prion' | 'validated-with' | 'only';

/** Stages and methods that an instruction joins, in words of any of the three languages. */
export type StageWord =
  | 'manual'
  | 'ultrasonic'
  | 'mechanical'
  | 'immersion'
  | 'soak'
  | 'brush'
  | 'flush'
  | 'wipe'
  | 'rinse'
  | 'disinfection'
  | 'dry'
  | 'inspection'
  | 'lubrication'
  | 'packaging'
  | 'steam'
  | 'gravity'
  | 'prevac'
  | 'iuss'
  | 'vh2o2'
  | 'eo'
  | 'formaldehyde'
  | 'dry-heat'
  | 'container'
  | 'wrap'
  | 'pouch'
  | 'disassembly'
  | 'stacking';

/** What one phrase of the word lists means to the reader. */
export type Meaning =
  | {
      readonly role: 'bound';
      readonly bound: Exclude<ProseBound, 'between' | 'none'>;
      /** Where its number stands. */
      readonly place: 'before-number' | 'after-number' | 'either';
      /** "Longer" speaks of time, "hotter" of temperature. */
      readonly fits?: Dimension;
    }
  | {
      readonly role: 'compare';
      readonly side: 'over' | 'under';
      /** A verb (exceed) may follow its number at a distance; a word (above) stands right before it. */
      readonly place: 'word' | 'verb';
      readonly fits?: Dimension;
    }
  | { readonly role: 'negation'; readonly kind: NegationKind; readonly scope: 'forward' | 'both' }
  | { readonly role: 'harm' }
  | { readonly role: 'join'; readonly join: JoinKind }
  | { readonly role: 'flag'; readonly flag: FlagKind }
  | { readonly role: 'stage'; readonly stage: StageWord }
  | { readonly role: 'number'; readonly amount: number }
  | { readonly role: 'times'; readonly amount: number }
  | { readonly role: 'reference' }
  | { readonly role: 'range-open' }
  | { readonly role: 'range-to' }
  | { readonly role: 'contrast' }
  | { readonly role: 'condition' }
  | { readonly role: 'until' }
  | { readonly role: 'difference' }
  | { readonly role: 'idiom' };

/** Phrases with one meaning, separated by commas. A word that ends in `*` stands for every word that begins so. */
export type PhraseList = readonly (readonly [Meaning, string])[];
