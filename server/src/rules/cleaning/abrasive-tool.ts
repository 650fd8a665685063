import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { abrasives, hardBristles } from '../support/cleaning-words.ts';
import { isCleaning, stepInWords, stepsOf } from '../support/steps.ts';
import { isMentioned, saidIn } from '../support/wording.ts';

const message = {
  abrasive: (tool: string) =>
    `"${tool}" scratches. Use a soft brush unless the instruction of each item names this tool.`,
};

export const rule = defineRule({
  id: 'abrasive-tool',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manager',
  why: 'A scratch breaks the layer that keeps steel from rusting and gives soil a place to hold on.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      if (step.stage !== undefined && !isCleaning(step.stage)) continue;
      const tool = abrasiveIn(step);
      if (tool === undefined) continue;
      const devices = devicesOfStep(step, procedure, view);
      if (devices.length > 0 && devices.every(namesAbrasive)) continue;
      report({ at: tool.at, message: message.abrasive(tool.text), does: stepInWords(step) });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: bench
steps: [{stage: manual, do: brush, tool: steel-wire}]
                                         ^^^^^^^^^^ "steel-wire" scratches. Use a soft brush unless the instruction of each item names this tool.
`,
      `
=== procedures/rongeur.ifu.yaml
kind: procedure
id: rongeur
applies_to: [rongeur]
steps:
  - {stage: manual, do: brush, brush: {diameter: 4 mm, length: 200 mm, material: brass}}
                                                                                 ^^^^^ "brass" scratches. Use a soft brush unless the instruction of each item names this tool.
  - {stage: manual, do: rinse, water: tap}
  - {stage: manual, do: scrub, tool: scouring pad}
                                     ^^^^^^^^^^^^ "scouring pad" scratches. Use a soft brush unless the instruction of each item names this tool.
=== devices/rongeur.ifu.yaml
kind: device
id: rongeur
manual: {steps: [{do: brush, tool: soft brush}]}
`,
    ],
    good: [
      `
kind: procedure
id: bench
steps:
  - {stage: manual, do: brush, tool: nylon-brush}
  - {stage: manual, do: wipe, tool: "lint-free cloth, never steel wool"}
`,
      `
=== procedures/rasp.ifu.yaml
kind: procedure
id: rasp
applies_to: [bone-rasp]
steps: [{stage: manual, do: brush, tool: stainless brush}]
=== devices/rasp.ifu.yaml
kind: device
id: bone-rasp
manual: {steps: [{do: brush, tool: stainless brush, src: s1}]}
statements:
  s1: {doc: BR-1, rev: A, page: 2, quote: "Clean the teeth with a stainless brush."}
`,
    ],
  },
});

function abrasiveIn(step: ProcedureStep): Text | undefined {
  if (step.tool !== undefined && saidIn(step.tool.text, abrasives) !== undefined) return step.tool;
  const material = step.brush?.material;
  return material !== undefined && saidIn(material.text, hardBristles) !== undefined ? material : undefined;
}

function namesAbrasive(device: EntityOf['device']): boolean {
  return toolsOf(device).some((tool) => isMentioned(tool, [...abrasives, ...hardBristles]));
}

function toolsOf(device: EntityOf['device']): readonly string[] {
  const nodes: CleaningNode[] = [];
  if (device.manual !== undefined) nodes.push(device.manual);
  if (device.cleaning !== undefined) addNodes(device.cleaning, nodes);
  return nodes.flatMap(({ brush, steps, tools }) =>
    [brush?.material, tools, ...(steps?.items ?? []).flatMap((step) => [step.tool, step.brush?.material])].flatMap(
      (text) => (text === undefined ? [] : [text.text]),
    ),
  );
}

function addNodes(node: CleaningNode, nodes: CleaningNode[]): void {
  nodes.push(node);
  for (const child of [...(node.all_of?.items ?? []), ...(node.any_of?.items ?? [])]) addNodes(child, nodes);
}
