/** Lines of a page that are no sentences: headings of its sections and marks of its pages. */

/** Words that name a part of the work, in English, German and French; a heading has at least one of them. */
const topics = `warning warnings caution cautions precautions limits limit limitation limitations restrictions life information notes
  purpose point-of-use pre-treatment pretreatment treatment transport preparation disassembly dismantling reassembly assembly
  cleaning pre-cleaning precleaning washing prewash rinsing disinfection drying inspection check checks testing maintenance care
  lubrication oiling packaging packing wrapping sterilization sterilisation cooling storage reprocessing processing disposal contact
  symbols warranty receipt method methods
  warnhinweise warnungen hinweise einschränkungen lebensdauer gebrauchsort erstbehandlung vorbereitung zerlegung demontage
  reinigung vorreinigung spülung desinfektion trocknung kontrolle prüfung wartung pflege ölung verpackung dampfsterilisation
  abkühlung lagerung aufbereitung entsorgung
  avertissements limites restrictions utilisation préparation démontage nettoyage pré-nettoyage rinçage désinfection séchage
  contrôle inspection entretien lubrification emballage conditionnement stérilisation refroidissement stockage retraitement`;

const besides = `and or the a of in on at by for with to before after general special safety first final thermal manual manually hand
  ultrasonic ultrasound bath automated automatic mechanical machine washer disinfector washer-disinfector steam moist heat gravity
  prevacuum pre-vacuum vacuum hydrogen peroxide ethylene oxide low temperature immediate use intended point service shelf function
  functional visual instrument instruments device devices instructions parameters cycle cycles step steps recommended
  option options water
  und oder der die das des am im vor nach mit zur für allgemeine manuelle manuell von maschinelle maschinell ultraschall dampf
  thermische funktion funktionsprüfung schritte
  et ou le la les du des au aux en de à avec avant après général générale manuel manuelle main automatique machine ultrasons vapeur
  thermique point lieu durée vie`;

const topicWords: ReadonlySet<string> = new Set(topics.split(/\s+/));
const otherWords: ReadonlySet<string> = new Set(besides.split(/\s+/));

const number =
  /^\s*(?:(?:(?:[Ss]ection|[Cc]hapter|Abschnitt|Kapitel|[Cc]hapitre)\s+)?(?:\d{1,2}(?:\.\d{1,2}){0,3}|[A-Z])[.)]?\s+)?/;
const mostWords = 8;

/**
 * The words of a heading, without its number; undefined for anything else. Every word must be one of those that headings are made of: a
 * bare `Do not autoclave` in a frame is a sentence, and none may be lost.
 */
export function headingIn(line: string): string | undefined {
  const text = line
    .replace(number, '')
    .replace(/\s*:\s*$/, '')
    .trim();
  if (text.length > 80 || !/^\p{Lu}/u.test(text)) return undefined;
  const words = text
    .toLowerCase()
    .replace(/point of use|after use/, 'point-of-use')
    .split(/[\s,/&()–—]+/)
    .filter((word) => word !== '' && word !== '-');
  if (words.length > mostWords || !words.some((word) => topicWords.has(word))) return undefined;
  return words.every((word) => topicWords.has(word) || otherWords.has(word)) ? text : undefined;
}

/** Words behind which a line goes on: a noun alone on the next line is then the end of a sentence. */
const goesOn =
  /(?:^|\s)(?:the|a|an|of|in|on|at|by|for|with|to|before|after|and|or|during|until|from|der|die|das|den|dem|des|vor|nach|zur|zum|im|am|bei|mit|und|oder|von|le|la|les|du|des|de|avant|après|et|ou|en|par|pour|au)\s*$|[,–-]\s*$/i;

export function isUnfinished(line: string): boolean {
  return goesOn.test(line);
}

export interface PageMark {
  readonly page: number;
  /** How many pages there are, where the mark says so. */
  readonly of: number | undefined;
}

/** `Page 2`, `Seite 2 von 4`, `- 2 -`, also at the end of a running head such as `RF-2210 Rev. C   Page 1 of 2`. */
export function pageIn(line: string): PageMark | undefined {
  const [, alone] = /^\s*[-–—]\s*(\d{1,3})\s*[-–—]\s*$/.exec(line) ?? [];
  if (alone !== undefined) return { page: Number(alone), of: undefined };
  const [, before = '', named, of] =
    /^(.*?)\b(?:page|seite|p\.)\s*(\d{1,3})(?:\s*(?:of|von|sur|\/)\s*(\d{1,3}))?\s*$/i.exec(line) ?? [];
  const isSentence =
    before.trim().split(/\s+/).length > 8 || /[.!?:;,]\s*$/.test(before) || /\b(?:see|siehe|voir|on)\s*$/i.test(before);
  if (named === undefined || isSentence) return undefined;
  return { page: Number(named), of: of === undefined ? undefined : Number(of) };
}
