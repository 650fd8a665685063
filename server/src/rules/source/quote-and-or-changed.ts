import type { Fix } from '../../base/problem.ts';
import { defineRule } from '../rule.ts';
import { quotedWords, quoteReport } from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  choice: (words: string) =>
    `The page joins these stages with "${words}": each of them is done. Here they are a choice, of which one is enough.`,
  all: (words: string) =>
    `The page joins these stages with "${words}": one of them is enough. Here each of them must be done.`,
};

export const rule = defineRule({
  id: 'quote-and-or-changed',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'Reading "by hand and in the machine" as "by hand or in the machine" is the classic miss.',
  source: 'logic',
  fix: 'Changes the choice to a list of which all are done, or the other way round.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    const seen = new Set<unknown>();
    for (const fault of faultsNamed(entity, 'quote-and-or-changed')) {
      const { field } = fault;
      if (field?.claim.claim !== 'structure' || seen.has(field.at)) continue;
      seen.add(field.at);
      const isChoice = field.claim.structure === 'any_of';
      report({
        at: field.at,
        message: (isChoice ? message.choice : message.all)(quotedWords(fault)),
        ...quoteReport(fault),
        does: isChoice ? 'any one of these stages' : 'all of these stages',
        fixes: fixesFor(fault),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: suction-tube
statements:
  s4: {doc: ST-2, rev: A, page: 3, quote: "Clean manually, then in a washer-disinfector."}
cleaning: {any_of: [{stage: manual, src: s4}, {stage: mechanical, src: s4}]}
           ^^^^^^ The page joins these stages with "then": each of them is done. Here they are a choice, of which one is enough.
`,
      `
kind: device
id: pale-forceps
statements:
  s4: {doc: PF-1, rev: A, page: 3, quote: "Clean manually or in a washer-disinfector."}
  s5: {doc: PF-1, rev: A, page: 3, quote: "Use detergents with a neutral pH."}
cleaning:
  all_of:
  ^^^^^^ The page joins these stages with "or": one of them is enough. Here each of them must be done.
    - {stage: manual, src: s4}
    - {stage: mechanical, src: [s4, s5]}
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 3, lang: de, quote: "Manuell vorreinigen und anschließend im Reinigungs- und Desinfektionsgerät aufbereiten."}
cleaning:
  any_of:
  ^^^^^^ The page joins these stages with "und anschließend": each of them is done. Here they are a choice, of which one is enough.
    - id: a
      all_of:
        - {stage: manual, src: s1}
        - {stage: ultrasonic, src: s1}
    - {id: b, stage: mechanical, src: s1}
`,
    ],
    good: [
      `
kind: device
id: suction-tube
statements:
  s4: {doc: ST-2, rev: A, page: 3, quote: "Clean manually, then in a washer-disinfector."}
  s5: {doc: ST-2, rev: A, page: 3, quote: "Alternatively, clean manually only."}
cleaning:
  any_of:
    - id: both
      all_of:
        - {stage: manual, src: s4}
        - {stage: mechanical, src: s4}
    - {id: by-hand, stage: manual, src: s5}
`,
      `
kind: device
id: pale-forceps
statements:
  s4: {doc: PF-1, rev: A, page: 3, quote: "Clean manually or in a washer-disinfector."}
cleaning: {any_of: [{stage: manual, src: s4}, {stage: mechanical, src: s4}]}
`,
    ],
  },
});

function fixesFor({ field }: TranscriptionFault): readonly Fix[] {
  const key = field?.at.keySpan;
  if (field?.claim.claim !== 'structure' || key === undefined) return [];
  const other = field.claim.structure === 'any_of' ? 'all_of' : 'any_of';
  const title = other === 'all_of' ? 'Change to all_of: each is done' : 'Change to any_of: one is enough';
  return [{ title, edits: [{ span: key, text: other }] }];
}
