import type { Named } from './named.ts';

/** Classes of detergents: `mildly alkaline` before `alkaline`. */
export const detergentClasses: Named = [
  [
    'neutral-enzymatic',
    /neutral[\s,-]+(?:ph[\s,-]+)?enzym|enzym\p{L}*[\s,-]+(?:ph[\s-]+)?neutral|ph[\s-]neutral\p{L}*,? enzym/u,
  ],
  ['enzymatic', /enzym/],
  [
    'mild-alkaline',
    /mild(?:ly)?[\s-]+alkalin|mild(?:e[nrsm]?)?[\s-]?alkalisch|schwach ?alkalisch|(?:légèrement|faiblement) alcalin/,
  ],
  ['alkaline', /alkaline|alkalisch|alcalin/],
  ['neutral', /(?<!\p{L})(?:ph[\s-]*)?neutr(?:al(?!i[sz])|e(?!\p{L}))/u],
];

export const cleaners =
  /detergent|cleaner|cleaning (?:agent|solution)|solution|reiniger|reinigungsmittel|reinigungslösung|lösung|détergent|nettoyant/;

/** Whoever made the detergent says how much of it: `as its label says`. */
export const leftToTheLabel =
  /(?:per|see|follow\p{L}*|according to|as (?:directed|specified|stated|described) (?:by|on|in)|in accordance with|made up as|prepared as) (?:the |its |their )?(?:detergent |cleaner |product )?(?:manufacturer|maker|label|supplier)|(?:nach|gemäß|laut) (?:den )?(?:angaben|herstellerangaben|anweisung\p{L}*|dosier\p{L}*)|selon (?:les )?(?:indications|instructions|recommandations)|see label/u;

/** The sentence says which detergent, and asks for no step. */
export const detergentNamed =
  /^(?:(?:use|only use|use only|choose|select)\s(?:an?\s|only\s)?[^.;:]{0,60}(?:detergent|cleaner|cleaning agent)s?\b|(?:detergent|cleaner|cleaning agent|chemistry|reiniger|reinigungsmittel|détergent)s?\s?:|(?:an?\s|only\s)?[^.;:]{3,60}(?:detergent|cleaner|cleaning agent)s?\s(?:is|are|must be|should be|has to be|may be|can be)\s(?:to be\s)?(?:used|recommended|suitable|required))/iu;

/** What neutralises, in the words of the page; the group is the agent. */
export const neutralising: readonly RegExp[] = [
  /(?<!\p{L})((?:citric|phosphoric|acetic|organic|weak|mild)\s(?:\p{L}+\s)?acid(?:[\s-]based)?(?:\s(?:neutrali[sz]er|neutrali[sz]ing agent|agent|product|solution))?)(?!\p{L})/iu,
  /(?<!\p{L})(acid(?:ic|[\s-]based)?\s(?:neutrali[sz]er|neutrali[sz]ing agent|agent|product|rinse))(?!\p{L})/iu,
  /(?<!\p{L})((?:saures?|saurer)\s(?:neutralisationsmittel|neutralisator)|neutralisationsmittel auf basis (?:von\s)?\p{L}+säure|(?:zitronen|phosphor|essig)säure)(?!\p{L})/iu,
  /(?<!\p{L})(neutralisant (?:acide|à base d.acide \p{L}+)|acide (?:citrique|phosphorique|acétique))(?!\p{L})/iu,
];
