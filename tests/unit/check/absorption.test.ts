import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { absorptions, withoutAbsorbed } from '../../../server/src/check/absorption.ts';
import { knownIn } from '../../../server/src/check/catalogue.ts';
import { Engine } from '../../../server/src/check/engine.ts';
import { runRules } from '../../../server/src/check/run-rules.ts';
import { allRules } from '../../../server/src/rules/all.generated.ts';
import { testDay } from '../../support/examples.ts';
import { readSample } from '../../support/samples.ts';

function engineOf(sample: string): Engine {
  const engine = new Engine({ rules: allRules, today: testDay });
  for (const [file, text] of readSample(sample)) engine.set(file, text);
  return engine;
}

const engine = engineOf('lanternfield');

/** Rules that report on a set, those that stay apart from those that another one explains. */
function reportedOn(set: string): { readonly stays: readonly string[]; readonly explained: readonly string[] } {
  const entity = engine.view().get('set', set);
  const all = entity === undefined ? [] : runRules(allRules, entity, engine.view(), testDay);
  const kept = withoutAbsorbed(all);
  const names = (those: typeof all) => those.map(({ rule }) => rule).sort();
  return { stays: names(kept), explained: names(all.filter((finding) => !kept.includes(finding))) };
}

describe('one cause, one finding, in each set of the demonstration department', () => {
  it.each([
    ['MINOR-A', ['set-mass-unmeasured', 'wrap-grade-under-load'], []],
    [
      'LAP-CHOLE-B',
      ['card-stale', 'container-dry-governs', 'cycle-dry-short', 'member-needs-own-route', 'set-route-none'],
      ['modality-prohibited'],
    ],
    [
      'KNEE-C',
      [
        'condensate-vs-dry',
        'cycle-dry-short',
        'detergent-ph-outside',
        'implant-release-early',
        'indicator-level-missing',
        'loaner-lead-time-short',
        'product-test-missing',
        'set-overweight',
        'set-route-none',
      ],
      ['washer-route-none'],
    ],
    [
      'EYE-D',
      [
        'accessory-not-listed',
        'card-cycle-not-derived',
        'container-lumen-limit',
        'packaging-not-listed',
        'route-needs-answer',
        'route-single-point',
      ],
      [],
    ],
    ['ORTHO-E', ['set-route-none'], ['cycle-modality-mismatch']],
    [
      'ROBOT-F',
      [
        'container-lumen-limit',
        'cycle-dry-short',
        'cycle-temperature-differs',
        'named-case-only',
        'packaging-not-listed',
        'set-route-none',
        'ultrasonic-lumen-not-irrigated',
        'use-limit-uncounted',
      ],
      [],
    ],
  ])('%s', (set, stays, explained) => {
    expect(reportedOn(set)).toEqual({ stays, explained });
  });
});

describe('the table', () => {
  it('names only findings that exist', () => {
    const known = knownIn(allRules);
    const named = absorptions.flatMap(({ cause, symptoms }) => [cause, ...symptoms]);
    expect(named.filter((rule) => !known.has(rule))).toEqual([]);
  });

  it('never lets a finding explain itself, in one step or in two', () => {
    for (const { cause, symptoms } of absorptions) {
      expect(symptoms).not.toContain(cause);
      for (const row of absorptions.filter((other) => symptoms.includes(other.cause))) {
        expect(row.symptoms).not.toContain(cause);
      }
    }
  });
});

describe('a cause that is kept back', () => {
  it('explains nothing: what it stood for is shown', () => {
    const waived = engineOf('lanternfield');
    const file = fileId('sets/ORTHO-E.ifu.yaml');
    expect(waived.findings(file).map(({ rule }) => rule)).toEqual(['set-route-none']);
    waived.set(
      fileId('waivers/w.ifu.yaml'),
      'kind: waiver\nid: w\nrule: set-route-none\nscope: [ORTHO-E]\nreason: a new clamp is ordered\nowner: manager\nexpires: 2025-12-31\n',
    );
    expect(waived.findings(file).map(({ rule }) => rule)).toEqual(['cycle-modality-mismatch']);
    expect(waived.waived(file).map(({ rule }) => rule)).toEqual(['set-route-none']);
  });
});

describe('one cause, one finding, in what a person writes', () => {
  const file = fileId('devices/duskwell-lap-scissors-takeapart.ifu.yaml');

  /** What is found in the corrected department after one change of one file. */
  function written(from: RegExp, to: string): readonly string[] {
    const corrected = engineOf('lanternfield-corrected');
    const text = corrected.library.record(file)?.text ?? '';
    expect(text).toMatch(from);
    corrected.set(file, text.replace(from, to));
    return corrected.findings(file).map(({ rule }) => rule);
  }

  it('steps in a form that cannot be read are not missing as well', () => {
    const steps = / {2}steps:\n {4}- \{do: unscrew.*\n.*\n/;
    expect(written(steps, '  steps: unscrew the handle\n')).toEqual(['wrong-form']);
    expect(written(steps, '')).toContain('disassembly-missing');
  });

  it('a number without its unit is not left out of the fields as well', () => {
    expect(written(/times: \{stated: 3 times\}/, 'times: {stated: 3}')).toEqual(['unit-missing-or-implausible']);
    expect(written(/volume: \{at_least: 50 mL\}/, 'volume: {at_least: 50}')).toEqual(['unit-missing-or-implausible']);
  });

  it('a number copied wrongly into the quote: what the page prints is told, not that the field differs', () => {
    const device = (minutes: number) => `kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 1, quote: "Expose at 132 °C for ${minutes} minutes."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, src: s1}
`;
    const rules = allRules.filter(({ id }) => id === 'quote-number-mismatch' || id === 'quote-not-on-page');
    const here = new Engine({ rules, today: testDay });
    const path = fileId('devices/forceps.ifu.yaml');
    here.set(fileId('documents/pf.ifu.yaml'), 'kind: document\nid: pf\ndoc: PF-1\nrev: A\nfile: pf.pdf\n');
    here.set(path, device(3));
    expect(here.findings(path).map(({ rule }) => rule)).toEqual(['quote-number-mismatch']);
    here.keep('documents/pf.pdf', {
      state: 'read',
      sha256: '0'.repeat(64),
      pages: [{ text: 'Expose at 132 °C for 4 minutes.' }],
    });
    expect(here.findings(path).map(({ rule }) => rule)).toEqual(['quote-not-on-page']);
  });
});
