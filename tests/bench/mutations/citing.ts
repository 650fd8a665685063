import type { MapTree } from '../../../server/src/syntax/tree.ts';
import type { Mistake, MistakeKind } from './mistake.ts';
import { removed, renamedKey, replaced, withoutKey } from './mistake.ts';
import { digitSlips } from './numbers.ts';
import type { Department, Site } from './rule-files.ts';
import { isBelow, itemsOf, scalarsOf, textAt, valueAt } from './rule-files.ts';

/** Slips with documents, pages, statements, names and dates. */

function otherRevision(rev: string): readonly string[] {
  const letter = /^[B-Z]$/.test(rev) ? [String.fromCharCode(rev.charCodeAt(0) - 1)] : [];
  return /^[2-9]$/.test(rev) ? [String(Number(rev) - 1)] : letter.length > 0 ? letter : rev === 'A' ? ['B'] : [];
}

function staleRevision(under: 'sources' | 'statements'): MistakeKind['mistakes'] {
  return (site) => {
    if (site.key !== 'rev' || !isBelow(site, under) || site.value.node !== 'scalar') return [];
    return otherRevision(site.value.text).map((rev) => replaced(site, rev));
  };
}

function pageBeyond(site: Site, department: Department): readonly Mistake[] {
  if (site.key !== 'page' || !isBelow(site, 'statements') || site.value.node !== 'scalar') return [];
  const doc = textAt(site.above?.value, 'doc');
  const pages = department.files.find(({ tree, kind }) => kind === 'document' && textAt(tree, 'doc') === doc);
  const last = Number(textAt(pages?.tree, 'pages') ?? 'NaN');
  const beyond = [`${site.value.text}${site.value.text}`, `${Number(site.value.text) + 90}`];
  return beyond.filter((page) => Number(page) > last).map((page) => replaced(site, page));
}

function pageWrong(site: Site, department: Department): readonly Mistake[] {
  if (site.key !== 'page' || !isBelow(site, 'statements') || site.value.node !== 'scalar') return [];
  const beyond = pageBeyond(site, department).map(({ becomes }) => becomes);
  return digitSlips(site.value.text)
    .filter((page) => !beyond.includes(page))
    .map((page) => replaced(site, page));
}

function locatorDropped(site: Site): readonly Mistake[] {
  if (site.above?.key !== 'statements' || site.value.node !== 'map') return [];
  return [...withoutPlace(site, site.value), ...withoutKey(site, site.value, 'quote')];
}

/** Without the page, and without the section that would do in its place. */
function withoutPlace(site: Site, statement: MapTree): readonly Mistake[] {
  const [page] = withoutKey(site, statement, 'page');
  if (page === undefined) return [];
  const sections = withoutKey(site, statement, 'section').flatMap(({ edits }) => edits);
  return [{ ...page, edits: [...page.edits, ...sections] }];
}

function statementDropped(site: Site): readonly Mistake[] {
  return site.above?.key === 'statements' && site.above.above === undefined ? removed(site) : [];
}

/** The number of the statement before or after it. */
function neighbouringStatement(site: Site): readonly Mistake[] {
  if ((site.key !== 'src' && !site.key.endsWith('_src')) || site.value.node !== 'scalar') return [];
  const number = /^s(\d+)$/.exec(site.value.text)?.[1];
  if (number === undefined) return [];
  const ids = valueAt(site.of.tree, 'statements');
  return [Number(number) - 1, Number(number) + 1]
    .map((other) => `s${other}`)
    .filter((other) => valueAt(ids, other) !== undefined)
    .map((other) => replaced(site, other));
}

function sourceDropped(site: Site): readonly Mistake[] {
  return /^(.*_)?src$/.test(site.key) && site.holder.node === 'map' && site.of.kind !== 'quiz' ? removed(site) : [];
}

function quoteMiscopied(site: Site): readonly Mistake[] {
  if (site.key !== 'quote' || !isBelow(site, 'statements') || site.value.node !== 'scalar') return [];
  const { text } = site.value;
  const number = /\d+(?:[.,]\d+)?/.exec(text);
  if (number === null) return [];
  return digitSlips(number[0].replace(',', '.')).map((slip) =>
    replaced(site, `${text.slice(0, number.index)}${slip}${text.slice(number.index + number[0].length)}`),
  );
}

function boundWordLost(site: Site): readonly Mistake[] {
  if (site.key !== 'quote' || !isBelow(site, 'statements') || site.value.node !== 'scalar') return [];
  const { text } = site.value;
  return [' at least', ' at most', ' not', ' no less than', ' not less than', 'Do not ', 'Never ']
    .filter((word) => text.includes(word))
    .map((word) => replaced(site, text.replace(word, '')));
}

const referring = [
  'device',
  'packaging',
  'cycle',
  'washer_cycle',
  'indicator',
  'external_indicator',
  'chemistry',
  'water',
  'final_water',
  'machine',
  'monitor',
  'doses',
  'case',
  'training',
  'sign_off',
  'answered_by',
  'site',
  'biological',
  'applies_to',
  'about',
];

function referenceMisspelt(site: Site): readonly Mistake[] {
  if (!referring.includes(site.key) || site.value.node !== 'scalar' || site.value.text.length < 3) return [];
  const { text } = site.value;
  const middle = Math.floor(text.length / 2);
  return [
    replaced(site, `${text.slice(0, middle)}${text.slice(middle + 1)}`),
    replaced(site, `${text.slice(0, middle - 1)}${text[middle]}${text[middle - 1]}${text.slice(middle + 1)}`),
  ].filter(({ becomes }) => becomes !== text);
}

function keyMisspelt(site: Site): readonly Mistake[] {
  if (site.holder.node !== 'map' || site.key.length < 4) return [];
  if (site.above?.key === 'statements' || site.above?.key === 'masses') return [];
  const middle = Math.floor(site.key.length / 2);
  return renamedKey(site, `${site.key.slice(0, middle)}${site.key.slice(middle + 1)}`);
}

function catalogueNumberTwice(site: Site, department: Department): readonly Mistake[] {
  if (site.key !== 'covers' || site.of.kind !== 'device' || site.value.node !== 'scalar') return [];
  const others = department.files.filter(({ kind, id }) => kind === 'device' && id !== site.of.id);
  return others
    .flatMap(({ tree }) => scalarsOf(valueAt(tree, 'covers')).slice(0, 1))
    .map(({ text }) => replaced(site, text));
}

function idTwice(site: Site, department: Department): readonly Mistake[] {
  if (site.key !== 'id' || site.above !== undefined) return [];
  const ids = department.ids(site.of.kind);
  const next = ids[ids.indexOf(site.of.id) + 1];
  return next === undefined ? [] : [replaced(site, next)];
}

const falling = [
  'due',
  'last_cleaning_test',
  'last_test',
  'last',
  'qualified',
  'last_result',
  'measured',
  'mass_measured',
  'expires',
  'answer_by',
];

function dateYearsBack(site: Site): readonly Mistake[] {
  if (!falling.includes(site.key) || site.value.node !== 'scalar') return [];
  const [, year, rest] = /^(\d{4})(-\d\d-\d\d)$/.exec(site.value.text) ?? [];
  return year === undefined ? [] : [replaced(site, `${Number(year) - 2}${rest}`)];
}

function sameReader(site: Site): readonly Mistake[] {
  if (site.key !== 'approved_by' || site.above?.key !== 'review') return [];
  const encoder = textAt(site.above.value, 'encoded_by');
  return encoder === undefined ? [] : [replaced(site, encoder)];
}

function statusWrong(site: Site): readonly Mistake[] {
  if (site.key !== 'status' || site.of.kind !== 'document' || site.value.node !== 'scalar') return [];
  return site.value.text === 'current' ? ['superseded', 'withdrawn'].map((status) => replaced(site, status)) : [];
}

function answerUnchecked(site: Site): readonly Mistake[] {
  if (site.of.kind !== 'response' || site.above !== undefined) return [];
  if (site.key === 'status') return [replaced(site, 'unverified')];
  return site.key === 'signed' ? [replaced(site, 'false')] : [];
}

function signOffGone(site: Site, department: Department): readonly Mistake[] {
  const needed = ['second_reader', 'manager', 'reviewer', 'shelf_stock', 'training', 'on'];
  if (site.of.kind === 'sign-off') return site.above === undefined && needed.includes(site.key) ? removed(site) : [];
  if (site.of.kind !== 'document' || (site.above !== undefined && site.key !== 'impact_ack')) return [];
  if (hasRecord(site, department)) return [];
  if (['sign_off', 'training', 'impact_ack'].includes(site.key) && site.holder.node === 'map') return removed(site);
  return site.key === 'impact_ack' && itemsOf(site.above?.value).length > 1 ? removed(site) : [];
}

/** A record of the decision says all that the document's own lines repeat. */
function hasRecord(site: Site, department: Department): boolean {
  return department.files.some(
    ({ kind, tree }) => kind === 'sign-off' && textAt(tree, 'doc') === textAt(site.of.tree, 'doc'),
  );
}

function kind(id: string, what: string, mistakes: MistakeKind['mistakes']): MistakeKind {
  return { id, what, leaves: 'readable', mistakes };
}

export const citingSlips: readonly MistakeKind[] = [
  kind('source-revision-stale', 'an older revision under sources', staleRevision('sources')),
  kind('statement-revision-stale', 'an older revision at a statement', staleRevision('statements')),
  kind('page-beyond', 'a page that the document does not have', pageBeyond),
  {
    ...kind('page-wrong', 'another page of the same document', pageWrong),
    unnoticeable: 'only the document itself shows on which page a sentence stands',
  },
  kind('locator-left-out', 'the page or the sentence of a statement left out', locatorDropped),
  kind('statement-left-out', 'a statement removed that values still name', statementDropped),
  kind('statement-neighbour', 'a value that names the statement before or after its own', neighbouringStatement),
  kind('source-left-out', 'a value without its statement', sourceDropped),
  kind('quote-miscopied', 'a digit of the quoted sentence wrong', quoteMiscopied),
  kind('quote-word-lost', 'a bound word or a not lost from the quoted sentence', boundWordLost),
  kind('reference-misspelt', 'the name of another file misspelt', referenceMisspelt),
  kind('key-misspelt', 'a key misspelt', keyMisspelt),
  kind('catalogue-number-twice', 'the catalogue numbers of another family', catalogueNumberTwice),
  kind('id-twice', 'the id of another file of the kind', idTwice),
  kind('date-years-back', 'a test or a review two years old', dateYearsBack),
  kind('same-reader', 'who encoded also approves', sameReader),
  kind('document-not-current', 'a document in use marked as superseded or withdrawn', statusWrong),
  kind('answer-unchecked', 'a maker’s answer that nobody verified or signed', answerUnchecked),
  kind('sign-off-left-out', 'a decision, a training or an acknowledgement missing at a new revision', signOffGone),
];
