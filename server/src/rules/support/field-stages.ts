import type { StageWord } from '../../quantity/prose/meaning.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import type { Phrase } from './wording.ts';

/*
 * What fields are about, in the words that a quote is read with. Data: an educator can read and correct it.
 */

/** Fields about one method: whether it is used at all. A quote that forbids "this method" without naming it concerns them too. */
export const methodFields: ReadonlyMap<string, StageWord> = new Map([
  ['ultrasonic', 'ultrasonic'],
  ['mechanical', 'mechanical'],
  ['manual', 'manual'],
  ['immersion', 'immersion'],
  ['lubrication', 'lubrication'],
  ['lubricant', 'lubrication'],
  ['disinfection', 'disinfection'],
  ['stacking', 'stacking'],
]);

/** Fields about one step: a quote that does not name the step says nothing against it. */
export const stepFields: ReadonlyMap<string, StageWord> = new Map([
  ['rinse', 'rinse'],
  ['final_rinse', 'rinse'],
  ['first_rinse', 'rinse'],
  ['drying', 'dry'],
  ['dry', 'dry'],
  ['wipe', 'wipe'],
  ['flush', 'flush'],
  ['brush', 'brush'],
  ['thermal', 'disinfection'],
]);

/** Fields that the reader of quotes has no word for: words that must stand in what the quote forbids. */
export const fieldWords: ReadonlyMap<string, readonly Phrase[]> = new Map([
  ['keep_moist', [['moist*'], ['wet'], ['feucht*'], ['humid*']]],
  ['alcohol', [['alcohol*'], ['alkohol*'], ['alcool*'], ['isopropan*'], ['ethanol*']]],
  ['initial_cleaning', [['clean*'], ['reinig*'], ['nettoy*']]],
  ['separate_cleaning', [['separate*'], ['apart'], ['getrennt*'], ['séparé*']]],
  ['residue_test', [['residue*'], ['residual*'], ['restprotein*'], ['résidu*']]],
  ['neutralise', [['neutrali*']]],
  ['prewash', [['prewash*'], ['vorspül*'], ['prélavage*']]],
  ['wash', [['wash*']]],
  ['double', [['double'], ['two'], ['doppel*'], ['deux']]],
  ['inside_set', [['inside'], ['within']]],
  ['lumens', [['lumen*'], ['channel*'], ['bore*'], ['kanal'], ['kanäle'], ['canal'], ['canaux']]],
]);

/** Stages of a cleaning node. */
export const cleaningStages: ReadonlyMap<string, StageWord> = new Map([
  ['manual', 'manual'],
  ['ultrasonic', 'ultrasonic'],
  ['mechanical', 'mechanical'],
  ['disinfection', 'disinfection'],
]);

/** Methods of a sterilization option, and the context of an immediate use. */
export const optionStages: ReadonlyMap<string, StageWord> = new Map([
  ['steam-prevac', 'prevac'],
  ['steam-gravity', 'gravity'],
  ['vh2o2', 'vh2o2'],
  ['eo', 'eo'],
  ['dry-heat', 'dry-heat'],
  ['ltsf', 'formaldehyde'],
  ['iuss', 'iuss'],
]);

/** Marks by which a page forbids something: `no_stack: true`. */
export const forbiddingFlags: ReadonlyMap<string, StageWord> = new Map([
  ['no_stack', 'stacking'],
  ['no_stacking', 'stacking'],
]);

/** Prohibitions whose number is a highest or lowest value. */
export const prohibitionBounds: ReadonlyMap<
  string,
  { readonly bound: 'at_most' | 'at_least'; readonly dimension: Dimension }
> = new Map([
  ['temp-above', { bound: 'at_most', dimension: 'temperature' }],
  ['ph-above', { bound: 'at_most', dimension: 'ph' }],
  ['pressure-above', { bound: 'at_most', dimension: 'pressure' }],
  ['ph-below', { bound: 'at_least', dimension: 'ph' }],
]);

/** Bare numbers that have a citation of their own beside them. */
export const ownCitations: ReadonlyMap<string, string> = new Map([['mass_max', 'mass_src']]);
