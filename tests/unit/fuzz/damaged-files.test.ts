import { expect, it } from 'vitest';
import { defaultLimits } from '../../../server/src/syntax/limits.ts';
import { readAround } from '../../../server/src/syntax/quick/read-around.ts';
import { readThoroughly } from '../../../server/src/syntax/read.ts';
import { longFile } from '../../bench/long-file.ts';
import { Seeded } from '../../bench/seeded.ts';
import { Typist } from '../../bench/typist.ts';
import { oddDocument } from '../../support/odd-documents.ts';
import { oddPlains, pieces } from '../../support/odd-pieces.ts';
import { readSample } from '../../support/samples.ts';
import { runs, shareOf } from './runs.ts';

const files = [...readSample('lanternfield-corrected').values(), ...readSample('saltmere-eye-clinic').values()];

/** Whether a damaged text is read in parts. What is read so, `yaml` must read alike as a whole, with the same problems. */
function readInParts(text: string): boolean {
  const read = readAround(text, defaultLimits, readThoroughly);
  if (read !== undefined) expect({ text, ...read }).toEqual({ text, ...readThoroughly(text) });
  return read !== undefined;
}

/** One to three places of the text go wrong: something is taken out or put in, or a line stands further right. */
function damaged(text: string, seeded: Seeded): string {
  let made = text;
  for (let more = seeded.below(3); more >= 0; more--) {
    const at = seeded.below(made.length);
    const line = made.lastIndexOf('\n', at) + 1;
    made = seeded.pick([
      () => made.slice(0, at) + made.slice(at + 1 + seeded.below(4)),
      () => made.slice(0, at) + seeded.pick(pieces) + made.slice(at),
      () => `${made.slice(0, at)}\n${seeded.pick(oddPlains)}\n${made.slice(at)}`,
      () => made.slice(0, line) + ' '.repeat(1 + seeded.below(3)) + made.slice(line),
    ])();
  }
  return made;
}

it('damaged files that are read in parts are read as they would be as a whole', () => {
  const seeded = new Seeded(20250304);
  expect(shareOf(runs(3_000), () => readInParts(damaged(seeded.pick(files), seeded)))).toBeGreaterThan(0.2);
}, 36_000_000);

it('odd documents that are read in parts are read as they would be as a whole', () => {
  const seeded = new Seeded(20261129);
  expect(shareOf(runs(20_000), () => readInParts(oddDocument(seeded, files)))).toBeGreaterThan(0.05);
}, 36_000_000);

it('a bracket that a comment keeps open reaches beyond the block it stands in', () => {
  const text = 'x9: a\nDue:\n  id:\n    max-delay: [b, c #]\n    s1: 4 min\n  kind: steam-prevac\n';
  expect(readInParts(text)).toBe(false);
});

it('nearly every text on the way of a typist through a long file is read in parts, or needs no thorough reading', () => {
  const long = longFile(files.find((text) => text.includes('id: brindlewick-irrigating-tip')) ?? '', 400);
  const typist = new Typist(long, new Seeded(5));
  const keys = typist.keys();
  let asWhole = 0;
  for (let left = 300; left > 0; left--) {
    keys.next();
    if (!readInParts(typist.text) && readThoroughly(typist.text).problems.length > 0) asWhole++;
  }
  expect(asWhole).toBeLessThan(15);
});
