import type { Named } from './named.ts';

/** Packagings, each as its own words have it: a pouch in a pouch is no single pouch. */
export const packagings: Named = [
  [
    'double-wrap',
    /double[\s-](?:\p{L}{2,16}[\s-])?wrap|(?:two|2|double) (?:layers?|sheets?) of (?:[\p{L}\d-]+\s){0,3}(?:wrap|non-?woven|crepe|fleece)|wrap(?:ped)? (?:in (?:two|2) layers|twice)|doubly wrapped|(?:zwei|2|doppelte?n?) lagen? (?:\p{L}{2,20}\s)?\p{L}*(?:vlies|papier)|doppelt (?:eingeschlagen|verpackt|in \p{L}*vlies)|double emballage|deux (?:couches|feuilles) de non[- ]tissé/u,
  ],
  [
    'rigid-container',
    /(?:rigid|sterili[sz]ation|sterili[sz]ing)\s(?:(?:reusable\s)?(?:sterili[sz]ation|sterili[sz]ing)\s)?container|sterilisier?\p{L}*container|hartcontainer|sterilcontainer|sterilgutcontainer|sterilisationscontainer|conteneurs? (?:rigide|de stérilisation)/u,
  ],
  [
    'double-pouch',
    /(?<!\p{L})(?:double|two|2|twin)[\s-](?:[\p{L}-]+[\s-]){0,3}pouch|pouch(?:es)? \(double\)|pouch(?:es)?\s(?:in|inside|within)\s(?:an?|another)\s(?:\p{L}+\s)?pouch|doppelt?e?[rn]?\s?(?:klarsicht|folien|papier|steril)\p{L}*(?:verpackung|beutel)|double sachet|sachet double|double gaine/u,
  ],
  ['pouch', /pouch|klarsichtverpackung|(?:klarsicht|folien|steril)beutel|sachet/],
];

/** The page says that only these may be used, or that it was tried out with them; otherwise it leaves that open. */
export const relations: Named = [
  ['validated_with', /\b(?:validated|tested|qualified)\b|validiert|geprüft mit|validée?s? (?:avec|en|dans)/],
  [
    'restricted_to',
    /\bonly\b|\bexclusively\b|(?<!\p{L})nur(?!\p{L})|ausschließlich|uniquement|seulement|exclusivement/u,
  ],
];
