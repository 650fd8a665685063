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

/** Roles that look after infection prevention, under the names they bear in different countries. */
export const infectionPreventers: readonly Phrase[] = [
  ['infection', 'prevention*'],
  ['infection', 'control*'],
  ['hygien*'],
  ['hygièn*'],
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

/** Reasons for immediate use that tell of a shortage or a plan, not of an emergency. */
export const convenience: readonly Phrase[] = [
  ['late', 'loaner'],
  ['loaner', 'late'],
  ['late', 'delivery'],
  ['turnover'],
  ['turn', 'over'],
  ['two', 'cases'],
  ['back', 'to', 'back'],
  ['next', 'case'],
  ['only', 'one', 'set'],
  ['one', 'set'],
  ['short*', 'inventory'],
  ['short', 'stock'],
  ['low', 'stock'],
  ['lack', 'of', 'sets'],
  ['too', 'few', 'sets'],
  ['not', 'enough', 'sets'],
  ['not', 'enough', 'instruments'],
  ['no', 'spare*'],
  ['no', 'second', 'set'],
  ['save*', 'time'],
  ['convenien*'],
  ['schedule'],
  ['busy', 'list'],
  ['full', 'list'],
];

/** Places on a container at which an infrared thermometer sees bare metal. */
export const bareMetal: readonly Phrase[] = [
  ['lid', 'metal'],
  ['metal', 'lid'],
  ['shiny'],
  ['polished'],
  ['bare', 'metal'],
  ['steel'],
  ['aluminium'],
  ['aluminum'],
  ['chrome'],
];

/** Cold and solid things on which a hot pack must not stand. */
export const coldSurfaces: readonly Phrase[] = [
  ['table'],
  ['counter'],
  ['worktop'],
  ['bench'],
  ['floor'],
  ['cold'],
  ['stone'],
  ['sink'],
];

/** Handling of packs that are still hot. */
export const handling: readonly Phrase[] = [
  ['stack*'],
  ['cover'],
  ['covered'],
  ['towel'],
  ['handle'],
  ['handled'],
  ['touch'],
  ['carry', 'to', 'shelf'],
  ['put', 'on', 'shelf'],
];

/** Cooling by other means than standing in the air of the room. */
export const forcedCooling: readonly Phrase[] = [
  ['fan'],
  ['fans'],
  ['blower'],
  ['vent'],
  ['air', 'conditioning'],
  ['draught'],
  ['open', 'window'],
  ['quench*'],
  ['cold', 'water'],
  ['cold', 'room'],
  ['cool', 'room'],
  ['ice'],
  ['fridge'],
  ['refrigerator'],
  ['freezer'],
  ['compressed', 'air'],
];

/** Moisture on or in a pack. */
export const moistPacks: readonly Phrase[] = [
  ['moisture*'],
  ['moist'],
  ['wet'],
  ['damp'],
  ['droplets'],
  ['condensate'],
  ['water', 'drops'],
];

/** What is done with a wet pack so that it stays in use. */
export const wetPackKept: readonly Phrase[] = [
  ['air', 'dry'],
  ['air', 'dried'],
  ['let', 'dry'],
  ['leave', 'dry'],
  ['left', 'to', 'dry'],
  ['dries', 'on'],
  ['dry', 'on', 'shelf'],
  ['wipe'],
  ['wiped'],
  ['pat', 'dry'],
  ['blow', 'dry'],
  ['release'],
  ['released'],
  ['may', 'be', 'used'],
  ['can', 'be', 'used'],
  ['use', 'anyway'],
  ['use', 'first'],
  ['used', 'first'],
  ['put', 'on', 'shelf'],
  ['shelve'],
];

/** Words by which someone goes further out of caution. */
export const caution: readonly Phrase[] = [
  ['safe', 'side'],
  ['to', 'be', 'safe'],
  ['be', 'sure'],
  ['make', 'sure'],
  ['safer'],
  ['for', 'safety'],
  ['just', 'in', 'case'],
  ['extra', 'safe*'],
  ['extra', 'long'],
  ['double', 'soak'],
  ['twice', 'as', 'long'],
  ['better', 'longer'],
  ['longer', 'is', 'better'],
  ['hotter', 'is', 'better'],
  ['more', 'is', 'better'],
  ['stricter'],
  ['caution'],
  ['sicherheitshalber'],
];

/** Appeals to an authority that nobody can look up unless the document is named. */
export const authorities: readonly Phrase[] = [
  ['standard*', 'require*'],
  ['standard*', 'demand*'],
  ['standard*', 'say*'],
  ['standard*', 'agree'],
  ['standards', 'bodies'],
  ['required', 'by', 'standard*'],
  ['guideline*'],
  ['guidance', 'says'],
  ['regulation*', 'require*'],
  ['required', 'by', 'law'],
  ['law', 'requires'],
  ['inspector*'],
  ['surveyor*'],
  ['accreditation'],
  ['authorities'],
  ['all', 'experts'],
  ['experts', 'agree'],
  ['best', 'practice'],
  ['studies', 'show'],
  ['evidence', 'shows'],
  ['research', 'shows'],
  ['everybody', 'agrees'],
  ['everyone', 'agrees'],
  ['it', 'is', 'well', 'known'],
];

/** Words that speak of everything without exception. */
export const universals: readonly Phrase[] = [
  ['all'],
  ['every'],
  ['always'],
  ['never'],
  ['everything'],
  ['without', 'exception'],
  ['alle'],
  ['jede*'],
  ['immer'],
  ['nie'],
];
