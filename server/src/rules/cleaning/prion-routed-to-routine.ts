import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { prions, setApart } from '../support/word-lists.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  shared: (where: string) =>
    `This step brings items of suspected prion disease to ${where} before anyone has decided what happens to them. Hold them apart first.`,
};

export const rule = defineRule({
  id: 'prion-routed-to-routine',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'infection-prevention',
  why: 'What passes through a shared sink, bath or washer leaves its traces for everything that follows.',
  source: 'guideline',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const wholly = isPrion(procedure.when);
    for (const step of procedure.steps?.items ?? []) {
      if (!wholly && !isPrion(step.when)) continue;
      if (decisions.has(step.do?.text ?? '')) return;
      const place = sharedPlace(step, view);
      if (place === undefined || isSetApart(step)) continue;
      report({
        at: place.at,
        message: message.shared(place.words),
        does: [step.stage?.text, step.do?.text, step.cycle?.text, step.times?.text]
          .filter((word) => word !== undefined)
          .join(', '),
        related: conditionPlaces(procedure, step),
      });
      return;
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: prion
when: prion-suspected
steps:
  - {stage: mechanical, cycle: W1-std, times: 2 times}
                               ^^^^^^ This step brings items of suspected prion disease to the washer before anyone has decided what happens to them. Hold them apart first.
  - {stage: quarantine, do: decide, who: infection-prevention}
`,
      `
kind: procedure
id: neurosurgery-return
steps:
  - {stage: receipt, do: count}
  - {stage: manual, do: soak, when: "CJD cannot be excluded", chemistry: C1, time: 10 min}
            ^^^^^^ This step brings items of suspected prion disease to the sink before anyone has decided what happens to them. Hold them apart first.
=== chemistry/c1.ifu.yaml
kind: chemistry
id: C1
`,
    ],
    good: [
      `
kind: procedure
id: prion
when: prion-suspected
steps:
  - {stage: quarantine, do: quarantine}
  - {stage: quarantine, do: decide, who: infection-prevention}
  - {stage: mechanical, do: wash, times: 2 times}
`,
      `
kind: procedure
id: prion-bench
when: prion-suspected
steps:
  - {stage: manual, do: soak, tool: "dedicated basin, incinerated afterwards", time: 60 min}
`,
    ],
  },
});

/** From here on someone has decided, or nothing is left to decide. */
const decisions: ReadonlySet<string> = new Set(['decide', 'discard', 'discard-all', 'inactivate']);

/** Where many items meet, by stage. */
const shared: ReadonlyMap<string, string> = new Map([
  ['manual', 'the sink'],
  ['rinse', 'the sink'],
  ['ultrasonic', 'the ultrasonic bath'],
  ['mechanical', 'the washer'],
]);

function isPrion(when: Text | undefined): boolean {
  return when !== undefined && isMentioned(when.text, prions);
}

function sharedPlace(step: ProcedureStep, view: LibraryView): { at: Text['at']; words: string } | undefined {
  const words = shared.get(step.stage?.text ?? '');
  if (step.stage !== undefined && words !== undefined) return { at: (step.cycle ?? step.stage).at, words };
  if (step.cycle !== undefined && view.washerCycle(step.cycle.text) !== undefined)
    return { at: step.cycle.at, words: 'the washer' };
  return undefined;
}

function isSetApart(step: ProcedureStep): boolean {
  return [step.tool, step.container, step.bath, step.note, step.do].some(
    (text) => text !== undefined && isMentioned(text.text, setApart),
  );
}

function conditionPlaces(procedure: EntityOf['procedure'], step: ProcedureStep) {
  const when = step.when ?? procedure.when;
  return when === undefined ? [] : [{ at: when.at, note: 'when this is done' }];
}
