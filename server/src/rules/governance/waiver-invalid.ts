import type { EntityOf } from '../../model/entities.generated.ts';
import { fieldOf } from '../../model/walk.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { daysBetween, inDays } from '../support/days.ts';
import { listed } from '../support/lists.ts';
import { neverWaivable } from '../support/never-waivable.ts';

type Waiver = EntityOf['waiver'];

const message = {
  incomplete: (missing: string) => `This waiver does not hold: it does not say ${missing}.`,
  expired: (day: string) => `This waiver ended on ${day}. Settle the finding, or grant a new one with a new reason.`,
  never: (rule: string) => `The finding "${rule}" can't be waived by anyone in the department. It must be settled.`,
  gap: (days: number) => `${inDays(days)} past its end`,
};

export const rule = defineRule({
  id: 'waiver-invalid',
  stage: 'governance',
  severity: 'error',
  settledBy: 'manager',
  why: 'A waiver without reason, owner or end turns into policy because nobody looks at it again.',
  source: 'practice',
  kinds: ['waiver'],
  check(waiver, context) {
    checkComplete(waiver, context);
    checkEnd(waiver, context);
    const { rule: waived } = waiver;
    if (waived !== undefined && neverWaivable.has(waived.text))
      context.report({ at: waived.at, message: message.never(waived.text) });
  },
  examples: {
    bad: [
      `
kind: waiver
id: w2
    ^^ This waiver does not hold: it does not say why, who carries the risk and when it ends.
rule: modality-prohibited
      ^^^^^^^^^^^^^^^^^^^ The finding "modality-prohibited" can't be waived by anyone in the department. It must be settled.
scope: [all]
`,
      `
kind: waiver
id: w3
rule: cycle-dry-short
scope: [knee-A]
reason: new cycle ordered, container vendor answers in May
owner: manager
expires: 2025-01-31
         ^^^^^^^^^^ This waiver ended on 2025-01-31. Settle the finding, or grant a new one with a new reason.
`,
    ],
    good: [
      `
kind: waiver
id: w3
rule: cycle-dry-short
scope: [knee-A]
reason: new cycle ordered, container vendor answers in May
owner: manager
approved_by: infection-prevention
expires: 2025-05-31
`,
      `
kind: waiver
id: w4
rule: set-mass-unmeasured
reason: scales are being repaired until the tenth
owner: educator-1
expires: 2025-03-03
`,
    ],
  },
});

function checkComplete(waiver: Waiver, { report }: RuleContext): void {
  const missing: string[] = [];
  if (waiver.rule === undefined && waiver.fingerprint === undefined) missing.push('which finding it is for');
  if (isBlank(waiver.reason)) missing.push('why');
  if (isBlank(waiver.owner)) missing.push('who carries the risk');
  if (waiver.expires === undefined) missing.push('when it ends');
  if (missing.length > 0)
    report({ at: fieldOf(waiver, 'id')?.at ?? waiver.at, message: message.incomplete(listed(missing)) });
}

/** It holds through its last day. */
function checkEnd(waiver: Waiver, { today, report }: RuleContext): void {
  const { expires } = waiver;
  if (expires === undefined || expires.text.slice(0, 10) >= today) return;
  report({
    at: expires.at,
    message: message.expired(expires.text),
    gap: message.gap(daysBetween(expires.text, today)),
  });
}

function isBlank(text: { readonly text: string } | undefined): boolean {
  return text === undefined || text.text.trim() === '';
}
