import type { CleaningStep } from '../../model/entities/cleaning-step.generated.ts';
import type { CleaningNode, Flush, ManualCleaning } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Place, Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';

type Device = EntityOf['device'];

const message = {
  undefined:
    'This flush has no volume, no time and no pressure, so no two people will do it alike. Enter what the page says, or ask the manufacturer.',
  onlyTimes:
    'This flush says how often but not how much, how long or with what pressure. Enter what the page says, or ask the manufacturer.',
};

export const rule = defineRule({
  id: 'flush-undefined',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'manufacturer',
  why: 'A flush without an amount can’t be done the same way twice.',
  source: 'standard',
  kinds: ['device'],
  check(device, { report }) {
    if (isOutOfScope(device)) return;
    for (const { flush, at, src } of flushesIn(device)) {
      if (isDefined(flush)) continue;
      report({
        at,
        message: flush.times === undefined ? message.undefined : message.onlyTimes,
        says: sayingsOf(device, src),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: cannula
lumens: [{id: shaft, bore: 4 mm, length: 200 mm}]
manual: {steps: [{do: flush, lumen: shaft, src: s4}]}
                      ^^^^^ This flush has no volume, no time and no pressure, so no two people will do it alike. Enter what the page says, or ask the manufacturer.
statements:
  s4: {doc: CA-1, rev: A, page: 3, quote: "Flush the shaft well."}
`,
      `
kind: device
id: suction-tube
lumens: [{id: tube}]
cleaning:
  all_of:
    - stage: manual
      flush: {required: true, lumen: tube, times: {stated: 3 times}, endpoint: clear water, src: s1}
      ^^^^^ This flush says how often but not how much, how long or with what pressure. Enter what the page says, or ask the manufacturer.
    - stage: mechanical
statements:
  s1: {doc: QM-31, rev: E, page: 4, quote: "Flush 3 times until the water is clear."}
`,
    ],
    good: [
      `
kind: device
id: cannula
lumens: [{id: shaft}]
manual: {steps: [{do: flush, lumen: shaft, volume: {at_least: 50 mL}}]}
`,
      `
kind: device
id: trocar
lumens: [{id: side}]
manual:
  flush: {lumen: side, volume: {ambiguous: flush well, ask: q-trocar-flush}}
`,
      `
kind: device
id: grasper
manual: {flush: {port: P1, time: {at_least: 90 s}, pressure: {between: [2 bar, 3 bar]}}}
`,
    ],
  },
});

interface FlushInFile {
  readonly flush: Flush | CleaningStep;
  readonly at: Place;
  readonly src: Citation | undefined;
}

function flushesIn(device: Device): readonly FlushInFile[] {
  const found: FlushInFile[] = [];
  if (device.manual !== undefined) addBlock(device.manual, found);
  if (device.cleaning !== undefined) addNode(device.cleaning, found);
  return found;
}

function addNode(node: CleaningNode, found: FlushInFile[]): void {
  addBlock(node, found);
  for (const child of [...(node.all_of?.items ?? []), ...(node.any_of?.items ?? [])]) addNode(child, found);
}

function addBlock({ flush, steps, src }: Pick<ManualCleaning, 'flush' | 'steps' | 'src'>, found: FlushInFile[]): void {
  if (flush !== undefined && flush.required?.on !== false) found.push({ flush, at: flush.at, src: flush.src ?? src });
  for (const step of steps?.items ?? []) {
    if (step.do?.text === 'flush') found.push({ flush: step, at: step.do.at, src: step.src ?? src });
  }
}

/** What is left to someone else, does not apply or is already asked about needs no number here. */
function isDefined(flush: Flush | CleaningStep): boolean {
  const settled = [flush.ask, flush.ambiguous, flush.not_applicable, flush.defers_to];
  if (settled.some((one) => one !== undefined) || flush.silent?.on === true) return true;
  return [flush.volume, flush.time, flush.pressure].some((amount) => amount !== undefined && !isSilent(amount));
}

function isSilent(amount: Requirement): boolean {
  return amount.silent?.on === true || amount.not_applicable !== undefined;
}
