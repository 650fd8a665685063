import { defineRule } from '../rule.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  bare: (step: string) =>
    `This step (${step}) gives neither a reason nor a source. Add "why:" in a few words, or "src:".`,
};

export const rule = defineRule({
  id: 'step-without-why',
  stage: 'teaching',
  severity: 'advice',
  settledBy: 'educator',
  why: 'People keep to the steps whose reason they know.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { report }) {
    for (const step of stepsOf(procedure)) {
      if (step.why !== undefined || step.src !== undefined) continue;
      report({ at: step.at, message: message.bare(stepInWords(step)) });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: cool
steps:
  - {stage: cooling, do: cool, time: 60 min}
     ^^^^^ This step (cooling, cool, 60 min) gives neither a reason nor a source. Add "why:" in a few words, or "src:".
`,
      `
kind: procedure
id: bench
steps:
  - {stage: manual, do: brush, why: serrations hold soil}
  - stage: manual
    ^^^^^ This step (manual, rinse) gives neither a reason nor a source. Add "why:" in a few words, or "src:".
    do: rinse
`,
    ],
    good: [
      `
kind: procedure
id: cool
steps:
  - {stage: cooling, do: cool, time: 60 min, why: a hot pack draws in moisture}
`,
      `
kind: procedure
id: bench
steps:
  - {stage: manual, do: brush, src: s1}
statements:
  s1: {doc: P-13, rev: "2024", page: 3, quote: "Brush all serrations."}
`,
    ],
  },
});
