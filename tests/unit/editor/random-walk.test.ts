import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { sentencesOf } from '../../../server/src/editor/reading/open-sentences.ts';
import { readRuleFile } from '../../../server/src/library/file-record.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import { Seeded } from '../../bench/seeded.ts';
import { encode, instruction, withPages } from '../../support/encoding.ts';

/**
 * Whatever somebody chooses for the sentences of an instruction, the file stays one that can be read, has no fault of form that was not there
 * before, and what was taken is written down: the sentence is no longer open.
 */

const manyNumbers = readFileSync(path.join(import.meta.dirname, 'instructions/many-numbers.txt'), 'utf8');
const sentences = manyNumbers
  .split('\n\n')
  .slice(1)
  .map((block) => block.trim().split('\n', 1)[0] ?? '')
  .filter((line) => line !== '' && !line.startsWith('('))
  .map((line) => line.replace(/^\[.*?\] /, ''));

const worded = `Never use bleach, aldehydes or abrasive cleaners.
Discard earlier if the tip is bent or the grip is cracked.
Connect the lumen to the irrigation nozzle of the washer-disinfector.
Clean manually and/or in a washer-disinfector.
Look through the lumen against light.
Store dry and free of dust, up to 6 months in wrap, 12 months in pouches.
Double peel pouch or two layers of wrap.`.split('\n');

function faultsOf(text: string): readonly string[] {
  const { problems } = readRuleFile(fileId('devices/invented.ifu.yaml'), text);
  return problems.map(({ message }) => message).filter((message) => !message.startsWith('Still to write'));
}

function stateOf(quote: string, text: string): string | undefined {
  const { tree } = readTree(text);
  return tree?.node === 'map' ? sentencesOf(tree).find((one) => one.quote === quote)?.state : undefined;
}

/** Pages of some sentences, in any order. */
function pagesFrom(seeded: Seeded): string {
  const some = Array.from({ length: 12 }, () => seeded.pick(seeded.next() < 0.3 ? worded : sentences));
  return [...new Set(some)].join('\n\n');
}

const runs = 25;

it.each(Array.from({ length: runs }, (_none, run) => run))('any choices leave a file of good form (%i)', (run) => {
  const seeded = new Seeded(run + 1);
  const pages =
    run < 2 ? instruction(run === 0 ? 'ringfield-punch.txt' : 'halmoor-viewing-tube.txt') : pagesFrom(seeded);
  let asked = 0;
  const { log } = encode(withPages(pages), (quote, labels) => {
    if (quote === '') return undefined;
    asked++;
    const open = labels.filter((label) => label !== 'Stop here');
    // So that a walk comes to its end: questions about a sentence are not asked on for ever.
    return asked % 40 === 0 ? 'Leave it open' : seeded.pick(open.slice(0, seeded.next() < 0.7 ? 5 : open.length));
  });
  for (const { quote, label, before, after } of log) {
    if (before === after || quote === '') continue;
    const known = new Set(faultsOf(before));
    expect(stateOf(quote, after), `${quote} -> ${label}\n${after}`).not.toBe('open');
    expect(
      faultsOf(after).filter((one) => !known.has(one)),
      `${quote} -> ${label}\n${after}`,
    ).toEqual([]);
  }
});
