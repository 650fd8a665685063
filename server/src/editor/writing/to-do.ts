import type { Edit } from '../../base/problem.ts';
import { toDoMark } from '../../schema/to-do.ts';
import { applyEdits } from '../../syntax/edits.ts';
import type { Offer } from './offer.ts';

/** A line that a new file leaves open. The mark goes once a value is accepted in its place. */
export function toDoLine(key: string, about: string): string {
  return `${key}: ${toDoMark}${about}`;
}

const openLine = /^([a-z_]+:(?:[ \t]*[^\s"'#]+)?)([ \t]*)(# to do: [^\r\n]*)/;

/** A text in which the mark on the line being written is left out, and where that line then ends. */
export interface WithoutMark {
  readonly text: string;
  readonly lineEnd: number;
  readonly cut: number;
}

/** Undefined where the cursor's line has no mark, or the cursor stands inside it. */
export function withoutMark(text: string, cursor: number): WithoutMark | undefined {
  const lineStart = text.lastIndexOf('\n', cursor - 1) + 1;
  const [, before, gap, mark] = openLine.exec(text.slice(lineStart)) ?? [];
  if (before === undefined || gap === undefined || mark === undefined) return undefined;
  const markStart = lineStart + before.length + gap.length;
  if (cursor > markStart) return undefined;
  const lineEnd = Math.max(lineStart + before.length, cursor);
  const markEnd = markStart + mark.length;
  return { text: text.slice(0, lineEnd) + text.slice(markEnd), lineEnd, cut: markEnd - lineEnd };
}

/** What is accepted up to the end of the line takes the mark with it. */
export function overMark(offer: Offer, { lineEnd, cut }: WithoutMark): Offer {
  const { start, end } = offer.span;
  return end === lineEnd ? { ...offer, span: { start, end: end + cut } } : offer;
}

/** A line of its own at the left edge: the key, and the mark with the blanks before it. */
const markedLine = /^([a-z_]+:)([ \t]*# to do: [^\r\n]*)/gm;

interface Mark {
  readonly key: string;
  readonly start: number;
  readonly end: number;
  /** Something stands below the line, further in. */
  readonly isFilled: boolean;
}

function marksIn(text: string): readonly Mark[] {
  if (!text.includes(toDoMark)) return [];
  return [...text.matchAll(markedLine)].map(({ index, 0: line, 1: key = '' }) => {
    const end = index + line.length;
    return { key, start: index + key.length, end, isFilled: hasBelow(text, end) };
  });
}

function hasBelow(text: string, end: number): boolean {
  for (let at = text.indexOf('\n', end) + 1; at > 0 && at < text.length; at = text.indexOf('\n', at) + 1) {
    const next = text.indexOf('\n', at);
    const line = text.slice(at, next < 0 ? text.length : next);
    if (line.trim() !== '' && !line.trim().startsWith('#')) return /^(?:[ \t]+|- )\S/.test(line);
  }
  return false;
}

/** The same edits, and what waited to be written says so no longer where they write it, whoever made them. */
export function withoutFilledMarks(text: string, edits: readonly Edit[]): readonly Edit[] {
  const before = edits.length === 0 ? [] : marksIn(text);
  if (before.length === 0) return edits;
  const applied = applyEdits(text, edits);
  const filled = 'text' in applied ? marksIn(applied.text).filter(({ isFilled }) => isFilled) : [];
  const gone = before.filter(
    ({ key, start, end }) =>
      filled.some((mark) => mark.key === key) && !edits.some(({ span }) => span.start < end && span.end > start),
  );
  return [...edits, ...gone.map(goneMark)];
}

/** The mark of the field that somebody writes below it by hand: it goes with the next line, when something stands there. */
export function filledMarkAbove(text: string, offset: number): readonly Edit[] {
  return markOver(text, offset)
    .filter(({ isFilled }) => isFilled)
    .map(goneMark);
}

/** The mark of the field in which something is accepted: on a line further in, that is the first thing of it. */
export function markAboveWriting(text: string, offset: number): readonly Edit[] {
  const line = text.slice(text.lastIndexOf('\n', offset - 1) + 1, offset);
  return /^(?:[ \t]+|- )/.test(line) ? markOver(text, offset).map(goneMark) : [];
}

/** Of the field at the left edge that a place belongs to. */
function markOver(text: string, offset: number): readonly Mark[] {
  const mark = marksIn(text).findLast(({ end }) => end < offset);
  const between = mark === undefined ? '' : text.slice(mark.end, offset);
  return mark === undefined || /\n[^\s#-]/.test(between) ? [] : [mark];
}

function goneMark({ start, end }: Mark): Edit {
  return { span: { start, end }, text: '' };
}
