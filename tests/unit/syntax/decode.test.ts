import { describe, expect, test } from 'vitest';
import { decodeBytes } from '../../../server/src/syntax/decode.ts';

const utf8 = (text: string) => new TextEncoder().encode(text);
const utf16 = (text: string, order: 'little' | 'big', mark: readonly number[]) => {
  const units = [...text].flatMap((letter) => {
    const code = letter.charCodeAt(0);
    return order === 'little' ? [code & 255, code >> 8] : [code >> 8, code & 255];
  });
  return Uint8Array.from([...mark, ...units]);
};

describe('bytes to text', () => {
  test.each([
    ['plain', utf8('a: 1\n'), 'a: 1\n'],
    ['signs of the trade', utf8('temp: 43 °C, 5 µS/cm\r\n'), 'temp: 43 °C, 5 µS/cm\r\n'],
    ['one byte order mark is stripped', utf8('\ufeffa: 1'), 'a: 1'],
    ['a second one stays, to be reported at its place', utf8('\ufeff\ufeffa: 1'), '\ufeffa: 1'],
    ['tabs stay, to be reported at their place', utf8('a:\t1'), 'a:\t1'],
    ['nothing', new Uint8Array(), ''],
    ['four-byte characters', utf8('a: 𝑥'), 'a: 𝑥'],
  ])('%s', (_name, bytes, text) => expect(decodeBytes(bytes)).toEqual({ text }));

  test.each([
    ['[L45] UTF-16LE', utf16('a: 1\n', 'little', [0xff, 0xfe]), 'UTF-16 (little end first)'],
    ['[L45] UTF-16BE', utf16('a: 1\n', 'big', [0xfe, 0xff]), 'UTF-16 (big end first)'],
    ['UTF-16LE without mark', utf16('kind: x\n', 'little', []), 'UTF-16 (little end first)'],
    ['UTF-16BE without mark', utf16('kind: x\n', 'big', []), 'UTF-16 (big end first)'],
    ['UTF-32', Uint8Array.from([0xff, 0xfe, 0, 0, 97, 0, 0, 0]), 'UTF-32'],
    ['[L45] Latin-1 °', Uint8Array.from([...utf8('a: 1\nb: 43 '), 0xb0, 0x43]), 'Line 2 holds the byte 0xB0'],
    ['[L45] Latin-1 ° names the letter', Uint8Array.from([...utf8('b: 43 '), 0xb0, 0x43]), 'it would be °'],
    ['cut in the middle of a letter', utf8('a: °').subarray(0, 4), 'not UTF-8'],
    ['overlong', Uint8Array.from([0x61, 0xc0, 0xaf]), '0xC0'],
    ['half a character in UTF-8', Uint8Array.from([0x61, 0xed, 0xa0, 0x80]), '0xED'],
    ['[L45] NUL', utf8('a: x\0y'), 'null character (U+0000)'],
    ['[L45] BEL', utf8('a: 1\nb: \u0007'), 'Line 2 holds a control character, the bell'],
    ['escape', utf8('a: \u001b[2J'), 'escape (U+001B)'],
    ['[L45] gzip', Uint8Array.from([0x1f, 0x8b, 8, 0]), 'gzip'],
    ['zip', utf8('PK\u0003\u0004x'), 'zip archive'],
    ['PDF', utf8('%PDF-1.7'), 'a PDF'],
  ])('%s', (_name, bytes, message) => {
    const decoded = decodeBytes(bytes);
    expect('problem' in decoded && decoded.problem).toMatchObject({ rule: 'not-readable', severity: 'error' });
    expect('problem' in decoded && decoded.problem.message).toContain(message);
  });
});
