import { toDoMark } from '../schema/to-do.ts';
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
