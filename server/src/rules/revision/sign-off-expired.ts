import { defineRule } from '../rule.ts';
import { daysBetween, inDays } from '../support/days.ts';

const message = {
  record: (day: string) => `This decision held until ${day}. Decide again, or close it.`,
  interim: (measure: string, day: string) => `The interim measure “${measure}” ended on ${day}. Say what holds now.`,
  gap: (days: number) => `${inDays(days)} past its end`,
};

export const rule = defineRule({
  id: 'sign-off-expired',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'manager',
  why: 'An interim measure without an end that somebody watches becomes the way it is done.',
  source: 'practice',
  kinds: ['sign-off'],
  check({ expires, interim }, { today, report }) {
    if (expires !== undefined && expires.text < today && /^\d/.test(expires.text))
      report({
        at: expires.at,
        message: message.record(expires.text),
        gap: message.gap(daysBetween(expires.text, today)),
      });
    const ends = interim?.ends;
    if (ends !== undefined && ends.text < today)
      report({
        at: ends.at,
        message: message.interim(interim?.measure?.text ?? '', ends.text),
        gap: message.gap(daysBetween(ends.text, today)),
      });
  },
  examples: {
    bad: [
      `
kind: sign-off
id: SO-1
expires: 2025-02-01
         ^^^^^^^^^^ This decision held until 2025-02-01. Decide again, or close it.
`,
      `
kind: sign-off
id: SO-2
interim: {measure: dry twice, ends: 2025-01-31}
                                    ^^^^^^^^^^ The interim measure “dry twice” ended on 2025-01-31. Say what holds now.
`,
    ],
    good: [
      `
kind: sign-off
id: SO-3
expires: 2025-12-31
interim: {measure: dry twice, ends: 2025-06-30, owner: manager}
`,
      `
kind: sign-off
id: SO-4
`,
    ],
  },
});
