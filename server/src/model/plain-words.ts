import { methodName } from './method-names.ts';

/** Words of a file that are codes, or that run two words together, as people say them. */
const names: ReadonlyMap<string, string> = new Map([
  ['validated_with', 'the maker tested with these'],
  ['restricted_to', 'only these may be used'],
  ['requires_class', 'any packaging cleared for the cycle'],
  ['iuss', 'immediate use'],
  ['terminal', 'packed, for later use'],
  ['stainless', 'stainless steel'],
  ['stainless-martensitic', 'hardened stainless steel'],
  ['stainless-austenitic', 'softer stainless steel'],
  ['peek', 'PEEK'],
  ['ppsu', 'PPSU'],
  ['utility', 'from the tap'],
  ['final-rinse', 'final rinse'],
  ['keep-moist', 'keep moist'],
  ['close-cart', 'close the cart'],
  ['metal-brush', 'metal brush'],
  ['instrument-milk', 'instrument milk'],
  ['maker-oil', 'oil of the maker'],
  ['silicone-spray', 'silicone spray'],
  ['sterile-water', 'sterile water'],
  ['double-wrap', 'two layers of wrap'],
  ['double-pouch', 'pouch in a pouch'],
  ['rigid-container', 'rigid container'],
  ['case-wrapped', 'wrapped case'],
  ['iuss-container', 'container for immediate use'],
  ['non-cellulose-pouch', 'pouch without paper'],
  ['jaws-open', 'jaws open'],
  ['stopcock-open', 'stopcock open'],
  ['ports-open', 'ports open'],
  ['neutral-enzymatic', 'neutral with enzymes'],
  ['mild-alkaline', 'mildly alkaline'],
  ['strong-alkaline', 'strongly alkaline'],
  ['hypochlorite', 'chlorine bleach'],
  ['hydrogen-peroxide-soak', 'soaking in hydrogen peroxide'],
  ['enzymatic-spray', 'enzymatic spray'],
  ['manual', 'by hand'],
  ['mechanical', 'washing by machine'],
  ['gamma', 'radiation'],
  ['quench', 'quick cooling'],
  ['mixed-metals', 'mixed metals'],
  ['temp-above', 'above a temperature'],
  ['ph-above', 'above a pH'],
  ['ph-below', 'below a pH'],
  ['pressure-above', 'above a pressure'],
  ['textile-liner', 'cloth liner'],
  ['silicone-mat', 'silicone mat'],
  ['visual', 'look at it'],
  ['discard-all', 'discard all'],
  ['replace-seal', 'replace the seal'],
  ['air-dry', 'dry with air'],
  ['place-indicator', 'place an indicator'],
  ['tungsten-carbide', 'tungsten carbide'],
  ['aluminium-anodised', 'anodised aluminium'],
  ['brass-chrome-plated', 'chrome-plated brass'],
  ['cemented-optics', 'cemented lenses'],
  ['tip-only', 'only the tip'],
  ['full-length', 'over the full length'],
  ['open-both', 'open at both ends'],
  ['open-one', 'open at one end'],
  ['if-visibly-soiled', 'if soil is seen'],
  ['before-machine', 'before the machine'],
  ['instead-of-machine', 'instead of the machine'],
  ['alcohol-flush', 'alcohol flush'],
  ['end-of-use', 'the end of use'],
  ['end-of-procedure', 'the end of the procedure'],
  ['flow-through', 'through the channel'],
  ['in-bracket', 'in its bracket'],
  ['one-layer', 'in one layer'],
  ['tip-down', 'tip down'],
  ['first-ratchet', 'on the first ratchet'],
]);

/** A word of a file as people say it. */
export function plainName(word: string): string {
  return names.get(word) ?? methodName(word) ?? word.replaceAll('_', ' ');
}

/** A title inside a sentence; `pH` and `A0` stay as they are. */
export function lowered(title: string): string {
  return /^\p{Lu}\p{Ll}/u.test(title) ? title.charAt(0).toLowerCase() + title.slice(1) : title;
}

export function raised(words: string): string {
  return /^\p{Ll}(?!\p{Lu})/u.test(words) ? words.charAt(0).toUpperCase() + words.slice(1) : words;
}
