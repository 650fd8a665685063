import { describe, expect, it } from 'vitest';
import type { IsoDate } from '../../server/src/base/brand.ts';
import { fileId } from '../../server/src/base/brand.ts';
import { Engine } from '../../server/src/check/engine.ts';
import { exitCodeOf } from '../../server/src/cli/exit-code.ts';
import type { LibraryReport } from '../../server/src/report/model.ts';
import { Placer } from '../../server/src/report/model.ts';
import type { AnyRule } from '../../server/src/rules/rule.ts';
import { goodText } from '../support/cli.ts';

const throwing: AnyRule = {
  id: 'always-throws',
  stage: 'source',
  severity: 'advice',
  settledBy: 'educator',
  why: 'For a test.',
  source: 'logic',
  kinds: ['question'],
  check: () => {
    throw new Error('out of order');
  },
  examples: { bad: [], good: [] },
};

const rejecting: AnyRule = {
  ...throwing,
  id: 'always-rejects',
  check: async () => {
    throw new Error('out of order later');
  },
};

const reporting: AnyRule = {
  ...throwing,
  id: 'always-reports',
  check: (entity, context) => context.report({ at: entity.at, message: 'seen' }),
};

describe('[R13] a rule that fails', () => {
  const engine = new Engine({ rules: [throwing, rejecting, reporting], today: '2025-03-03' as IsoDate });
  const file = fileId('q.ifu.yaml');
  engine.set(file, goodText);
  const findings = engine.findings(file);

  it('is one finding that names it, and the other rules still run, be it at once or with a rejected promise', () => {
    expect(findings.map(({ rule }) => rule).sort()).toEqual(['always-reports', 'internal', 'internal']);
    const told = findings.filter(({ rule }) => rule === 'internal').map(({ message }) => message);
    expect(told).toEqual([expect.stringContaining('"always-rejects"'), expect.stringContaining('"always-throws"')]);
  });

  it('makes the exit code 3, whatever --fail-on says', () => {
    const placer = new Placer(() => goodText);
    const library: LibraryReport = {
      label: '.',
      files: { listed: 1, read: 1, leftOut: 0 },
      findings: findings.map((finding) => placer.placed(finding)),
      coverage: { named: 0, encoded: 0, missing: [], unreadable: [] },
      checked: [file],
      keptBack: [],
    };
    expect(
      exitCodeOf({ libraries: [library], notices: [] }, [], 'read', {
        operands: [],
        switches: new Set(),
        values: new Map([['fail-on', 'never']]),
        lists: new Map(),
      }),
    ).toBe(3);
  });
});
