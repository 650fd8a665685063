import type { Mistake, MistakeKind } from './mistake.ts';
import { removed, renamedKey, replaced, rewritten } from './mistake.ts';
import { decimalSlips, digitSlips, otherUnits, transpositions, writtenNumber } from './numbers.ts';
import type { Site } from './rule-files.ts';
import { entryOf, isBelow, itemsOf, scalarsOf, sitesOf, textAt, valueAt } from './rule-files.ts';

/** Slips of who copies a page of an instruction into a file. They happen where something is copied from a page. */
const copied = ['device', 'packaging', 'chemistry'];

function isCopied(site: Site): boolean {
  return (
    copied.includes(site.of.kind) &&
    !isBelow(site, 'statements') &&
    !isBelow(site, 'sources') &&
    !isBelow(site, 'review')
  );
}

/** The number belongs to a value that names its statement, itself or above. */
function isCited(site: Site): boolean {
  if (!isCopied(site)) return false;
  for (let at: Site | undefined = site; at !== undefined; at = at.above)
    if (valueAt(at.value, 'src') !== undefined) return true;
  return false;
}

function ofNumber(change: (number: string) => readonly string[]): MistakeKind['mistakes'] {
  return (site) => {
    const written = isCited(site) ? writtenNumber(site) : undefined;
    if (written === undefined) return [];
    return change(written.number).map((number) => replaced(site, `${number}${written.rest}`));
  };
}

const bounds: Readonly<Record<string, readonly string[]>> = {
  at_least: ['at_most', 'exactly'],
  at_most: ['at_least'],
  stated: ['at_least', 'at_most'],
  exactly: ['at_least'],
  about: ['at_most', 'stated'],
};

function otherBound(site: Site): readonly Mistake[] {
  if (!isCited(site)) return [];
  return (bounds[site.key] ?? []).flatMap((bound) => renamedKey(site, bound));
}

function lostNegation(site: Site): readonly Mistake[] {
  if (!isCopied(site) || site.value.node !== 'scalar' || site.value.text !== 'forbidden') return [];
  return ['allowed', 'required'].map((use) => replaced(site, use));
}

function lostProhibition(site: Site): readonly Mistake[] {
  if (!isCopied(site)) return [];
  if (site.key === 'not' && site.holder.node === 'list') return saidOnce(site) ? removed(site) : [];
  const negative = ['without', 'forbidden', 'never'];
  if (negative.includes(site.key) && site.holder.node === 'map') return isUnderNot(site) ? [] : removed(site);
  return textAt(site.value, 'use') === 'forbidden' && saidOnce(site) ? removed(site) : [];
}

function emptiedProhibitions(site: Site): readonly Mistake[] {
  if (!isCopied(site) || site.key !== 'not' || site.holder.node !== 'map') return [];
  const items = sitesOf(site.of).filter(({ above }) => above?.path === site.path);
  return items.some(saidOnce) ? removed(site) : [];
}

/** A prohibition that stands in the file twice is not lost with one of its places. */
function saidOnce(site: Site): boolean {
  const src = textAt(site.value, 'src');
  const prohibits = (other: Site): boolean =>
    textAt(other.value, 'use') === 'forbidden' || (other.key === 'not' && other.holder.node === 'list');
  return !sitesOf(site.of).some(
    (other) => other.path !== site.path && prohibits(other) && textAt(other.value, 'src') === src,
  );
}

/** Every word of the list stands among what the file forbids altogether too. */
function isUnderNot(site: Site): boolean {
  const forbidden = itemsOf(valueAt(site.of.tree, 'not')).map((item) => textAt(item, 'what'));
  return scalarsOf(site.value).every(({ text }) => forbidden.includes(text));
}

function otherUnit(site: Site): readonly Mistake[] {
  const written = isCited(site) ? writtenNumber(site) : undefined;
  if (written === undefined) return [];
  return otherUnits(written).map((unit) => replaced(site, `${written.number} ${unit}`));
}

/** Another number of the same unit, from the rows just above and below. */
function neighbouringRow(site: Site): readonly Mistake[] {
  const written = isCited(site) ? writtenNumber(site) : undefined;
  if (written === undefined || written.rest === '' || site.value.node !== 'scalar') return [];
  const own = site.value.text;
  const rows = sitesOf(site.of).filter((other) => isCopied(other) && writtenNumber(other)?.rest === written.rest);
  const at = rows.findIndex(({ path }) => path === site.path);
  const texts = [rows[at - 1], rows[at + 1]].flatMap((row) => scalarsOf(row?.value).map(({ text }) => text));
  return [...new Set(texts)].filter((text) => text !== own).map((text) => replaced(site, text));
}

function structureSwapped(site: Site): readonly Mistake[] {
  // Of one alone all is the same as any.
  if (!isCopied(site) || itemsOf(site.value).length < 2) return [];
  if (site.key === 'all_of') return renamedKey(site, 'any_of');
  return site.key === 'any_of' && site.above?.key === 'cleaning' ? renamedKey(site, 'all_of') : [];
}

function channelStepDropped(site: Site): readonly Mistake[] {
  if (site.key !== 'steps' || site.holder.node !== 'list' || site.of.kind !== 'device') return [];
  const channel = textAt(site.value, 'port') ?? textAt(site.value, 'lumen');
  return channel === undefined ? [] : removed(site);
}

function cleaningStepDropped(site: Site): readonly Mistake[] {
  if (site.key !== 'steps' || site.holder.node !== 'list' || site.of.kind !== 'device') return [];
  return (valueAt(site.value, 'port') ?? valueAt(site.value, 'lumen')) ? [] : removed(site);
}

function stageDropped(site: Site): readonly Mistake[] {
  return isCopied(site) && site.key === 'all_of' && site.above?.key === 'all_of' && site.holder.node === 'list'
    ? removed(site)
    : [];
}

function limitDropped(site: Site): readonly Mistake[] {
  if (!isCopied(site) || site.value.node !== 'map' || site.holder.node !== 'map') return [];
  const bound = ['at_least', 'at_most', 'between', 'stated', 'exactly'].some((key) => valueAt(site.value, key));
  return bound ? removed(site) : [];
}

function writtenAsSilent(site: Site): readonly Mistake[] {
  if (!isCopied(site) || entryOf(site) === undefined || valueAt(site.value, 'src') === undefined) return [];
  if (site.of.kind !== 'device' || site.above !== undefined) return [];
  return [rewritten(site, '{silent: true, checked: 2025-02-24}')].filter(
    () => site.of.text[site.value.span.start] === '{',
  );
}

function modalityMixedUp(site: Site): readonly Mistake[] {
  if (site.key !== 'modality' || !isBelow(site, 'sterilization') || site.value.node !== 'scalar') return [];
  return site.value.text === 'steam-prevac'
    ? [replaced(site, 'steam-gravity')]
    : site.value.text === 'steam-gravity'
      ? [replaced(site, 'steam-prevac')]
      : [];
}

function packagingListChanged(site: Site): readonly Mistake[] {
  if (site.key !== 'allowed' || !isBelow(site, 'sterilization') || site.value.node !== 'list') return [];
  const has = scalarsOf(site.value).map(({ text }) => text);
  return ['rigid-container', 'double-wrap', 'pouch']
    .filter((type) => !has.includes(type))
    .map((type) => rewritten(site, `[${[...has, type].join(', ')}]`));
}

function relationMixedUp(site: Site): readonly Mistake[] {
  if (site.key !== 'relation' || site.value.node !== 'scalar') return [];
  return ['validated_with', 'restricted_to', 'requires_class']
    .filter((relation) => site.value.node === 'scalar' && relation !== site.value.text)
    .map((relation) => replaced(site, relation));
}

function kind(id: string, what: string, mistakes: MistakeKind['mistakes']): MistakeKind {
  return { id, what, leaves: 'readable', mistakes };
}

export const copyingSlips: readonly MistakeKind[] = [
  kind(
    'bound-swapped',
    'another bound word: at least for at most, a limit where the page gives a bare number',
    otherBound,
  ),
  kind('negation-lost', 'forbidden written as allowed or required', lostNegation),
  kind('prohibition-left-out', 'one thing that the page forbids left out', lostProhibition),
  kind('prohibitions-left-out', 'the whole list of forbidden things left out', emptiedProhibitions),
  kind('unit-wrong', 'seconds for minutes, °F for °C, psi for bar', otherUnit),
  kind('row-slipped', 'the number of the neighbouring row', neighbouringRow),
  kind('digit-slip', 'one digit wrong', ofNumber(digitSlips)),
  kind('digits-transposed', 'two digits changed about', ofNumber(transpositions)),
  kind('decimal-slip', 'the decimal point lost, moved or a zero too many', ofNumber(decimalSlips)),
  kind('all-any-swapped', 'all of these steps written as any of them, or the other way round', structureSwapped),
  kind('channel-step-left-out', 'the step of one port or lumen left out', channelStepDropped),
  kind('cleaning-step-left-out', 'another step of cleaning by hand left out', cleaningStepDropped),
  kind('stage-left-out', 'a whole way of cleaning left out of all that are needed', stageDropped),
  kind('limit-left-out', 'a number that the page gives left out', limitDropped),
  kind('silent-written', 'the page said to be silent where it speaks', writtenAsSilent),
  kind('modality-mixed-up', 'gravity for air removal by vacuum, or the other way round', modalityMixedUp),
  kind('packaging-added', 'one packaging more than the page allows', packagingListChanged),
  kind(
    'relation-mixed-up',
    'packaging it was tested in taken for the only one, or the other way round',
    relationMixedUp,
  ),
];
