import type { Phrase } from './wording.ts';

/*
 * Words by which people write certain things, kept apart from the rules that look for them. An educator may read and lengthen these
 * lists. `virus*` is any word that begins so; several words stand in this order, near each other, in one sentence.
 */

/** Diseases and germs other than prions, and ways to say that a patient has one. */
export const diseases: readonly Phrase[] = [
  ['virus*'],
  ['viral'],
  ['norovirus'],
  ['hiv'],
  ['aids'],
  ['hepatitis'],
  ['hbv'],
  ['hcv'],
  ['covid*'],
  ['ebola'],
  ['spore*'],
  ['clostridi*'],
  ['difficile'],
  ['mrsa'],
  ['vre'],
  ['esbl'],
  ['resistant', 'germ*'],
  ['resistant', 'organism*'],
  ['resistant', 'bacteri*'],
  ['multiresistant'],
  ['tubercul*'],
  ['tb'],
  ['candida'],
  ['infected'],
  ['infectious'],
  ['infection'],
  ['isolation', 'patient*'],
  ['contagious'],
  ['blood', 'borne'],
];

/** Prion disease under its names. */
export const prions: readonly Phrase[] = [
  ['prion*'],
  ['tse'],
  ['tses'],
  ['cjd'],
  ['vcjd'],
  ['creutzfeldt*'],
  ['cjk'],
  ['vcjk'],
  ['bse'],
  ['spongiform*'],
  ['esst'],
  ['atnc'],
];

/** Sentences that let moisture go into a steam cycle. */
export const wetIsFine: readonly Phrase[] = [
  ...['moist', 'wet', 'damp'].flatMap((wet) =>
    ['may', 'can', 'ok', 'okay', 'fine', 'acceptable', 'allowed'].map((fine) => [wet, fine]),
  ),
  ['moisture', 'may', 'stay'],
  ['moisture', 'may', 'remain'],
  ['moisture', 'is', 'acceptable'],
  ['moisture', 'is', 'fine'],
  ['need', 'not', 'be', 'dry'],
  ['not', 'have', 'to', 'be', 'dry'],
  ...['steam', 'heat', 'cycle', 'sterilizer', 'steriliser', 'autoclave'].flatMap((heat) => [
    [heat, 'will', 'dry'],
    [heat, 'dries'],
    [heat, 'will', 'finish'],
    [heat, 'finishes'],
  ]),
];

/** Sentences by which a department says that it validated something itself. */
export const ownValidation: readonly Phrase[] = [
  ['we', 'validated'],
  ['we', 'validate'],
  ['we', 'have', 'validated'],
  ['our', 'validation'],
  ['our', 'own', 'validation'],
  ['own', 'validation'],
  ['in', 'house', 'validation'],
  ['validated', 'in', 'house'],
  ['validated', 'inhouse'],
  ['validated', 'here'],
  ['validated', 'locally'],
  ['validated', 'internally'],
  ['internally', 'validated'],
  ['locally', 'validated'],
  ['validated', 'ourselves'],
  ['validated', 'by', 'us'],
  ['validated', 'by', 'our'],
  ['validated', 'by', 'department'],
  ['validated', 'by', 'hospital'],
  ['department', 'validated'],
  ['department', 'has', 'validated'],
  ['hospital', 'validated'],
  ['hospital', 'has', 'validated'],
  ['wir', 'validiert'],
  ['selbst', 'validiert'],
  ['intern', 'validiert'],
];

/** What the ISO vocabulary calls validation and a department does itself: that a machine delivers its process here. */
export const processWords: readonly Phrase[] = [
  ['iq'],
  ['oq'],
  ['pq'],
  ['qualification'],
  ['process'],
  ['performance', 'qualification'],
];

/** A page that speaks of immediate use. */
export const immediateUse: readonly Phrase[] = [
  ['immediate'],
  ['immediately', 'used'],
  ['flash'],
  ['iuss'],
  ['urgent*'],
  ['unwrapped'],
  ['sofort*'],
];

/** Steps that stand for less than a whole cleaning. */
export const reducedCleaning: readonly Phrase[] = [
  ['scrub', 'sink'],
  ['quick', 'rinse'],
  ['quickly', 'rinse'],
  ['quick', 'clean*'],
  ['quick', 'wash'],
  ['short', 'wash'],
  ['short', 'clean*'],
  ['rinse', 'only'],
  ['only', 'rinse'],
  ['just', 'rinse'],
  ['wipe', 'only'],
  ['only', 'wipe'],
  ['just', 'wipe'],
];

/** Equipment kept for one purpose, or thrown away. */
export const setApart: readonly Phrase[] = [
  ['dedicated'],
  ['single', 'use'],
  ['disposable'],
  ['separate'],
  ['own', 'basin'],
  ['incinerat*'],
];

/** Ways to name the test that finds a hole in insulation. */
export const insulationTests: readonly Phrase[] = [
  ['insulation', 'test*'],
  ['test*', 'insulation'],
  ['electrical', 'test*'],
  ['leakage', 'current'],
  ['high', 'voltage'],
];
