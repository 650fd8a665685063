import { columnsIn } from '../../quantity/prose/column-titles.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';

/** Headings of the sections of an instruction, and where a line goes on in the next. */

/** Words that name a part of the work, in English, German and French; a heading has at least one of them. */
const topics = `warning warnings caution cautions precautions limits limit limitation limitations restrictions life information notes
  purpose point-of-use pre-treatment pretreatment treatment transport preparation disassembly dismantling reassembly assembly
  cleaning pre-cleaning precleaning washing prewash rinsing disinfection drying inspection check checks testing maintenance care
  lubrication oiling packaging packing wrapping sterilization sterilisation cooling storage reprocessing processing disposal contact
  symbols warranty receipt servicing durability lifetime loading method methods general unpacking theatre
  allgemeines allgemeine warnhinweise warnungen hinweise einschränkungen lebensdauer gebrauchsort erstbehandlung vorbereitung zerlegung demontage
  reinigung vorreinigung spülung desinfektion trocknung kontrolle prüfung wartung pflege ölung verpackung dampfsterilisation
  abkühlung lagerung aufbereitung entsorgung transport werkstoffe anwendungsort inspektion wiederverwendung
  avertissements limites restrictions utilisation préparation démontage nettoyage lavage pré-nettoyage rinçage désinfection séchage
  généralités généralité précautions transport contrôles vérification contrôle inspection entretien lubrification emballage conditionnement stérilisation refroidissement stockage retraitement`;

const besides = `and or the a of in on at by for with to before after special safety first final thermal manual manually hand
  ultrasonic ultrasound bath automated automatic mechanical machine washer disinfector washer-disinfector steam moist heat gravity
  prevacuum pre-vacuum vacuum hydrogen peroxide ethylene oxide low temperature immediate use intended point service shelf function
  functional visual instrument instruments device devices instructions parameters cycle cycles step steps recommended
  option options variant procedure following water place use site
  und oder der die das des am an auf im vor nach mit zur für allgemeine manuelle manuell von maschinelle maschinell ultraschall dampf
  thermische funktion funktionsprüfung schritte
  laveur désinfecteur laveur-désinfecteur thermodésinfecteur
  et ou le la les du des au aux en de d l à sur avec avant après général générale manuel manuelle main automatique machine ultrasons vapeur
  thermique point lieu durée vie`;

const topicWords: ReadonlySet<string> = new Set(topics.split(/\s+/));
const otherWords: ReadonlySet<string> = new Set(besides.split(/\s+/));

const number =
  /^\s*(?:(?:(?:[Ss]ection|[Cc]hapter|Abschnitt|Kapitel|[Cc]hapitre)\s+)?(?:\d{1,2}(?:\.\d{1,2}){0,3}|[A-Z](?:\d{1,2}(?:\.\d{1,2})?)?)[.)]?\s+)?/;
const mostWords = 8;

/**
 * The words of a heading, without its number; undefined for anything else. Every word must be one of those that headings are made of: a
 * bare `Do not autoclave` in a frame is a sentence, and none may be lost. A remark in parentheses at its end may say anything, and so may the
 * standard that something follows.
 */
function topicIn(line: string): Heading | undefined {
  const whole = withoutNumber(line);
  const [, text = whole, remark = ''] = /^(.*\S)\s*\(([^()]*)\)$/.exec(whole) ?? standardBehind.exec(whole) ?? [];
  if (text.length > 80 || !/^\p{Lu}/u.test(text)) return undefined;
  const words = wordsOf(text);
  if (words.length > mostWords || !words.some((word) => topicWords.has(word)) || !words.every(isOfHeading))
    return undefined;
  return wordsOf(remark).every(isOfHeading) ? { text: whole, says: '' } : { text, says: whole };
}

/** `Automated cleaning according to ISO 15883`. */
const standardBehind =
  /^(.*?\S)\s((?:according to|in accordance with|conforming to|to|per|nach|gemäß|selon)\s(?:(?:ANSI|AAMI|DIN|EN|NF|BS)[\s/])*(?:EN|ISO|ST|DIN)[\s/]?\d{2,5}(?:-\d{1,2})?)$/u;

export interface Heading {
  readonly text: string;
  /** The heading as a sentence, where what it remarks in parentheses may ask for something. */
  readonly says: string;
}

function withoutNumber(line: string): string {
  return line
    .replace(number, '')
    .replace(/\s*:\s*$/, '')
    .trim();
}

function wordsOf(text: string): readonly string[] {
  return text
    .toLowerCase()
    .replace(counted, '$1')
    .replace(/point of use|after use/, 'point-of-use')
    .split(/[\s,:/&()–—'’]+/)
    .filter((word) => word !== '' && word !== '-');
}

/** `Method 1`, `variant b`. */
const counted =
  /(?<!\p{L})(method|option|variant|procedure|process|methode|verfahren|variante|méthode)\s(?:\d{1,2}|[a-d])(?![\p{L}\d])/gu;

function isOfHeading(word: string): boolean {
  return topicWords.has(word) || otherWords.has(word);
}

/**
 * The headings among lines that follow each other, by their position. Where sections are numbered, a line with the number before or behind
 * that of a heading is one too, whatever its words, if it stands free above the text of its section.
 */
export function headingsIn(all: readonly string[]): ReadonlyMap<number, Heading> {
  // The head of a table names steps and stages too.
  const lines = all.map((line) => (hasColumns.test(line) && columnsIn(line) !== undefined ? tableHead : line));
  const found = new Map<number, Heading>();
  for (const [at, line] of lines.entries()) {
    const heading = isUnfinished(lines[at - 1] ?? '') ? undefined : topicIn(line);
    if (heading !== undefined) found.set(at, heading);
  }
  const open = [...lines.keys()].filter((at) => !found.has(at) && isFree(lines, at, found));
  // From the last to the first and back: each heading vouches for its neighbours.
  for (const at of [...open.toReversed(), ...open])
    if (isInRow(lines, at, found)) found.set(at, { text: withoutNumber(lines[at] ?? ''), says: '' });
  const free = [...found.keys()].filter((at) => standsFree(lines, at));
  const top = lines.findIndex((line) => line.trim() !== '');
  if (free.length > 1)
    for (const at of lines.keys())
      if (at > top && !found.has(at) && isTitle(lines, at)) found.set(at, titleOf(lines, at));
  return found;
}

const hasColumns = /\S(?:\s{3,}|\t|\s*\|)/;
/** Stands for a line that is no heading and goes on in none. */
const tableHead = '-.';

function titleOf(lines: readonly string[], at: number): Heading {
  return { text: withoutNumber(lines[at] ?? ''), says: '' };
}

/** A blank line above and the text of its section right below. */
function standsFree(lines: readonly string[], at: number): boolean {
  return (lines[at - 1] ?? '').trim() === '' && (lines[at + 1] ?? '').trim() !== '';
}

const mostWordsOfTitle = 5;
const fewestWordsBelow = 4;
/** Words with which a short line may ask for something, or say something of the device. */
const says =
  /(?<!\p{L})(?:not|no|non|never|only|must|should|sterile|unsterile|single|reusable|warning|nicht|kein\p{L}*|nur|nie|muss|steril|ne|pas|jamais|doit|seulement|stérile)(?!\p{L})|\d/iu;

/** Where headings stand free above their text, a few words that stand so too are one: `In theatre`, `Before you start`. */
function isTitle(lines: readonly string[], at: number): boolean {
  const line = withoutNumber(lines[at] ?? '');
  const below = (lines[at + 1] ?? '').trim();
  const isShort =
    line.split(/\s+/).length <= mostWordsOfTitle && /^\p{Lu}[\p{L}\s&'’-]+(?::\s[\p{L}\s&'’-]+)?$/u.test(line);
  if (!isShort || !standsFree(lines, at) || says.test(line) || begins.test(line) || isUnfinished(line)) return false;
  return (
    /^(?:[\p{Lu}\W\d]|[a-z]\)\s)/u.test(below) &&
    below.split(/\s+/).length >= fewestWordsBelow &&
    (!below.includes('|') || columnsIn(below) !== undefined)
  );
}

const numbered = /^\s*(\d{1,2}(?:\.\d{1,2}){0,3})[.)]?\s+\p{Lu}/u;
const mostWordsNumbered = 10;
const begins =
  /^(?:do|never|always|only|must|keep|remove|rinse|open|close|press|pull|push|place|put|take|check|ensure|make|use|clean|dry|flush|brush|wipe|soak|wash|nicht|nie|nur|ne|ouvrir|fermer|rincer)\b/i;

/** Numbered words with a blank line above and a line of text without number below, that are no sentence, step or measurement. */
function isFree(lines: readonly string[], at: number, found: ReadonlyMap<number, Heading>): boolean {
  const line = lines[at] ?? '';
  const text = withoutNumber(line);
  if (!numbered.test(line) || (lines[at - 1] ?? '').trim() !== '' || begins.test(text)) return false;
  const isTitle = text.split(/\s+/).length <= mostWordsNumbered && !/[.!?;,]$/.test(text) && !isUnfinished(line);
  const below = [at + 1, at + 2].find((one) => (lines[one] ?? '').trim() !== '');
  if (!isTitle || below === undefined || found.has(below)) return false;
  const next = lines[below] ?? '';
  const isText = /^\s*[\p{Lu}\W]/u.test(next) && !numbered.test(next);
  return (isText || numberOf(next).startsWith(`${numberOf(line)}.`)) && !measures(line);
}

function measures(line: string): boolean {
  return readQuote(line, undefined).numbers.some(({ units }) => units.length > 0);
}

/** A heading further up has the number before it, or one further down the number behind it. */
function isInRow(lines: readonly string[], at: number, found: ReadonlyMap<number, Heading>): boolean {
  const own = numberOf(lines[at] ?? '');
  const others = [...found.keys()].map((one) => ({ at: one, number: numberOf(lines[one] ?? '') }));
  const [before, behind] = [stepped(own, -1), stepped(own, 1)];
  const above = own.endsWith('.1') ? own.slice(0, -2) : before;
  return (
    !others.some((one) => one.number === own) &&
    others.some((one) => (one.at < at ? one.number === above && above !== '' : one.number === behind))
  );
}

function numberOf(line: string): string {
  return numbered.exec(line)?.[1] ?? '';
}

function stepped(own: string, by: 1 | -1): string {
  return own.replace(/\d+$/, (last) => String(Number(last) + by));
}

/** Words behind which a line goes on: a noun alone on the next line is then the end of a sentence. */
const goesOn =
  /(?:^|\s)(?:the|a|an|of|in|on|at|by|for|with|to|before|after|and|or|during|until|from|der|die|das|den|dem|des|vor|nach|zur|zum|im|am|bei|mit|und|oder|von|le|la|les|du|des|de|avant|après|et|ou|en|par|pour|au)\s*$|[,–-]\s*$/i;

export function isUnfinished(line: string): boolean {
  return goesOn.test(line);
}

/** A dash by itself is an empty cell of a table, unless the line goes on with the end of a range. */
export function endsInEmptyCell(line: string, next: string): boolean {
  return /\s[-–—]\s*$/.test(line) && /^\s*\p{Lu}/u.test(next);
}
