import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { List, Text } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep, traitOf } from '../support/applies.ts';
import { deviceName } from '../support/device-names.ts';
import { insulationTests } from '../support/word-lists.ts';
import { isMentioned } from '../support/wording.ts';

type Device = EntityOf['device'];

const message = {
  inProcedure: (device: string) =>
    `This inspection leaves out the insulation test of "${device}". Looking at it does not show a pin-hole burn.`,
  inSet: (device: string) =>
    `No insulation test is planned for "${device}": neither this line nor any procedure for it names one.`,
  does: (tests: string) => `It names: ${tests}.`,
};

export const rule = defineRule({
  id: 'insulation-test-missing',
  stage: 'inspection',
  severity: 'error',
  settledBy: 'manager',
  why: 'A pin-hole in the insulation is invisible and burns the next patient.',
  source: 'practice',
  kinds: ['procedure', 'set'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'set')) checkSet(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/assembly.ifu.yaml
kind: procedure
id: assembly
applies_to: [hook-electrode]
steps:
  - {stage: inspection, do: visual}
                            ^^^^^^ This inspection leaves out the insulation test of "hook-electrode". Looking at it does not show a pin-hole burn.
=== devices/hook.ifu.yaml
kind: device
id: hook-electrode
inspection: {insulation_test: {required: true, src: s6}}
statements:
  s6: {doc: HE-1, rev: A, page: 4, quote: "Test the insulation over the full length before each use."}
`,
      `
=== sets/lap.ifu.yaml
kind: set
id: lap
members:
  - {device: bipolar-forceps, qty: 1}
             ^^^^^^^^^^^^^^^ No insulation test is planned for "bipolar-forceps": neither this line nor any procedure for it names one.
=== devices/bipolar.ifu.yaml
kind: device
id: bipolar-forceps
traits: [insulated, cable]
`,
    ],
    good: [
      `
=== procedures/assembly.ifu.yaml
kind: procedure
id: assembly
applies_to: [hook-electrode]
steps:
  - {stage: inspection, do: test, tests: [visual, insulation-test]}
=== sets/lap.ifu.yaml
kind: set
id: lap
members:
  - {device: hook-electrode, qty: 1}
=== devices/hook.ifu.yaml
kind: device
id: hook-electrode
traits: [insulated]
`,
      `
=== sets/lap.ifu.yaml
kind: set
id: lap
members:
  - {device: bipolar-forceps, qty: 1, tests: [insulation-test, continuity-test]}
  - {device: ringed-forceps, qty: 4}
=== devices/bipolar.ifu.yaml
kind: device
id: bipolar-forceps
traits: [insulated]
=== devices/ringed.ifu.yaml
kind: device
id: ringed-forceps
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  const inspections = (procedure.steps?.items ?? []).filter((step) => step.stage?.text === 'inspection');
  const [first] = inspections;
  if (first === undefined) return;
  for (const device of devicesOfStep(first, procedure, view)) {
    if (
      !needsTest(device) ||
      inspections.some(namesTest) ||
      testedBy(device, view).some((other) => other !== procedure)
    )
      continue;
    report({
      at: (first.tests ?? first.do ?? first).at,
      message: message.inProcedure(deviceName(device)),
      ...evidence(device),
      ...(first.tests !== undefined && { does: message.does(words(first.tests)) }),
    });
  }
}

/** A set's line that lists its tests is judged by them; else a procedure for the device must name the test. */
function checkSet(set: EntityOf['set'], { view, report }: RuleContext): void {
  for (const member of set.members?.items ?? []) {
    const device = member.device === undefined ? undefined : view.get('device', member.device.text);
    if (member.device === undefined || device === undefined || !needsTest(device)) continue;
    if (isTested(member.tests) || testedBy(device, view).length > 0 || isInspected(device, view)) continue;
    report({
      at: member.device.at,
      message: message.inSet(member.device.text),
      ...evidence(device),
      ...(member.tests !== undefined && { does: message.does(words(member.tests)) }),
    });
  }
}

function needsTest(device: Device): boolean {
  return device.inspection?.insulation_test?.required?.on ?? traitOf(device, 'insulated') !== undefined;
}

function evidence(device: Device) {
  const test = device.inspection?.insulation_test;
  const at = test?.at ?? traitOf(device, 'insulated')?.at;
  return {
    says: sayingsOf(device, test?.src ?? device.inspection?.src),
    related: at === undefined ? [] : [{ at, note: 'why it needs the test' }],
  };
}

function proceduresFor(device: Device, view: LibraryView): readonly EntityOf['procedure'][] {
  return view.users('device', rootOfEntity(device).id, 'procedure');
}

function testedBy(device: Device, view: LibraryView): readonly EntityOf['procedure'][] {
  return proceduresFor(device, view).filter((procedure) => procedure.steps?.items.some(namesTest) === true);
}

/** A procedure that inspects the device without the test is reported itself; the set is then no second place. */
function isInspected(device: Device, view: LibraryView): boolean {
  return proceduresFor(device, view).some(
    (procedure) => procedure.steps?.items.some((step) => step.stage?.text === 'inspection') === true,
  );
}

function namesTest(step: ProcedureStep): boolean {
  return (
    isTested(step.tests) ||
    [step.do, step.note].some((text) => text !== undefined && isMentioned(text.text, insulationTests))
  );
}

function isTested(tests: List<Text> | undefined): boolean {
  return tests?.items.some((test) => isMentioned(test.text, [...insulationTests, ['insulation']])) === true;
}

function words(tests: List<Text>): string {
  return tests.items.map((test) => test.text).join(', ');
}
