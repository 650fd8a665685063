import type { Fix } from '../../base/problem.ts';
import { formatQuantity } from '../../quantity/format.ts';
import { asValue, isEqualAmount } from '../../quantity/prose/ratio.ts';
import { defineRule } from '../rule.ts';
import { mentionAt } from '../support/answered-faults.ts';
import { listed } from '../support/lists.ts';
import { fieldName, quantityAtFault, quotedWords, quoteReport } from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  suspect: (field: string, printed: string, ours: string, readings: readonly string[]) =>
    `The page prints "${printed}", which reads as ${listed(readings)}. "${field}" says ${ours}: a decimal sign or a footnote may have been misread.`,
};

export const rule = defineRule({
  id: 'decimal-or-footnote-suspect',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A ten-fold error looks as tidy as the right number.',
  source: 'practice',
  fix: 'Puts in the number as the page prints it.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const fault of faultsNamed(entity, 'decimal-or-footnote-suspect')) {
      const { field } = fault;
      const quantity = quantityAtFault(fault);
      if (field === undefined || quantity === undefined) continue;
      const readings = otherReadings(fault);
      report({
        at: field.at,
        span: quantity.at.span,
        message: message.suspect(fieldName(field.at), quotedWords(fault), formatQuantity(quantity), readings),
        ...quoteReport(fault),
        fixes: readings.map((text): Fix => ({ title: `Change to ${text}`, edits: [{ span: quantity.at.span, text }] })),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: irrigating-tip
statements:
  s8: {doc: IT-5, rev: B, page: 6, lang: de, quote: "134 °C, 3,5 Minuten"}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, temp: {stated: 134 C}, exposure: {stated: 35 min}, src: s8}
                                                                                    ^^^^^^ The page prints "3,5 Minuten", which reads as 3.5 min. "exposure" says 35 min: a decimal sign or a footnote may have been misread.
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Expose at 132 °C for 4² minutes. ² In wraps only."}
sterilization:
  any_of:
    - id: pv132
      modality: steam-prevac
      temp: {stated: 132 C}
      exposure: {stated: 42 min}
                         ^^^^^^ The page prints "4² minutes", which reads as 4 min. "exposure" says 42 min: a decimal sign or a footnote may have been misread.
      src: s1
`,
    ],
    good: [
      `
kind: device
id: irrigating-tip
statements:
  s8: {doc: IT-5, rev: B, page: 6, lang: de, quote: "134 °C, 3,5 Minuten"}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, temp: {stated: 134 C}, exposure: {stated: 3.5 min}, src: s8}
`,
      `
kind: device
id: low-temperature-probe
statements:
  s1: {doc: LP-4, rev: A, page: 4, number_read_as: 1200 mg/L, quote: "Ethylene oxide at 1.200 mg/L"}
sterilization:
  any_of:
    - {id: eo, modality: eo, concentration: {stated: 1200 mg/L}, src: s1}
`,
    ],
  },
});

/** What else the printed digits can mean, in our spelling, likeliest first. */
function otherReadings({ fault, quoted }: TranscriptionFault): readonly string[] {
  const mention = mentionAt(quoted.reading, fault.spans[0]?.start);
  const { value } = fault;
  const unit = mention?.units.find((one) => one.dimension === value?.dimension);
  if (mention === undefined || value === undefined || unit === undefined) return [];
  const values = mention.readings.map((reading) => asValue(reading, unit));
  return values.filter((one) => !isEqualAmount(one.value, value.value)).map(formatQuantity);
}
