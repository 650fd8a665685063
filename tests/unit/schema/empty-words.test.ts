import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';

const rows: readonly (readonly [string, string, readonly string[]])[] = [
  ['nothing behind the colon', 'status:\n', ['status: current\n', 'superseded', 'withdrawn', 'draft']],
  ['a note behind it', 'status: # later\n', ['status: current # later\n', 'superseded', 'withdrawn', 'draft']],
  ['empty quotation marks', 'status: ""\n', ['status: current\n', 'superseded', 'withdrawn', 'draft']],
  ['a field without known words', 'name:\n', []],
];

describe('an empty field with known words', () => {
  it.each(rows)('offers them: %s', (_name, line, [changed, ...others]) => {
    const text = `kind: document\nid: d1\n${line}`;
    const problem = readRuleFile(fileId('d.ifu.yaml'), text).problems.find(({ rule }) => rule === 'empty-value');
    const fixes = problem?.fixes ?? [];
    const texts = fixes.map(({ edits: [edit] }) =>
      edit === undefined ? '' : text.slice(0, edit.span.start) + edit.text + text.slice(edit.span.end),
    );
    expect(texts[0]).toBe(changed === undefined ? undefined : `kind: document\nid: d1\n${changed}`);
    expect(fixes.slice(1).map(({ title }) => title)).toEqual(others.map((word) => `Write "${word}"`));
  });

  it('at most six', () => {
    const text = 'kind: document\nid: d1\ntype:\n';
    const { problems } = readRuleFile(fileId('d.ifu.yaml'), text);
    expect(problems.find(({ rule }) => rule === 'empty-value')?.fixes?.length).toBe(6);
  });
});

describe('the day of a document', () => {
  it.each([
    ['2026-03', []],
    ['2026-03-14', []],
    ['2026-13', ['date-form']],
    ['2026', ['date-form']],
  ])('may be its month where no day is printed: %s', (day, faults) => {
    const text = `kind: document\nid: d1\ndoc: D\nrev: A\nissued: ${day}\n`;
    const { problems, entity } = readRuleFile(fileId('d.ifu.yaml'), text);
    expect(problems.map(({ rule }) => rule)).toEqual(faults);
    expect(entity).toMatchObject({ issued: { text: day } });
  });

  it('elsewhere a day is a day', () => {
    const text = 'kind: document\nid: d1\ndoc: D\nrev: A\nreceived: 2026-03\n';
    expect(readRuleFile(fileId('d.ifu.yaml'), text).problems).toHaveLength(1);
  });
});
