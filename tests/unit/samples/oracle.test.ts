import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { Engine } from '../../../server/src/check/engine.ts';
import { fingerprintOf } from '../../../server/src/check/finding.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';

/** One row of a list of expected findings. */
interface Expected {
  readonly seed: string;
  readonly file: string;
  readonly entity: string;
  readonly rule: string;
  readonly path: string;
  /** Marks a rule that does not exist yet. */
  readonly awaits?: string;
}

function expectedIn(sample: string): readonly Expected[] {
  const file = new URL(`../../../samples/${sample}/expected-findings.yaml`, import.meta.url);
  return parse(readFileSync(file, 'utf8')) as readonly Expected[];
}

function checked(sample: string): Engine {
  const engine = new Engine({ rules: allRules, today: testDay });
  for (const [file, text] of readSample(sample)) engine.set(file, text);
  return engine;
}

/** Fingerprints with their files, as often as each is found, sorted. */
function foundIn(engine: Engine): readonly string[] {
  const findings = engine.library.files().flatMap((file) => engine.findings(file));
  return findings.map((finding) => `${finding.file}: ${fingerprintOf(finding)}`).sort();
}

const existing = new Set(allRules.map(({ id }) => id));

describe.each(['lanternfield', 'saltmere-eye-clinic'])('the sample %s', (sample) => {
  const rows = expectedIn(sample);

  it('gives every finding that its list expects, and no other', () => {
    const expected = rows.filter(({ awaits }) => awaits === undefined);
    const names = expected.map(({ file, rule, entity, path }) => `${file}: ${rule} ${entity} ${path}`);
    expect(foundIn(checked(sample))).toEqual(names.sort());
  });

  it('waits for no rule that exists', () => {
    const waiting = rows.filter(({ awaits }) => awaits !== undefined).map(({ rule }) => rule);
    expect(waiting.filter((rule) => existing.has(rule))).toEqual([]);
  });

  it('gives nothing when every mistake is put right', () => {
    expect(foundIn(checked(`${sample}-corrected`))).toEqual([]);
  });

  it('has no settings or waivers that hide a mistake of the list', () => {
    const engine = checked(sample);
    const hidden = engine.library.files().flatMap((file) => [...engine.waived(file), ...engine.heldBack(file)]);
    const seeded = new Set(rows.map(({ rule, entity }) => `${rule} ${entity}`));
    expect(hidden.filter(({ rule, entity }) => seeded.has(`${rule} ${entity}`))).toEqual([]);
  });
});
