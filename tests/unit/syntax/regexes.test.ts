import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { nestedQuantifiers, regexLiterals } from './regex-scan.ts';

const root = new URL('../../../server/src', import.meta.url).pathname;

function sources(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return sources(path);
    return path.endsWith('.ts') && !path.endsWith('.generated.ts') ? [path] : [];
  });
}

test('[R10] no pattern of ours repeats a repetition, so none takes longer than its text is long', () => {
  const found: string[] = [];
  for (const path of sources(root)) {
    for (const literal of regexLiterals(readFileSync(path, 'utf8'))) {
      if (nestedQuantifiers(literal)) found.push(`${path.slice(root.length + 1)}: ${literal}`);
    }
  }
  expect(found).toEqual([]);
});

test.each(['/^(\\d+[- ]?)+$/', '/(a*)*/', '/(?:x|y+){2,}/', '/((a+)b)*/'])('%s is caught', (pattern) => {
  expect(nestedQuantifiers(pattern)).toBe(true);
});

test.each([
  '/^[-+]?\\d+$/',
  '/(?::\\d{1,2}){1,4}/',
  '/(ab?)+/',
  '/[(+*)]+/',
  '/\\(a+\\)+/',
  '/(?:\\s{0,3}x)?/',
  '/a+(?=b)/',
])('%s is not', (pattern) => {
  expect(nestedQuantifiers(pattern)).toBe(false);
});

test('literals are found, divisions and comments are not', () => {
  const source = ["const a = /x+/g.test(y) ? b / c / d : '/no/';", '// it is /not/ one', 'f(/[/"]/, `/no/`);'].join(
    '\n',
  );
  expect(regexLiterals(source)).toEqual(['/x+/g', '/[/"]/']);
});
