import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { List, Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { stepsOf } from '../support/steps.ts';

const message = {
  late: (late: string, early: string) =>
    `${late} stands after ${early} here, but has to be done before it: each stage prepares the next.`,
  note: (early: string) => `${early} comes first here`,
};

export const rule = defineRule({
  id: 'procedure-step-order',
  stage: 'governance',
  severity: 'error',
  settledBy: 'manager',
  why: 'Each stage is the condition of the next: what is packed wet or sterilized unseen is not put right later.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { report }) {
    const fault = outOfOrder(procedure);
    if (fault === undefined) return;
    const { late, early } = fault;
    report({
      at: late.at,
      message: message.late(titleOf(late), nameOf(early)),
      related: [{ at: early.at, note: message.note(nameOf(early)) }],
    });
  },
  examples: {
    bad: [
      `
kind: procedure
id: p
steps: [{stage: packaging}, {stage: inspection}, {stage: steam}]
                                    ^^^^^^^^^^ Inspection stands after packing here, but has to be done before it: each stage prepares the next.
`,
      `
kind: procedure
id: drills
steps:
  - {stage: lubrication, do: lubricate}
  - {stage: manual, do: brush}
            ^^^^^^ Cleaning by hand stands after lubrication here, but has to be done before it: each stage prepares the next.
  - {stage: packaging, do: pack}
  - {stage: steam, do: sterilize}
`,
      `
kind: procedure
id: tubes
steps:
  - {stage: manual, do: rinse}
  - {stage: drying, do: dry}
  - {stage: packaging, do: pack}
  - {stage: inspection, do: visual}
            ^^^^^^^^^^ Inspection stands after packing here, but has to be done before it: each stage prepares the next.
`,
      `
kind: procedure
id: cooling
steps:
  - {stage: cooling, do: cool, applies_to_packaging: [container]}
  - {stage: storage, do: store}
  - {stage: cooling, do: cool, applies_to_packaging: [pouch]}
            ^^^^^^^ Cooling stands after storage here, but has to be done before it: each stage prepares the next.
`,
    ],
    good: [
      `
kind: procedure
id: p
steps:
  - {stage: manual, do: rinse}
  - {stage: ultrasonic, do: sonicate}
  - {stage: manual, do: rinse}
  - {stage: drying, do: dry}
  - {stage: inspection, do: visual}
  - {stage: packaging, do: pack}
  - {stage: inspection, do: look at the seal}
  - {stage: steam, do: sterilize}
`,
      `
kind: procedure
id: wet
steps:
  - {stage: release, do: look}
  - {stage: manual, when: moisture-found, do: send back to cleaning}
`,
      `
kind: procedure
id: loan
steps:
  - {stage: receipt, do: count}
  - {stage: manual, do: brush}
  - {stage: use, do: use}
  - {stage: receipt, do: count}
  - {stage: manual, do: brush}
`,
    ],
  },
});

/**
 * Stages that prepare each other, by rank. Between stages of one rank there is no order, and around the theatre the work begins anew, so
 * that use, case end and transport have no rank, and what stands before them is of an earlier round.
 */
const ranks: ReadonlyMap<string, number> = new Map([
  ...rank(0.5, ['receipt']),
  ...rank(1, ['disassembly', 'manual', 'ultrasonic', 'mechanical', 'rinse', 'disinfection']),
  ...rank(2, ['drying']),
  ...rank(3, ['inspection', 'lubrication', 'assembly']),
  ...rank(4, ['packaging']),
  ...rank(5, ['loading']),
  ...rank(6, ['steam', 'low-temperature', 'sterilization']),
  ...rank(7, ['aeration', 'cooling']),
  ...rank(8, ['release']),
  ...rank(9, ['storage']),
]);

const aroundTheatre: ReadonlySet<string> = new Set(['point-of-use', 'transport', 'use']);

function rank(number: number, stages: readonly string[]): readonly (readonly [string, number])[] {
  return stages.map((stage) => [stage, number]);
}

/** The first stage that begins after one that it prepares. A stage that is repeated later is in its place where it was first. */
function outOfOrder(procedure: EntityOf['procedure']): { readonly late: Text; readonly early: Text } | undefined {
  let before: ProcedureStep[] = [];
  for (const step of stepsOf(procedure)) {
    if (aroundTheatre.has(step.stage?.text ?? '')) before = [];
    const own = ranks.get(step.stage?.text ?? '');
    if (own === undefined || step.stage === undefined || step.when !== undefined) continue;
    const earlier = before.filter((other) => isForSame(other, step));
    const early = earlier.find(({ stage }) => (ranks.get(stage?.text ?? '') ?? 0) > own)?.stage;
    const isRepeated = earlier.some(({ stage }) => stage?.text === step.stage?.text || isCleaningAgain(stage, own));
    if (early !== undefined && !isRepeated) return { late: step.stage, early };
    before.push(step);
  }
  return undefined;
}

/** Cleaning goes back and forth between the sink, the bath and the machine. */
function isCleaningAgain(stage: Text | undefined, own: number): boolean {
  return own === 1 && ranks.get(stage?.text ?? '') === 1;
}

function isForSame(a: ProcedureStep, b: ProcedureStep): boolean {
  return meets(a.applies_to, b.applies_to) && meets(a.applies_to_packaging, b.applies_to_packaging);
}

/** A step that names nothing is for everything. */
function meets(a: List<Text> | undefined, b: List<Text> | undefined): boolean {
  if (a === undefined || b === undefined) return true;
  const names = new Set(a.items.map(({ text }) => text));
  return b.items.some(({ text }) => names.has(text));
}

const names: ReadonlyMap<string, string> = new Map([
  ['manual', 'cleaning by hand'],
  ['ultrasonic', 'ultrasonic cleaning'],
  ['mechanical', 'machine washing'],
  ['rinse', 'rinsing'],
  ['packaging', 'packing'],
  ['steam', 'steam sterilization'],
  ['low-temperature', 'low-temperature sterilization'],
]);

function nameOf({ text }: Text): string {
  return names.get(text) ?? text;
}

function titleOf(stage: Text): string {
  const name = nameOf(stage);
  return `${name.charAt(0).toUpperCase()}${name.slice(1)}`;
}
