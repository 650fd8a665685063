import { expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';

/** The end of the message: what to write instead. */
function remedyFor(lines: string): string | undefined {
  const { problems } = readRuleFile(fileId('x.ifu.yaml'), `kind: device\nid: pale\n${lines}\n`);
  const message = problems.find(({ rule }) => rule === 'wrong-form')?.message;
  return message?.split(' stands here.')[1]?.trim();
}

it.each([
  ['rinse: {water: critical}', 'Write {grade: critical}.'],
  ['disassembly: {steps: [take the handle off]}', 'Write {do: "take the handle off"}.'],
  ['packaging: {configuration: [jaw open]}', 'Write {what: "jaw open"}.'],
  ['sterilization: {any_of: [{temp: 132 C}]}', ''],
])('a word by itself where fields belong is shown in its field: %s', (lines, remedy) => {
  expect(remedyFor(lines)).toBe(remedy);
});

it('leaves open what the page says about it', () => {
  expect(remedyFor('point_of_use: {wipe: true}')).toMatch(/^Say what the page says with one of: \{use: \w+\}, /);
});
