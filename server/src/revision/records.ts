import { fieldAt, keysOf, tidy } from '../model/content.ts';
import type { Flag, List, Node, Quantity, Rec, Requirement, Table, Text } from '../model/node.ts';
import { isRequirement } from '../model/walk.ts';
import { textAt } from './align.ts';
import { compareConditions, compareDemands, compareRanked, sameAmount, type Verdict } from './demands.ts';
import {
  demandingFlags,
  highestAmounts,
  lowerForbidsMore,
  prohibitionLists,
  quotedFields,
  rankedWords,
  recordKeepingFields,
  scopeFields,
  wordingFields,
} from './fields.ts';
import { wordingDifference } from './guard.ts';
import { compareLists } from './lists.ts';
import { fieldSpot, type Spot, sameContent, type Walk } from './walk.ts';

/** Fields of a record that are compared elsewhere: passages by alignment, sources by the header of a comparison. */
const elsewhere: ReadonlySet<string> = new Set(['kind', 'src', 'statements', 'sources']);

/** What stands in place of a section that is not described. */
const states = ['silent', 'not_applicable', 'ambiguous', 'defers_to'] as const;

const nothing: ReadonlySet<string> = new Set();

/** Everything that differs between two records that stand for the same thing. `judged`: fields already looked at. */
export function compareRecords(
  walk: Walk,
  old: Rec,
  now: Rec,
  spot: Spot,
  judged: ReadonlySet<string> = nothing,
): void {
  if (isRequirement(old) && isRequirement(now) && reportDemand(walk, old, now, spot)) return;
  const whole = isRequirement(old) ? undefined : wholeVerdict(old, now);
  if (whole !== undefined) {
    walk.report(whole, spot, old, now);
    return;
  }
  const found = walk.drafts.length;
  const keys = new Set([...keysOf(old), ...keysOf(now)]);
  for (const key of keys) {
    if (elsewhere.has(key) || judged.has(key) || (isRequirement(old) && ofDemand.has(key))) continue;
    compareFields(walk, key, old, now, spot);
  }
  if (walk.drafts.length === found) compareCitations(walk, old, now, spot);
}

/** Parts of a demand that its own comparison has looked at. */
const ofDemand: ReadonlySet<string> = new Set([
  'at_least',
  'at_most',
  'between',
  'exactly',
  'stated',
  'about',
  'silent',
  'ambiguous',
  'not_applicable',
  'tol',
  'of',
  'strength',
  'defers_to',
  'edition',
  'conflict',
  'specific',
  'when',
]);

function reportDemand(walk: Walk, old: Requirement, now: Requirement, spot: Spot): boolean {
  const verdict = compareDemands(old, now, spot.afterPath, walk.policies);
  if (verdict !== undefined) walk.report(verdict, spot, old, now);
  return verdict !== undefined;
}

/** A change that takes in the whole section: it fell silent, is spoken of, is forbidden now, or its "and" became an "or". */
function wholeVerdict(old: Rec, now: Rec): Verdict | undefined {
  const [was, is] = [textAt(old, 'use') === 'forbidden', textAt(now, 'use') === 'forbidden'];
  if (was !== is) return { class: is ? 'new-prohibition' : 'prohibition-removed' };
  const [stood, stands] = [stateOf(old), stateOf(now)];
  if (stood !== stands) return compareStates(stood, stands);
  const [joined, joins] = [joinOf(old), joinOf(now)];
  if (joined !== undefined && joins !== undefined && joined !== joins)
    return { class: 'different', because: joins === 'any_of' ? '"and" became "or"' : '"or" became "and"' };
  return undefined;
}

type State = (typeof states)[number] | 'described';

function stateOf(record: Rec): State {
  for (const state of states) {
    const field = fieldAt(record, state);
    if (field === undefined || (field.node === 'flag' && !field.on)) continue;
    return state;
  }
  return textAt(record, 'use') === 'silent' ? 'silent' : 'described';
}

const saysNothing: ReadonlySet<State> = new Set(['silent', 'defers_to']);

function compareStates(was: State, is: State): Verdict {
  if (saysNothing.has(was) && saysNothing.has(is)) return { class: 'different', because: 'silent in another way' };
  if (saysNothing.has(is)) return { class: 'became-silent' };
  if (saysNothing.has(was)) return { class: 'became-stated' };
  if (is === 'not_applicable') return { class: 'looser', because: 'it no longer applies' };
  if (was === 'not_applicable') return { class: 'stricter', because: 'it applies now' };
  return is === 'ambiguous'
    ? { class: 'different', because: 'the page can no longer be carried out as written' }
    : { class: 'clarification', because: 'the page can now be carried out as written' };
}

function joinOf(record: Rec): 'all_of' | 'any_of' | undefined {
  const [all, any] = [fieldAt(record, 'all_of'), fieldAt(record, 'any_of')];
  if (all !== undefined && any === undefined) return 'all_of';
  return any !== undefined && all === undefined ? 'any_of' : undefined;
}

function compareFields(walk: Walk, key: string, old: Rec, now: Rec, outer: Spot): void {
  const [before, after] = [fieldAt(old, key), fieldAt(now, key)];
  const spot = fieldSpot(outer, old, key, before, after);
  if (recordKeepingFields.has(key)) {
    if (before === undefined || after === undefined || !sameContent(before, after))
      walk.recordKeeping.push(spot.afterPath);
    return;
  }
  const listed = before ?? after;
  if (
    listed?.node === 'list' &&
    (before === undefined || before.node === 'list') &&
    (after === undefined || after.node === 'list')
  ) {
    const [one, other] = [before as List<Node> | undefined, after as List<Node> | undefined];
    compareLists(walk, key, old, one, other, spot, (a, b, at) => compareItems(walk, key, a, b, at));
    return;
  }
  if (before === undefined || after === undefined) {
    compareMissing(walk, key, before, after, spot, old);
    return;
  }
  compareValues(walk, key, before, after, spot, old);
}

function compareItems(walk: Walk, key: string, old: Node, now: Node, spot: Spot): void {
  if (old.node !== 'record' || now.node !== 'record') {
    if (!sameContent(old, now)) walk.report({ class: 'different' }, spot, old, now);
    return;
  }
  const isForbidden = prohibitionLists.has(key);
  const verdict = isForbidden ? prohibitionVerdict(old, now) : undefined;
  if (verdict !== undefined) {
    walk.report(verdict, spot, old, now);
    return;
  }
  compareRecords(walk, old, now, spot, isForbidden ? ofProhibition : nothing);
}

const ofProhibition: ReadonlySet<string> = new Set(['value', 'when', 'strength']);

/** The same thing forbidden, from another number on or in another situation. */
function prohibitionVerdict(old: Rec, now: Rec): Verdict | undefined {
  const [was, is] = [amountIn(old), amountIn(now)];
  let verdict: Verdict | undefined;
  if (textAt(old, 'value') !== textAt(now, 'value')) {
    const lowerForbids = lowerForbidsMore[textAt(now, 'what') ?? ''];
    if (was !== undefined && was === is) verdict = undefined;
    else if (was === undefined || is === undefined || lowerForbids === undefined) verdict = { class: 'different' };
    else verdict = { class: is < was === lowerForbids ? 'stricter' : 'looser' };
  }
  const when = compareConditions(textAt(old, 'when'), textAt(now, 'when'), 'demand');
  const strength = compareRanked('strength', textAt(old, 'strength') ?? 'must', textAt(now, 'strength') ?? 'must');
  const all = [verdict, when, strength].filter((one) => one !== undefined);
  if (all.length < 2) return all[0];
  return all.every((one) => one.class === all[0]?.class) ? all[0] : { class: 'different' };
}

/** The number of a prohibition, Fahrenheit turned to Celsius. */
function amountIn(prohibition: Rec): number | undefined {
  const parts = /^(-?\d{1,6}(?:\.\d{1,4})?) *(°?F)?/.exec(textAt(prohibition, 'value') ?? '');
  if (parts === null) return undefined;
  const amount = Number(parts[1]);
  return parts[2] === undefined ? amount : Math.round(((amount - 32) / 1.8) * 10) / 10;
}

/** A field that only one side has. */
function compareMissing(
  walk: Walk,
  key: string,
  before: Node | undefined,
  after: Node | undefined,
  spot: Spot,
  owner: Rec,
): void {
  const only = before ?? after;
  if (only === undefined) return;
  const isNow = after !== undefined;
  walk.report(missingVerdict(key, only, isNow ? 'added' : 'removed', owner), spot, before, after);
}

function missingVerdict(key: string, only: Node, what: 'added' | 'removed', owner: Rec): Verdict {
  if (key === 'as_written' || wordingFields.has(key)) return { class: 'editorial' };
  if (scopeFields.has(key)) return { class: 'scope' };
  const when = only.node === 'text' ? only.text : undefined;
  const [was, is] = what === 'added' ? [undefined, when] : [when, undefined];
  if (key === 'when' || key === 'couples')
    return compareConditions(was, is, isOption(owner) ? 'option' : 'demand') ?? { class: 'different' };
  if (key === 'strength')
    return (
      compareRanked(key, was ?? 'must', is ?? 'must') ?? {
        class: 'editorial',
        because: '"must" is what is meant without a word',
      }
    );
  if (key === 'unordered') return { class: what === 'added' ? 'looser' : 'stricter' };
  if (only.node === 'record') {
    if (textAt(only, 'use') === 'forbidden')
      return { class: what === 'added' ? 'new-prohibition' : 'prohibition-removed' };
    if (stateOf(only) === 'silent')
      return { class: 'editorial', because: 'only that the page is silent was noted down' };
  }
  return { class: what === 'added' ? 'became-stated' : 'became-silent' };
}

/** A complete way of sterilizing or processing, as opposed to a demand. */
function isOption(owner: Rec): boolean {
  return 'modality' in owner || 'exposure' in owner;
}

function compareValues(walk: Walk, key: string, before: Node, after: Node, spot: Spot, owner: Rec): void {
  if (before.node === 'record' && after.node === 'record') {
    compareRecords(walk, before, after, spot);
    return;
  }
  if (before.node === 'table' && after.node === 'table') {
    compareTables(walk, before, after, spot);
    return;
  }
  const verdict = valueVerdict(walk, key, before, after, owner);
  if (verdict !== undefined) walk.report(verdict, spot, before, after);
}

function valueVerdict(walk: Walk, key: string, before: Node, after: Node, owner: Rec): Verdict | undefined {
  if (before.node === 'text' && after.node === 'text') return textVerdict(walk, key, before, after, owner);
  if (before.node === 'flag' && after.node === 'flag') return flagVerdict(key, before, after);
  if (before.node === 'quantity' && after.node === 'quantity') return amountVerdict(key, before, after);
  if (sameContent(before, after)) return undefined;
  return { class: scopeFields.has(key) ? 'scope' : 'different' };
}

function textVerdict(walk: Walk, key: string, before: Text, after: Text, owner: Rec): Verdict | undefined {
  const [old, now] = [tidy(before.text), tidy(after.text)];
  if (old === now) return undefined;
  if (key === 'id') return { class: 'editorial', because: 'only the name in this library is another' };
  if (rankedWords[key] !== undefined) return compareRanked(key, old, now);
  if (key === 'when' || key === 'couples') return compareConditions(old, now, isOption(owner) ? 'option' : 'demand');
  if (scopeFields.has(key)) return { class: 'scope' };
  if (quotedFields.has(key)) return wordingVerdict(old, now, walk.language);
  return { class: wordingFields.has(key) ? 'editorial' : 'different' };
}

/** Wording only, unless a number, a negation, a bound word, an and/or or a unit changed. */
export function wordingVerdict(old: string, now: string, language: string | undefined): Verdict {
  const { guards } = wordingDifference(old, now, language);
  if (guards.length === 0) return { class: 'editorial' };
  const because = `${guards.join(', ')} changed in the wording`;
  return guards.length === 1 && guards[0] === 'a unit'
    ? { class: 'correction', because }
    : { class: 'different', because };
}

function flagVerdict(key: string, before: Flag, after: Flag): Verdict | undefined {
  if (before.on === after.on) return undefined;
  if (scopeFields.has(key)) return { class: 'scope' };
  if (key === 'unordered') return { class: after.on ? 'looser' : 'stricter' };
  if (!demandingFlags.has(key)) return { class: 'different' };
  return { class: after.on ? 'stricter' : 'looser' };
}

function amountVerdict(key: string, before: Quantity, after: Quantity): Verdict | undefined {
  if (sameAmount(before, after)) return undefined;
  if (!highestAmounts.has(key)) return { class: 'different' };
  return { class: after.value < before.value ? 'stricter' : 'looser' };
}

function compareTables(walk: Walk, old: Table<Node>, now: Table<Node>, outer: Spot): void {
  for (const key of new Set([...old.rows.keys(), ...now.rows.keys()])) {
    const [before, after] = [old.rows.get(key), now.rows.get(key)];
    const spot: Spot = {
      ...outer,
      beforePath: `${outer.beforePath}.${key}`,
      afterPath: `${outer.afterPath}.${key}`,
      put: (node) => ({ is: 'row', owner: old, key, row: node && after && { ...after, value: node } }),
    };
    if (before !== undefined && after !== undefined) compareRow(walk, key, before.value, after.value, spot);
    else
      walk.report(
        { class: after === undefined ? 'became-silent' : 'became-stated' },
        spot,
        before?.value,
        after?.value,
      );
  }
}

/** A limit of the site has no form of its own: it is compared as a value. */
function compareRow(walk: Walk, key: string, before: Node, after: Node, spot: Spot): void {
  if (before.node === 'record' && after.node === 'record') {
    compareRecords(walk, before, after, spot);
    return;
  }
  if (before.node === 'list' && after.node === 'list') {
    if (!sameContent(before, after)) walk.report({ class: 'different' }, spot, before, after);
    return;
  }
  const verdict =
    before.node === after.node ? valueVerdict(walk, key, before, after, { node: 'record', at: before.at }) : undefined;
  if (verdict !== undefined) walk.report(verdict, spot, before, after);
}

/** The same value, said by another passage. */
function compareCitations(walk: Walk, old: Rec, now: Rec, outer: Spot): void {
  const [before, after] = [fieldAt(old, 'src'), fieldAt(now, 'src')];
  const spot = fieldSpot(outer, old, 'src', before, after);
  const cited = before?.node === 'citation' ? walk.statements.citedBefore(before) : new Set<string>();
  const cites = after?.node === 'citation' ? walk.statements.citedAfter(after) : new Set<string>();
  const isText = before?.node === 'text' || after?.node === 'text';
  const same = isText
    ? before !== undefined && after !== undefined && sameContent(before, after)
    : cited.size === cites.size && [...cited].every((id) => cites.has(id));
  if (!same)
    walk.report(
      { class: 're-citation' },
      { ...spot, beforeSrc: outer.beforeSrc, afterSrc: outer.afterSrc },
      before,
      after,
    );
}
