import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import { reportColonGlued, reportLoneWord, reportMissingComma, reportUnclosed } from './flow-traps.ts';
import { KeyRegister } from './key-register.ts';
import { dropValue, emptyTree, readKey } from './keys.ts';
import { endOf, type Reading, type Within } from './reading.ts';
import type { ListTree, MapEntry, MapTree, Tree } from './tree.ts';
import { reportSign, reportUnexpected, type Trivia, walkEnd, walkTrivia } from './trivia.ts';

/** Between brackets: `[a, b]` or `{key: value, key: value}`. */
export function composeFlow(reading: Reading, token: CST.FlowCollection): ListTree | MapTree {
  const close = token.end[0];
  const wanted = token.start.source === '{' ? '}' : ']';
  const closed = close !== undefined && close.source === wanted;
  const end = closed ? endOf(close) : lastEnd(token);
  if (closed) walkEnd(reading, token.end.length > 1 ? token.end.slice(1) : undefined);
  else reportUnclosed(reading, token, wanted);
  const at = span(token.offset, Math.max(end, token.offset + 1));
  if (wanted === '}') return { node: 'map', span: at, entries: flowEntries(reading, token) };
  return { node: 'list', span: at, items: flowItems(reading, token) };
}

function within(token: CST.FlowCollection): Within {
  return { indent: token.indent, flow: 'flow', begins: 'in-brackets' };
}

/** Looks at what stands in front of an item; undefined when there is no item (a comma at the end, a comment). */
function itemFront(reading: Reading, token: CST.FlowCollection, index: number): Trivia | undefined {
  const item = token.items[index];
  if (item === undefined) return undefined;
  const front = walkTrivia(reading, item.start, 'explicit-key-ind');
  if (front.sign !== undefined) reportSign(reading, front.sign.offset);
  const nothing = !item.key && item.sep === undefined && item.value === undefined;
  if (nothing && !front.marked) {
    const last = index === token.items.length - 1;
    if (front.comma !== undefined && (index === 0 || !last)) reportUnexpected(reading, front.comma);
    return undefined;
  }
  if (index === 0 && front.comma !== undefined) reportUnexpected(reading, front.comma);
  if (index > 0 && front.comma === undefined) {
    const at = item.key?.offset ?? item.sep?.[0]?.offset ?? item.value?.offset ?? item.start[0]?.offset ?? token.offset;
    reportMissingComma(reading, at);
  }
  return front;
}

function flowItems(reading: Reading, token: CST.FlowCollection): Tree[] {
  const items: Tree[] = [];
  for (const [index, item] of token.items.entries()) {
    const front = itemFront(reading, token, index);
    if (front === undefined) continue;
    if (item.sep !== undefined || front.sign !== undefined) {
      if (front.sign === undefined) reportColonBelow(reading, item);
      const entry = flowEntry(reading, token, item, front);
      if (entry !== undefined) items.push(singleEntry(entry));
    } else if (item.value !== undefined) items.push(reading.compose(item.value, within(token)));
    else items.push({ node: 'empty', span: span(token.offset + 1, token.offset + 1) });
  }
  return items;
}

/** Between square brackets a key and its colon stand on one line; between braces the colon may stand below. */
function reportColonBelow(reading: Reading, { sep = [] }: CST.CollectionItem): void {
  const colon = sep.findIndex(({ type }) => type === 'map-value-ind');
  const sign = sep[colon];
  if (sign === undefined || !sep.slice(0, colon).some(({ type }) => type === 'newline')) return;
  reading.sink.report(
    'complex-key-not-allowed',
    span(sign.offset, sign.offset + 1),
    'A key and its colon stand on one line. If this is text, put it in quotes.',
  );
}

function singleEntry(entry: MapEntry): MapTree {
  return { node: 'map', span: span(entry.key.span.start, entry.value.span.end), entries: [entry] };
}

function flowEntries(reading: Reading, token: CST.FlowCollection): MapEntry[] {
  const entries: MapEntry[] = [];
  const register = new KeyRegister(reading);
  for (const [index, item] of token.items.entries()) {
    const front = itemFront(reading, token, index);
    if (front === undefined) continue;
    const entry = flowEntry(reading, token, item, front);
    if (entry === undefined) continue;
    register.add(entry.key);
    entries.push(entry);
  }
  return entries;
}

function flowEntry(
  reading: Reading,
  token: CST.FlowCollection,
  item: CST.CollectionItem,
  front: Trivia,
): MapEntry | undefined {
  const behind = walkTrivia(reading, item.sep ?? [], 'map-value-ind');
  const source = item.key ?? undefined;
  if (behind.sign === undefined) return wordWithoutValue(reading, source, item.value);
  const key = readKey(reading, source, behind.sign, front.sign === undefined ? 'plain' : 'complex');
  if (key === undefined) {
    dropValue(reading, item.value);
    return undefined;
  }
  return { key, value: item.value === undefined ? emptyTree(behind.sign) : reading.compose(item.value, within(token)) };
}

/** `{word}`, `{a:1}` or `{a b: 1}` gone wrong: a piece of text between braces with no colon behind it. */
function wordWithoutValue(
  reading: Reading,
  source: CST.Token | undefined,
  value: CST.Token | undefined,
): MapEntry | undefined {
  if (source === undefined) return undefined;
  if (value !== undefined) reportMissingComma(reading, value.offset);
  else if (source.type === 'scalar' && reportColonGlued(reading, source)) return undefined;
  else reportLoneWord(reading, source);
  const key = readKey(
    reading,
    source,
    { type: 'map-value-ind', offset: source.offset, indent: 0, source: ':' },
    'plain',
  );
  if (key === undefined) return undefined;
  return { key, value: { node: 'empty', span: span(key.span.end, key.span.end) } };
}

/** Where the last thing inside an unclosed bracket ends. */
function lastEnd(token: CST.FlowCollection): number {
  const last = token.items.at(-1);
  const part = last?.value ?? last?.key;
  if (part === undefined || part === null) return token.offset + 1;
  return 'source' in part ? endOf(part) : part.offset + 1;
}
