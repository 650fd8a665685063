import type { Fix } from '../../base/problem.ts';
import { defineRule } from '../rule.ts';
import { insertField } from '../support/flow-edits.ts';
import { fieldName, quantityAtFault, quotedWords, quoteReport } from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  half: (field: string, words: string, ours: string) =>
    `The page gives "${words}" for a half cycle: how the maker tested, not what to run. "${field}" takes ${ours} for the instruction.`,
};

export const rule = defineRule({
  id: 'half-cycle-encoded',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'A half cycle shows the margin of the maker’s test; run as the instruction it takes the margin away.',
  source: 'standard',
  fix: 'Marks the option as evidence.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const fault of faultsNamed(entity, 'half-cycle-encoded')) {
      const { field } = fault;
      const quantity = quantityAtFault(fault);
      if (field === undefined || quantity === undefined) continue;
      report({
        at: field.at,
        span: quantity.at.span,
        message: message.half(fieldName(field.at), quotedWords(fault), quantity.text),
        ...quoteReport(fault),
        fixes: fixesFor(fault),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s15: {doc: PF-1, rev: A, page: 9, quote: "Half cycle of 2 minutes achieved 6-log reduction"}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, exposure: {at_least: 2 min}, src: s15}
                                                            ^^^^^ The page gives "2 minutes" for a half cycle: how the maker tested, not what to run. "exposure" takes 2 min for the instruction.
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 9, quote: "Full cycle: 4 minutes. Half cycle: 2 minutes."}
sterilization:
  any_of:
    - id: pv
      modality: steam-prevac
      exposure: {stated: 2 min}
                         ^^^^^ The page gives "2 minutes" for a half cycle: how the maker tested, not what to run. "exposure" takes 2 min for the instruction.
      src: s1
    - {id: full, modality: steam-prevac, exposure: {stated: 4 min}, src: s1}
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s15: {doc: PF-1, rev: A, page: 9, quote: "Half cycle of 2 minutes achieved 6-log reduction"}
sterilization:
  any_of:
    - {id: pv-half, evidence: true, modality: steam-prevac, exposure: {stated: 2 min}, src: s15}
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 9, quote: "Full cycle: 4 minutes. Half cycle: 2 minutes."}
sterilization:
  any_of:
    - {id: full, modality: steam-prevac, exposure: {stated: 4 min}, src: s1}
`,
    ],
  },
});

function fixesFor({ field }: TranscriptionFault): readonly Fix[] {
  const edit = field?.option === undefined ? undefined : insertField(field.option, 'evidence: true');
  return edit === undefined ? [] : [{ title: 'Mark the option as evidence', edits: [edit] }];
}
