import type { NumberDraft, ReadingText } from './draft.ts';
import { tokenText } from './draft.ts';
import { sharedDimension, unitIn } from './links.ts';
import { isExactRatio } from './ratio.ts';

/** Words that may stand between the two units of one quantity: `132 °C (approx. 270 °F)`, `132 °C or 270 °F`. */
const equalSigns: ReadonlySet<string> = new Set([
  '/',
  '=',
  '≙',
  '|',
  'or',
  'oder',
  'ou',
  'soit',
  'entspricht',
  'equals',
  '≈',
]);
const fillers: ReadonlySet<string> = new Set([
  'approx',
  'approximately',
  'about',
  'ca',
  'circa',
  'environ',
  'env',
  'etwa',
  '.',
  '±',
  '=',
  'or',
  '~',
  '≈',
  'd',
  'h',
  'i',
  'e',
]);

/** One group of numbers that stand for one quantity: a number, or both ends of a range. */
interface Group {
  readonly members: readonly number[];
  readonly first: number;
  readonly last: number;
}

/** Links numbers that print one quantity in two units. Tolerances pair with tolerances, range ends with range ends. */
export function linkPairs(text: ReadingText, drafts: readonly NumberDraft[]): void {
  const levels = groupsOf(drafts, 'levels');
  for (let at = 0; at + 1 < levels.length; at++) linkGroups(text, drafts, levels[at], levels[at + 1]);
  const tolerances = groupsOf(drafts, 'tolerances');
  for (let at = 0; at + 1 < tolerances.length; at++) linkTolerances(drafts, tolerances[at], tolerances[at + 1]);
}

function groupsOf(drafts: readonly NumberDraft[], which: 'levels' | 'tolerances'): Group[] {
  const groups: Group[] = [];
  for (let at = 0; at < drafts.length; at++) {
    const draft = drafts[at];
    if (draft === undefined || draft.isReference || draft.units.length === 0) continue;
    if ((draft.tolerance !== undefined) !== (which === 'tolerances')) continue;
    const partner = draft.range?.partner === at + 1 ? drafts[at + 1] : undefined;
    if (partner === undefined) groups.push({ members: [at], first: draft.first, last: lastWithTolerance(drafts, at) });
    else groups.push({ members: [at, ++at], first: draft.first, last: lastWithTolerance(drafts, at) });
  }
  return groups;
}

/** `132 °C ±3 °C (270 °F ±5.4 °F)`: the tolerance belongs to the group it follows. */
function lastWithTolerance(drafts: readonly NumberDraft[], index: number): number {
  const next = drafts[index + 1];
  const own = drafts[index]?.last ?? 0;
  return next?.tolerance?.of === index ? next.last : own;
}

function linkGroups(
  text: ReadingText,
  drafts: readonly NumberDraft[],
  a: Group | undefined,
  b: Group | undefined,
): void {
  if (a === undefined || b === undefined || a.members.length !== b.members.length) return;
  const first = drafts[a.members[0] ?? 0];
  const second = drafts[b.members[0] ?? 0];
  if (first === undefined || second === undefined || first.pair !== undefined || !areTwoUnits(first, second)) return;
  if (!isJoinedAsPair(text, a, b, first, second)) return;
  const ordered = orderOf(drafts, a) === orderOf(drafts, b) ? b.members : [...b.members].reverse();
  for (const [at, member] of a.members.entries()) link(drafts, member, ordered[at]);
}

function orderOf(drafts: readonly NumberDraft[], group: Group): string {
  return drafts[group.members[0] ?? 0]?.range?.part ?? 'one';
}

function link(drafts: readonly NumberDraft[], a: number, b: number | undefined): void {
  const first = drafts[a];
  const second = b === undefined ? undefined : drafts[b];
  if (first === undefined || second === undefined || b === undefined) return;
  first.pair = b;
  second.pair = a;
}

function areTwoUnits(first: NumberDraft, second: NumberDraft): boolean {
  if (first.unitFrom === 'none' || second.unitFrom === 'none') return false;
  const dimension = sharedDimension(first, second);
  if (dimension === undefined) return false;
  return unitIn(first, dimension)?.name !== unitIn(second, dimension)?.name;
}

function isJoinedAsPair(text: ReadingText, a: Group, b: Group, first: NumberDraft, second: NumberDraft): boolean {
  const opening = tokenText(text, a.last + 1);
  if (opening === '(' || opening === '[' || opening === ')') return isAloneInBrackets(text, a, b);
  const dimension = sharedDimension(first, second);
  const from = unitIn(first, dimension);
  const to = unitIn(second, dimension);
  if (from === undefined || to === undefined || isExactRatio(from, to)) return false;
  // `(max. 38 °C, 100 °F)`
  const isListed = opening === ',' && tokenText(text, b.last + 1) === ')';
  return b.first - a.last === 2 && (isListed || equalSigns.has(opening));
}

/** Only the second unit stands in the brackets: `30 s (1 min for lumens)` is no pair. */
function isAloneInBrackets(text: ReadingText, a: Group, b: Group): boolean {
  let at = a.last + 1;
  if (tokenText(text, at) === ')') at++;
  if (tokenText(text, at) !== '(' && tokenText(text, at) !== '[') return false;
  for (at++; at < b.first; at++) if (!fillers.has(tokenText(text, at))) return false;
  const closing = tokenText(text, b.last + 1);
  return closing === ')' || closing === ']' || closing === ',' || closing === ';';
}

function linkTolerances(drafts: readonly NumberDraft[], a: Group | undefined, b: Group | undefined): void {
  const index = a?.members[0];
  const other = b?.members[0];
  if (index === undefined || other === undefined) return;
  const first = drafts[index];
  const second = drafts[other];
  if (first === undefined || second === undefined || !areTwoUnits(first, second) || first.pair !== undefined) return;
  const owners = [first.tolerance?.of, second.tolerance?.of];
  const owner = owners[0] === undefined ? undefined : drafts[owners[0]];
  const beside = second.first - first.last <= 3 || owners[0] === owners[1];
  const pairedOwners = owner?.pair !== undefined && owner.pair === owners[1];
  if (beside || pairedOwners) link(drafts, index, other);
}
