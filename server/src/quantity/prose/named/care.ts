import type { Named } from './named.ts';

/** What is looked at and tested, and what takes a device out of use, in English, German and French. */

const discards = String.raw`(?:discard(?:ed)?|scrap(?:ped)?|dispose(?:d)? of|replace(?:d)?|(?:remove|take)n?\s(?:[\p{L}-]+\s){0,4}(?:from|out of) (?:use|service|circulation)|reject(?:ed)?|withdrawn?|throw away)`;
const repairs = String.raw`(?:(?:return|send|sent)(?:ed)?\b.{0,40}\brepair)`;
const unused = `(?:(?:do not|must not be|never) (?:be )?used?|stop using)`;
const verb = `(?:${discards}|${repairs}|${unused})`;
const discardsDe = `(?:aussondern|auszusondern|ausgesondert|aussortieren|auszusortieren|entsorgen|zu entsorgen|ersetzen|austauschen|nicht (?:mehr )?(?:verwenden|benutzen|einsetzen|verwendet werden))`;
const discardsFr = `(?:jeter|éliminer|remplacer|mettre au rebut|écarter|ne (?:pas|plus) utiliser)`;

const damaged = String.raw`(?:(?:damaged|scratched|bent|worn|cracked|corroded|defective|blunt|broken|dull|blocked|faulty|chipped|rusty|pitted|deformed|loose|frayed|leaking)(?:,\s|\s(?:or|and)\s)?){1,4}`;

/** What is seen stands in the group: as a clause of its own, or as nouns. */
export const rejections: readonly { readonly form: RegExp; readonly of: 'clauses' | 'words' }[] = [
  {
    form: new RegExp(
      String.raw`^((?:${damaged})\b.{0,60}?)\s(?:must|may|should|shall|can|are|is|have to|has to)\s(?:to\s)?(?:be\s)?(?:returned|sent|discarded|scrapped|replaced|withdrawn|removed|taken|rejected|repaired|disposed of|set aside|sorted out)(?!\p{L})`,
      'iu',
    ),
    of: 'words',
  },
  {
    form: /^((?:damaged|scratched|bent|worn|cracked|corroded|defective|blunt|broken|dull|beschädigte|verbogene|stumpfe|korrodierte)\b.{0,60}?)\s(?:must|may|should|shall|dürfen|darf)\s(?:no longer|not|never|nicht(?: mehr)?)\s(?:be\s(?:re)?used|(?:weiter)?verwendet werden)$/i,
    of: 'words',
  },
  {
    form: new RegExp(
      String.raw`^(?:${discards}|${unused}|remove|take|set aside|sort out|withdraw)\s(?:any\s|all\s|the\s)?(${damaged}[\p{L}\s-]{2,40}?)(?:\s(?:from|out of|at once|immediately|again)(?!\p{L})[^,;:]{0,30})?$`,
      'iu',
    ),
    of: 'words',
  },
  {
    form: /^(?:\p{L}[\p{L}-]*\s){1,4}(?:that|which)\s(?:is\s|are\s|has\s|have\s|shows?\s)?(.{3,80}?)\s(?:must|may|should|shall|can|are|is|have|has)\s(?:to\s|no longer\s|not\s|never\s)*(?:be\s)?(?:\p{L}+,?\s(?:and\s)?){0,3}(?:returned|sent|discarded|scrapped|replaced|withdrawn|removed|taken|rejected|repaired|(?:re-?)?used|disposed of|set aside|sorted out)(?!\p{L})/iu,
    of: 'words',
  },
  {
    form: /^(?:\p{L}[\p{L}-]*\s){1,4}with\s(.{3,80}?)\s(?:must|may|should|shall|can|are|is|have|has)\s(?:to\s|no longer\s|not\s|never\s)*(?:be\s)?(?:returned|sent|discarded|scrapped|replaced|withdrawn|removed|taken|rejected|repaired|(?:re-?)?used|disposed of|set aside|sorted out)(?!\p{L})/iu,
    of: 'words',
  },
  {
    form: /^(?:remove|take|withdraw)\s[^,;:]{0,40}?\bwith\s(.{3,80}?)\s(?:from|out of)\s(?:use|service)$/i,
    of: 'words',
  },
  {
    form: new RegExp(String.raw`^(?:[^,;:]{0,40}\s)?${verb}\b[^,;:]{0,60}?\b(?:if|when|once|as soon as)\s(.+)$`, 'iu'),
    of: 'clauses',
  },
  {
    form: new RegExp(String.raw`^(?:if|when|once|as soon as)\s(.+?),\s(?:[^,;:]{0,40}\s)?${verb}\b[^,;:]{0,60}$`, 'iu'),
    of: 'clauses',
  },
  { form: new RegExp(String.raw`^${verb}\s[^,;:]{0,40}?\bwhose\s(.+)$`, 'iu'), of: 'clauses' },
  { form: new RegExp(String.raw`^${verb}\s[^,;:]{0,40}?\b(?:that|which)\s(?:is|are)\s(.+)$`, 'iu'), of: 'words' },
  { form: new RegExp(String.raw`^${verb}\s[^,;:]{0,40}?\bwith\s(.+)$`, 'iu'), of: 'words' },
  { form: new RegExp(String.raw`^(?:wenn|falls|sobald)\s(.+?),\s[^,;:]{0,60}${discardsDe}$`, 'iu'), of: 'clauses' },
  { form: new RegExp(String.raw`^[^,;:]{0,60}${discardsDe},?\s(?:wenn|falls|sobald)\s(.+)$`, 'iu'), of: 'clauses' },
  {
    form: new RegExp(String.raw`^(?:\p{L}+\s){0,3}(mit\s[^,;:]{2,80}?)\s(?:sind\s|ist\s)?${discardsDe}$`, 'iu'),
    of: 'words',
  },
  { form: new RegExp(String.raw`^bei\s([^,;:]{2,80}?)\s(?:[^,;:]{0,30}\s)?${discardsDe}$`, 'iu'), of: 'words' },
  {
    form: new RegExp(String.raw`^${discardsFr}\s[^,;:]{0,60}?\s(?:si|lorsque|dès que|quand)\s(.+)$`, 'iu'),
    of: 'clauses',
  },
  { form: new RegExp(String.raw`^${discardsFr}\s[^,;:]{0,60}?\s(?:présentant|avec)\s(.+)$`, 'iu'), of: 'words' },
];

/** The group is what is replaced. */
export const replacedIf: readonly RegExp[] = [
  /^(?:replace|renew|exchange|change)\s(?:the\s|all\s|an?\s)?([\p{L}-]+(?:\s[\p{L}-]+){0,3}?)\s(?:if|when|once|as soon as)\s/iu,
  /^(?:the\s)?([\p{L}-]+(?:\s[\p{L}-]+){0,3}?)\s(?:must|should|shall|is|are|has to|have to)\s(?:to\s)?(?:be\s)?(?:replaced|renewed|exchanged|changed)\s(?:if|when|once|as soon as)\s/iu,
];

const asRepair = new RegExp(`${repairs}|zur reparatur|en réparation`, 'iu');
const asDiscarded = new RegExp(
  `${discards}|(?:from|out of) (?:use|service)|aussonder|auszusonder|ausgesonder|aussortier|entsorg|ersetz|austausch|jeter|éliminer|remplacer|rebut`,
  'iu',
);

/** What is done with it then; nothing where the page only says not to use it. */
export function actionOn(text: string): 'repair' | 'discard' | undefined {
  if (/\brepair/i.test(text) && asDiscarded.test(text)) return undefined;
  return asRepair.test(text) ? 'repair' : asDiscarded.test(text) ? 'discard' : undefined;
}

/** `Used as long as it passes inspection`, `the end of life is determined by wear`: what ends its use, and no number. */
export const usedUntil =
  /(?<!\p{L})(?:end of (?:(?:its|their|the)\s)?(?:(?:service|useful|product)\s)?life|service life|useful life|life(?:time|span)|(?:re-?)?used|remain in (?:use|service)|number of (?:\p{L}+\s){0,2}(?:cycles|uses)|lebensdauer|durée de vie|fin de vie)(?!\p{L})[^.;]{0,80}(?<!\p{L})(?:determined|depends?|governed|limited|until|as long as|so long as|provided|reached when|ends? (?:when|with)|bestimmt|hängt|begrenzt|solange|bis|déterminée?|dépend|limitée?|tant que|jusqu)(?!\p{L})[^.;]{0,80}(?:wear|worn|damage|inspect|check|function|test|condition|defect|verschlei|beschädig|prüf|usure|dommage|inspection|contrôle)/iu;

/** Of the package, of a date, of soil: other things than the state of the device. */
export const aboutInspecting =
  /inspect|(?<!\p{L})(?:checks?|checking|examination|function|testing|tests|prüfung|kontrolle|sichtprüfung|funktionsprüfung|contrôles?|vérification)(?!\p{L})/u;

/** `Tips need to be straight`: how something must be or do when it is looked at. */
export const norms: readonly RegExp[] = [
  /[:;,]\s(?:it|they|this|these|both|each)\s(?:must|should|shall|has to|have to|needs? to)\s(?:not\s)?\p{L}/iu,
  /^(?:is|are|does|do|has|have|can|ist|sind|hat|haben|lässt|lassen|schließt|schließen|est-ce|le|la|les)\s.{5,130}\?$/iu,
  /^(?:\p{L}[\p{L}\s,/()-]{1,80}?)\s(?:must|should|shall|needs? to|has to|have to|may|can|is to|are to|does|do)\s(?:not\s|never\s|always\s)?(?:be\s)?\p{L}/iu,
  /^(?:\p{L}[\p{L}\s,/()-]{1,80}?)\s(?:muss|müssen|soll|sollen|darf|dürfen)\s.{3,100}(?<!werden)\.?$/iu,
  /^(?:\p{L}[\p{L}\s,/()’'-]{1,80}?)\s(?:doit|doivent|ne doit pas|ne doivent pas)\s\p{L}/iu,
];

/** Items of a list by themselves: `Basket without broken wires`, `collar engages audibly`. What begins with a request is none. */
export const normsInShort =
  /^(?!(?:check|inspect|examine|look|test|verify|ensure|make|discard|replace|remove|repair|return|send|use|do|never|always|clean|wipe|dry|oil|lubricate|apply|open|close|hold|move|place|put|let|allow|if|when|before|after|under|with|without|only|prüfen|kontrollieren|wenn|falls|vor|nach|vérifier|contrôler|si|avant|après)\b)\p{L}[\p{L}\s,/()-]{1,70}?\s(?:without|with no|free (?:of|from)|intact|elastic|undamaged|legible|smooth(?:ly)?|audibl[ey]|even(?:ly)?|flat|straight|sharp|freely|firm(?:ly)?|tight(?:ly)?|complete(?:ly)?|ohne|frei von|unbeschädigt|leserlich|gängig|fest|vollständig|sans|intacte?s?|lisibles?)(?!\p{L})/iu;

/** What a person does with it then is no norm of how it is. */
export const doneByHand =
  /\b(?:be|been|being|get|is|are)\s(?:to\sbe\s)?(?:\p{L}+ly\s|always\s|then\s|also\s|again\s|thoroughly\s)?(?:inspected|checked|tested|examined|verified|looked|viewed|controlled|replaced|changed|exchanged|renewed|discarded|removed|returned|sent|repaired|serviced|maintained|lubricated|oiled|greased|treated|cleaned|re-?cleaned|reprocessed|processed|washed|rinsed|dried|wiped|sterili[sz]ed|disinfected|used|re-?used|performed|done|made|taken|given|carried|packed|wrapped|assembled|re-?assembled|dismantled|stored|kept|placed|recorded|documented|sharpened|re-?ground|scrapped|withdrawn|rejected|disposed|marked|label\p{L}*|aligned|adjusted|tightened|put|set|reported|informed|noted|paid|ensured|connected)\b|(?<!\p{L})être\s(?:\p{L}+ment\s)?\p{L}+(?:é|i|u)e?s?(?!\p{L})|\b(?:user|users|staff|personnel|department|hospital|operator|you|manufacturer|maker)\b/iu;

export const notOfTheDevice =
  /\b(?:pack|package|packaging|pouch|wrap|barrier|expir|date|soil|debris|blood|clean|wet|moist|sterile|indicator|water|detergent|solution|verpackung|verschmutz|emballage|souill)/i;

export const tests: Named = [
  [
    'continuity_test',
    /\bcontinuity\b.{0,30}\b(?:test|check)|\b(?:test|check|measure)\b.{0,40}\bcontinuity\b|durchgangsprüfung|test de continuité/,
  ],
  [
    'cut_test',
    /\bcut(?:ting)?[\s-]test\b|\b(?:test|check)\b.{0,40}\bsharpness\b|\b(?:cut|test)\b.{0,40}\btest (?:material|medium)\b|schneidtest|schärfe\b.{0,40}prüf|test de coupe/,
  ],
  ['torque_test', /\btorque[\s-]test\b|\b(?:test|check|measure|verify)\b.{0,20}\btorque\b|drehmoment\b.{0,30}prüf/],
  [
    'battery_test',
    /\bbattery[\s-]test\b|\b(?:test|check)\b.{0,20}\b(?:charge|capacity|state) of the batter|akku\b.{0,30}prüf/,
  ],
  [
    'residue_test',
    /\b(?:protein|residues?|residual|atp|haemoglobin|hemoglobin|ninhydrin)\b.{0,30}\btest\b|\btest\b.{0,30}\b(?:protein|residues?|residual soil|haemoglobin|hemoglobin)\b|restproteintest|proteintest/,
  ],
  [
    'lumen_inspection',
    /\b(?:hold|held)\b.{0,40}\blight\b.{0,30}\b(?:look|see)\b.{0,20}\bthrough\b|\b(?:look|view|inspect|check|examine)\b.{0,60}\b(?:through|into|inside|interior)\b.{0,40}\b(?:lumens?|channels?|bore|tubes?|cannulas?|shafts?|sleeves?)\b|\b(?:lumens?|channels?)\b.{0,60}\bborescope\b|\bborescope\b.{0,60}\b(?:lumens?|channels?)\b|(?:durch|in) (?:den |das |die )?(?:\p{L}*kanal|lumen).{0,30}(?:sehen|blicken|schauen)|endoskop.{0,40}(?:kanal|lumen).{0,30}prüf|(?:regarder|inspecter).{0,40}(?:à travers|l.intérieur).{0,20}(?:canal|lumière)/u,
  ],
  [
    'leak_test',
    /\b(?:perform|carry out|do|conduct|for|during)\b.{0,20}\bleak(?:age)?[\s-]test\b|^leak(?:age)?[\s-]test\s?[:(]|\btest(?:ed)?\b.{0,40}\bfor (?:leaks|leakage|tightness)\b|dichtheitsprüfung|dichtheit prüfen|test d.étanchéité|vérifier l.étanchéité/,
  ],
  [
    'insulation_test',
    /\b(?:test|check)\b.{0,30}\binsulation\b|\binsulation test\b|isol(?:ation|ierung)\p{L}*\b.{0,60}prüf|prüf\p{L}*.{0,30}isol|(?:vérifier|contrôler|tester)\b.{0,20}(?:isolation|isolant)/u,
  ],
  [
    'light_test',
    /\bfib(?:re|er)s?\b.{0,60}\blight|\blight\b.{0,80}\bfib(?:re|er)s?\b|\blight transmission\b|lichtleit\p{L}*.{0,40}prüf|transmission (?:de la lumière|lumineuse)/u,
  ],
  [
    'function_test',
    /\b(?:check|test|verify|ensure|make sure|confirm)\b.{0,60}\b(?:functions?|functioning|functionality|movement|moves?|operation|operates?|works?|opens? and closes?|(?:opens?|closes?|locks?|latch(?:es)?|engages?|holds?|springs? back)(?: (?:fully|properly|correctly|completely|firmly|easily|smoothly|freely|and))|(?:collars?|ratchets?|locks?|latch(?:es)?|catch(?:es)?)\s(?:locks?|holds?|engages?|latches)|slides?|turns?|rotates?|(?:smooth|free|easy) (?:action|motion))\b|\bfunction(?:al)? test\b|(?:funktion|gängig|leichtgäng|beweglich)\p{L}*\b.{0,40}prüf|prüf\p{L}*.{0,40}(?:funktion|gängig|beweglich)|funktionsprüfung|(?:vérifier|contrôler|tester)\b.{0,50}(?:fonctionn|mobilité|mouvement)/u,
  ],
];

export const eachUse =
  /\b(?:before|prior to)\s(?:each|every)\s(?:use|procedure|surgery|operation|sterili[sz]ation)\b|vor (?:jedem|jeder) (?:gebrauch|anwendung|einsatz|sterilisation)|avant chaque (?:utilisation|usage|intervention|stérilisation)/i;

/** What is looked for stands in the group. */
export const searches: readonly RegExp[] = [
  /\b(?:inspect|check|examine|look)\b[^.;:]*?\bfor\s(?:signs? of\s|visible\s)*([^.;:()]+?)(?:,?\sand\s(?:replace|discard|change|renew|repair|clean)\s[^.;:]+)?\s*[.;]?$/i,
  /(?<!\p{L})auf\s([^.;:()]+?)\s(?:zu\s)?(?:prüfen|kontrollieren|untersuchen|überprüfen)[.;]?$/iu,
  /(?:vérifier|inspecter|contrôler)\s[^.;:]*?(?:l.absence de|à la recherche de|recherche de)\s([^.;:()]+?)\s*[.;]?$/iu,
];
