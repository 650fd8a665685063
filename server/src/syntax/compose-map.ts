import type { CST } from 'yaml';
import { span } from '../base/span.ts';
import { KeyRegister } from './key-register.ts';
import { reportComplexLine, reportUnevenKey, rescueKeyless } from './keyless-lines.ts';
import { dropValue, emptyTree, readKey } from './keys.ts';
import { splitValue, valueOnKeyLine } from './map-traps.ts';
import type { MapWork, Reading } from './reading.ts';
import { checkGluedHash } from './text-traps.ts';
import type { MapTree, ScalarTree, Tree } from './tree.ts';
import { walkTrivia } from './trivia.ts';

type Item = CST.BlockMap['items'][number];

/** Keys with values, one below the other. */
export function composeMap(reading: Reading, token: CST.BlockMap): MapTree {
  const work: MapWork = { reading, map: token, entries: [], siblings: [], register: new KeyRegister(reading) };
  for (const item of token.items) composeItem(work, item);
  const end = work.entries.at(-1)?.value.span.end ?? token.offset;
  return { node: 'map', span: span(token.offset, Math.max(end, token.offset)), entries: work.entries };
}

function composeItem(work: MapWork, item: Item): void {
  const { reading } = work;
  const front = walkTrivia(reading, item.start, 'explicit-key-ind');
  if (front.sign !== undefined) reportComplexLine(reading, front.sign.offset);
  if (item.sep === undefined && !item.key) return;
  const behind = walkTrivia(reading, item.sep ?? [], 'map-value-ind');
  const source =
    front.sign === undefined && item.key ? rescueKeyless(work, item.key, behind.sign) : (item.key ?? undefined);
  if (behind.sign === undefined) {
    if (item.value) adoptEntries(work, item.value);
    return;
  }
  if (front.sign === undefined && source !== undefined) reportUnevenKey(work, source);
  const key = readKey(reading, source, behind.sign, front.sign === undefined ? 'plain' : 'complex');
  if (key === undefined) dropValue(reading, item.value);
  else
    addEntry(work, key, entryValue(work, key, behind.sign, behind.hasNewline ? 'own-line' : 'after-key', item.value));
}

/** Keys that were found inside the value but belong beside it come right after it. */
function addEntry(work: MapWork, key: ScalarTree, value: Tree): void {
  work.register.add(key);
  work.entries.push({ key, value });
  const siblings = work.siblings.splice(0);
  for (const sibling of siblings) {
    work.register.add(sibling.key);
    work.entries.push(sibling);
  }
}

/** What the reader hung on a line without a colon belongs beside it. */
function adoptEntries(work: MapWork, value: CST.Token): void {
  const tree = work.reading.compose(value, { indent: work.map.indent, flow: 'block', begins: 'own-line' });
  if (tree.node !== 'map') return;
  for (const entry of tree.entries) addEntry(work, entry.key, entry.value);
}

function entryValue(
  work: MapWork,
  key: ScalarTree,
  colon: CST.SourceToken,
  begins: 'own-line' | 'after-key',
  value: CST.Token | undefined,
): Tree {
  const { reading, map } = work;
  if (value === undefined) {
    const empty = emptyTree(colon);
    checkGluedHash(reading, empty.span.end, empty);
    return empty;
  }
  const within = { indent: map.indent, flow: 'block', begins } as const;
  if (begins === 'own-line') return reading.compose(value, within);
  if (value.type !== 'block-map') return valueOnKeyLine(reading, value, within);
  const split = splitValue(reading, map, key, value);
  work.siblings.push(...split.siblings);
  return split.value;
}
