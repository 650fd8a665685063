import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import type { KeptFile } from '../../../server/src/library/kept-file.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';

const device = (page: number, words: string) =>
  `kind: device\nid: pale\nstatements:\n  s1: {doc: PF-1, rev: A, page: ${page}, quote: "${words}"}\ndrying: {time: {at_least: 20 min}, src: s1}\n`;
const document = (file: string, checksum: string) =>
  `kind: document\nid: pf\ndoc: PF-1\nrev: A\nfile: ${file}\nchecksum: "${checksum}"\n`;

const kept: readonly (KeptFile | undefined)[] = [
  undefined,
  { state: 'missing' },
  { state: 'unread', why: 'locked', sha256: 'b'.repeat(64) },
  { state: 'read', sha256: 'a'.repeat(64), pages: [{ text: 'Dry for at least 20 minutes.' }, { text: '' }] },
  { state: 'read', sha256: 'b'.repeat(64), pages: [{ text: '' }, { text: 'Dry for at least 30 minutes.' }] },
  { state: 'read', sha256: 'b'.repeat(64), pages: [{ text: '' }] },
];

type Step = (engine: Engine) => void;

const steps: fc.Arbitrary<Step> = fc.oneof(
  fc
    .record({ page: fc.integer({ min: 1, max: 3 }), minutes: fc.constantFrom(20, 30) })
    .map(({ page, minutes }): Step => {
      const text = device(page, `Dry for at least ${minutes} minutes.`);
      return (engine) => void engine.set(fileId('d.ifu.yaml'), text);
    }),
  fc
    .record({ file: fc.constantFrom('a.pdf', 'b.pdf', '../c.pdf'), letter: fc.constantFrom('a', 'b') })
    .map(({ file, letter }): Step => {
      const text = document(file, letter.repeat(64));
      return (engine) => void engine.set(fileId('doc/pf.ifu.yaml'), text);
    }),
  fc.record({ path: fc.constantFrom('doc/a.pdf', 'doc/b.pdf', 'c.pdf'), found: fc.constantFrom(...kept) }).map(
    ({ path, found }): Step =>
      (engine) =>
        void engine.keep(path, found),
  ),
  fc.constant<Step>((engine) => void engine.delete(fileId('doc/pf.ifu.yaml'))),
);

describe('documents that come, change and go', () => {
  it('leave the findings of a check from scratch after every step', () => {
    fc.assert(
      fc.property(fc.array(steps, { minLength: 1, maxLength: 12 }), (taken) => {
        const engine = new Engine({ rules: allRules, today: testDay });
        for (const [index, step] of taken.entries()) {
          step(engine);
          const now = findingsOf(engine);
          const fresh = new Engine({ rules: allRules, today: testDay });
          for (const again of taken.slice(0, index + 1)) again(fresh);
          expect(now).toEqual(findingsOf(fresh));
        }
      }),
      { numRuns: 60, seed: 3 },
    );
  });
});

function findingsOf(engine: Engine): unknown {
  return engine.library.files().map((file) => engine.findings(file));
}
