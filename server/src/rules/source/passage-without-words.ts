import { defineRule } from '../rule.ts';
import type { Transcribed } from '../support/transcription.ts';
import { transcribedKinds } from '../support/transcription.ts';

const message = {
  missing: 'This passage has no sentence: write what the page says, word by word (quote).',
};

export const rule = defineRule({
  id: 'passage-without-words',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Without the sentence nobody can see whether the fields say the same.',
  source: 'logic',
  kinds: transcribedKinds,
  check(entity: Transcribed, { report }) {
    for (const { key, value } of entity.statements?.rows.values() ?? []) {
      if (value.quote === undefined) report({ at: value.at, span: key.at.span, message: message.missing });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, section: Drying}
  ^^ This passage has no sentence: write what the page says, word by word (quote).
drying: {use: required, src: s1}
`,
      `
kind: chemistry
id: C9
statements:
  s1:
  ^^ This passage has no sentence: write what the page says, word by word (quote).
    doc: SM-9
    rev: "2"
    page: 1
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Dry completely."}
drying: {use: required, src: s1}
`,
      `
kind: device
id: probe
statements:
  s1: {doc: PP-4, rev: A, page: 2, figure: "3", quote: "[pictogram: no immersion]"}
immersion: {use: forbidden, src: s1}
`,
    ],
  },
});
