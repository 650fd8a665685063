/** How pages say that something is not to be used, in English, German and French: the group is what is meant. For text in small letters. */

const device = String.raw`(?:this|the|these|your)\s(?:device|instrument|product|tube|set|attachment|handpiece|unit|system)s?`;
/** What is put into a liquid: the device by whatever name, or a part of it. */
const lain = String.raw`(?:this|the|these|your)\s(?:[\p{L}-]+\s){1,3}`;

export const keptAway: readonly RegExp[] = [
  new RegExp(
    String.raw`^(?:warning:\s|caution:\s)?(?:never|do not|don.t|avoid|must not)\s(?:ever\s)?(?:(?:use|using|the use of|apply|contact with|clean(?:ing)?\s(?:${device}\s|it\s)?with|treat\s(?:${device}|it)\swith|exposure to|expose\s(?:${device}|it)\sto|(?:immerse|soak|place|leave|rinse|put|lay|transport|store|keep|wipe|flush|spray)\s(?:${lain}|it\s)?(?:in|into|with))\s)(.+)$`,
    'u',
  ),
  /^(?:the\s|all\s)?(?:instruments?|devices?|products?|it|they|parts?|items?|handpieces?|forceps)\s(?:must|may|should|shall)\s(?:not|never)\sbe\s(?:left|placed|put|soaked|immersed|stored|transported|kept|treated|cleaned|wiped|rinsed|sprayed)\s(?:in|into|with)\s(.+)$/u,
  /^(.+?)\s(?:must not|may not|shall not|should not|must never|are not to|is not to|cannot)\sbe\sused$/,
  /^(?:[^.;:]{0,60}?\s)?(?:must not|should not|may not|must never|should never|never)\s(?:be allowed to\s)?(?:come|get)\s(?:in|into) contact with\s(.+)$/,
  /^(?:contact with|exposure to|(?:the )?use of)\s(.+?)\s(?:must|should|is to|are to|has to)\sbe\savoided$/,
  /^(.+?)\s(?:is|are)\s(?:strictly\s)?(?:forbidden|prohibited|not permitted|not allowed|unsuitable|not suitable)$/,
  /^(?:bitte\s)?(?:keine[nr]?)\s(.+?)\s(?:verwenden|benutzen|einsetzen)$/,
  /^(.+?)\s(?:sind|ist)\s(?:verboten|untersagt|nicht (?:zulässig|erlaubt|geeignet)|unzulässig)$/,
  /^(.+?)\s(?:dürfen|darf)\s(?:nicht|niemals)\s(?:verwendet|benutzt|eingesetzt)\swerden$/,
  /^(.+?)\s(?:nicht|niemals)\s(?:verwenden|benutzen|einsetzen)$/,
  /^(?:verwenden sie\s)?weder\s(.+?)(?:\sverwenden)?$/,
  /^nicht (?:in|mit) (.+?) (?:einlegen|legen|spülen|behandeln|reinigen)$/,
  /^nicht mit\s(.+?)\sin\s(?:kontakt|berührung)\s(?:bringen|kommen lassen)$/,
  /^(?:den\s)?kontakt mit\s(.+?)\svermeiden$/,
  /^(?:ne\spas\sutiliser|n.utilise[zr]?\s(?:pas|jamais)|ne\sjamais\sutiliser|éviter (?:le contact avec|l.utilisation))\s(?:d.|de\s|des\s|les\s)?(.+)$/,
  /^(?:les?\s|la\s|l.)?(.+?)\s(?:est|sont)\s(?:interdit|proscrit)e?s?$/,
];

/** What stands before the name of an agent and says no more than that it is one. */
export const beginnings =
  /^(?:no|other|(?:the )?use of|d.|de\s|des\s|du\s|keine?)\s+|^any\s+|^(?:solutions?|agents?|products?|detergents?|cleaners?|lubricants?|oils?|sprays?|greases?)\s(?:that contain|containing|with|based on)\s|^(?:lösungen|mittel|produkte) mit\s|^(?:solutions?|produits?) (?:contenant|à base) (?:d.|de\s|du\s|des\s)?/i;

/** Ends of a sentence that narrow nothing: whom it is meant for, and why. */
export const idle = new RegExp(
  String.raw`\s(?:(?:on|for|with|to clean)\s(?:${device})|for\s(?:flushing|rinsing|soaking|wiping|moistening|transport|irrigation|cleaning|reprocessing|disinfection|pre-?treatment)|at any (?:step|time|stage)|during (?:reprocessing|cleaning|any step)|to keep (?:it|${device}) (?:moist|wet))$`,
);
export const why =
  /,\s(?:which|die|der|qui)\s.+$|,?\s(?:as|because|since|da|weil|car)\s(?:they|it|this|these|sie|es|ils?|elles?)\s.+$/;

export const narrows =
  /(?<!\p{L})(?:on|for|in|if|when|unless|while|during|before|after|above|below|with|without|more|longer|than|to|near|that|which|except|auf|bei|wenn|vor|nach|ohne|mit|sur|pour|si|avant|après|sans|dans)(?!\p{L})/u;

/** `water above 40 °C`, `hot water (over 45 °C)`: an item that is a heat. For text in small letters. */
export const hotter =
  /^(?:(?:hot|warm|heiße[ms]?|d.eau|eau)\s)?(?:(?:water|solutions?|liquids?|wasser|eau|chaude|temperatures?)\s)?\(?(?:above|over|hotter than|warmer than|of more than|at more than|exceeding|über|heißer als|de plus de|à plus de|supérieure à)\s[\d.,]+\s?°?\s?[cf]\)?$/u;
