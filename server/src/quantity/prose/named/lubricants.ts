import type { Named } from './named.ts';

/** The usual lubricants. */
export const lubricants: Named = [
  ['instrument-milk', /instrument milk|lubricant milk|instrumentenmilch|lait (?:pour instruments|lubrifiant)/],
  [
    'steam-permeable lubricant',
    /steam[\s-](?:permeable|penetrable) (?:\p{L}+\s)?(?:oil|grease|lubricant)|dampfdurchlässiges? (?:\p{L}*öl|schmiermittel)|huile (?:\p{L}+\s)?perméable à la vapeur/u,
  ],
  ['water-soluble', /water[\s-]soluble|wasserlöslich|hydrosoluble/],
];

/** Where it is applied, in the words of the page; the group is the place. */
export const oiledPlaces: readonly RegExp[] = [
  /\b(?:oil|lubricant|lubricate|milk|drops?|spray|grease)\b[^.;:]{0,60}?\b(?:on|onto|(?<!prior\s)to|into|through|via)\s((?:the|each|all|every)\s(?!sterili|clean|use\b|cycle|(?:instrument|device|product|handpiece)s?\b)[\p{L}\s-]{3,60}?)(?=\s(?:before|after|for|with|until|prior|thinly|lightly|sparingly|well|generously|regularly)\b|[.,;]|$)/iu,
  /(?:^|:\s)treat\s((?:the|each|all|every)\s[\p{L}\s-]{3,60}?)\swith\s[^.;:]{0,60}\b(?:oil|lubricant|grease|milk)\b/iu,
  /^(?:lubricate|oil|grease)\s((?:the|each|all|every)\s(?!(?:instrument|device|product|handpiece)s?\b)[\p{L}\s-]{3,60}?)(?=\s(?:before|after|for|with|using|until|prior|if|as|when|thinly|lightly|sparingly|well|generously|regularly)\b|[.,;]|$)/iu,
  /^((?:den|die|das|alle)\s[\p{L}\s-]{3,60}?)\s(?:vor\s[^.;:]{3,40}\s)?(?:mit\s[^.;:]{3,60}\s)(?:ölen|schmieren)/iu,
  /^(?:lubrifier|huiler)\s((?:le|la|les|l’|l')\s?[\p{L}\s-]{3,60}?)(?=\s(?:avant|après|avec)\s|[.,;]|$)/iu,
];

const whole = `(?:device|instrument|product|handpiece|unit|system|tool|forceps|scissors)s?`;
/** `Do not lubricate the motor`: a part is meant, and the device may well be lubricated. */
export const unoiledPart = new RegExp(
  String.raw`\b(?:lubricate|oil|grease)\s(?:the|its)\s(?!(?:[\p{L}-]+\s)?${whole}(?!\p{L}))\p{L}|^the\s(?!(?:[\p{L}-]+\s)?${whole}(?!\p{L}))[\p{L}-]+(?:\s[\p{L}-]+)?\s(?:must|may|should|shall|is|are)\s(?:not|never)\s(?:to\s)?(?:be\s)?(?:lubricated|oiled|greased)`,
  'iu',
);
export const oiledBefore =
  /\b(?:before|prior to)\s(?:each\s|every\s)?(?:packag\p{L}*|packing|wrapping|sterili[sz]\p{L}*)|vor (?:jeder |der |dem )?(?:verpack\p{L}*|sterilisation)|avant (?:chaque |la |l.)?(?:stérilisation|emballage|conditionnement)/iu;
