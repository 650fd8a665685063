import { defineRule } from '../rule.ts';
import { boundSpan, changeBound, fieldName, oursInWords, quotedWords, quoteReport } from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';

const message = {
  promoted: (field: string, printed: string, ours: string) =>
    `The page says "${printed}" without a bound word; "${field}" says ${ours}, which is our own reading.`,
};

export const rule = defineRule({
  id: 'bare-number-promoted',
  stage: 'source',
  severity: 'warning',
  settledBy: 'manufacturer',
  why: 'Whether "4 minutes" is a minimum or exactly that is for the maker to say, and our reading of it must be visible.',
  source: 'practice',
  fix: 'Changes the bound word to "stated".',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const fault of faultsNamed(entity, 'bare-number-promoted')) {
      const { field } = fault;
      if (field?.claim.claim !== 'number') continue;
      const edit = changeBound(fault, 'stated');
      report({
        at: field.at,
        span: boundSpan(fault),
        message: message.promoted(fieldName(field.at), quotedWords(fault), oursInWords(fault)),
        ...quoteReport(fault),
        fixes: edit === undefined ? [] : [{ title: 'Change to stated', edits: [edit] }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "132 °C, 4 minutes"}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {at_least: 4 min}, src: s1}
                                                                            ^^^^^^^^ The page says "4 minutes" without a bound word; "exposure" says at least 4 min, which is our own reading.
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Soak for 5 minutes at a maximum of 40 °C."}
cleaning:
  all_of:
    - stage: manual
      soak:
        exactly: 5 min
        ^^^^^^^ The page says "5 minutes" without a bound word; "soak" says exactly 5 min, which is our own reading.
      soak_temp: {at_most: 40 C}
      src: s1
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "132 °C, 4 minutes"}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, src: s1}
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Flush 3 times with not less than 50 mL."}
cleaning:
  all_of:
    - stage: manual
      flush: {volume: {at_least: 50 mL}, times: {exactly: 3 times}, src: s1}
`,
    ],
  },
});
