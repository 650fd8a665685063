import type { Dimension } from '../quantity.ts';
import type { Unit } from '../unit-list.ts';
import type { ProseBound } from './meaning.ts';
import { unitHere } from './unit-here.ts';

/** Titles of the columns of tables in instructions, in English, German and French: what a column measures, and which bound it gives its cells. */

export interface Column {
  readonly title: ColumnTitle;
  readonly dimension: Dimension | undefined;
  /** `Minimum dry time`, `Temp. (max.)`. */
  readonly bound: Extract<ProseBound, 'at_least' | 'at_most'> | undefined;
  /** `(min.)` behind a time means a minimum only where the cells print their own unit. */
  readonly isBoundOrUnit: boolean;
  /** `Temperature (°C)`. */
  readonly units: readonly Unit[];
}

export type ColumnTitle = 'exposure' | 'dry' | 'time' | 'temp' | 'pulses' | 'ph' | 'a0' | 'name' | 'region' | 'other';

/** The longest of a kind first. */
const nouns: readonly (readonly [ColumnTitle, Dimension | undefined, RegExp])[] = [
  [
    'temp',
    'temperature',
    /^(?:(?:sterili[sz]ation |exposure |holding |water |bath )?temperature|(?:sterilisations)?temperatur|température(?: de stérilisation)?|temp\b\.?)/,
  ],
  [
    'exposure',
    'time',
    /^(?:time at temperature|(?:exposure|sterili[sz]ation|holding|hold|plateau|contact) time|exposure|haltezeit|sterilisationszeit|einwirkzeit|(?:temps|durée) (?:de maintien|de contact|d.exposition|de stérilisation|de plateau|du plateau))/,
  ],
  [
    'dry',
    'time',
    /^(?:dry(?:ing)? (?:time|phase)|drying|dry|trocknungs-?zeit|trockenzeit|trocknung|(?:temps|durée) de séchage|séchage)/,
  ],
  ['time', 'time', /^(?:times?|duration|zeit|dauer|durée|temps)(?!\p{L})/u],
  ['pulses', 'count', /^(?:number of pulses|(?:vacuum )?pulses|vakuumpulse|fraktionen|impulsions)/],
  ['ph', 'ph', /^ph(?:[ -](?:value|wert))?(?!\p{L})/u],
  ['a0', 'a0', /^a0(?:[ -](?:value|wert))?(?!\p{L})/u],
  [
    'name',
    undefined,
    /^(?:type of cycle|cycle type|cycle|(?:process |cleaning )?(?:step|phase|stage)s?|method|program(?:me)?|parameters?|process|sterili[sz]er(?: type)?|schritt|verfahren|zyklus|programm|phase|étape|méthode|cycle|programme)(?!\p{L})/u,
  ],
  [
    'region',
    undefined,
    /^(?:(?:geographic(?:al)? )?(?:regions?|areas?)|countr(?:y|ies)|markets?|land|länder|gebiet|markt|régions?|pays|marchés?)(?!\p{L})/u,
  ],
  [
    'other',
    undefined,
    /^(?:cleaning agents?|agents?|detergents?|chemistry|chemicals?|products?|water(?: quality| type)?|concentration|remarks?|notes?|comments?|equipment|medi(?:um|a)|solutions?|mittel|medium|reiniger|chemie|wasser(?:qualität)?|bemerkung(?:en)?|hinweise?|(?:produit|eau|détergent|remarque|qualité de l.eau)s?)(?!\p{L})/u,
  ],
];

const least = String.raw`(?:minimum|minimal\p{L}*|min\b\.?|mindest)`;
const most = String.raw`(?:maximum|maximal\p{L}*|max\b\.?|höchst)`;
const boundBefore = new RegExp(`^(?:(${least})|(${most}))[ -]?`, 'u');
const boundBehind = new RegExp(String.raw`^[ ,]*(?:[(\[]\s*)?(?:(${least})|(${most}))(?!\p{L})\s*[)\]]?`, 'u');
const unitBehind =
  /^\s*(?:[([]\s*([^)\]]{1,12})\s*[)\]]|in\s([^\s|]{1,8})|[/,]?\s?(°\s?[cf]|mins?$|minutes?$|sec$|seconds$))/;
/** `°C`, `min`: a unit by itself over the numbers of a column. */
const unitAlone: readonly (readonly [ColumnTitle, Dimension, RegExp])[] = [
  ['temp', 'temperature', /^(?:in\s)?°\s?[cf]$/],
  ['time', 'time', /^(?:in\s)?(?:min|mins|minutes|minuten|sec|seconds|sekunden)\.?$/],
];
/** `No.` over the numbers of the rows. */
const ofRows = /^(?:no|nr|pos|item|#|n°)\.?$/;

/** The title that a text in small letters begins with, and how long it is; undefined where it begins with anything else. */
export function titleAt(text: string): { readonly column: Column; readonly length: number } | undefined {
  const [before = '', low, high] = boundBefore.exec(text) ?? [];
  const rest = text.slice(before.length);
  for (const [title, dimension, words] of nouns) {
    const [noun] = words.exec(rest) ?? [];
    if (noun === undefined) continue;
    const behind = rest.slice(noun.length);
    const [bracket = '', lowBehind, highBehind] = (isOfNext(behind) ? undefined : boundBehind.exec(behind)) ?? [];
    const [unit = '', inBrackets, behindIn, printed = inBrackets ?? behindIn ?? ''] =
      bracket === '' ? (unitBehind.exec(behind) ?? []) : [];
    const minOfTime = lowBehind !== undefined && dimension === 'time' && /^[ (["]*min\b/.test(bracket);
    const column = {
      title,
      dimension,
      bound: (low ?? lowBehind) !== undefined ? 'at_least' : (high ?? highBehind) !== undefined ? 'at_most' : undefined,
      isBoundOrUnit: minOfTime && low === undefined,
      units: minOfTime ? unitsOf('min', dimension) : unitsOf(printed, dimension),
    } as const;
    return { column, length: before.length + noun.length + Math.max(bracket.length, unit.length) };
  }
  return undefined;
}

/** `Exposure Minimum dry time`, where the gap is lost: the bound is that of the next title. */
function isOfNext(behind: string): boolean {
  const next = behind.trimStart();
  const [bound = ''] = boundBefore.exec(next) ?? [];
  return bound !== '' && nouns.some(([, , words]) => words.test(next.slice(bound.length)));
}

const boundOfParameters = new RegExp(
  String.raw`(?<!\p{L})(?:(${least})|(${most}))\s(?:\p{L}+\s)?(?:parameters?|values?|conditions?|parameter|werte|paramètres)`,
  'u',
);

/** The bound that a line above a table gives all of it: it begins or ends with the word, or says `minimum cycle parameters`. */
export function captionBound(caption: string): Column['bound'] {
  const found =
    boundOfParameters.exec(caption) ??
    boundBefore.exec(caption) ??
    new RegExp(`${boundBehind.source.slice(1)}$`, 'u').exec(caption);
  const [whole, low] = found ?? [];
  return whole === undefined ? undefined : low === undefined ? 'at_most' : 'at_least';
}

function unitsOf(printed: string, dimension: Dimension | undefined): readonly Unit[] {
  const found = printed === '' ? undefined : unitHere(`1 ${printed}`, 1, 'en');
  return (found?.units ?? []).filter((unit) => unit.dimension === dimension);
}

const aside: Column = { title: 'other', dimension: undefined, bound: undefined, isBoundOrUnit: false, units: [] };
const mostColumns = 8;

/**
 * The columns of the head of a table; undefined where the line is anything else. Of a line that is known to be a head, words between its
 * titles are columns without numbers.
 */
export function columnsIn(
  line: string,
  known: 'known as a head' | 'unknown' = 'unknown',
): readonly Column[] | undefined {
  const text = line.toLowerCase().trim();
  const cells = text.split(/\s*\|\s*|\t|\s{3,}/);
  return cells.length > 1 ? columnsOfCells(cells) : columnsOfWords(text.replaceAll(':', ' '), known);
}

/** Between lines or wide gaps a title or two show what it is; the other cells may say anything but numbers. */
function columnsOfCells(cells: readonly string[]): readonly Column[] | undefined {
  const found = cells.map(columnOfCell);
  const named = found.filter((one) => one !== undefined);
  const isHead =
    named.length > 1 && cells.every((cell, at) => found[at] !== undefined || /^[^\d.:;!?]{0,40}\.?$/.test(cell));
  return isHead && named.some(({ dimension }) => dimension !== undefined)
    ? found.map((one) => one ?? aside)
    : undefined;
}

function columnOfCell(cell: string): Column | undefined {
  if (ofRows.test(cell)) return aside;
  const [title, dimension] = unitAlone.find(([, , words]) => words.test(cell)) ?? [];
  if (title !== undefined)
    return { ...aside, title, dimension, units: unitsOf(cell.replace(/^in\s|\.$/g, ''), dimension) };
  const named = titleAt(cell);
  return named !== undefined && restOf(cell, named.length) === '' ? named.column : undefined;
}

function restOf(cell: string, length: number): string {
  return cell
    .slice(length)
    .replace(/\([^)]*\)/, '')
    .trim();
}

/** One behind the other, where the gaps are lost: every word must belong to a title. */
function columnsOfWords(line: string, known: 'known as a head' | 'unknown'): readonly Column[] | undefined {
  const found: Column[] = [];
  let rest = line.trim();
  while (rest !== '') {
    const title = titleAt(rest);
    const isTitle = title !== undefined && !/^\p{L}/u.test(rest.slice(title.length));
    if (!isTitle && known === 'known as a head') {
      rest = rest.replace(/^\S+\s*/, '');
      continue;
    }
    if (!isTitle || found.length > mostColumns) return undefined;
    found.push(title.column);
    rest = rest.slice(title.length).replace(/^\s*(?:\([^)]*\))?\s*/, '');
  }
  const measured = found.filter(({ dimension }) => dimension !== undefined);
  return measured.length > 1 || found.length > 2 ? found : undefined;
}
