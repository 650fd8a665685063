import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Place } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { allDevicesOf } from '../support/applies.ts';
import { deviceName, deviceNames } from '../support/device-names.ts';
import { immediateUsePlace } from '../support/iuss.ts';
import { listed } from '../support/lists.ts';
import { reducedCleaning } from '../support/word-lists.ts';
import { saidIn } from '../support/wording.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  missing: (stages: string, devices: string) =>
    `Before immediate use the cleaning is cut short: the instruction asks for ${stages} (${devices}), and it is left out.`,
  short: (words: string) =>
    `Before immediate use the cleaning is cut short (“${words}”). Every item needs its full cleaning first.`,
  none: 'No cleaning at all stands before this immediate-use cycle. Every item needs its full cleaning first.',
  does: (steps: string) => `The procedure cleans by: ${steps}.`,
};

export const rule = defineRule({
  id: 'iuss-cleaning-reduced',
  stage: 'immediate-use',
  severity: 'error',
  settledBy: 'manager',
  why: 'Steam does not replace cleaning, and being in a hurry is no method of cleaning.',
  source: 'guideline',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const use = immediateUsePlace(procedure, view);
    if (use === undefined || procedure.steps === undefined || isAfterCleaning(procedure)) return;
    const steps = procedure.steps.items.filter((step) => cleaningStages.has(step.stage?.text ?? ''));
    const [first] = steps;
    if (first === undefined) {
      report({ at: use, message: message.none });
      return;
    }
    const done = new Set<string | undefined>(steps.map((step) => step.stage?.text));
    const lacking = allDevicesOf(procedure, view).flatMap((device) =>
      demandsOf(device).filter(({ stage }) => !done.has(stage)),
    );
    const short = shortStep(steps);
    if (lacking.length === 0 && short === undefined) return;
    report({
      at: lacking.length > 0 || short === undefined ? procedure.steps.at : short.at,
      message: lacking.length > 0 ? missingWords(lacking) : message.short(short?.words ?? ''),
      says: lacking.slice(0, 3).flatMap(({ device, src }) => sayingsOf(device, src)),
      does: message.does(listed(steps.map((step) => step.do?.text ?? step.stage?.text ?? ''))),
      related: lacking.slice(0, 12).map(({ at, device }) => ({ at, note: `full cleaning of "${deviceName(device)}"` })),
    });
  },
  examples: {
    bad: [
      `
kind: procedure
id: drop
context: iuss
steps:
  - {stage: manual, do: scrub-sink-rinse}
                        ^^^^^^^^^^^^^^^^ Before immediate use the cleaning is cut short (“scrub sink”). Every item needs its full cleaning first.
  - {stage: steam}
`,
      `
=== procedures/drop.ifu.yaml
kind: procedure
id: drop
context: iuss
applies_to: [takeapart-scissors]
steps:
^^^^^ Before immediate use the cleaning is cut short: the instruction asks for machine washing (takeapart-scissors), and it is left out.
  - {stage: manual, do: brush}
  - {stage: steam}
=== devices/scissors.ifu.yaml
kind: device
id: takeapart-scissors
cleaning:
  all_of:
    - {stage: manual, src: s6}
    - {stage: mechanical, src: s6}
statements:
  s6: {doc: DW-REP-077, rev: D, page: 4, quote: "Pre-clean manually, then clean in a washer-disinfector."}
`,
      `
kind: procedure
id: forgotten-item
context: iuss
         ^^^^ No cleaning at all stands before this immediate-use cycle. Every item needs its full cleaning first.
steps:
  - {stage: transport, do: carry}
  - {stage: steam}
`,
    ],
    good: [
      `
=== procedures/drop.ifu.yaml
kind: procedure
id: drop
context: iuss
applies_to: [power-handpiece]
steps:
  - {stage: manual, do: wipe}
  - {stage: steam}
=== devices/handpiece.ifu.yaml
kind: device
id: power-handpiece
mechanical: {use: forbidden}
cleaning:
  any_of:
    - {id: a, stage: manual}
    - {id: b, stage: mechanical}
`,
      `
kind: procedure
id: late-set
context: terminal
steps:
  - {stage: manual, do: quick rinse}
  - {stage: steam}
`,
    ],
  },
});

const cleaningStages: ReadonlySet<string> = new Set([
  'disassembly',
  'manual',
  'ultrasonic',
  'mechanical',
  'rinse',
  'disinfection',
]);
const stageWords: ReadonlyMap<string, string> = new Map([
  ['manual', 'manual cleaning'],
  ['ultrasonic', 'the ultrasonic bath'],
  ['mechanical', 'machine washing'],
]);
const laterStages: ReadonlySet<string> = new Set([
  'inspection',
  'assembly',
  'packaging',
  'loading',
  'steam',
  'sterilization',
  'cooling',
  'release',
]);

/** One that begins with cleaned items leaves the cleaning to another procedure. */
function isAfterCleaning(procedure: Procedure): boolean {
  return laterStages.has(procedure.starts_at?.text ?? '');
}

interface StageDemand {
  readonly stage: string;
  readonly device: Device;
  readonly at: Place;
  readonly src: Citation | undefined;
}

/** Stages that the instruction asks for in any case: those under "all of", and those marked as required. A choice asks for none by itself. */
function demandsOf(device: Device): readonly StageDemand[] {
  const demands: StageDemand[] = [];
  if (device.cleaning !== undefined) addNode(device.cleaning, device, demands);
  for (const stage of ['manual', 'mechanical', 'ultrasonic'] as const) {
    const block = device[stage];
    if (block?.use?.text === 'required') demands.push({ stage, device, at: block.at, src: block.src });
  }
  return demands;
}

function addNode(node: CleaningNode, device: Device, demands: StageDemand[]): void {
  const { stage, use } = node;
  const isAsked = use === undefined || use.text === 'required';
  const isDeclaredAbsent = node.silent !== undefined || node.not_applicable !== undefined;
  if (stage !== undefined && isAsked && !isDeclaredAbsent && node.when === undefined) {
    demands.push({ stage: stage.text, device, at: node.at, src: node.src });
  }
  for (const child of node.all_of?.items ?? []) addNode(child, device, demands);
  const [only, ...others] = node.any_of?.items ?? [];
  if (only !== undefined && others.length === 0) addNode(only, device, demands);
}

function missingWords(lacking: readonly StageDemand[]): string {
  const stages = new Set(lacking.map(({ stage }) => stage));
  const devices = deviceNames([...new Set(lacking.map(({ device }) => device))]);
  return message.missing(listed([...stages].map((stage) => stageWords.get(stage) ?? stage)), listed(devices, 3));
}

function shortStep(steps: readonly ProcedureStep[]): { at: Place; words: string } | undefined {
  for (const step of steps) {
    for (const text of [step.do, step.note]) {
      const words = text === undefined ? undefined : saidIn(text.text, reducedCleaning);
      if (text !== undefined && words !== undefined) return { at: text.at, words };
    }
  }
  return undefined;
}
