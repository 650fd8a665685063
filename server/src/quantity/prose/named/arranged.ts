/** How pages say in which position something is packed and sterilized, in English, German and French. */

const states = `(?:open(?:ed)?|loose(?:ly)?|unlocked|unlatched|unscrewed|apart|separated?|disassembled|dismantled|disconnected|detached|uncapped|slack|half-?open|offen|geöffnet|lose|locker|gelöst|ouvert(?:e?s?)|desserré(?:e?s?)|séparé(?:e?s?))`;

/** `Leave the tap open`, `tips are left loose by one turn`, `do not tighten it before sterilization`. */
export const leftSo = new RegExp(
  String.raw`(?<!\p{L})(?:leave|left|keep|kept|remains?|set|placed?|reassembled?|re-?fit(?:ted)?|laissée?s?|laisser|garder|maintenir)(?!\p{L}).{0,60}(?<!\p{L})${states}(?!\p{L})|(?<!\p{L})${states}\s(?:lassen|belassen)|(?:do not|never|not be)\s(?:fully\s|completely\s)?tighten(?:ed)?(?!\p{L}).{0,30}\bsterili[sz]|nicht festziehen.{0,30}sterilis|ne pas serrer.{0,30}stérilis`,
  'iu',
);

/** A request that says where and how something lies in its package. */
export const laidSo =
  /^(?:always\s|carefully\s)?(?:place|lay|put|position|arrange|fit|leave|keep|close|open|secure|fix|protect|cover|orient|insert|attach|coil|separate|space|slide|clip|turn|point|tilt|align|load|distribute|guard|push|disconnect|retract|extend|lock|unlock)\s|(?:einlegen|legen|stecken|aufstecken|ablegen|anordnen|fixieren|schützen|abdecken|öffnen|schließen|lagern|verschließen)\.?$|^(?:placer|poser|disposer|insérer|fixer|protéger|couvrir|ouvrir|fermer|enrouler|orienter|ranger|séparer)\s/iu;

/** The same of a thing: `Clamps are placed in the rack`, `the ends must not touch the wall`. */
export const liesSo =
  /^(?:(?:the|all|each|every|both|no|die|der|das|alle|les?|la)\s)?[\p{L}\s,/-]{2,60}?\s(?:(?:must|should|shall|may|can|are|is|has to|have to|need to)\s(?:always\s|not\s|never\s|only\s|to\s)*(?:be\s)?(?:(?:removed|taken|separated)\s[\p{L}\s]{3,40}\sand\s)?(?:placed|laid|positioned|arranged|fitted|kept|closed|opened|secured|fixed|protected|covered|inserted|attached|coiled|separated|spaced|locked|unlocked|held|touch|lie|overlap|face|point|contact|hang|rest|put)|(?:dürfen|darf|müssen|muss|sollen)\s(?:sich\s)?(?:nicht\s)?[^.;]{2,60}(?:berühren|liegen|gelegt werden|geöffnet sein|aufeinanderliegen)|(?:doivent|doit|ne doivent pas|ne doit pas)\s(?:se\s)?(?:être\s(?:placé|posé|disposé|protégé|ouvert|fermé)|toucher|reposer))(?!\p{L}.{0,80}\b(?:within|minutes|hours))/iu;

/** The package itself, what shows that it went through a cycle, and loads: no position of the device. */
export const notOfThePosition =
  /(?<!\p{L})(?:indicators?|labels?|label(?:l)?ed|tape|seal(?:ed|ing)?s?|expir\p{L}*|dates?|barriers?|pouches|pouch|wraps?|wrapped|containers?\s(?:maker|lid|filter)|manufacturer|autoclave|chamber|sterili[sz]er|shelf|weigh\p{L}*|indikator\p{L}*|etikett\p{L}*|siegel\p{L}*|folie\p{L}*|indicateurs?|étiquettes?|sachets?)(?!\p{L})/iu;

/** Nothing may lie on it. */
export const notStacked =
  /(?<!\p{L})(?:(?:do not|don.t|never|must not be|may not be|should not be|not to be|no)\s(?:be\s)?stack(?:ed|ing)?|(?:nothing|no (?:other )?(?:items?|packs?|trays?))\s(?:may|must|should|can|is to|are to)\sbe\s(?:placed|laid|put|stacked)\son|(?:nicht|niemals)\s(?:\p{L}+\s)?(?:stapeln|gestapelt)|ne (?:pas|jamais) (?:les |l.)?empiler)(?!\p{L})/iu;

/** No cloth and no mats of silicone below it. */
export const noLiner =
  /(?<!\p{L})(?:no|not|never|without)(?!\p{L}).{0,60}(?<!\p{L})(?:towels?|(?:textile|cloth|tray|fabric|cotton) liners?|linen)(?!\p{L})|(?:keine?|ohne)\s(?:\p{L}+\s)?(?:textil\p{L}*|tücher)|sans (?:linge|textile)/iu;
export const noMat =
  /(?<!\p{L})(?:no|not|never|without)(?!\p{L}).{0,60}silicone mats?|(?:keine?|ohne)\s(?:\p{L}+\s)?silikonmatten?|sans tapis (?:de|en) silicone/iu;

export const aboutLoading =
  /(?<!\p{L})(?:pack(?:ag\p{L}*|ing)|(?:un)?load(?:ing)? (?:the\s|of\s)?(?:the\s)?(?:case|tray|basket|box)|tray|case|verpack\p{L}*|emball\p{L}*|conditionnement)(?!\p{L})/iu;

/** Headings under which positions are those of the package. */
export const aboutPacking =
  /(?<!\p{L})(?:pack(?:ag\p{L}*|ing)|wrapping|assembly|re-?assembly|load(?:ing)?|tray|verpack\p{L}*|zusammenbau\p{L}*|montage|emball\p{L}*|conditionnement|remontage|assemblage)(?!\p{L})/iu;
