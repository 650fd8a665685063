import { span } from '../../../server/src/base/span.ts';
import type { Mistake, MistakeKind } from './mistake.ts';
import type { Site } from './rule-files.ts';
import { entryOf } from './rule-files.ts';

/** Slips of the fingers: what they leave need not even be readable. */

function cut(site: Site, start: number, end: number, text: string): Mistake {
  const line = (from: string): string => from.replace(/\s+/g, ' ').slice(0, 60);
  const { text: whole } = site.of;
  const [before, after] = [whole.slice(Math.max(0, start - 12), start), whole.slice(end, end + 12)];
  return {
    edits: [{ span: span(start, end), text }],
    was: line(`${before}${whole.slice(start, end)}${after}`),
    becomes: line(`${before}${text}${after}`),
  };
}

function lostColon(site: Site): readonly Mistake[] {
  const key = entryOf(site)?.key;
  return key === undefined ? [] : [cut(site, key.span.end, key.span.end + 1, '')];
}

function lostSpace(site: Site): readonly Mistake[] {
  const key = entryOf(site)?.key;
  if (key === undefined || site.of.text[key.span.end + 1] !== ' ') return [];
  return [cut(site, key.span.end + 1, key.span.end + 2, '')];
}

function lostBracket(site: Site): readonly Mistake[] {
  const { start, end } = site.value.span;
  if (!/[[{]/.test(site.of.text[start] ?? '') || !/[\]}]/.test(site.of.text[end - 1] ?? '')) return [];
  return [cut(site, end - 1, end, ''), cut(site, start, start + 1, '')];
}

function lostQuoteMark(site: Site): readonly Mistake[] {
  if (site.value.node !== 'scalar' || site.value.style === 'plain') return [];
  return [cut(site, site.value.span.end - 1, site.value.span.end, '')];
}

function letterForDigit(site: Site): readonly Mistake[] {
  if (site.value.node !== 'scalar' || !/^\d+(\.\d+)? [A-Za-z]/.test(site.value.text)) return [];
  const at = site.value.text.search(/[01]/);
  if (at < 0 || site.value.style !== 'plain') return [];
  const place = site.value.span.start + at;
  return [cut(site, place, place + 1, site.value.text[at] === '0' ? 'O' : 'l')];
}

function decimalComma(site: Site): readonly Mistake[] {
  if (site.value.node !== 'scalar' || !/^\d+\.\d+/.test(site.value.text) || site.value.style !== 'plain') return [];
  const place = site.value.span.start + site.value.text.indexOf('.');
  return [cut(site, place, place + 1, ',')];
}

function lostUnit(site: Site): readonly Mistake[] {
  if (site.value.node !== 'scalar' || site.value.style !== 'plain') return [];
  const number = /^\d+(?:\.\d+)?(?= [A-Za-z])/.exec(site.value.text)?.[0];
  if (number === undefined) return [];
  return [cut(site, site.value.span.start + number.length, site.value.span.end, '')];
}

function wrongIndent(site: Site): readonly Mistake[] {
  const key = entryOf(site)?.key;
  if (key === undefined) return [];
  const start = site.of.text.lastIndexOf('\n', key.span.start - 1) + 1;
  const indent = site.of.text.slice(start, key.span.start);
  if (!/^ {2,}$/.test(indent)) return [];
  return [cut(site, start, start + 1, ''), cut(site, start, key.span.start, '\t')];
}

function lineTwice(site: Site): readonly Mistake[] {
  const key = entryOf(site)?.key;
  if (key === undefined || site.value.node !== 'scalar') return [];
  const start = site.of.text.lastIndexOf('\n', key.span.start - 1) + 1;
  const end = site.of.text.indexOf('\n', start) + 1;
  const lineOfItsOwn = /^ *$/.test(site.of.text.slice(start, key.span.start)) && site.value.span.end <= end;
  return lineOfItsOwn ? [cut(site, end, end, site.of.text.slice(start, end))] : [];
}

function kind(id: string, what: string, mistakes: MistakeKind['mistakes']): MistakeKind {
  return { id, what, leaves: 'anything', mistakes };
}

export const typingSlips: readonly MistakeKind[] = [
  kind('colon-lost', 'the colon behind a key lost', lostColon),
  kind('space-lost', 'the space behind a colon lost', lostSpace),
  kind('bracket-lost', 'a bracket lost', lostBracket),
  kind('quote-mark-lost', 'a closing quotation mark lost', lostQuoteMark),
  kind('letter-for-digit', 'a letter O or l for a digit', letterForDigit),
  kind('decimal-comma', 'a comma for the decimal point', decimalComma),
  kind('unit-lost', 'the unit of a number lost', lostUnit),
  kind('indent-wrong', 'a line one column out, or behind a tab', wrongIndent),
  kind('line-twice', 'a line there twice', lineTwice),
];
