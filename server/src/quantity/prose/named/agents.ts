import type { Named } from './named.ts';

/** Agents and tools that pages keep away from devices. */
export const agents: Named = [
  ['hypochlorite', /bleach|hypochlor|chlorine|chlor(?:bleich|haltig)|javel|chloré/],
  ['aldehyde', /aldehyd|aldéhyd/],
  [
    'metal-brush',
    /(?:metal|metallic|wire|steel|brass)[\s-]+brush|(?:metall|draht|stahl)bürst|brosses? (?:métalli|en métal)/,
  ],
  ['abrasive', /abrasive|scour|steel wool|scheuer|stahlwolle|abrasif|laine d.acier|tampons? à récurer/],
  ['saline', /saline|salt solution|kochsalz|(?:solution saline|sérum physiologique)/],
  ['iodine', /iodine|povidone|(?<!\p{L})jod|(?<!\p{L})iode/u],
  ['chlorhexidine', /chlorhexidin/],
  ['alcohol', /alcohol|ethanol|isopropanol|alkohol|alcool/],
  ['silicone', /sili[ck]on/],
  ['oil', /\boils?\b|\böle?\b|huile/],
  ['rinse-aid', /rinse[\s-]aid|klarspül/],
  ['neutraliser', /neutrali[sz]er|neutralisationsmittel|neutralisant/],
  ['enzymatic', /^enzym\p{L}*(?:\s\p{L}+)?$/u],
  ['acid', /^acid(?:s|ic)?(?:\s(?:agents?|cleaners?|detergents?|solutions?))?$|^säuren?$|^acides?$/],
  [
    'alkaline',
    /^alkali(?:s|es|ne)?(?:\s(?:agents?|cleaners?|detergents?|solutions?))?$|^laugen?$|^alkalische\p{L}*\s\p{L}+$|^alcalins?$/u,
  ],
];

/** An agent with one of these words before it is less than all of its kind. */
export const qualified =
  /\b(?:(?:(?:in)?organic|mineral|oxidi[sz]ing)(?= acid)|strong|strongly|concentrated|undiluted|highly|hot|high|pure|starke[nrs]?|heiße[nrs]?|konzentrierte[nrs]?|fort(?:e?s)?|concentré)/;
