import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { diseases, prions } from '../support/word-lists.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  branch: (condition: string) =>
    `This is done only when “${condition}”. Every case is treated as infectious, so the ordinary cleaning must do; name the instruction or directive that asks for more, or remove the branch.`,
};

export const rule = defineRule({
  id: 'disease-specific-cleaning',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'infection-prevention',
  why: 'A special cleaning for one diagnosis says that the ordinary one is not enough, while most carriers are unknown.',
  source: 'guideline',
  kinds: ['procedure'],
  check(procedure, context) {
    if (isByDirective(procedure)) return;
    if (isDisease(procedure.when)) {
      if (procedure.steps?.items.some(isProcessing) === true) reportBranch(procedure.when, context);
      return;
    }
    for (const step of procedure.steps?.items ?? []) {
      if (step.src === undefined && isProcessing(step) && isDisease(step.when)) reportBranch(step.when, context);
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: known-infections
steps:
  - {stage: manual, do: soak, when: "patient has a blood-borne virus", time: 30 min}
                                    ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ This is done only when “patient has a blood-borne virus”. Every case is treated as infectious, so the ordinary cleaning must do; name the instruction or directive that asks for more, or remove the branch.
`,
      `
kind: procedure
id: isolation-trays
when: tray of an MRSA patient
      ^^^^^^^^^^^^^^^^^^^^^^^ This is done only when “tray of an MRSA patient”. Every case is treated as infectious, so the ordinary cleaning must do; name the instruction or directive that asks for more, or remove the branch.
steps:
  - {stage: disinfection, do: soak, agent: aldehyde, time: 60 min}
  - {stage: mechanical, do: wash, times: 2 times}
`,
    ],
    good: [
      `
kind: procedure
id: prion
when: prion-suspected
steps:
  - {stage: quarantine, do: quarantine}
`,
      `
kind: procedure
id: isolation-trays
steps:
  - {stage: transport, do: notify, when: "patient is infectious", who: technician}
  - {stage: manual, do: soak, when: visibly-soiled, time: 5 min}
`,
      `
kind: procedure
id: outbreak
when: spore outbreak declared by the health authority
sources: [{id: a1, doc: HD-7, type: directive, edition: "2024", clause: "3"}]
steps:
  - {stage: disinfection, do: soak, time: 30 min}
`,
    ],
  },
});

function reportBranch(when: Text | undefined, { report }: RuleContext): void {
  if (when !== undefined) report({ at: when.at, message: message.branch(when.text) });
}

function isDisease(when: Text | undefined): boolean {
  return when !== undefined && isMentioned(when.text, diseases) && !isMentioned(when.text, prions);
}

/** Telling someone, holding apart and throwing away are no cleaning. */
const noProcessing: ReadonlySet<string> = new Set([
  'notify',
  'quarantine',
  'decide',
  'discard',
  'discard-all',
  'count',
  'weigh',
  'close-cart',
]);
const noStages: ReadonlySet<string> = new Set(['transport', 'receipt', 'quarantine', 'release', 'storage', 'use']);

function isProcessing(step: ProcedureStep): boolean {
  return !noProcessing.has(step.do?.text ?? '') && !noStages.has(step.stage?.text ?? '');
}

function isByDirective(procedure: EntityOf['procedure']): boolean {
  const types = procedure.sources?.items.map((source) => source.type?.text) ?? [];
  return types.includes('directive') || types.includes('instruction');
}
