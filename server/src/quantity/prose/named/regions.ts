import type { Named } from './named.ts';

/** Markets as the files call them. For text in small letters. */
export const regions: Named = [
  ['US', /(?<!\p{L})(?:usa?|u\. ?s\.(?: ?a\.)?|united states|vereinigte staaten|états-unis)(?!\p{L})/u],
  ['EU', /(?<!\p{L})(?:europ\p{L}*|eu|e\.u\.|union européenne|ue)(?!\p{L})/u],
  ['UK', /(?<!\p{L})(?:uk|u\.k\.|united kingdom|great britain|großbritannien|royaume-uni)(?!\p{L})/u],
  ['CA', /(?<!\p{L})(?:canada|kanada)(?!\p{L})/u],
  ['AU', /(?<!\p{L})(?:australi[ae]n?|australien|australie)(?!\p{L})/u],
  ['JP', /(?<!\p{L})(?:japan|japon)(?!\p{L})/u],
];
