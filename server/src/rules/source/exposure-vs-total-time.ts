import type { Fix } from '../../base/problem.ts';
import { sayingOf } from '../../model/saying.ts';
import { fieldOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { longExposures } from '../support/long-exposures.ts';
import { fieldName, quantityAtFault, quotedWords, quoteReport } from '../support/quote-report.ts';
import { bySource, siteLimit } from '../support/site-limits.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  total: (field: string, words: string, ours: string) =>
    `The page gives "${words}" for the whole cycle, but "${field}" says ${ours}. The whole includes heating up and drying.`,
  long: (ours: string, most: string) =>
    `This exposure of ${ours} is longer than ${most}, and the passage speaks of a cycle: it may be the time of the whole cycle.`,
};

export const rule = defineRule({
  id: 'exposure-vs-total-time',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'The time of the whole cycle includes heating up and drying; taken for the exposure it asks for a cycle that nobody tested.',
  source: 'practice',
  fix: 'Moves the time to "total_time".',
  kinds: transcribedKinds,
  check(entity, { report, view }) {
    for (const fault of faultsNamed(entity, 'exposure-vs-total-time')) {
      const { field } = fault;
      const quantity = quantityAtFault(fault);
      if (field === undefined || quantity === undefined) continue;
      report({
        at: field.at,
        span: quantity.at.span,
        message: message.total(fieldName(field.at), quotedWords(fault), quantity.text),
        ...quoteReport(fault),
        fixes: fixesFor(fault),
      });
    }
    const limit = siteLimit(view.site(), 'prevac_exposure');
    if (limit === undefined) return;
    for (const { quantity, at, statement } of longExposures(entity, limit)) {
      report({
        at,
        span: quantity.at.span,
        message: message.long(quantity.text, limit.quantity.text),
        says: [sayingOf(statement, statement.at)],
        related: [{ at: limit.at, note: `the department’s limit${bySource(limit)}` }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s14: {doc: PF-1, rev: A, page: 5, quote: "Total cycle time 45 minutes"}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, exposure: {stated: 45 min, src: s14}}
                                                          ^^^^^^ The page gives "45 minutes" for the whole cycle, but "exposure" says 45 min. The whole includes heating up and drying.
`,
      `
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 5, quote: "Use the pre-vacuum cycle at 132 °C, 38 minutes."}
sterilization:
  any_of:
    - id: pv
      modality: steam-prevac
      temp: {stated: 132 C}
      exposure: {stated: 38 min}
                         ^^^^^^ This exposure of 38 min is longer than 20 min, and the passage speaks of a cycle: it may be the time of the whole cycle.
      src: s1
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {prevac_exposure: {at_most: 20 min, src: "policy P-9"}}
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s14: {doc: PF-1, rev: A, page: 5, quote: "132 °C for 4 minutes; total cycle time 45 minutes"}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, total_time: {stated: 45 min}, src: s14}
`,
      `
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 5, quote: "Use the gravity cycle at 121 °C, 30 minutes."}
sterilization:
  any_of:
    - {id: gr, modality: steam-gravity, temp: {stated: 121 C}, exposure: {stated: 30 min}, src: s1}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {prevac_exposure: {at_most: 20 min, src: "policy P-9"}}
`,
    ],
  },
});

function fixesFor({ field }: TranscriptionFault): readonly Fix[] {
  const key = field?.at.keySpan;
  const isFree = field?.option !== undefined && fieldOf(field.option, 'total_time') === undefined;
  if (field?.at.key !== 'exposure' || !isFree || key === undefined) return [];
  return [{ title: 'Move to total_time', edits: [{ span: key, text: 'total_time' }] }];
}
