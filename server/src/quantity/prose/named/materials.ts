import type { Named } from './named.ts';

/** What devices are made of. A coating that is named by a metal is none of that metal. */
export const materials: Named = [
  ['stainless-martensitic', /martensiti/],
  ['stainless-austenitic', /austeniti/],
  ['stainless', /stainless|nicht ?rostend|rostfrei|edelstahl|(?:acier )?inox/],
  ['tungsten-carbide', /tungsten carbide|hartmetall|wolframcarbid|carbure de tungstène/],
  ['titanium', /(?<!nickel[\s-]|nitinol[\s-])titan(?:e|ium)?(?![\p{L}-]*[ -]?nitri)/u],
  ['aluminium-anodised', /anodi[sz]ed alumini?um|alumini?um,? anodi[sz]ed|eloxiert|aluminium anodisé/],
  ['aluminium', /alumini?um/],
  [
    'brass-chrome-plated',
    /chrome[\s-]plated brass|brass,?\s\(?chrome[\s-]plated|messing,? verchromt|verchromte\p{L}* messing|laiton chromé/u,
  ],
  ['chrome-plated', /chrom(?:e|ium)[\s-]plat|verchromt|chromé/],
  ['brass', /\bbrass\b|messing|laiton/],
  ['silicone', /sili[ck]one?/],
  ['peek', /\bpeek\b/],
  ['ppsu', /\bppsu\b|polyphenyl ?sulf/],
  ['acetal', /\bacetal\b|\bpom\b/],
  ['epoxy', /epox/],
  ['glass', /\bglass?\b|(?<!\p{L})verre(?!\p{L})/u],
  ['coated', /titan(?:ium)?[\s-]*nitri|\b(?:tin|dlc)[\s-]coat|\bdlc\b/],
  ['polymer', /(?<!\p{L})(?:plastics?|polymers?|kunststoffe?|plastiques?)(?!\p{L})/u],
  ['gold-plated', /gold[\s-]plated|vergoldet|plaqué or/],
];
