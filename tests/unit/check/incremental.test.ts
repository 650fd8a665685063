import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FileId } from '../../../server/src/base/brand.ts';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';

const sample = [...readSample('lanternfield')];

function everything(engine: Engine): unknown {
  return engine.library.files().map((file) => [file, engine.findings(file)]);
}

function fromScratch(texts: ReadonlyMap<FileId, string>): unknown {
  const engine = new Engine({ rules: allRules, today: testDay });
  for (const [file, text] of texts) engine.set(file, text);
  return everything(engine);
}

/** A tired writer's edit: cut, double or overwrite some characters, swap two files' texts, delete a file, or put the original back. */
const edit = fc.record({
  which: fc.nat(sample.length - 1),
  how: fc.constantFrom('cut', 'digit', 'double-line', 'delete', 'restore', 'swap'),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  digit: fc.nat(9),
});

function edited(text: string, how: string, at: number, digit: number): string {
  const offset = Math.floor(at * text.length);
  switch (how) {
    case 'cut':
      return text.slice(0, offset) + text.slice(offset + 3);
    case 'digit':
      return text.slice(0, offset) + text.slice(offset).replace(/\d/, String(digit));
    case 'double-line':
      return text.slice(0, offset) + (/[^\n]*\n/.exec(text.slice(offset))?.[0] ?? '') + text.slice(offset);
    default:
      return text;
  }
}

describe('a library kept checked', () => {
  it('gives after any edits what a check from scratch gives', () => {
    fc.assert(
      fc.property(fc.array(edit, { minLength: 1, maxLength: 6 }), (edits) => {
        const texts = new Map(sample);
        const engine = new Engine({ rules: allRules, today: testDay });
        for (const [file, text] of texts) engine.set(file, text);
        everything(engine);
        for (const { which, how, at, digit } of edits) {
          const [file, original] = sample[which] ?? [fileId('none.ifu.yaml'), ''];
          if (how === 'delete') {
            texts.delete(file);
            engine.delete(file);
            continue;
          }
          const other = sample[(which + 1) % sample.length]?.[1] ?? '';
          const text =
            how === 'restore' ? original : how === 'swap' ? other : edited(texts.get(file) ?? original, how, at, digit);
          texts.set(file, text);
          engine.set(file, text);
        }
        expect(everything(engine)).toEqual(fromScratch(texts));
      }),
      { numRuns: 16, seed: 20250303 },
    );
  }, 300_000);

  it('judges again what an answer of a maker is about when the answer goes, comes back and changes', () => {
    const corrected = readSample('lanternfield-corrected');
    const answers = [...corrected].filter(([file]) => file.startsWith('responses/'));
    expect(answers.length).toBeGreaterThan(1);
    const engine = new Engine({ rules: allRules, today: testDay });
    for (const [file, text] of corrected) engine.set(file, text);
    const before = everything(engine);
    for (const [file, text] of answers) {
      engine.delete(file);
      expect(everything(engine)).toEqual(fromScratch(new Map([...corrected].filter(([other]) => other !== file))));
      const unchecked = text.replace(/^status: .*$/m, 'status: unverified');
      engine.set(file, unchecked);
      expect(everything(engine)).toEqual(fromScratch(new Map([...corrected, [file, unchecked]])));
      engine.set(file, text);
    }
    expect(everything(engine)).toEqual(before);
  });

  it('calls a device by its new name in every file at once', () => {
    const texts = new Map(sample);
    const engine = new Engine({ rules: allRules, today: testDay });
    for (const [file, text] of texts) engine.set(file, text);
    everything(engine);
    const devices = sample.filter(([file]) => file.startsWith('devices/'));
    for (const [index, [file, text]] of devices.entries()) {
      // Some now share a name with the one before.
      const renamed = text.replace(/^name: .*$/m, `name: Renamed ${Math.floor(index / 2)}`);
      texts.set(file, renamed);
      engine.set(file, renamed);
      if (index % 4 === 3 || index === devices.length - 1) expect(everything(engine)).toEqual(fromScratch(texts));
    }
    expect(JSON.stringify(everything(engine))).toContain('Renamed 1');
  }, 120_000);
});
