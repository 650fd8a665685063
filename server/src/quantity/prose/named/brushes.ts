/** Brushes as pages describe them, in English, German and French. */
export const softBrush =
  /(?<!\p{L})soft[\s,-](?:[\p{L}-]+[\s,-]+){0,2}?brush|(?<!\p{L})brush\p{L}*\s(?:that is |which is |with (?:a )?|must be |should be |of )soft|soft[\s-]brist|soft nylon|weiche[nrms]?\s(?:[\p{L}-]+\s)?[\p{L}]*bürste|(?:brosse|écouvillon|goupillon)s?\s(?:\p{L}+\s)?(?:souple|douce?)s?/iu;

/** What its bristles are; the group is that word. */
export const bristles: readonly RegExp[] = [
  /(?<!\p{L})(nylon|polyamide|plastic|natural|synthetic)[\s-]+(?:bristled?\s|bottle\s|cleaning\s|soft\s|lumen\s|channel\s|hand\s)?brush/iu,
  /(nylon|kunststoff|polyamid)[\s-]?(?:reinigungs)?bürste/iu,
  /(?:brosse|écouvillon|goupillon)s?\s(?:souple\s)?en\s(nylon|plastique|polyamide)/iu,
];

/** A brush that the sentence only describes. */
export const onlyDescribed =
  /^(?:an?\s|the\s|all\s|only\s)?(?:[\p{L}-]+,?\s){0,3}?(?:[\p{L}-]+-)?brush(?:es)?\s(?:is|are|must be|should be)\s(?:adequate|sufficient|suitable|enough|recommended|preferred|used|to be used|soft)|^only\s(?:[\p{L}-]+,?\s){0,3}?brushes\s[^.;]{0,40}\b(?:used|permitted|allowed|suitable)|^use\s(?:only\s)?(?:a\s)?(?:[\p{L}-]+,?\s){0,3}?brushes(?:\sonly)?\.?$|^(?:eine\s)?(?:weiche\s)(?:[\p{L}-]+\s)?\p{L}*bürste\s(?:genügt|reicht)/iu;
