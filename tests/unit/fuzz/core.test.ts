import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { compareEntities } from '../../../server/src/revision/compare.ts';
import { generateLibrary } from '../../bench/generate-library.ts';
import { templatesOf } from '../../bench/templates.ts';
import { cut, cutText, engineOf, everything, faultsOfOurs } from '../../support/fuzz.ts';
import { readSample } from '../../support/samples.ts';
import { branch, runs } from './runs.ts';

const sample = [...readSample('lanternfield')];
const some = fc.nat(sample.length - 1);

describe('whatever is written', () => {
  it('no rule fails, and the library kept checked gives what a check from scratch gives', () => {
    const texts = new Map(sample);
    const engine = engineOf(texts);
    everything(engine);
    let step = 0;
    fc.assert(
      fc.property(some, fc.array(cut, { minLength: 1, maxLength: 3 }), (which, cuts) => {
        const [file, original] = sample[which] ?? [fileId('none.ifu.yaml'), ''];
        const text = cuts.reduce(cutText, step % 3 === 0 ? original : (texts.get(file) ?? original));
        texts.set(file, text);
        engine.set(file, text);
        expect(faultsOfOurs(engine)).toEqual([]);
        step++;
        if (step % 20 === 0) expect(everything(engine)).toEqual(everything(engineOf(texts)));
        if (step % 20 === 0)
          for (const [name, first] of sample) {
            texts.set(name, first);
            engine.set(name, first);
          }
      }),
      { numRuns: runs(40), seed: 20250303 },
    );
  }, 3_600_000);

  it('two revisions of a file can be compared', () => {
    fc.assert(
      fc.property(some, fc.array(cut, { minLength: 1, maxLength: 3 }), (which, cuts) => {
        const [file, original] = sample[which] ?? [fileId('none.ifu.yaml'), ''];
        const before = readRuleFile(file, original).entity;
        const after = readRuleFile(file, cuts.reduce(cutText, original)).entity;
        if (before === undefined || after === undefined || before.kind !== after.kind) return;
        const there = compareEntities(before, after, undefined);
        const back = compareEntities(after, before, undefined);
        expect(there.changes.length === 0).toBe(back.changes.length === 0);
        expect(compareEntities(after, after, undefined).changes).toEqual([]);
      }),
      { numRuns: runs(300), seed: 20250303 },
    );
  }, 3_600_000);
});

describe('[R09] a branch switch', () => {
  it('files that change at once, go, and come back leave nothing behind and what was there', () => {
    const generated = generateLibrary(templatesOf(readSample('lanternfield-corrected')), branch.files);
    const texts = new Map([...generated].map(([path, text]) => [fileId(path), text] as const));
    const engine = engineOf(texts);
    const before = everything(engine);
    const others = new Map([...texts].filter((_, index) => index % branch.everyOther === 0));
    for (const [file, text] of others) engine.set(file, text.replace(/\d+ min/g, '1 min'));
    expect(faultsOfOurs(engine)).toEqual([]);
    for (const file of others.keys()) engine.delete(file);
    const rest = new Map([...texts].filter(([file]) => !others.has(file)));
    expect(everything(engine)).toEqual(everything(engineOf(rest)));
    for (const [file, text] of others) engine.set(file, text);
    expect(everything(engine)).toEqual(before);
  }, 3_600_000);
});

describe('an hour of work', () => {
  it('leaves memory where it was', () => {
    setFlagsFromString('--expose-gc');
    const collect = runInNewContext('gc') as () => void;
    const engine = engineOf(new Map(sample));
    everything(engine);
    const heap = () => {
      collect();
      return process.memoryUsage().heapUsed;
    };
    const work = (edits: number) => {
      for (let edit = 0; edit < edits; edit++) {
        const [file, text] = sample[edit % 40] ?? [fileId('none.ifu.yaml'), ''];
        engine.set(
          file,
          edit % 3 === 0 ? text : cutText(text, { at: (edit % 97) / 97, length: edit % 5, piece: `${edit}` }),
        );
        engine.findings(file);
      }
    };
    work(runs(120));
    const before = heap();
    work(runs(240));
    expect(heap() / before).toBeLessThan(1.15);
  }, 3_600_000);
});
