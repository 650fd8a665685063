import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { quoteToFields } from '../../../server/src/editor/reading/quote-to-fields.ts';
import { asPlain } from '../../../server/src/editor/writing/offer.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { MapTree, Tree } from '../../../server/src/syntax/tree.ts';
import { valueUnder } from '../../../server/src/syntax/value-under.ts';

const endings: Readonly<Record<string, string>> = { device: 'ifu', chemistry: 'chem', packaging: 'pack' };

function read(text: string): MapTree {
  const { tree, problems } = readTree(text);
  if (tree?.node !== 'map' || problems.length > 0) throw new Error(`cannot be read: ${text}`);
  return tree;
}

/** Every number of a file that got a field: `rinse.time at_least 2 min`. */
function numbersIn(tree: Tree, at = ''): readonly string[] {
  if (tree.node === 'list') {
    const seen = new Map<string, number>();
    return tree.items.flatMap((item) => {
      const does = item.node === 'map' ? valueUnder(item, 'do') : undefined;
      const name = does?.node === 'scalar' ? `${at}(${does.text})` : at;
      const count = (seen.get(name) ?? 0) + 1;
      seen.set(name, count);
      return numbersIn(item, count === 1 ? name : `${name}#${count}`);
    });
  }
  if (tree.node !== 'map') return [];
  return tree.entries.flatMap(({ key: { text: key }, value }) => {
    if (bounds.includes(key)) return [`${at} ${key} ${amountsIn(value)}`];
    return key === 'statements' ? [] : numbersIn(value, at === '' ? key : `${at}.${key}`);
  });
}

const bounds = ['stated', 'at_least', 'at_most', 'exactly', 'about', 'between'];

function amountsIn(value: Tree): string {
  if (value.node === 'list') return value.items.map(amountsIn).join(' ');
  return value.node === 'scalar' ? value.text : '';
}

function proposed(kind: string, section: string, quote: string): readonly string[] {
  const place = section === '' ? '' : `, section: ${section}`;
  const text = `kind: ${kind}\nid: pale\nstatements:\n  s5: {doc: D, rev: A, page: 5${place}, quote: ${JSON.stringify(quote)}}\n`;
  const record = readRuleFile(fileId(`x.${endings[kind]}.yaml`), text);
  const found = quoteToFields(record, read(text), text.indexOf('s5'));
  let after = text;
  for (const { span, pieces } of found?.insertions.toReversed() ?? [])
    after = after.slice(0, span.start) + asPlain(pieces, '\n') + after.slice(span.end);
  return numbersIn(read(after));
}

const blocks = readFileSync(path.join(import.meta.dirname, 'instructions/many-numbers.txt'), 'utf8')
  .split('\n\n')
  .slice(1)
  .map((block) => {
    const [head = '', ...lines] = block.trim().split('\n');
    const [, kind = 'device', section = '', quote = ''] = /^(?:\((.+?)\) )?(?:\[(.+?)\] )?(.+)$/.exec(head) ?? [];
    return { kind, section, quote, fields: lines.map((line) => line.trim()) };
  });

describe('of several numbers in one sentence each comes into its own field or into none', () => {
  it.each(blocks)('$quote', ({ kind, section, quote, fields }) => {
    const made = fields.filter((field) => !field.startsWith('? '));
    expect(proposed(kind, section, quote).toSorted()).toEqual(made.toSorted());
  });

  it('in sixty sentences at least', () => {
    expect(blocks.length).toBeGreaterThan(60);
  });
});
