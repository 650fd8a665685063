import type { Judgement } from '../../judge/outcome.ts';
import { demanderCalled } from '../../library/called.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import { routeOfSet } from '../../route/route.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import { bathFailure, bathOf, inBath } from '../support/bath-uses.ts';
import { evidenceOf, named } from '../support/failures.ts';
import { placeOf, stepInWords, stepsOf } from '../support/steps.ts';
import { evidenceOfAll } from '../support/use-reports.ts';

const message = {
  member: (device: string, given: string) =>
    `The channels of "${device}" must be flushed in the ultrasonic bath, and the best bath here has ${given} ports. Sound does not clean a channel that is full of air.`,
  step: (devices: string) =>
    `The channels of ${devices} must be flushed in the ultrasonic bath, and in this step they are not.`,
};

export const rule = defineRule({
  id: 'ultrasonic-lumen-not-irrigated',
  stage: 'washing',
  severity: 'error',
  settledBy: 'biomed',
  why: 'A channel full of air carries no sound: it comes out of the bath as it went in.',
  source: 'practice',
  kinds: ['set', 'procedure'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'set')) checkSet(entity, context);
    else if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
  },
  examples: {
    bad: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members:
  - {device: grasper, qty: 3}
     ^^^^^^ The channels of "grasper" must be flushed in the ultrasonic bath, and the best bath here has 0 irrigated ports. Sound does not clean a channel that is full of air.
packaging: wrap
=== devices/grasper.ifu.yaml
kind: device
id: grasper
cleaning:
  all_of:
    - {stage: manual}
    - {stage: ultrasonic, use: required, irrigated: true, src: s8}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}}
lumens: [{id: P1, bore: 5 mm, length: 420 mm, ends: open-both, port: P1}]
statements:
  s8: {doc: SK-210, rev: F, page: 7, quote: "Ultrasonic bath, main port irrigated."}
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
frequency: 40 kHz
irrigated_ports: 0
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
      `
=== procedures/robot.ifu.yaml
kind: procedure
id: robot
applies_to: [grasper]
steps: [{stage: ultrasonic, do: sonicate, machine: U1, time: 15 min}]
                                                   ^^ The channels of "grasper" must be flushed in the ultrasonic bath, and in this step they are not.
=== devices/grasper.ifu.yaml
kind: device
id: grasper
ultrasonic: {use: required, irrigated: true, src: s8}
statements:
  s8: {doc: SK-210, rev: F, page: 7, quote: "Ultrasonic bath, main port irrigated."}
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
irrigated_ports: 0
=== ultrasonics/u2.ifu.yaml
kind: ultrasonic
id: U2
irrigated_ports: 4
`,
    ],
    good: [
      `
=== sets/robot.ifu.yaml
kind: set
id: robot
members:
  - {device: grasper, qty: 3}
packaging: wrap
=== devices/grasper.ifu.yaml
kind: device
id: grasper
cleaning:
  all_of:
    - {stage: manual}
    - {stage: ultrasonic, use: required, irrigated: true}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}}
=== ultrasonics/u2.ifu.yaml
kind: ultrasonic
id: U2
irrigated_ports: 4
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
      `
=== procedures/knee.ifu.yaml
kind: procedure
id: knee
applies_to: [trials]
steps: [{stage: ultrasonic, do: sonicate, machine: U1, time: 5 min}]
=== devices/trials.ifu.yaml
kind: device
id: trials
ultrasonic: {use: allowed}
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
irrigated_ports: 0
`,
    ],
  },
});

/** Judgements whose demand is that the channels are irrigated: no connection, or too few for one item. */
function isIrrigation({ demandAt }: Judgement): boolean {
  return demandAt.key === 'irrigated';
}

function checkSet(set: EntityOf['set'], { view, report }: RuleContext): void {
  const route = view.ask(routeOfSet, rootOfEntity(set).id);
  for (const { device, cleaning } of route?.members ?? []) {
    const stage = cleaning?.stages.find((one) => one.stage === 'ultrasonic');
    const failing = stage?.judgements.find((one) => one.outcome === 'fails' && isIrrigation(one));
    const line = set.members?.items.find((member) => member.device?.text === device);
    if (failing === undefined || line === undefined) continue;
    report({
      at: line.at,
      message: message.member(demanderCalled(`device/${device}`, view), failing.given),
      ...evidenceOfAll([failing], view),
    });
  }
}

/** Only a step that names its bath: which one is meant by others, the set with its route tells. */
function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  for (const step of stepsOf(procedure)) {
    const isMeant = step.stage?.text === 'ultrasonic' && step.machine !== undefined && step.when === undefined;
    const bath = isMeant ? bathOf(step, view) : undefined;
    if (bath === undefined) continue;
    const failures = devicesOfStep(step, procedure, view).flatMap(
      (device) => bathFailure(device, inBath(device, bath, step, view), isIrrigation) ?? [],
    );
    if (failures.length === 0) continue;
    report({
      at: step.machine?.at ?? placeOf(step),
      message: message.step(named(failures.map(({ device }) => device))),
      does: stepInWords(step),
      ...evidenceOf(failures),
    });
  }
}
