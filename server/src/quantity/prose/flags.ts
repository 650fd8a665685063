import { span } from '../../base/span.ts';
import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';
import type { Hit } from './lexicon.ts';
import type { Flag } from './prose.ts';

const pictogramWords: ReadonlySet<string> = new Set([
  'pictogram',
  'piktogramm',
  'pictogramme',
  'symbol',
  'symbole',
  'icon',
]);

/** Words that change what a statement is for: total times, half cycles, prion paragraphs, "validated with", "only", pictograms. */
export function readFlags(text: ReadingText): Flag[] {
  const flags: Flag[] = [];
  for (const hit of text.hits) {
    if (hit.meaning.role !== 'flag') continue;
    flags.push({ flag: hit.meaning.flag, span: spanOf(text, hit) });
  }
  if (tokenText(text, 0) === '[' && pictogramWords.has(tokenText(text, 1))) {
    flags.push({ flag: 'pictogram', span: span(0, text.quote.length) });
  }
  return flags;
}

/** Marks the numbers that a total time or a half cycle owns: the nearest one after the words, or the one right before them. */
export function markTopics(text: ReadingText, drafts: readonly NumberDraft[]): void {
  for (const hit of text.hits) {
    if (hit.meaning.role !== 'flag') continue;
    const flag = hit.meaning.flag;
    if (flag === 'total-time') markTotal(text, drafts, hit);
    else if (flag === 'half-cycle') markHalfCycle(text, drafts, hit);
  }
}

function isTime(draft: NumberDraft): boolean {
  return draft.units.some((unit) => unit.dimension === 'time');
}

function markTotal(text: ReadingText, drafts: readonly NumberDraft[], hit: Hit): void {
  const before = justBefore(text, drafts, hit);
  const after = totalAfter(text, drafts, hit);
  const isTrailing = before !== undefined && (after === undefined || !isAdjoining(text, hit, after));
  mark(drafts, isTrailing ? before : after, 'total-time');
}

const includingWords: ReadonlySet<string> = new Set([
  'including',
  'incl',
  'inkl',
  'inklusive',
  'einschließlich',
  'comprenant',
  'dont',
]);

/** The first time after the words; the last one of the sentence when the parts are listed first (`total, including 4 min ..., is 58 min`). */
function totalAfter(text: ReadingText, drafts: readonly NumberDraft[], hit: Hit): NumberDraft | undefined {
  const times = drafts.filter(
    (draft) => draft.first > hit.last && draft.sentence === text.sentences[hit.first] && isTime(draft),
  );
  const first = times[0];
  for (let at = hit.last + 1; first !== undefined && at < first.first; at++) {
    if (includingWords.has(tokenText(text, at))) return times.at(-1);
  }
  return first;
}

/** `45 minutes cycle time`, `45 min (total time)`. */
function justBefore(text: ReadingText, drafts: readonly NumberDraft[], hit: Hit): NumberDraft | undefined {
  const draft = drafts.filter((one) => one.last < hit.first).at(-1);
  if (draft === undefined || draft.sentence !== text.sentences[hit.first] || !isTime(draft)) return undefined;
  for (let at = draft.last + 1; at < hit.first; at++) if (!'(-.'.includes(tokenText(text, at))) return undefined;
  return draft;
}

function isAdjoining(text: ReadingText, hit: Hit, after: NumberDraft): boolean {
  for (let at = hit.last + 1; at < after.first; at++)
    if (tokenText(text, at) === ',' || tokenText(text, at) === ')') return false;
  return after.first - hit.last <= 10;
}

/** Half-cycle figures: all numbers from the words to the end of the sentence, or up to words that speak of the full cycle. */
function markHalfCycle(text: ReadingText, drafts: readonly NumberDraft[], hit: Hit): void {
  const full = text.hits.find(
    (other) =>
      other.meaning.role === 'flag' &&
      other.meaning.flag === 'full-cycle' &&
      text.sentences[other.first] === text.sentences[hit.first],
  );
  for (const draft of drafts) {
    if (draft.sentence !== text.sentences[hit.first]) continue;
    if (full === undefined || nearer(draft, hit, full)) mark(drafts, draft, 'half-cycle');
  }
}

/** True when a number belongs to `own` rather than to `other`: the words before it win, the nearest of them. */
function nearer(draft: NumberDraft, own: Hit, other: Hit): boolean {
  const ownBefore = own.last < draft.first;
  const otherBefore = other.last < draft.first;
  if (ownBefore && otherBefore) return own.last > other.last;
  if (ownBefore !== otherBefore) return ownBefore;
  return own.first < other.first;
}

function mark(
  drafts: readonly NumberDraft[],
  draft: NumberDraft | undefined,
  about: 'total-time' | 'half-cycle',
): void {
  if (draft === undefined) return;
  draft.about = about;
  for (const index of [draft.range?.partner, draft.pair]) {
    const other = index === undefined ? undefined : drafts[index];
    if (other !== undefined) other.about = about;
  }
}

function spanOf(text: ReadingText, hit: Hit): { readonly start: number; readonly end: number } {
  return span(text.tokens[hit.first]?.start ?? 0, text.tokens[hit.last]?.end ?? 0);
}
