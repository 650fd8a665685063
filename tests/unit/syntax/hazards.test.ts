import { describe, expect, test } from 'vitest';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { scalarHazard } from '../../../server/src/syntax/hazards.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { ScalarTree } from '../../../server/src/syntax/tree.ts';
import { hazardRows } from './hazard-rows.ts';

function scalarIn(text: string): ScalarTree {
  const { tree } = readTree(text);
  const value = tree?.node === 'map' ? tree.entries[0]?.value : undefined;
  if (value?.node !== 'scalar') throw new Error(`no scalar in ${text}`);
  return value;
}

describe('values that other programs take for something else', () => {
  for (const row of hazardRows) {
    test.each(row.texts.map((text, index) => [text, index] as const))(
      `${row.id} as ${row.place}: %s`,
      (value, index) => {
        const text = `k: ${value}   # kept\n`;
        const hazard = scalarHazard(scalarIn(text), row.place);
        expect(hazard?.rule).toBe(row.rule);
        if (hazard === undefined || index > 0) return;
        expect(hazard.message).toContain(row.message);
        expect(text.slice(hazard.span.start, hazard.span.end)).toBe(value);
        if (row.fix === '') expect(hazard.fixes).toBeUndefined();
        else expect(applyEdits(text, hazard.fixes?.[0]?.edits ?? [])).toEqual({ text: `k: ${row.fix}   # kept\n` });
      },
    );
  }

  test('the fix takes the hazard away and keeps the text', () => {
    for (const row of hazardRows.filter(({ rule, fix }) => rule !== undefined && fix !== '')) {
      for (const value of row.texts) {
        const text = `k: ${value}\n`;
        const hazard = scalarHazard(scalarIn(text), row.place);
        const applied = applyEdits(text, hazard?.fixes?.[0]?.edits ?? []);
        if ('refused' in applied) throw new Error(applied.refused);
        expect(scalarHazard(scalarIn(applied.text), row.place)).toBeUndefined();
        if (row.place === 'text') expect(scalarIn(applied.text).text).toBe(value);
      }
    }
  });

  test('text in quotes is never at risk', () => {
    for (const row of hazardRows.filter(({ place }) => place === 'text')) {
      for (const value of row.texts) expect(scalarHazard(scalarIn(`k: "${value}"\n`), 'text')).toBeUndefined();
    }
  });

  test('a very long value is not looked at', () => {
    const scalar: ScalarTree = {
      node: 'scalar',
      span: { start: 0, end: 1 },
      text: '1'.repeat(100_000),
      style: 'plain',
    };
    for (const place of ['text', 'id', 'number', 'quantity', 'date', 'flag'] as const)
      expect(scalarHazard(scalar, place)).toBeUndefined();
  });
});
