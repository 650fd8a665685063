import type { IsoDate } from '../../server/src/base/brand.ts';
import { LineIndex } from '../../server/src/base/line-index.ts';
import type { Span } from '../../server/src/base/span.ts';
import { Engine } from '../../server/src/check/engine.ts';
import { readMarked } from '../../server/src/rules/examples.ts';
import type { AnyRule } from '../../server/src/rules/rule.ts';
import { takeExample } from './kept-example.ts';

export const testDay = '2025-03-03' as IsoDate;

export interface ExampleOutcome {
  /** Problems of form or syntax: an example must have none, except in a second file that says (unfinished). */
  readonly problems: readonly string[];
  readonly expected: readonly string[];
  readonly found: readonly string[];
}

/** Runs one rule over one marked example: `file:line:from-to message` of what is marked and of what is found, both sorted. */
export function runExample(rule: AnyRule, example: string): ExampleOutcome {
  const files = readMarked(example);
  const engine = new Engine({ rules: [rule], today: testDay });
  for (const { file, text } of files) takeExample(engine, file, text);
  const problems: string[] = [];
  const expected: string[] = [];
  const found: string[] = [];
  for (const { file, text, marks } of files) {
    const lines = new LineIndex(text);
    const ofForm =
      files.length > 1 && text.includes('(unfinished)') ? [] : (engine.library.record(file)?.problems ?? []);
    for (const problem of ofForm) problems.push(line(file, lines, problem.span, `${problem.rule}: ${problem.message}`));
    for (const mark of marks) expected.push(line(file, lines, mark.span, mark.message));
    const reported = engine.findings(file).filter((finding) => finding.rule === rule.id || finding.rule === 'internal');
    for (const finding of reported) found.push(line(file, lines, finding.span, finding.message));
  }
  return { problems, expected: expected.sort(), found: found.sort() };
}

function line(file: string, lines: LineIndex, span: Span, message: string): string {
  const start = lines.position(span.start);
  const end = lines.position(span.end);
  return `${file}:${start.line + 1}:${start.character}-${end.character} ${message}`;
}
