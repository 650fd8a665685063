/** How and where something is kept, in English, German and French; the group is the place in the words of the page. */
export const places: readonly RegExp[] = [
  /^(?:[\p{L}-]+\s){0,6}?stored?\s(?:[\p{L}-]+\s){0,2}?(in\s(?:an?\s)?(?:[\p{L}-]+,\s){1,4}(?:and\s)?(?:[\p{L}-]+\s){0,2}?(?:place|room|area|location|cupboard|cabinet|environment|conditions?)s?(?:,?\s(?:protected|away|free)\s[^,;:.\d]*)?)/iu,
  /^(?:packed\s|the\s|sterile\s|are\s|is\s|must\s|be\s|should\s|\p{L}+\s){0,6}?stored?\s(?:[\p{L}-]+\s){0,3}?((?:(?:flat|level|upright|lying|horizontally|vertically|standing|hanging|closed|individually|separately)(?:\sand\s\p{L}+)?,?\s)?(?:in\s|at\s|away\s|dry|free\s|clean|protected\s|cool)[^,;:.\d]*(?:(?:,\s\p{L}{1,30}){1,6},?\s(?:and|or)\s\p{L}[^,;:.\d]*|,\s(?:protected|shielded|away|free)\s[^,;:.\d]*)?)/iu,
  /^keep\s(?:(?:the\s|all\s)?(?:(?:sterile\s|wrapped\s|packed\s)?(?:packs?|packages?|devices?|instruments?|items?|sets?|trays?)|(?:packaged|wrapped|packed|sterile)\s\p{L}{3,20})\s)?((?:in\s|at\s|away\s|dry|free\s|clean|protected\s|cool)[^;:.\d]*)/iu,
  /^([^.;:\d]{3,80}?)\s(?:bei\s\d[^.;]*\s|zwischen\s\d[^.;]*\s)?(?:zu\s)?(?:lagern|aufbewahren|gelagert|lagern sie)(?!\p{L})/iu,
  /^(?:conserver|stocker|ranger|entreposer)\s(?:les?\s\p{L}+\s)?((?:au |à |dans |en |hors )[^;:.\d]*)/iu,
];

/** A place by itself, under a heading of keeping: `Dust-tight cupboard`. */
export const placesAlone =
  /^((?:an?\s)?(?:[\p{L}-]+,?\s){1,4}(?:cupboard|cabinet|room|place|area|shelf|shelves|drawer|environment|schrank|raum|armoire|local)s?)(?=[,.;]|$)/iu;

/** Words at the end of a place that lead on to a number. */
export const leadingOn =
  /(?:(?:^|,\s|\s)(?:at|for|no longer than|not longer than|a maximum of|at most|up to|below|under|between|from|not above|no more than|a|(?<!room\s)temperatures?|of|room(?!\stemperature)|entre|de|à|bei|zwischen|von))+$|,$/iu;

/** A heading or a sentence about keeping: what is dry there is a place, and nothing is dried. */
export const aboutStoring =
  /(?<!\p{L})(?:stor(?:e|ed|age|ing)|keeping|shelf[\s-]life|gelagert|lager(?:n|ung)|aufbewahr\p{L}*|stock(?:er|age)|conserv\p{L}*|entreposer)(?!\p{L})/iu;
