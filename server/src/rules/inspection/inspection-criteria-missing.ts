import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';

type Device = EntityOf['device'];

const message = {
  missing: (what: string) =>
    `This item ${what}, and nothing is encoded about what to look for or how closely. Enter what the page says, or that it is silent.`,
};

/** Traits of items that hide what is wrong with them, with how they are told to a reader. */
const complex: ReadonlyMap<string, string> = new Map([
  ['articulated', 'is jointed at the tip'],
  ['lumen', 'has a channel'],
  ['cannulated', 'is hollow'],
  ['hinged', 'has a hinge'],
  ['ratchet', 'has a ratchet'],
  ['serrated', 'has serrations'],
  ['multi-part', 'comes apart'],
  ['insulated', 'carries insulation'],
  ['cable', 'has a cable'],
  ['powered', 'is driven by a motor'],
  ['optic', 'holds lenses'],
  ['fibre-light', 'carries light'],
  ['camera', 'holds a camera'],
  ['intraocular', 'enters the eye'],
  ['sharp', 'cuts or pierces'],
]);

export const rule = defineRule({
  id: 'inspection-criteria-missing',
  stage: 'inspection',
  severity: 'warning',
  settledBy: 'educator',
  why: 'An inspection without criteria is a glance.',
  source: 'standard',
  kinds: ['device'],
  check(device, { report }) {
    const trait = isOutOfScope(device) ? undefined : complexTrait(device);
    const { inspection } = device;
    if (trait === undefined || inspection === undefined || isAnswered(inspection)) return;
    report({
      at: inspection.at,
      message: message.missing(complex.get(trait.text) ?? ''),
      says: sayingsOf(device, inspection.src),
      related: [{ at: trait.at, note: 'what kind of item it is' }],
    });
  },
  examples: {
    bad: [
      `
kind: device
id: grasper
traits: [articulated]
inspection: {}
^^^^^^^^^^ This item is jointed at the tip, and nothing is encoded about what to look for or how closely. Enter what the page says, or that it is silent.
`,
      `
kind: device
id: rongeur
traits: [hinged, serrated]
inspection:
^^^^^^^^^^ This item has a hinge, and nothing is encoded about what to look for or how closely. Enter what the page says, or that it is silent.
  visual: true
  src: s8
statements:
  s8: {doc: RO-7, rev: B, page: 5, quote: "Inspect before packing."}
`,
    ],
    good: [
      `
kind: device
id: grasper
traits: [articulated]
inspection: {visual: true, criteria: [frayed cables, residue], magnification: {at_least: 5x}}
`,
      `
kind: device
id: retractor
inspection: {visual: true}
`,
      `
kind: device
id: clamp
traits: [hinged]
inspection: {silent: true, checked: 2025-02-24}
`,
    ],
  },
});

function complexTrait(device: Device): Text | undefined {
  return device.traits?.items.find((trait) => complex.has(trait.text));
}

/** A device whose inspection is not encoded at all lacks a whole stage, which is another finding. */
function isAnswered(stated: NonNullable<Device['inspection']>): boolean {
  const { criteria, reject_if, magnification, silent, not_applicable, ambiguous, ask, defers_to } = stated;
  const isListed = (criteria?.items.length ?? 0) > 0 || (reject_if?.items.length ?? 0) > 0;
  return (
    isListed ||
    silent?.on === true ||
    [magnification, not_applicable, ambiguous, ask, defers_to].some((one) => one !== undefined)
  );
}
