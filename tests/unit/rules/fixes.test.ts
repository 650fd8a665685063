import { describe, expect, it } from 'vitest';
import type { FileId } from '../../../server/src/base/brand.ts';
import type { Fix } from '../../../server/src/base/problem.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import type { Finding } from '../../../server/src/check/finding.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { readMarked } from '../../../server/src/rules/examples.ts';
import type { AnyRule } from '../../../server/src/rules/rule.ts';
import { applyEdits } from '../../../server/src/syntax/edits.ts';
import { testDay } from '../../support/examples.ts';
import { takeExample } from '../../support/kept-example.ts';

/** Fixes of every bad example, taken one by one: what they may write, what they may touch, and where they end. */

interface Case {
  readonly rule: AnyRule;
  readonly name: string;
  readonly texts: ReadonlyMap<FileId, string>;
}

const cases: readonly Case[] = allRules.flatMap((rule) =>
  rule.examples.bad.map((example, index) => ({
    rule,
    name: `${rule.id}, bad example ${index + 1}`,
    texts: new Map(readMarked(example).map(({ file, text }) => [file, text])),
  })),
);

function judged(rule: AnyRule, texts: ReadonlyMap<FileId, string>): readonly Finding[] {
  const engine = new Engine({ rules: [rule], today: testDay });
  for (const [file, text] of texts) takeExample(engine, file, text);
  return engine.library.files().flatMap((file) => engine.findings(file));
}

function fixed(text: string, fix: Fix): string {
  const result = applyEdits(text, fix.edits);
  if ('refused' in result) throw new Error(`edits of "${fix.title}" overlap`);
  return result.text;
}

const numbers = (text: string): readonly string[] =>
  (text.match(/\d+(?:[.,]\d+)?/g) ?? []).map((n) => n.replace(',', '.'));

/** Every offered fix of the rule's own findings, with the file it is for. */
function offered(rule: AnyRule, texts: ReadonlyMap<FileId, string>): readonly { file: FileId; fix: Fix }[] {
  const own = judged(rule, texts).filter((finding) => finding.rule === rule.id);
  return own.flatMap((finding) => finding.fixes.map((fix) => ({ file: finding.file, fix })));
}

const withFixes = cases.filter(({ rule, texts }) => offered(rule, texts).length > 0);

describe.each(withFixes.map((one) => [one.name, one] as const))('%s', (_, { rule, texts }) => {
  const before = judged(rule, texts).map(keyOf);
  const known = new Set([...texts.values()].flatMap(numbers));

  it.each(offered(rule, texts).map(({ file, fix }, index) => [index + 1, fix.title, file, fix] as const))(
    '[E01] fix %i (%s) invents no number, keeps the rest to the letter and adds no finding',
    (_number, _title, file, fix) => {
      const text = texts.get(file) ?? '';
      for (const edit of fix.edits) for (const number of numbers(edit.text)) expect(known).toContain(number);
      const after = fixed(text, fix);
      expect(after).not.toBe(text);
      const first = Math.min(...fix.edits.map(({ span }) => span.start));
      const last = Math.max(...fix.edits.map(({ span }) => span.end));
      expect(after.startsWith(text.slice(0, first))).toBe(true);
      expect(after.endsWith(text.slice(last))).toBe(true);
      // What is left for a person to write stands there as an empty value, and is a finding until it is written.
      const found = judged(rule, new Map(texts).set(file, after)).filter((finding) => finding.rule !== 'empty-value');
      expect(found.length).toBeLessThanOrEqual(before.length);
      expect(found.map(keyOf).filter((key) => !before.includes(key))).toEqual([]);
    },
  );

  it('[E03] taken again and again, the first fix on offer comes to an end', () => {
    const now = new Map(texts);
    const seen = new Set<string>();
    for (let round = 0; round < 20; round++) {
      const next = offered(rule, now)[0];
      if (next === undefined) return;
      now.set(next.file, fixed(now.get(next.file) ?? '', next.fix));
      const state = JSON.stringify([...now]);
      expect(seen.has(state)).toBe(false);
      seen.add(state);
    }
    expect(offered(rule, now)).toEqual([]);
  });
});

/** By rule and file: a fix may move what is left of a finding to another place. */
function keyOf({ rule, file }: Finding): string {
  return `${file} ${rule}`;
}
