import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import { KeyRegister } from './key-register.ts';
import { emptyTree, type keyTree, readKey } from './keys.ts';
import { reportKeyWithoutColon, splitValue, valueOnKeyLine } from './map-traps.ts';
import type { Reading, Within } from './reading.ts';
import { checkGluedHash } from './text-traps.ts';
import type { MapEntry, MapTree, Tree } from './tree.ts';
import { reportSign, walkTrivia } from './trivia.ts';

type Item = CST.BlockMap['items'][number];

/** Keys with values, one below the other. */
export function composeMap(reading: Reading, token: CST.BlockMap): MapTree {
  const entries: MapEntry[] = [];
  const register = new KeyRegister(reading);
  for (const item of token.items) composeItem(reading, token, item, entries, register);
  const end = entries.at(-1)?.value.span.end ?? token.offset;
  return { node: 'map', span: span(token.offset, Math.max(end, token.offset)), entries };
}

function composeItem(
  reading: Reading,
  map: CST.BlockMap,
  item: Item,
  entries: MapEntry[],
  register: KeyRegister,
): void {
  const front = walkTrivia(reading, item.start, 'explicit-key-ind');
  if (item.sep === undefined && !item.key) {
    if (front.sign !== undefined) reportSign(reading, front.sign.offset);
    return;
  }
  if (front.sign !== undefined) reportSign(reading, front.sign.offset);
  const sep = item.sep ?? [];
  const behind = walkTrivia(reading, sep, 'map-value-ind');
  if (behind.sign === undefined) {
    if (front.sign === undefined && item.key) reportKeyWithoutColon(reading, map, item.key);
    return;
  }
  const key = readKey(reading, item.key ?? undefined, behind.sign, front.sign === undefined ? 'plain' : 'complex');
  if (key === undefined) {
    if (item.value) reading.compose(item.value, { indent: map.indent, flow: 'block', begins: 'after-key' });
    return;
  }
  register.add(key);
  addValue(
    reading,
    map,
    { key, colon: behind.sign, hasNewline: behind.hasNewline, value: item.value },
    entries,
    register,
  );
}

interface Pending {
  readonly key: ReturnType<typeof keyTree>;
  readonly colon: CST.SourceToken;
  readonly hasNewline: boolean;
  readonly value: CST.Token | undefined;
}

function addValue(
  reading: Reading,
  map: CST.BlockMap,
  pending: Pending,
  entries: MapEntry[],
  register: KeyRegister,
): void {
  const { key, colon, value } = pending;
  const begins: Within['begins'] = pending.hasNewline ? 'own-line' : 'after-key';
  const within: Within = { indent: map.indent, flow: 'block', begins };
  if (value === undefined) {
    const empty = emptyTree(colon);
    checkGluedHash(reading, empty.span.end, empty);
    entries.push({ key, value: empty });
    return;
  }
  if (!pending.hasNewline && value.type === 'block-map') {
    const split = splitValue(reading, map, key, value);
    entries.push({ key, value: split.value });
    for (const entry of split.siblings) {
      register.add(entry.key);
      entries.push(entry);
    }
    return;
  }
  const tree: Tree = pending.hasNewline ? reading.compose(value, within) : valueOnKeyLine(reading, value, within);
  entries.push({ key, value: tree });
}
