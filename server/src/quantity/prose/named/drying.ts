import type { Named } from './named.ts';

/** How pages dry a device, in English, German and French. For text in small letters unless a pattern says otherwise. */

export const dryingMeans: Named = [
  ['air', /(?<!\p{L})air(?!\p{L})|air[\s-]?(?:gun|pistol)|druckluft|(?<!\p{L})luft(?!\p{L})/u],
  ['cloth', /cloth|(?:lint-free|dry|paper|soft|absorbent)\s(?:wipe|towel)|tuch|tüchern|chiffon|lingette/],
  ['cabinet', /cabinet|schrank|armoire|étuve/],
];

/** The group is the grade of the air. */
export const airGrades: readonly RegExp[] = [
  /(?<!\p{L})(medical|filtered)(?:[\s-](?:grade|quality))?,?\s(?:[\p{L}-]+,?\s){0,2}air(?!\p{L})/iu,
  /(?<!\p{L})(?:air|druckluft)\s(?:of|with|in)\s(medical)\s(?:grade|quality)/iu,
  /(?<!\p{L})air\s\((medical|filtered)[^)]*\)/iu,
];
/** In other words than ours. */
export const medicalAir = /(?:medizinische|medizinischer)\s(?:druck)?luft|air (?:comprimé )?(?:à usage )?médical/iu;
export const filteredAir = /(?:gefilterte|filtrierte)[rn]?\s(?:druck)?luft|air (?:comprimé )?filtré/iu;

/** Until when; the group is that state. */
export const dryUntil: readonly RegExp[] = [
  /(?<!\p{L})(?:until|till)\s((?:there is |there are )?no\s[^.;,]{0,40}?(?:moisture|water|droplets?|drops?|liquid|humidity)\b[^.;,]{0,40}|[^.;,]{0,40}(?:moisture|water|droplets?)\s(?:is|are)\s(?:no longer visible|visible no more|left)|(?:it is |they are |all parts are |all surfaces are |the \p{L}+ (?:is|are) )?(?:completely |fully |thoroughly |visibly )?dry)(?=[.;,]|$)/iu,
  /^((?:no|there must be no)\s(?:\p{L}+\s)?(?:moisture|water|liquid|droplets)\s(?:may|must|should|shall|can|left|is|are)\b[^.;]{0,60}?)\.?$/iu,
  /^(?:make sure|ensure)\s(?:that\s)?((?:there is\s)?no\s(?:\p{L}+\s)?(?:moisture|water|liquid|droplets)\b[^.;]{0,60}?)\.?$/iu,
  /^(es dar?f\s(?:keine?|kein)\s(?:rest)?(?:feuchte|feuchtigkeit|wasser)\s?[^.;]{0,60}?)\.?$/iu,
  /(?<!\p{L})bis\s((?:keine|kein)\s[^.;,]{0,40}?(?:feuchtigkeit|wasser|tropfen)[^.;,]{0,40})(?=[.;,]|$)/iu,
  /(?<!\p{L})jusqu.à\s(ce qu.il n.y ait plus [^.;,]{3,60})(?=[.;,]|$)/iu,
];

/** Acts that dry, though none of them says so. */
export const driesSo =
  /^(?:then\s|carefully\s)?(?:blow|wipe|use|remove|clear|purge|ausblasen|souffler|essuyer)\b|ausblasen\.?$|\b(?:is|are|must be|should be)\s(?:blown|wiped|removed)\b/iu;
