import { isOlderThan, machineState } from '../../judge/evidence.ts';
import { defineRule } from '../rule.ts';
import { settingFor } from '../support/judging.ts';
import { shown } from '../support/shown.ts';
import { bySource, sitePeriod } from '../support/site-limits.ts';

const message = {
  none: (limit: string) =>
    `Nothing says when this bath was last tested. The department asks for a test every ${limit}.`,
  stale: (day: string, limit: string) =>
    `The last test of this bath is of ${day}. The department asks for one every ${limit}.`,
};

export const rule = defineRule({
  id: 'ultrasonic-test-stale',
  stage: 'washing',
  severity: 'error',
  settledBy: 'biomed',
  why: 'A bath hums just the same when half of its transducers are dead.',
  source: 'practice',
  kinds: ['ultrasonic'],
  check(bath, { view, today, report }) {
    const setting = settingFor(bath, view);
    const period = sitePeriod(setting.site, 'ultrasonic_test');
    if (period === undefined || machineState(bath, today) !== undefined) return;
    const { last_test } = bath;
    if (last_test !== undefined && !isOlderThan(last_test, 'ultrasonic_test', setting)) return;
    const limit = `${shown(period.quantity)}${bySource(period)}`;
    report({
      at: last_test?.at ?? bath.id?.at ?? bath.at,
      message: last_test === undefined ? message.none(limit) : message.stale(last_test.text, limit),
      related: [{ at: period.at, note: 'how often the department asks for a test' }],
    });
  },
  examples: {
    bad: [
      `
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
last_test: 2024-11-02
           ^^^^^^^^^^ The last test of this bath is of 2024-11-02. The department asks for one every 31 d (policy P-20).
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {ultrasonic_test: {at_most: 31 d, src: policy P-20}}
`,
      `
=== ultrasonics/u2.ifu.yaml
kind: ultrasonic
id: U2
    ^^ Nothing says when this bath was last tested. The department asks for a test every 31 d (policy P-20).
frequency: 40 kHz
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {ultrasonic_test: {at_most: 31 d, src: policy P-20}}
`,
    ],
    good: [
      `
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
last_test: 2025-03-01
=== site.ifu.yaml
kind: site
id: lakeside
review_periods: {ultrasonic_test: {at_most: 31 d, src: policy P-20}}
`,
      `
kind: ultrasonic
id: U2
proposed: true
`,
    ],
  },
});
