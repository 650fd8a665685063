import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Node, Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { traitOf } from '../support/applies.ts';

type Device = EntityOf['device'];

/** What this library does not model, each with where it belongs. */
const outside: ReadonlyMap<string, string> = new Map([
  ['flexible-endoscope', 'A flexible endoscope needs a leak test, its channels and drying storage'],
  ['textile', 'A textile is processed by a laundry'],
  ['single-patient', 'An item for one patient returns only to that patient'],
]);

const message = {
  encoded: (reason: string, stage: string) =>
    `${reason}, which this library does not model. Half a model is worse than none: remove "${stage}" and process it by its own procedure.`,
  inSet: (device: string, reason: string) =>
    `"${device}" does not belong in a set here. ${reason}, which this library does not model.`,
};

export const rule = defineRule({
  id: 'out-of-scope-device',
  stage: 'point-of-use',
  severity: 'error',
  settledBy: 'educator',
  why: 'Other items follow another standard with other steps, and a file that has half of them looks complete.',
  source: 'practice',
  kinds: ['device', 'set'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'device')) checkDevice(entity, context);
    else if (isOfKind(entity, 'set')) checkSet(entity, context);
  },
  examples: {
    bad: [
      `
kind: device
id: duskwell-flex
traits: [flexible-endoscope]
cleaning: {all_of: []}
^^^^^^^^ A flexible endoscope needs a leak test, its channels and drying storage, which this library does not model. Half a model is worse than none: remove "cleaning" and process it by its own procedure.
`,
      `
=== devices/flex.ifu.yaml
kind: device
id: duskwell-flex
traits: [flexible-endoscope]
=== sets/endo.ifu.yaml
kind: set
id: endo
members:
  - {device: duskwell-flex, qty: 1}
             ^^^^^^^^^^^^^ "duskwell-flex" does not belong in a set here. A flexible endoscope needs a leak test, its channels and drying storage, which this library does not model.
`,
    ],
    good: [
      `
kind: device
id: duskwell-flex
traits: [flexible-endoscope]
notes: ["Belongs to the endoscope unit."]
`,
      `
kind: device
id: rigid-scope
traits: [optic]
cleaning: {all_of: []}
`,
    ],
  },
});

function checkDevice(device: Device, { report }: RuleContext): void {
  const trait = outsideTrait(device);
  const [stage, node] = firstStage(device) ?? [];
  if (trait === undefined || stage === undefined || node === undefined) return;
  report({
    at: node.at,
    message: message.encoded(outside.get(trait.text) ?? '', stage),
    related: [{ at: trait.at, note: 'what kind of item it is' }],
  });
}

/** A device that is encoded in spite of its kind is reported in its own file, not in each set. */
function checkSet(set: EntityOf['set'], { view, report }: RuleContext): void {
  for (const member of set.members?.items ?? []) {
    const device = member.device === undefined ? undefined : view.get('device', member.device.text);
    const trait = device === undefined ? undefined : outsideTrait(device);
    if (member.device === undefined || device === undefined || trait === undefined || firstStage(device) !== undefined)
      continue;
    report({
      at: member.device.at,
      message: message.inSet(member.device.text, outside.get(trait.text) ?? ''),
      related: [{ at: trait.at, note: 'what kind of item it is' }],
    });
  }
}

function outsideTrait(device: Device): Text | undefined {
  for (const trait of outside.keys()) {
    const found = traitOf(device, trait);
    if (found !== undefined) return found;
  }
  return undefined;
}

const stages = [
  'cleaning',
  'manual',
  'mechanical',
  'ultrasonic',
  'rinse',
  'disinfection',
  'drying',
  'packaging',
  'sterilization',
] as const;

function firstStage(device: Device): readonly [string, Node] | undefined {
  for (const stage of stages) {
    const node: Node | undefined = device[stage];
    if (node !== undefined && !isDeclaredAbsent(node)) return [stage, node];
  }
  return undefined;
}

/** "silent" and "not applicable" model nothing. */
function isDeclaredAbsent(node: Node): boolean {
  return node.node === 'record' && ('silent' in node || 'not_applicable' in node);
}
