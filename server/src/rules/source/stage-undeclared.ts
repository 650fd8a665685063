import type { Fix } from '../../base/problem.ts';
import { outOfScopeTraits } from '../../judge/vocabulary.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place } from '../../model/node.ts';
import { fieldOf, isWritten } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { isFlow } from '../support/flow-edits.ts';
import type { MandatoryStage } from '../support/mandatory-stages.ts';
import { mandatoryStages, stageOrder } from '../support/mandatory-stages.ts';

type Device = EntityOf['device'];

const message = {
  undeclared: (stage: string, trait: string | undefined) =>
    `Nothing is said about ${stage}${trait === undefined ? '' : `, though the device is marked "${trait}"`}. Encode it, or say that the document is silent (silent: true) or that it does not apply.`,
};

export const rule = defineRule({
  id: 'stage-undeclared',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A stage that is absent can’t be told from one that was forgotten.',
  source: 'standard',
  fix: 'Adds the stage as silent, to be confirmed by looking at the document.',
  kinds: ['device'],
  check(device, { report }) {
    const traits = device.traits?.items.map((trait) => trait.text) ?? [];
    if (traits.some((trait) => outOfScopeTraits.has(trait))) return;
    for (const stage of mandatoryStages) {
      const trait = stage.traits?.find((one) => traits.some((text) => text === one));
      const isMandatory = (stage.traits === undefined || trait !== undefined) && isForClass(stage, device);
      if (!isMandatory || isDeclared(stage, device)) continue;
      report({
        at: placeFor(stage, device),
        message: message.undeclared(stage.name, trait),
        fixes: fixesFor(stage, device),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: takeapart-scissors
    ^^^^^^^^^^^^^^^^^^ Nothing is said about drying. Encode it, or say that the document is silent (silent: true) or that it does not apply.
    ^^^^^^^^^^^^^^^^^^ Nothing is said about taking it apart, though the device is marked "multi-part". Encode it, or say that the document is silent (silent: true) or that it does not apply.
class: critical
traits: [lumen, multi-part]
point_of_use: {silent: true}
cleaning: {silent: true}
inspection: {silent: true}
packaging: {silent: true}
sterilization: {silent: true}
storage: {silent: true}
`,
      `
kind: device
id: pale-probe
    ^^^^^^^^^^ Nothing is said about disinfection or sterilization. Encode it, or say that the document is silent (silent: true) or that it does not apply.
class: semi-critical
traits: [cable]
point_of_use: {silent: true}
mechanical: {silent: true}
drying: {silent: true}
inspection: {silent: true}
storage: {silent: true}
`,
    ],
    good: [
      `
kind: device
id: takeapart-scissors
class: critical
traits: [lumen, multi-part]
point_of_use: {silent: true}
disassembly: {not_applicable: one piece}
manual: {silent: true}
drying: {silent: true}
inspection: {silent: true}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, packaging: {allowed: [double-wrap]}}
storage: {silent: true}
`,
      `
kind: device
id: flexible-scope
class: semi-critical
traits: [flexible-endoscope]
`,
    ],
  },
});

/** A device without a class is taken for critical: the strictest reading. */
function isForClass(stage: MandatoryStage, device: Device): boolean {
  return stage.classes === undefined || stage.classes.includes(device.class?.text ?? 'critical');
}

function isDeclared(stage: MandatoryStage, device: Device): boolean {
  if (stage.fields.some((field) => isWritten(device, field))) return true;
  return (
    stage.inOptions !== undefined &&
    device.sterilization?.any_of?.items.some((option) => fieldOf(option, stage.inOptions ?? '') !== undefined) === true
  );
}

/** The id of the device is underlined, but each stage has a path of its own, so that one can be waived without the others. */
function placeFor(stage: MandatoryStage, device: Device): Place {
  const at = device.id?.at ?? device.at;
  return { span: at.span, focus: at.focus ?? at.span, key: stage.field, parent: device.at };
}

/** A line of its own before the next stage of the file. */
function fixesFor(stage: MandatoryStage, device: Device): readonly Fix[] {
  if (isFlow(device)) return [];
  const later = stageOrder.slice(stageOrder.indexOf(stage.field) + 1);
  const next = later.map((key) => fieldOf(device, key)?.at.keySpan).find((key) => key !== undefined);
  if (next === undefined) return [];
  const edit = { span: { start: next.start, end: next.start }, text: `${stage.field}: {silent: true}\n` };
  return [{ title: `Add ${stage.name} as silent (look at the document first)`, edits: [edit] }];
}
