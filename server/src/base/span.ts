/**
 * base/: the words everything else is written in: spans, branded ids, problems, assertions, the line index.
 * It imports nothing and knows nothing of YAML, of the trade or of any editor.
 */

/** A half-open range of UTF-16 offsets into one file's text (a leading BOM already stripped). */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export function span(start: number, end: number): Span {
  return { start, end };
}

/** True when `inner` lies wholly inside `outer` (touching edges count). */
export function contains(outer: Span, inner: Span): boolean {
  return outer.start <= inner.start && inner.end <= outer.end;
}

/** True when the two ranges share a character, or are the same empty range. */
export function overlaps(a: Span, b: Span): boolean {
  return a.start < b.end && b.start < a.end ? true : a.start === b.start && a.end === b.end;
}
