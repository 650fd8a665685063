import { span } from '../base/span.ts';
import { counted } from '../base/words.ts';
import type { MendedText } from './mended-text.ts';
import type { ProblemSink } from './problem-sink.ts';

/** More unfinished places than any honest file has; what follows is not read. */
const MOST_PLACES = 200;

/**
 * The marks that version control leaves when two people changed the same lines. One problem for the file; the first of the two
 * versions is read on, so that the rest of the file is still checked.
 */
export function mendConflicts(mended: MendedText, sink: ProblemSink): void {
  const text = mended.source;
  let at = mark(text, '<<<<<<<', 0);
  if (at < 0) return;
  const first = at;
  let places = 0;
  while (at >= 0 && places < MOST_PLACES) {
    places++;
    const end = hideOne(mended, at);
    at = mark(text, '<<<<<<<', end);
  }
  if (at >= 0) mended.hide(at, text.length);
  const also = places > 1 ? ` There are ${counted(places, 'such place')} in this file.` : '';
  const message = `An unfinished merge: from here on two versions of the same lines stand in the file. Keep the right one and delete the lines that start with <<<<<<<, ======= and >>>>>>>.${also}`;
  sink.report('unfinished-merge', span(first, mended.lineEnd(first)), message);
}

/** Blanks the mark line and everything from the middle (or the common ancestor) to the closing mark. Returns where to go on. */
function hideOne(mended: MendedText, at: number): number {
  const text = mended.source;
  const close = mark(text, '>>>>>>>', at);
  const end = close < 0 ? text.length : mended.lineEnd(close);
  const part = text.slice(0, end);
  const middles = [mark(part, '|||||||', at), mark(part, '=======', at)].filter((place) => place >= 0);
  mended.hide(at, mended.lineEnd(at));
  if (middles.length === 0) return mended.lineEnd(at);
  mended.hide(Math.min(...middles), end);
  return end;
}

/** The next line that starts with the mark and a space, or is the mark alone. -1 when there is none. */
function mark(text: string, sign: string, from: number): number {
  for (let at = text.indexOf(sign, from); at >= 0; at = text.indexOf(sign, at + 1)) {
    const before = at === 0 ? '\n' : text[at - 1];
    const after = text[at + sign.length];
    if (before === '\n' && (after === undefined || after === ' ' || after === '\n' || after === '\r')) return at;
  }
  return -1;
}
