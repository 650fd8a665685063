import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { blindCopy, compareReadings } from '../../../server/src/editor/double-reading.ts';
import type { FileRecord } from '../../../server/src/library/file-record.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import type { AnyEntity } from '../../../server/src/model/entity.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { readSample } from '../../support/samples.ts';

function record(text: string): FileRecord & { entity: AnyEntity } {
  const made = readRuleFile(fileId('x.ifu.yaml'), text);
  if (made.entity === undefined) throw new Error(made.problems.map(({ message }) => message).join('\n'));
  return { ...made, entity: made.entity };
}

function blind(text: string): string | undefined {
  const made = record(text);
  const { tree } = readTree(text);
  return tree?.node === 'map' ? blindCopy(made, tree, made.entity) : undefined;
}

const first = `# Temperature was hard to read.
kind: device
id: grey-scissors
maker: Grey Grove
traits: [hinged, insulated]
limits:
  temp: {at_most: 140 C, src: s1}
statements:
  # 140, not 104
  s1: {doc: GG-1, rev: A, page: 2, quote: "Do not exceed 140 °C. # really"}
  s2:
    doc: GG-1
    rev: A
    page: 4
    quote: |
      Pre-vacuum 132 °C.
      # 4 minutes
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C, src: s2}, exposure: {stated: 4 min, src: s2}, dry: {at_least: 30 min, src: s2}}
`;

describe('the copy for the second reader', () => {
  it('has every quote and no value', () => {
    const copy = blind(first) ?? '';
    expect(copy).toContain('quote: "Do not exceed 140 °C. # really"');
    expect(copy).toContain('      # 4 minutes');
    for (const hidden of ['limits', 'at_most', 'sterilization', 'traits', '140, not 104', 'hard to read'])
      expect(copy).not.toContain(hidden);
    expect(record(copy).problems.filter(({ severity }) => severity === 'error')).toEqual([]);
  });

  it('is none without quotes, or of a file on one line', () => {
    expect(blind('kind: device\nid: grey\n')).toBeUndefined();
    expect(blind('{kind: device, id: grey, statements: {s1: {quote: x}}}\n')).toBeUndefined();
  });

  it('of every device of the sample is read again with the same quotes', () => {
    for (const [path, text] of readSample('lanternfield')) {
      if (!path.startsWith('devices/')) continue;
      const copy = blind(text);
      if (copy === undefined) continue;
      const [one, other] = [record(text).entity, record(copy).entity];
      expect(
        Object.keys(other).filter(
          (key) => !['node', 'at', 'kind', 'id', 'name', 'maker', 'sources', 'statements'].includes(key),
        ),
      ).toEqual([]);
      const quotes = (entity: AnyEntity) =>
        JSON.stringify(entity, (key, value) =>
          key === 'at' || key === 'span' ? undefined : value instanceof Map ? [...value] : value,
        );
      expect(quotes({ ...other } as AnyEntity)).toContain('"quote"');
      expect(compareReadings(one, one).every(({ verdict }) => verdict === 'same')).toBe(true);
    }
  });
});

describe('two readings', () => {
  const compared = (text: string) => compareReadings(record(first).entity, record(text).entity);
  const differing = (text: string) =>
    compared(text)
      .filter(({ verdict }) => verdict !== 'same')
      .map(({ path, verdict, first: one, second }) => `${path} ${verdict}: ${one} | ${second}`);

  it('agree in another order, other units and other ids', () => {
    const same = first
      .replace('[hinged, insulated]', '[insulated, hinged]')
      .replace('{at_most: 140 C', '{at_most: 284 F')
      .replace('id: pv132', 'id: steam-a');
    expect(differing(same)).toEqual([]);
    expect(compared(same).length).toBeGreaterThan(6);
  });

  it('differ field by field: value, bound word, sentence, missing and further fields', () => {
    const other = first
      .replace('{stated: 4 min, src: s2}', '{at_least: 4 min, src: s2}')
      .replace('at_most: 140 C, src: s1', 'at_most: 104 C, src: s2')
      .replace(', dry: {at_least: 30 min, src: s2}', ', total_time: {at_least: 20 min, src: s2}');
    expect(differing(other)).toEqual([
      'limits › temp differs: at most 140 °C | at most 104 °C',
      'limits › temp › src differs: s1 | s2',
      'sterilization › any of › pv132 › exposure differs: 4 min (no bound word) | at least 4 min',
      'sterilization › any of › pv132 › dry only-first: at least 30 min | ',
      'sterilization › any of › pv132 › total time only-second:  | at least 20 min',
    ]);
  });

  it('lead to where each stands', () => {
    const row = compared(first).find(({ path }) => path === 'limits › temp');
    const text = record(first).text;
    expect(text.slice(row?.firstAt?.start, row?.firstAt?.end)).toMatch(/^(temp|\{at_most)/);
    expect(row?.secondAt).toEqual(row?.firstAt);
  });
});
