import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { stepsOf } from '../support/steps.ts';
import { moistPacks, wetPackKept } from '../support/word-lists.ts';
import { isMentioned, saidIn } from '../support/wording.ts';

const message = {
  kept: (words: string) =>
    `A wet pack is kept in use (“${words}”). Moisture has breached its barrier: it goes back to assembly with new packaging, and the cause is looked for.`,
};

export const rule = defineRule({
  id: 'wet-pack-released',
  stage: 'storage',
  severity: 'error',
  settledBy: 'manager',
  why: 'Moisture carries germs through the wrap, and drying the pack afterwards does not take them out again.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { report }) {
    for (const step of stepsOf(procedure)) {
      if (!isAboutPacks(step)) continue;
      const about = [step.when, step.do, step.note].some(
        (text) => text !== undefined && isMentioned(text.text, moistPacks),
      );
      const kept = about ? keptBy(step) : undefined;
      if (kept !== undefined) report({ at: kept.text.at, message: message.kept(kept.words) });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: wet
steps: [{when: moisture-found, do: air-dry-then-release}]
                                   ^^^^^^^^^^^^^^^^^^^^ A wet pack is kept in use (“air dry”). Moisture has breached its barrier: it goes back to assembly with new packaging, and the cause is looked for.
`,
      `
kind: procedure
id: evening-release
steps:
  - {stage: cooling, do: cool, time: 60 min}
  - {stage: release, do: look at the packs, note: damp packs are wiped and put on the shelf}
                                                  ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ A wet pack is kept in use (“wiped”). Moisture has breached its barrier: it goes back to assembly with new packaging, and the cause is looked for.
`,
    ],
    good: [
      `
kind: procedure
id: wet
steps:
  - {stage: release, when: moisture-found, do: quarantine}
  - {stage: release, when: moisture-found, do: send back to assembly, note: "new packaging; it is never wiped or used"}
`,
      `
kind: procedure
id: bench
steps:
  - {stage: drying, when: moisture-found, do: air-dry, note: before packing}
`,
    ],
  },
});

const ofPacks: ReadonlySet<string> = new Set(['cooling', 'release', 'storage', 'use']);

/** Before packing, drying what is wet is the right thing to do. */
function isAboutPacks({ stage }: ProcedureStep): boolean {
  return stage === undefined || ofPacks.has(stage.text);
}

function keptBy(step: ProcedureStep): { readonly text: Text; readonly words: string } | undefined {
  for (const text of [step.do, step.note]) {
    const words = text === undefined ? undefined : saidIn(text.text, wetPackKept);
    if (text !== undefined && words !== undefined) return { text, words };
  }
  return undefined;
}
