import { defineRule } from '../rule.ts';
import { boundSpan, changeBound, fieldName, oursInWords, quotedWords, quoteReport } from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';

const message = {
  limit: (field: string, words: string, ours: string) =>
    `The page says "${words}", which is no limit; "${field}" says ${ours}.`,
};

export const rule = defineRule({
  id: 'approximate-used-as-limit',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Nobody can fail or exactly meet "about 30 minutes".',
  source: 'logic',
  fix: 'Changes the bound word to "about".',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const fault of faultsNamed(entity, 'approximate-used-as-limit')) {
      const { field } = fault;
      if (field?.claim.claim !== 'number') continue;
      const edit = changeBound(fault, 'about');
      report({
        at: field.at,
        span: boundSpan(fault),
        message: message.limit(fieldName(field.at), quotedWords(fault), oursInWords(fault)),
        ...quoteReport(fault),
        fixes: edit === undefined ? [] : [{ title: 'Change to about', edits: [edit] }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 5, quote: "Dry for approximately 30 minutes"}
drying: {time: {at_least: 30 min}, src: s1}
                ^^^^^^^^ The page says "approximately 30 minutes", which is no limit; "time" says at least 30 min.
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, lang: de, quote: "Mit ca. 50 mL Wasser durchspülen, höchstens 43 °C."}
cleaning:
  all_of:
    - stage: manual
      flush: {volume: {exactly: 50 mL}, temp: {at_most: 43 C}, src: s1}
                       ^^^^^^^ The page says "ca. 50 mL", which is no limit; "volume" says exactly 50 mL.
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 5, quote: "Dry for approximately 30 minutes"}
drying: {time: {about: 30 min}, src: s1}
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Flush for about a minute (60 s) with at least 50 mL."}
cleaning:
  all_of:
    - stage: manual
      flush: {volume: {at_least: 50 mL}, time: {about: 60 s}, src: s1}
`,
    ],
  },
});
