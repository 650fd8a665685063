import type { NumberClaim } from '../../quantity/prose/claims.ts';
import { defineRule } from '../rule.ts';
import {
  boundInWords,
  boundSpan,
  changeBound,
  fieldName,
  oursInWords,
  quotedWords,
  quoteReport,
} from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';

const message = {
  changed: (field: string, words: string, page: string, ours: string) =>
    `The page says "${words}", ${page}; "${field}" says ${ours}.`,
};

export const rule = defineRule({
  id: 'quote-bound-changed',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: '"Up to 10 minutes" and "at least 10 minutes" are opposite limits.',
  source: 'logic',
  fix: 'Changes the bound word to that of the quote.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const fault of faultsNamed(entity, 'quote-bound-changed')) {
      const { field } = fault;
      const bound = fault.fault.bound ?? 'stated';
      if (field?.claim.claim !== 'number') continue;
      const edit = changeBound(fault, bound);
      report({
        at: field.at,
        span: boundSpan(fault),
        message: message.changed(fieldName(field.at), quotedWords(fault), boundInWords(bound), oursInWords(fault)),
        ...quoteReport(fault),
        fixes: edit === undefined ? [] : [{ title: `Change to ${boundWord(bound)}`, edits: [edit] }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: knee-system
statements:
  s1: {doc: KS-1, rev: C, page: 6, quote: "Sonicate for up to 10 minutes."}
ultrasonic: {use: allowed, time: {at_least: 10 min}, src: s1}
                                  ^^^^^^^^ The page says "up to 10 minutes", a highest value; "time" says at least 10 min.
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "132 °C, 4 minutes or longer"}
  s2: {doc: PF-1, rev: A, page: 2, quote: "Water must not be hotter than 43 °C."}
cleaning:
  all_of:
    - stage: manual
      soak_temp: {at_least: 43 C, src: s2}
                  ^^^^^^^^ The page says "not be hotter than 43 °C", a highest value; "soak temp" says at least 43 °C.
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, src: s1}
                                                                            ^^^^^^ The page says "4 minutes or longer", a lowest value; "exposure" says 4 min without a bound word.
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 2, quote: "Use detergents with a pH of at least 7."}
cleaning:
  all_of:
    - stage: manual
      detergent: {ph: {exactly: 7, src: s1}}
                       ^^^^^^^ The page says "at least 7", a lowest value; "ph" says exactly 7.
`,
    ],
    good: [
      `
kind: device
id: knee-system
statements:
  s1: {doc: KS-1, rev: C, page: 6, quote: "Sonicate for up to 10 minutes, but not less than 3 minutes."}
ultrasonic: {use: allowed, time: {between: [3 min, 10 min]}, src: s1}
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "132 °C, 4 minutes or longer, dry about 30 minutes"}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {about: 30 min}, src: s1}
`,
    ],
  },
});

function boundWord(bound: NumberClaim['bound']): string {
  return bound.replaceAll('_', ' ');
}
