import type { Edit, Fix } from '../base/problem.ts';
import { overlaps } from '../base/span.ts';
import type { Finding } from '../check/finding.ts';
import { applyEdits } from '../syntax/edits.ts';

/** Findings of the file as it would be with this text. */
export type FindingsOf = (text: string) => readonly Finding[];

const mostRounds = 20;

/**
 * The text with every finding of one rule mended, as long as each offers exactly one fix. Fixes that touch the same characters wait for the
 * next round; a round that leaves more findings than before is taken back. Undefined when nothing changes.
 */
export function fixAllOf(rule: string, text: string, findingsOf: FindingsOf): string | undefined {
  let now = text;
  let found = findingsOf(text);
  for (let round = 0; round < mostRounds; round++) {
    const edits = editsOf(found.filter((finding) => finding.rule === rule));
    const applied = applyEdits(now, edits);
    if (edits.length === 0 || !('text' in applied) || applied.text === now) break;
    const after = findingsOf(applied.text);
    if (after.length > found.length) break;
    now = applied.text;
    found = after;
  }
  return now === text ? undefined : now;
}

/** The fix that may be done unasked: the only one there is, where it mends and does not merely set aside. */
export function onlyFix({ fixes }: Finding): Fix | undefined {
  const [only, other] = fixes;
  return other === undefined && only?.setsAside !== true ? only : undefined;
}

/** The edits of the only fix of each finding; of fixes that would touch each other only the first. */
function editsOf(findings: readonly Finding[]): readonly Edit[] {
  const taken: Edit[] = [];
  for (const finding of findings) {
    const only = onlyFix(finding);
    if (only === undefined) continue;
    const free = only.edits.every((edit) => taken.every((other) => !touches(edit, other)));
    if (free) taken.push(...only.edits);
  }
  return taken;
}

function touches(a: Edit, b: Edit): boolean {
  return overlaps(a.span, b.span) || a.span.start === b.span.start;
}

/** One edit that makes `before` into `after`: what both begin and end with is left alone. Undefined when they are the same. */
export function editBetween(before: string, after: string): Edit | undefined {
  if (before === after) return undefined;
  const most = Math.min(before.length, after.length);
  let start = 0;
  while (start < most && before[start] === after[start]) start++;
  let tail = 0;
  while (tail < most - start && before[before.length - 1 - tail] === after[after.length - 1 - tail]) tail++;
  return { span: { start, end: before.length - tail }, text: after.slice(start, after.length - tail) };
}
