import { type Span, span } from '../../base/span.ts';
import { columnsIn } from '../../quantity/prose/column-titles.ts';
import { endsInEmptyCell, type Heading, headingsIn, isUnfinished } from './headings.ts';
import { type PageLine, type PageMark, pageLinesIn } from './page-marks.ts';

/** Lines that follow each other and are no statements. */
export interface RawRun extends Passages {
  readonly span: Span;
}

interface Passages {
  readonly passages: readonly Passage[];
  /** Words at the heads and feet of pages that become no statement. */
  readonly leftOut: readonly string[];
}

/** A paragraph with its lines as they stand, the heading of a section, or the number of a page. */
export type Passage =
  | { readonly is: 'paragraph'; readonly text: string }
  | { readonly is: 'heading'; readonly text: string }
  | ({ readonly is: 'page' } & PageMark);

export interface RawBlock {
  readonly span: Span;
  /** The blanks before the statements that are written already. */
  readonly indent: string | undefined;
  readonly runs: readonly RawRun[];
  /** The to-do behind `statements:`, with the blanks before it. */
  readonly mark: Span | undefined;
}

interface Line {
  readonly start: number;
  readonly text: string;
}

/**
 * What stands under `statements:` and is neither a statement nor a part of one. Read by lines and not from the tree: a reader of YAML takes
 * such lines for a part of whatever stands above. `document`: the number of what they come from.
 */
export function rawBlock(text: string, keys: ReadonlySet<string>, document: string): RawBlock | undefined {
  const lines = linesOf(text);
  const head = lines.findIndex((line) => /^statements:[ \t]*(?:#.*)?$/.test(line.text));
  if (head < 0) return undefined;
  const isKey = (line: Line): boolean => keys.has(/^([a-z_]+):(?:\s|$)/.exec(line.text)?.[1] ?? '');
  const next = lines.findIndex((line, at) => at > head && isKey(line));
  const under = lines.slice(head + 1, next < 0 ? lines.length : next);
  const own = writtenLines(under);
  const start = lines[head]?.start ?? 0;
  const [, key = '', mark = ''] = /^(statements:)([ \t]*# to do: .*)$/.exec(lines[head]?.text ?? '') ?? [];
  const last = under.at(-1);
  return {
    span: span(start, last === undefined ? start : last.start + last.text.length),
    indent: own.indent,
    runs: runsOf(under, own.written, document),
    mark: mark === '' ? undefined : span(start + key.length, start + key.length + mark.length),
  };
}

function linesOf(text: string): readonly Line[] {
  let start = 0;
  return text.split('\n').map((line) => {
    const here = { start, text: line.endsWith('\r') ? line.slice(0, -1) : line };
    start += line.length + 1;
    return here;
  });
}

function depthOf({ text }: Line): number {
  return text.length - text.trimStart().length;
}

const headOnly = /^[ \t]+["']?[\w.-]{1,60}["']?:[ \t]*(?:#.*)?$/;
const headWithFlow = /^[ \t]+["']?[\w.-]{1,60}["']?:[ \t]*\{/;
const flowEnd = /\}[ \t]*(?:#[^"'}]*)?$/;
const fieldOfStatement = /^\s*(?:- )?[a-z_]{1,40}\d*:(?:\s|$)/;

/** Statements with all their lines, and comments. */
function writtenLines(lines: readonly Line[]): { written: ReadonlySet<Line>; indent: string | undefined } {
  const written = new Set<Line>();
  let indent: string | undefined;
  for (let at = 0; at < lines.length; at++) {
    const line = lines[at];
    if (line === undefined) break;
    const isFlow = headWithFlow.test(line.text);
    const isHead = isFlow || (headOnly.test(line.text) && isDeeper(lines[at + 1], line));
    if (isHead) indent ??= line.text.slice(0, depthOf(line));
    if (isHead || /^\s*#/.test(line.text) || fieldOfStatement.test(line.text)) written.add(line);
    if (!isHead) continue;
    const ends = (next: Line): boolean => (isFlow ? flowEnd.test(lines[at]?.text ?? '') : !isDeeper(next, line));
    for (let next = lines[at + 1]; next !== undefined && !ends(next); next = lines[at + 1]) {
      written.add(next);
      at++;
    }
  }
  return { written, indent };
}

function isDeeper(line: Line | undefined, than: Line): boolean {
  return line !== undefined && (line.text.trim() === '' || depthOf(line) > depthOf(than));
}

/** A blank line or a bullet begins another paragraph; blank lines around a run stay as they are. */
function runsOf(lines: readonly Line[], written: ReadonlySet<Line>, document: string): readonly RawRun[] {
  const runs: RawRun[] = [];
  let current: Line[] = [];
  const close = (): void => {
    const last = current.findLastIndex(({ text }) => text.trim() !== '');
    const kept = current.slice(0, last + 1);
    const [first, end] = [kept[0], kept.at(-1)];
    if (first !== undefined && end !== undefined && kept.some(({ text }) => /\p{L}\s+\S/u.test(text)))
      runs.push({
        span: span(first.start, end.start + end.text.length),
        ...passagesOf(
          kept.map((line) => line.text),
          document,
        ),
      });
    current = [];
  };
  for (const line of lines) {
    if (written.has(line)) close();
    else if (current.length > 0 || line.text.trim() !== '') current.push(line);
  }
  close();
  return runs;
}

/** Not the dash of a range whose line ended before it. */
const bullet =
  /^\s*(?:[-•*–]\s+(?!\d)|\d{1,2}[.)]\s+(?=\p{L})|\(?[a-z]\)\s+(?=\p{L})|[a-z]\.\s+(?=\p{Lu}\p{Ll}+\s)|\(\d{1,2}\)\s+(?=\p{L}))/u;

/** Words with a colon behind them at the beginning of a line: `Materials: steel`. */
const labelled = /^\s*(?:\p{Lu}[\p{L}\s-]{2,40}|[A-Z]\d?):\s+\S/u;

function passagesOf(lines: readonly string[], document: string): Passages {
  const marks = pageLinesIn(lines, document);
  const headings = headingsIn(lines.map((line, at) => (marks.has(at) ? '' : line)));
  const passages: Passage[] = [];
  let before: string | undefined;
  for (const [at, text] of lines.entries()) {
    const own = ownPassages(marks.get(at), headings.get(at));
    const last = passages.at(-1);
    if (own !== undefined) passages.push(...own);
    else if (text.trim() !== '' && before === undefined && goesOverPage(passages, text)) addToParagraph(passages, text);
    else if (text.trim() !== '')
      if (before === undefined || last?.is !== 'paragraph' || beginsAnew(before, text) || isNextStep(last.text, text))
        passages.push({ is: 'paragraph', text: text.replace(bullet, '') });
      else addToParagraph(passages, text);
    before = own !== undefined || text.trim() === '' ? undefined : text;
  }
  return { passages, leftOut: [...marks].map(([at, mark]) => leftOutOf(mark, lines[at] ?? '')) };
}

function leftOutOf(mark: PageLine, line: string): string {
  return mark.is === 'page' ? mark.beside : line;
}

function ownPassages(mark: PageLine | undefined, heading: Heading | undefined): readonly Passage[] | undefined {
  if (mark?.is === 'running head') return [];
  const said = mark?.sentence ?? heading?.says ?? '';
  const paragraph: readonly Passage[] = said === '' ? [] : [{ is: 'paragraph', text: said }];
  if (mark !== undefined) return [...paragraph, { is: 'page', page: mark.page, of: mark.of }];
  return heading === undefined ? undefined : [{ is: 'heading', text: heading.text }, ...paragraph];
}

/** A sentence that the end of a page parts: what follows the marks begins with a small letter. */
function goesOverPage(passages: readonly Passage[], text: string): boolean {
  const last = passages.findLast(({ is }) => is !== 'page');
  return (
    passages.at(-1)?.is === 'page' &&
    last?.is === 'paragraph' &&
    /^\s*\p{Ll}/u.test(text) &&
    !/[.!?:]\s*$/.test(last.text)
  );
}

function addToParagraph(passages: Passage[], text: string): void {
  const at = passages.findLastIndex(({ is }) => is === 'paragraph');
  const last = passages[at];
  if (last?.is === 'paragraph') passages[at] = { is: 'paragraph', text: `${last.text}\n${text}` };
}

/** `12.1 Lay the tubes flat`: a step with the number of its section before it. */
const stepOfSection = /^\s*\d{1,2}(?:\.\d{1,2}){1,3}\.?\s+\p{Lu}\p{Ll}/u;

function beginsAnew(before: string, text: string): boolean {
  return (
    bullet.test(text) ||
    (stepOfSection.test(text) && !isUnfinished(before)) ||
    (labelled.test(text) && !isUnfinished(before)) ||
    isNextRow(before, text)
  );
}

/** A step that has the number behind that of the paragraph above, without a dot: `2 Pull it off`. */
function isNextStep(above: string, text: string): boolean {
  const [own, before] = [text, above].map((one) => /^\s*(\d{1,2})\s+\p{Lu}/u.exec(one)?.[1]);
  return own !== undefined && before !== undefined && Number(own) === Number(before) + 1;
}

/** The first words of a line would have stood in the line above, had it gone on: whoever set the page began anew. */
function hadRoom(before: string, text: string): boolean {
  const [first = ''] = /^\s*\S+\s\S+/.exec(text) ?? [];
  return beginsSentence(before, text) && before.trimEnd().length + first.length + clearly < text.trimEnd().length;
}

const clearly = 12;

function beginsSentence(before: string, text: string): boolean {
  return /^\s*\p{Lu}\p{Ll}/u.test(text) && !/[,;:(–-]\s*$/.test(before) && !isUnfinished(before);
}

/** `Instruments: 300 cycles`: a value by itself, with its unit. */
const ownValue = /^[^:.;]{3,40}:\s[^.;:]{0,40}\d\s?(?:°C|%|\p{L}{1,12})\s*$/u;

/** `134 °C, 5 min`: rows of cycles begin with their temperature. */
const cycle = /^\s*1[1-6]\d\s?°\s?C(?!\p{L})/u;

/** A row of a table: short, begins with a name, holds a number, and is no sentence. */
const row = /^\s*\p{Lu}[^.!?]{0,60}\d[^!?]{0,30}[^.!?]$/u;

/** Wide gaps or upright lines part the columns of a table, and of its head. */
const columns = /\S(?:\s{3,}\S|\s*\|(?:\s|$))/;

/**
 * Rows that follow each other, or the first below a line that announces them, are paragraphs of their own; so is what stands in columns,
 * and what begins below it.
 */
function isNextRow(before: string, text: string): boolean {
  if (columnsIn(before) !== undefined) return true;
  if ((cycle.test(before) || labelled.test(before)) && hadRoom(before, text)) return true;
  if (row.test(before) && (hadRoom(before, text) || (ownValue.test(before) && beginsSentence(before, text))))
    return true;
  if (cycle.test(text) && cycle.test(before)) return true;
  const goesOn = isUnfinished(before) && !endsInEmptyCell(before, text);
  if (columns.test(text) || (columns.test(before) && /^\s*\p{Lu}/u.test(text))) return !goesOn;
  return row.test(text) && (/:\s*$/.test(before) || (row.test(before) && !goesOn));
}
