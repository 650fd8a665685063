import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { afterSentences } from '../../../server/src/editor/walk/after-sentences.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { testDay } from '../../support/examples.ts';

const file = fileId('devices/pale.ifu.yaml');
const device = `kind: device
id: pale
maker: Pale Grove
sources:
  - {doc: PG-1, rev: "02", role: device-specific}
statements:
  s1: {doc: PG-1, rev: "02", page: 1, quote: "Dry it."}
lumens: # to do: Channels`;
const document = 'kind: document\nid: PG-1-02\ndoc: PG-1\nrev: "02"\n';

function furtherAfter(text: string, ...others: readonly string[]) {
  const engine = new Engine({ rules: [], today: testDay });
  for (const [at, other] of others.entries()) engine.set(fileId(`documents/${at}.ifu.yaml`), other);
  const { tree } = readTree(text);
  if (tree?.node !== 'map') throw new Error('no file');
  return afterSentences(readRuleFile(file, text), tree, engine.view());
}

describe('when all sentences have been gone through', () => {
  it('what is left is told, each with its place', () => {
    const pieces = furtherAfter(device);
    expect(
      pieces.map(({ label, at }) => [label, at === undefined ? '' : device.slice(at.start - 3, at.start + 2)]),
    ).toEqual([
      ['Go to the first sentence left open: s1', '\n  s1'],
      ['Still to write: Lumens', 'ens: '],
      ['Make the file of the document PG-1, revision 02 …', ''],
      ['Say who encoded it', ''],
    ]);
    const known = { doc: ['PG-1'], rev: ['02'], maker: ['Pale Grove'], pages: ['1'] };
    expect(pieces[2]?.file).toEqual({ kind: 'document', known });
  });

  it('a document that has its file, and a review, are not asked for again', () => {
    const labels = furtherAfter(`${device}\nreview: {encoded_by: educator-1}\n`, document).map(({ label }) => label);
    expect(labels.filter((label) => /document|encoded/.test(label))).toEqual([]);
    const other = furtherAfter(device, document.replace('"02"', '"03"')).map(({ label }) => label);
    expect(other).toContain('Make the file of the document PG-1, revision 02 …');
  });

  it('who encoded it begins a line of its own', () => {
    const applied = applyEdits(device, furtherAfter(device).at(-1)?.edits ?? []);
    expect('text' in applied && applied.text.startsWith(`${device}\nreview: # to do: `)).toBe(true);
  });
});
