/** Phases of a machine by the names that pages give them, in English, German and French. */

export type PhaseName = 'prewash' | 'enzyme_wash' | 'final_rinse' | 'neutralise' | 'thermal' | 'dry' | 'rinse' | 'wash';

/** What a name begins with, in small letters. */
export const phases: readonly (readonly [PhaseName, RegExp])[] = [
  [
    'prewash',
    /(?<=(?:cold|first|initial) (?:water )?)(?<!(?:wash|clean)[^.]{0,120})rins|pre-?wash|pre-?rins|pre-?clean|vorspül|vorwasch|vorreinig|prélav|pré-lav|prérinç|pré-rinç|prénettoy|pré-nettoy/g,
  ],
  ['enzyme_wash', /enzym\p{L}* (?:wash|clean)|enzymatische (?:wäsche|reinigung(?!s))|lavage enzym/gu],
  [
    'final_rinse',
    /(?:final|last|(?:pure|purified|critical|deioni[sz]ed|demineralised) water|final water) rins|schlussspül|endspül|nachspül|letzte spül|rinçage final|dernier rinçage/g,
  ],
  ['neutralise', /neutralis|neutraliz/g],
  ['thermal', /disinf|desinf|désinf/g],
  ['dry', /(?<!\p{L})dr(?:y|ie)|trock|séch/gu],
  [
    'rinse',
    /(?<!pre-?|final |water |last )rins|(?<!vor|schluss|end|nach|letzte )spül|(?<!pré|pré-|dernier )rinç(?!age final)/g,
  ],
  [
    'wash',
    /(?<!pre-?|enzym\p{L}* )(?<!\p{L})wash(?!er)|(?<!pre-|enzym\p{L}* )(?<!\p{L})clean(?!er)|(?<!\p{L})reinig(?!er|ungs)|hauptwasch|(?<!pré|pré-)lavage(?! enzym)|(?<!pré|pré-)nettoy/gu,
  ],
];

/** The rinse after which no other follows, by hand as in a machine. */
export const lastRinse =
  /(?<!\p{L})(?:final(?:ly)?|last)(?!\p{L}).{0,10}\brins|schlussspül|letzte spül|rinçage final|dernier rinçage/iu;
