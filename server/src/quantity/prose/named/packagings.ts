import type { Named } from './named.ts';

/** Packagings, each as its own words have it: a pouch in a pouch is no single pouch. */
export const packagings: Named = [
  [
    'double-wrap',
    /double[\s-](?:\p{L}{2,16}[\s-])?wrap|(?:two|2|double) (?:layers?|sheets?) of (?:[\p{L}\d-]+\s){0,3}(?:wrap|non-?woven|crepe|fleece)|wrap(?:ped|ping)? (?:in (?:two|2) (?:layers|sheets)|twice)|doubly wrapped|(?:zwei|2|doppelte?n?) lagen? (?:\p{L}{2,20}\s)?\p{L}*(?:vlies|papier)|doppelt (?:eingeschlagen|verpackt|in \p{L}*vlies)|double emballage|deux (?:couches|feuilles) de non[- ]tissé/u,
  ],
  [
    'rigid-container',
    /(?:rigid|sterili[sz]ation|sterili[sz]ing|set|sterile|filter|instrument|reusable)[\s-](?:(?:reusable\s)?(?:sterili[sz]ation|sterili[sz]ing|filter)[\s-])?container|containers? with (?:an? )?filter|^(?:in )?(?:an? )?containers?\.?$|sterilisier?\p{L}*container|hartcontainer|sterilcontainer|sterilgutcontainer|sterilisationscontainer|conteneurs? (?:rigide|de stérilisation)/u,
  ],
  [
    'double-pouch',
    /(?<!\p{L})(?:double|two|2|twin)[\s-](?:[\p{L}-]+[\s-]){0,3}pouch|pouch(?:es)? \(double\)|pouch(?:es)?\s(?:in|inside|within)\s(?:an?|another)\s(?:\p{L}+\s)?pouch|doppelt?e?[rn]?\s?(?:klarsicht|folien|papier|steril)\p{L}*(?:verpackung|beutel)|double sachet|sachet double|double gaine/u,
  ],
  ['pouch', /pouch|klarsichtverpackung|(?:klarsicht|folien|steril)beutel|sachet|peel[\s-]pack/],
  // Of one layer, or of a number that is not said.
  [
    'wrap',
    /(?<!\p{L})(?:single |one layer of |sterili[sz]ation |non-?woven )?wrap(?:ping material|s)?(?=[\s.;,)]*$)|(?<!\p{L})sterili[sz]ation wrap|einfach(?:e[rs]?)? \p{L}*vlies/u,
  ],
];

/** How it is when packed, in the words of the page; the group is that. */
export const packedSo: readonly RegExp[] = [
  /^(?:keep|leave|set)\s(?:all\s)?((?:the\s)?[^.;:,]{3,40}?\s(?:open|opened|unlocked|apart|on the (?:first|last) (?:tooth|notch|ratchet))(?:\s[^.;:]{2,40})?)[.;]?$/iu,
  /^((?:\p{L}+\s){1,3}(?:geöffnet|offen|in der ersten raste))\s(?:lassen|verpacken)[.;]?$/iu,
  /^(?:garder|laisser|maintenir)\s((?:les?\s|la\s|l.)[^.;:,]{3,60}?\souverte?s?)[.;]?$/iu,
];

/** The page says that only these may be used, or that it was tried out with them; otherwise it leaves that open. */
export const relations: Named = [
  // A property is asked for, whoever makes it.
  [
    'requires_class',
    /(?:fda[\s-]|legally )(?:cleared|marketed)|\bcleared for\b|ce[\s-]mark|\b(?:conform|compl|accord)\p{L}*\s(?:to|with)\s(?:the\s)?(?:din\s|en\s|iso\s|ansi)|\biso 11607\b/u,
  ],
  ['validated_with', /\b(?:validated|tested|qualified)\b|validiert|geprüft mit|validée?s? (?:avec|en|dans)/],
  [
    'restricted_to',
    /\bonly\b|\bexclusively\b|(?<!\p{L})nur(?!\p{L})|ausschließlich|uniquement|seulement|exclusivement/u,
  ],
];
