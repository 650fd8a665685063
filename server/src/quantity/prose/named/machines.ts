/** How a device is put into a machine, in English, German and French; the group is what the page calls it. */

/** What a channel is joined to. */
const joined = `(?:nozzle|connector|connection|adapt[eo]r|port|luer|spigot|manifold|lance|düse|anschluss|adapter|konnektor|buse|connecteur|embout|adaptateur|raccord)`;
export const connectors: readonly RegExp[] = [
  /\b(?:connect|attach)(?:ed)?\b\s(?:[^.;:,]{0,60}?\b)?to\s(?:the\s|an?\s)?([^.;:,]{3,80}?)(?:\s(?:of|in|on)\s(?:the|an?|your)\s[^.;:,]*)?[.;,]?$/i,
  new RegExp(
    String.raw`\b(?:fit|put|place|push|mount|slide|set|plug|screw)\b\s[^.;:,]{0,60}?\b(?:on|onto|over|to)\s(?:the\s|an?\s)?([^.;:,]{0,40}?${joined}s?(?:\s[a-z]{1,4}[- ]?[a-z]{0,4}\d{1,5})?)\b[^.;:]{0,40}[.;]?$`,
    'i',
  ),
  new RegExp(
    String.raw`(?<!\p{L})(?:an|mit)\s(?:den\s|dem\s|die\s|das\s|der\s)?([^.;:,]{0,40}?${joined}[\p{L}]*)\s(?:[^.;:,]{0,40}?\s)?(?:anschließen|verbinden|anzuschließen)[.;]?$`,
    'iu',
  ),
  /(?<!\p{L})auf\s(?:den\s|dem\s|die\s|das\s|der\s)?(\p{L}*(?:düse|adapter|anschluss|konnektor)[\p{L}]*)\s(?:[^.;:,]{0,40}?\s)?(?:stecken|aufstecken|setzen)[.;]?$/iu,
  /(?:raccorder|connecter|brancher|relier)\s[^.;:,]{0,60}?\s(?:au|à la|à l.|aux)\s?([^.;:,]{3,80}?)(?:\s(?:du|de la|des)\s(?:laveur|machine|panier|chariot)[^.;:,]*)?[.;,]?$/iu,
];

export const racks: readonly RegExp[] = [
  /\b(?:placed?|load(?:ed)?|put|lay|laid)\b\s(?:[^.;:,]{0,60}?\b)?(?:in|on|into|onto)\s(?:the\s|an?\s)?([^.;:,]{0,40}?(?:rack|basket|insert|trolley|tray))\b[^.;:]{0,20}[.;]?$/i,
  /\buse\s(?:only\s)?(?:the\s|an?\s)?([^.;:,]{0,40}?(?:rack|basket|trolley|carrier)\b[^.;:,]{0,20}?)[.;]?$/i,
  /(?<!\p{L})(?:in|auf)\s(?:den\s|die\s|das\s|dem\s|einen\s|einem\s|einer\s)?([^.;:,]{0,30}?\p{L}*(?:korb|einsatz|einschub|beladungsträger|wagen))\s(?:[^.;:,]{0,20}?\s)?(?:legen|einlegen|stellen|platzieren)[.;]?$/iu,
  /(?:placer|déposer|disposer|mettre)\s[^.;:,]{0,60}?\sdans\s(?:un\s|le\s|une\s)?(panier[^.;:,]{0,30})[.;]?$/iu,
];

/** How it lies there. */
export const positions: readonly RegExp[] = [
  /\b(?:place|load|put|lay)\b\s[^.;:]{0,60}?\b(?:washer|machine|rack|basket)[\p{L}-]*,\s((?:[^.;:]{3,80}?\b)?(?:open|opened|disassembled|upright|flat|connected)\b[^.;:]{0,60}?)[.;]?$/iu,
  /\b(?:place|load|put|lay|position|insert|arrange)\p{L}*\b\s[^.;:]{0,60}?\bwith\s(?:the\s|its\s|their\s|all\s)?([^.;:,]{3,40}?\s(?:open|opened|upwards?|downwards?|up|down|disassembled)(?:\s[^.;:,]{3,40})?)[.;]?$/iu,
  /^(?:keep|leave)\s(?:all\s)?(?:the\s)?([^.;:,]{3,60}?\s(?:open|opened|unlocked|upright|flat|apart)(?:\s[^.;:]{3,40})?)[.;]?$/iu,
  /^((?:\p{L}+\s){1,3}(?:geöffnet|offen))\s(?:lassen|halten)[.;]?$/iu,
  /^(?:garder|laisser|maintenir)\s(?:les?\s|la\s|l.)([^.;:,]{3,60}?\souverte?s?)[.;]?$/iu,
];

/** Where a further request begins. */
export const nextAct =
  /;\s|(?:,\s|,?\sand\s(?:then\s)?|,?\set\s|,?\sund\s)(?=(?:leave|keep|open|place|put|load|connect|attach|fit|lay|secure|make sure|ensure|laisser|garder|placer|raccorder)(?!\p{L}))/iu;

/** `must comply with EN ISO 15883`. */
export const standard =
  /\b(?:to(?=\s(?:EN|ISO|DIN|ANSI)\b)|comply|complies|compliant|conform\p{L}*|according to|accordance with|meets?|meeting|per|nach|gemäß|entspr\p{L}+|conformes? à|selon)\b[^.;]{0,30}?((?:(?:ANSI|AAMI|DIN|EN|NF|BS|ISO)[\s/]){0,3}(?:EN|ISO|ST|DIN)\s?\d{2,5}(?:-\d)?(?::\d{4})?)/iu;
