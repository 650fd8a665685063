import type { Fix } from '../../base/problem.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { wetIsFine } from '../support/word-lists.ts';
import { saidIn } from '../support/wording.ts';

const message = {
  unchecked:
    'Nobody looks for moisture before the steam cycle here. Its drying phase is sized for condensate, not for water that is carried in.',
  permitted: (words: string) =>
    `This lets moisture into the steam cycle (“${words}”). Its drying phase is sized for condensate, not for water that is carried in.`,
  does: (text: string) => `The procedure says: “${text}”.`,
};

export const rule = defineRule({
  id: 'wet-into-steam',
  stage: 'rinsing',
  severity: 'error',
  settledBy: 'manager',
  why: 'Water that is carried in stays in the pack, and a wet pack is no barrier.',
  source: 'standard',
  fix: 'Asks for the look for moisture.',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    if (procedure.context?.text === 'iuss') return;
    for (const step of procedure.steps?.items ?? []) {
      if (step.stage !== undefined && !beforeSteam.has(step.stage.text)) continue;
      const permitted = permission(step);
      const unchecked = step.check_dry?.on === false ? step.check_dry : undefined;
      const at = unchecked?.at ?? permitted?.text.at;
      if (at === undefined) continue;
      const said = permitted?.text.text ?? step.note?.text;
      report({
        at,
        message: unchecked === undefined ? message.permitted(permitted?.words ?? '') : message.unchecked,
        says: devicesOfStep(step, procedure, view).flatMap(drynessOf),
        ...(said !== undefined && { does: message.does(said) }),
        ...(permitted !== undefined &&
          unchecked !== undefined && { related: [{ at: permitted.text.at, note: 'how it is justified' }] }),
        ...(permitted === undefined && unchecked !== undefined && { fixes: [lookForMoisture(unchecked.at.span)] }),
      });
      return;
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: loading
steps:
  - {stage: loading, do: load, check_dry: false, note: "steam will dry it"}
                                          ^^^^^ Nobody looks for moisture before the steam cycle here. Its drying phase is sized for condensate, not for water that is carried in.
`,
      `
=== procedures/packing.ifu.yaml
kind: procedure
id: packing
applies_to: [suction-tube]
steps:
  - {stage: inspection, do: visual}
  - {stage: packaging, do: pack, note: "Damp trays may be wrapped; the heat finishes them."}
                                       ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ This lets moisture into the steam cycle (“damp may”). Its drying phase is sized for condensate, not for water that is carried in.
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
drying: {use: required, wet_forbidden: true, src: s9}
statements:
  s9: {doc: QM-31, rev: E, page: 6, quote: "No moisture may be left in the bore."}
`,
      `
kind: procedure
id: evening-load
steps:
  - stage: loading
    do: load
    check_dry: false
               ^^^^^ Nobody looks for moisture before the steam cycle here. Its drying phase is sized for condensate, not for water that is carried in.
`,
    ],
    good: [
      `
kind: procedure
id: loading
steps:
  - {stage: loading, do: load, check_dry: true, note: "Moist trays may not go in; dry them first."}
`,
      `
kind: procedure
id: packing
steps:
  - {stage: manual, do: keep-moist, note: "wet towels may be used"}
  - {stage: drying, do: dry, endpoint: no visible moisture, why: carried-in water is not what the drying phase is sized for}
`,
    ],
  },
});

const beforeSteam: ReadonlySet<string> = new Set([
  'drying',
  'assembly',
  'packaging',
  'loading',
  'steam',
  'sterilization',
]);

function permission(step: ProcedureStep): { text: Text; words: string } | undefined {
  for (const text of [step.do, step.endpoint, step.note, step.why]) {
    const words = text === undefined ? undefined : saidIn(text.text, wetIsFine);
    if (text !== undefined && words !== undefined) return { text, words };
  }
  return undefined;
}

function drynessOf(device: EntityOf['device']) {
  return device.drying?.wet_forbidden?.on === true || device.drying?.endpoint !== undefined
    ? sayingsOf(device, device.drying.src)
    : [];
}

function lookForMoisture(span: Fix['edits'][number]['span']): Fix {
  return { title: 'Ask for the look for moisture', edits: [{ span, text: 'true' }] };
}
