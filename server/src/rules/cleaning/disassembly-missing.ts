import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { traitOf } from '../support/applies.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';

type Device = EntityOf['device'];

const message = {
  missing: (what: string) => `This item ${what}, and no step says how it is taken apart or opened for cleaning.`,
  silent: (what: string) =>
    `This item ${what}, and its document does not say how it is taken apart or opened. Ask the manufacturer.`,
};

export const rule = defineRule({
  id: 'disassembly-missing',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'educator',
  why: 'Soil hides in joints that nobody opened.',
  source: 'standard',
  kinds: ['device'],
  check(device, { report }) {
    const joint = isOutOfScope(device) ? undefined : jointOf(device);
    if (joint === undefined) return;
    const { disassembly } = device;
    const related = [{ at: joint.at, note: 'what kind of item it is' }];
    // A stage that a trait demands and nothing speaks of is another finding.
    if (disassembly === undefined && joint.isTrait) return;
    if (disassembly === undefined || !isAnswered(disassembly)) {
      report({
        at: disassembly?.at ?? joint.at,
        message: message.missing(joint.words),
        related: disassembly === undefined ? [] : related,
      });
    } else if (disassembly.silent?.on === true && disassembly.ask === undefined) {
      report({
        at: disassembly.at,
        message: message.silent(joint.words),
        severity: 'warning',
        settledBy: 'manufacturer',
        related,
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: takeapart-scissors
traits: [multi-part]
disassembly: {steps: []}
^^^^^^^^^^^ This item comes apart, and no step says how it is taken apart or opened for cleaning.
`,
      `
kind: device
id: trocar
traits: [lumen]
lumens: [{id: side, bore: 2 mm, stopcock: true}]
                                          ^^^^ This item has a stopcock, and no step says how it is taken apart or opened for cleaning.
cleaning: {all_of: [{stage: manual, src: s1}]}
statements:
  s1: {doc: TR-4, rev: A, page: 3, quote: "Clean by hand."}
`,
      `
kind: device
id: old-trocar
lumens: [{id: side, bore: 2 mm, valve: true}]
disassembly: {silent: true, checked: 2025-02-24}
^^^^^^^^^^^ This item has a valve, and its document does not say how it is taken apart or opened. Ask the manufacturer.
`,
    ],
    good: [
      `
kind: device
id: takeapart-scissors
traits: [multi-part]
disassembly:
  steps:
    - {do: unscrew the handle, src: s4}
statements:
  s4: {doc: DW-REP-077, rev: D, page: 3, quote: "Unscrew the handle."}
`,
      `
kind: device
id: trocar
traits: [stopcock]
disassembly: {open: [stopcock], src: s1}
statements:
  s1: {doc: TR-4, rev: A, page: 3, quote: "Open the stopcock for cleaning."}
`,
      `
kind: device
id: power-drill
traits: [multi-part, powered]
disassembly: {not_applicable: not taken apart by the user}
`,
    ],
  },
});

interface Joint {
  readonly at: Place;
  readonly words: string;
  readonly isTrait: boolean;
}

const joints: ReadonlyMap<string, string> = new Map([
  ['multi-part', 'comes apart'],
  ['stopcock', 'has a stopcock'],
  ['valve', 'has a valve'],
]);

function jointOf(device: Device): Joint | undefined {
  for (const [trait, words] of joints) {
    const found = traitOf(device, trait);
    if (found !== undefined) return { at: found.at, words, isTrait: true };
  }
  for (const lumen of device.lumens?.items ?? []) {
    if (lumen.stopcock?.on === true) return { at: lumen.stopcock.at, words: 'has a stopcock', isTrait: false };
    if (lumen.valve?.on === true) return { at: lumen.valve.at, words: 'has a valve', isTrait: false };
  }
  const part = device.parts?.items.find((one) => one.detachable?.on === true);
  return part === undefined ? undefined : { at: part.at, words: 'has parts that come off', isTrait: false };
}

/** An ambiguous page is a finding of its own when nobody asked; whoever has asked waits for the answer. */
function isAnswered(stated: NonNullable<Device['disassembly']>): boolean {
  const { steps, open, silent, not_applicable, ambiguous, ask, defers_to } = stated;
  const isListed = (steps?.items.length ?? 0) > 0 || (open?.items.length ?? 0) > 0;
  return (
    isListed || silent?.on === true || [not_applicable, ambiguous, ask, defers_to].some((one) => one !== undefined)
  );
}
