import { describe, expect, it } from 'vitest';
import { snippetOf } from '../../../server/src/report/snippet.ts';

/** The characters that stand above the carets, by terminal column (wide ones fill two). */
function above(line: string, carets: string): string {
  const from = carets.indexOf('^');
  return line.slice(from, carets.lastIndexOf('^') + 1);
}

describe('carets', () => {
  it('stand under the words', () => {
    const { line, carets } = snippetOf('exposure: {at_least: 3 min}', 21, 26, 80);
    expect(line).toBe('exposure: {at_least: 3 min}');
    expect(carets).toBe(`${' '.repeat(21)}^^^^^`);
  });

  it('are at least one, also past the end of a line and for no width', () => {
    expect(snippetOf('abc', 3, 3, 80).carets).toBe('   ^');
    expect(snippetOf('abc', 1, 1, 80).carets).toBe(' ^');
    expect(snippetOf('', 0, 0, 80).carets).toBe('^');
    expect(snippetOf('abc   ', 5, 6, 80).carets).toBe('   ^');
  });

  it('follow tabs to the next stop', () => {
    const { line, carets } = snippetOf('a:\tb', 3, 4, 80);
    expect(line).toBe('a:  b');
    expect(carets).toBe('    ^');
  });

  it('give wide characters two columns and combining marks none', () => {
    expect(snippetOf('日本語: x', 0, 3, 80).carets).toBe('^^^^^^');
    expect(snippetOf('日本語: x', 5, 6, 80).carets).toBe('        ^');
    expect(snippetOf('e\u0301a', 2, 3, 80).carets).toBe(' ^');
    expect(snippetOf('👩 x', 3, 4, 80).carets).toBe('   ^');
  });

  it('stand under escapes of characters that act on a terminal', () => {
    const { line, carets } = snippetOf('a\u001b[2Jb', 1, 2, 80);
    expect(line).toBe('a\\u{1b}[2Jb');
    expect(above(line, carets)).toBe('\\u{1b}');
  });

  it('escape what turns the reading direction, lone surrogates and odd line ends', () => {
    expect(snippetOf('\u202eab\ud800\u2028', 1, 2, 80).line).toBe('\\u{202e}ab\\u{d800}\\u{2028}');
  });
});

describe('long lines', () => {
  it('are cut around the words', () => {
    const text = `${'a'.repeat(300)}WORDS${'b'.repeat(300)}`;
    const { line, carets } = snippetOf(text, 300, 305, 60);
    expect(line.length).toBeLessThanOrEqual(62);
    expect(above(line, carets)).toBe('WORDS');
    expect(line.startsWith('… ')).toBe(true);
    expect(line.endsWith(' …')).toBe(true);
  });

  it('of a megabyte cost nothing and keep the words in place', () => {
    const text = `${'a'.repeat(500_000)}WORDS${'b'.repeat(500_000)}`;
    const { line, carets } = snippetOf(text, 500_000, 500_005, 100);
    expect(above(line, carets)).toBe('WORDS');
    expect(line.length).toBeLessThanOrEqual(102);
  });

  it('whose words are wider than the room end in the window', () => {
    const { line, carets } = snippetOf(`k: "${'x'.repeat(500)}"`, 3, 505, 60);
    expect(carets.length).toBeLessThanOrEqual(line.length);
    expect(carets.indexOf('^')).toBeGreaterThan(0);
  });

  it('keep words at the very start and the very end', () => {
    const text = `START${'a'.repeat(300)}END`;
    const first = snippetOf(text, 0, 5, 60);
    expect(above(first.line, first.carets)).toBe('START');
    const last = snippetOf(text, 305, 308, 60);
    expect(above(last.line, last.carets)).toBe('END');
  });
});
