import { describe, expect, it } from 'vitest';
import { fileId } from '../../../server/src/base/brand.ts';
import { span } from '../../../server/src/base/span.ts';
import type { Finding } from '../../../server/src/check/finding.ts';
import { plainPalette } from '../../../server/src/report/colour.ts';
import { jsonReport } from '../../../server/src/report/json.ts';
import type { CheckReport } from '../../../server/src/report/model.ts';
import { Placer } from '../../../server/src/report/model.ts';
import { sarifReport } from '../../../server/src/report/sarif.ts';
import { textReport } from '../../../server/src/report/text.ts';

const device = fileId('devices/d.ifu.yaml');
const set = fileId('sets/s.ifu.yaml');
const texts = new Map([
  [device, 'kind: device\r\nid: d\r\nstatements:\r\n  s1: {page: 4, quote: "Expose for 4 minutes."}\r\n'],
  [set, 'kind: set\nid: s\nexposure: 3 min\n'],
]);

const finding: Finding = {
  rule: 'cycle-too-short',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'infection-prevention',
  file: set,
  span: span(26, 31),
  entity: 'set/s',
  path: 'exposure',
  message: 'The cycle is shorter than the device asks.',
  says: [{ quote: 'Expose for 4 minutes.', doc: 'DW-1', rev: 'C', page: '4', file: device, span: span(48, 71) }],
  does: '3 min at 132 °C',
  gap: '1 min short',
  related: [{ file: device, span: span(14, 19), note: 'the device' }],
  fixes: [],
};

function reportWith(...findings: readonly Finding[]): CheckReport {
  const placer = new Placer((file) => texts.get(file) ?? '');
  return {
    libraries: [
      {
        label: 'samples/x',
        files: { listed: 2, read: 2, leftOut: 0 },
        findings: findings.map((one) => placer.placed(one)),
        coverage: { named: 12, encoded: 11, missing: ['pale-forceps'], unreadable: [] },
        checked: [device, set],
        keptBack: [1, 2].map(() => ({ placed: placer.placed({ ...finding, rule: 'card-stale' }), by: 'settings' })),
      },
    ],
    notices: [],
  };
}

const options = { palette: plainPalette, columns: 100, detail: 'full' } as const;

describe('the text report', () => {
  it('prints what the instruction says, what we do, the gap, and who can settle it', () => {
    expect(textReport(reportWith(finding), options)).toBe(`samples/x/sets/s.ifu.yaml:3:11 error cycle-too-short
  The cycle is shorter than the device asks.
  3 | exposure: 3 min
    |           ^^^^^
    The instruction says: “Expose for 4 minutes.” (DW-1, revision C, page 4) [samples/x/devices/d.ifu.yaml:4:15]
    We do:                3 min at 132 °C
    Gap:                  1 min short
    Who can settle it:    infection prevention
    See also:             samples/x/devices/d.ifu.yaml:2:1 the device

1 error.
Read 2 rule files.
Coverage: 11 of 12 device families named in sets are encoded. Not encoded: pale-forceps.
2 findings were kept back by the library's own settings: card-stale 2.
The manufacturer’s current document is the instruction; this is an index to it. Where they differ, follow the document and report the difference.
"Consistent with the encoded instruction" is the strongest statement made here; no finding in a library with gaps means little.
`);
  });

  it('in brief is one line a finding', () => {
    const text = textReport(reportWith(finding, finding), { ...options, detail: 'brief' });
    expect(text.split('\n').slice(0, 3)).toEqual([
      'samples/x/sets/s.ifu.yaml:3:11 error cycle-too-short: The cycle is shorter than the device asks.',
      'samples/x/sets/s.ifu.yaml:3:11 error cycle-too-short: The cycle is shorter than the device asks.',
      '',
    ]);
  });

  it('keeps every part of a finding on its line and from acting', () => {
    const nasty = 'a\n::error::b\r\u001b[2J%0A\u202e';
    const text = textReport(
      reportWith({
        ...finding,
        message: `::warning::${nasty}`,
        does: nasty,
        gap: nasty,
        says: [{ quote: nasty, doc: nasty, rev: nasty, page: nasty, file: device, span: span(0, 1) }],
        related: [{ file: device, span: span(0, 1), note: nasty }],
      }),
      options,
    );
    expect(text.split('\n')).toHaveLength(17);
    for (const line of text.split('\n')) expect(line).not.toMatch(/^\s*(::|##)/);
    expect([...text].filter((character) => character < ' ' && character !== '\n')).toEqual([]);
    expect(text).not.toContain('\u202e');
  });
});

describe('the JSON report', () => {
  it('is the documented form', () => {
    expect(JSON.parse(jsonReport(reportWith(finding)))).toEqual({
      format: 'traywright-check',
      version: 1,
      counts: { error: 1, warning: 0, advice: 0 },
      libraries: [
        {
          path: 'samples/x',
          files: { listed: 2, read: 2, reported: 2, leftOut: 0 },
          coverage: { named: 12, encoded: 11, missing: ['pale-forceps'], unreadable: [] },
          suppressed: [{ rule: 'card-stale', count: 2 }],
          waived: [],
          baseline: null,
          findings: [
            {
              rule: 'cycle-too-short',
              stage: 'sterilization',
              severity: 'error',
              settledBy: 'infection-prevention',
              entity: 'set/s',
              field: 'exposure',
              fingerprint: 'cycle-too-short set/s exposure',
              at: { file: 'samples/x/sets/s.ifu.yaml', line: 3, column: 11, endLine: 3, endColumn: 16 },
              message: 'The cycle is shorter than the device asks.',
              says: [
                {
                  quote: 'Expose for 4 minutes.',
                  doc: 'DW-1',
                  rev: 'C',
                  page: '4',
                  at: { file: 'samples/x/devices/d.ifu.yaml', line: 4, column: 15, endLine: 4, endColumn: 38 },
                },
              ],
              does: '3 min at 132 °C',
              gap: '1 min short',
              related: [
                {
                  note: 'the device',
                  at: { file: 'samples/x/devices/d.ifu.yaml', line: 2, column: 1, endLine: 2, endColumn: 6 },
                },
              ],
              shownBecause: null,
            },
          ],
        },
      ],
      notices: [],
    });
  });

  it('survives any text and holds none that acts', () => {
    const nasty = ']]>&\0\u0007\\|<!--\u2028\u202e\ud800\u001b[2J';
    const json = jsonReport(reportWith({ ...finding, message: nasty }));
    expect(JSON.parse(json)).toMatchObject({ libraries: [{ findings: [{ message: nasty }] }] });
    expect([...json].filter((character) => character < ' ' && character !== '\n')).toEqual([]);
    expect(json).not.toMatch(/[\u2028\u202e]/);
  });
});

describe('the SARIF report', () => {
  const runOf = (report: CheckReport) => JSON.parse(sarifReport(report, { version: '1.0.0', catalogue: [] })).runs[0];

  it('says that a check in which a rule failed did not succeed', () => {
    expect(runOf(reportWith(finding)).invocations[0].executionSuccessful).toBe(true);
    const failed = reportWith(finding, { ...finding, rule: 'internal' });
    expect(runOf(failed).invocations[0].executionSuccessful).toBe(false);
  });

  it('has the quote with its page, what we do, the gap and who settles it in the message', () => {
    expect(runOf(reportWith(finding)).results[0].message.text.split('\n')).toEqual([
      'The cycle is shorter than the device asks.',
      'The instruction says: “Expose for 4 minutes.” (DW-1, revision C, page 4)',
      'We do: 3 min at 132 °C',
      'Gap: 1 min short',
      'Who can settle it: infection prevention',
    ]);
  });

  it('leaves out of a citation what is not known', () => {
    const [saying] = finding.says;
    const says = saying === undefined ? [] : [{ ...saying, rev: '', page: '' }];
    const text = runOf(reportWith({ ...finding, says })).results[0].relatedLocations[0].message.text;
    expect(text).toBe('The instruction says: “Expose for 4 minutes.” (DW-1, no page given)');
  });
});
