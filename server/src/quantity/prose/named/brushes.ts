/** Brushes as pages describe them, in English, German and French. */
export const softBrush =
  /(?<!\p{L})soft[\s,-](?:[\p{L}-]+[\s,-]+){0,2}?brush|weiche[nrms]?\s(?:[\p{L}-]+\s)?[\p{L}]*bürste|(?:brosse|écouvillon|goupillon)s?\s(?:\p{L}+\s)?(?:souple|douce?)s?/iu;

/** What its bristles are; the group is that word. */
export const bristles: readonly RegExp[] = [
  /(?<!\p{L})(nylon|polyamide|plastic|natural|synthetic)[\s-]+(?:bristled?\s|bottle\s|cleaning\s|soft\s|lumen\s)?brush/iu,
  /(nylon|kunststoff|polyamid)[\s-]?(?:reinigungs)?bürste/iu,
  /(?:brosse|écouvillon|goupillon)s?\s(?:souple\s)?en\s(nylon|plastique|polyamide)/iu,
];
