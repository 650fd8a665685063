import type { Named } from './named.ts';

/** What is done where the device was used, in English, German and French. For text in small letters. */

/** Soil is kept from drying on, by whatever means. */
export const moistKept: readonly RegExp[] = [
  /\b(?:keep|kept|keeping|stay|remain|transport(?:ed)?)\b.{0,40}\b(?:moist|wet|damp|humid)\b/,
  /\b(?:cover|wrap|lay|place|put|store|transport)\p{L}*\b.{0,80}\b(?:moist(?:ened)?|damp(?:ened)?|wet(?:ted)?|soaked)\s(?:with\s(?:\p{L}+\s){1,2})?(?:\p{L}+-?\p{L}*\s){0,2}(?:cloth|towel|gauze|swab|drape|wipe|compress|lint)|\b(?:cover|wrap)\p{L}*\b.{0,60}\b(?:cloth|towel|gauze|drape|compress)\p{L}*\s(?:that (?:is|has been) )?(?:moistened|dampened|wetted|soaked|damp|moist)\b/u,
  /\b(?:spray|cover|coat)\p{L}*\b.{0,60}\b(?:moist\p{L}*|humectant|pre-?treatment|enzym\p{L}*)\b.{0,20}\b(?:spray|foam|gel|solution|agent|product)/u,
  /(?:do not|don.t|never|must not|not)\s(?:be\s)?(?:allow\p{L}*|let|permit\p{L}*|left)\b.{0,60}\bdry\b/u,
  /\b(?:prevent|avoid|stop|keep)\p{L}*\b.{0,50}\b(?:from drying|drying[\s-](?:on|out|in|of)|dried[\s-]on|to dry)/u,
  /\b(?:must|should|may|shall)\s(?:not|never)\s(?:be allowed to\s)?dry\s(?:on|out|in)\b/,
  /feucht.{0,20}(?:halten|gehalten)|(?<!\p{L})feucht\s.{0,60}transportier|feuchte[nms]? (?:tuch|tücher|kompresse)\p{L}*.{0,40}(?:abdecken|bedecken|einschlagen|einwickeln|ablegen)|(?:an|ein)trocknen.{0,40}(?:vermeiden|verhindern|verhindert)|(?:nicht|keinesfalls) (?:an|ein)trocknen/u,
  /maintenir.{0,30}humide|(?:recouvrir|couvrir|envelopper).{0,40}humide|ne (?:pas|jamais) laisser.{0,30}sécher|éviter.{0,40}sèche/,
];

/** With what: words of the list of agents. */
export const moisteners: Named = [
  ['enzymatic-spray', /enzym\p{L}*[\s-](?:\p{L}+[\s-])?(?:spray|foam|solution)|enzymspray|enzymschaum/u],
  ['gel', /\bgels?\b/],
  ['sterile-water', /sterile water|steriles wasser|eau stérile/],
];

/** What is taken off there; the group is that. */
export const takenOff: readonly RegExp[] = [
  /^(?:(?:first|then|always|immediately),?\s)?(?:disconnect|unplug|detach)\s(?:the\s|all\s|every\s)?((?:[\p{L}-]+\s){0,2}[\p{L}-]+?(?:\sand\s(?:the\s)?[\p{L}-]+(?:\s[\p{L}-]+)?)?)(?=\s(?:by|from|and|immediately|before|at|with|without)(?!\p{L})|[.,;]|$)/iu,
  /^remove\s(?:the\s|all\s|every\s)?((?:[\p{L}-]+\s){0,1}(?:cables?|cords?|batter(?:y|ies)|hoses?|tubing|tubes?|light guides?|handpieces?|adapters?|needles?|blades?|obturator|stylet|caps?))(?=\s(?:by|from|and|immediately|before|at|with|without)(?!\p{L})|[.,;]|$)/iu,
  /^(?:take|pull)\s(?:the\s)?((?:[\p{L}-]+\s)?[\p{L}-]+)\s(?:off|out)(?:\s(?:of\s)?(?:the\s)?[\p{L}-]+)?[.!]?$/iu,
  /^(?:the\s|all\s)?((?:[\p{L}-]+\s)?[\p{L}-]+)\s(?:must be|is|are|should be)\s(?:disconnected|unplugged)/iu,
];

/** The sentence is about what was not cleaned in time. */
export const whenDelayed =
  /\b(?:cannot|can not|could not|not)\s(?:be\s)?(?:immediately\s|possible\s)?(?:cleaned|processed|reprocessed|begin|start|clean|take place)|^(?:if|where|when|in case)\b.{0,80}\b(?:delay|not possible|longer|more than|exceed)|nicht (?:sofort |innerhalb .{1,20})?(?:gereinigt|aufbereitet) werden|^(?:wenn|falls|sofern)\b.{0,80}(?:verzögert|nicht möglich|überschritten|länger)|^si\b.{0,80}(?:impossible|retard|dépass|différé|pas possible)/iu;

/** What is kept apart from what; the group is that. */
export const keptApart: readonly RegExp[] = [
  /^(?:separate|keep)\s(?:the\s)?([^.;:]{3,60}\s(?:apart\s|separate\s|away\s)?from\s[^.;:]{3,60}?)[.!]?$/iu,
  /^((?:[\p{L}-]+\s){1,5})(?:is|are|must be|should be)\s(?:kept\s|placed\s|transported\s|carried\s|stored\s)?(?:separate(?:ly)?|apart)[.!]?$/iu,
  /^((?:[\p{L}-]+\s){1,5}(?:is|are|must be|should be)\s(?:kept\s|placed\s|transported\s|carried\s|stored\s)?(?:separate(?:ly)?|apart|separated)\sfrom\s[^.;:]{3,60}?)[.!]?$/iu,
];
