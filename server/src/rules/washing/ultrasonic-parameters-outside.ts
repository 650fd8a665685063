import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import { rootOf } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { devicesOfStep } from '../support/applies.ts';
import {
  bathFailure,
  bathOf,
  bathsInService,
  inBath,
  isToldByRoute,
  isValue,
  suitedByNone,
} from '../support/bath-uses.ts';
import { deviceName } from '../support/device-names.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';
import { placeOf, stepInWords, stepsOf } from '../support/steps.ts';

type Bath = EntityOf['ultrasonic'];

const message = {
  outside: (what: string, who: string) => `${what} is outside what the page gives: ${who}.`,
  one: (device: string, reason: string, given: string, required: string) =>
    `"${device}": ${reason.replace(/\.$/, '')} (${given} here, ${required} on the page)`,
  step: 'This bath',
  bath: 'This bath, and every other here,',
};

export const rule = defineRule({
  id: 'ultrasonic-parameters-outside',
  stage: 'washing',
  severity: 'error',
  settledBy: 'educator',
  why: 'Each frequency is a tool of its own, more time wears, and a hot bath sets protein.',
  source: 'logic',
  kinds: ['procedure', 'ultrasonic'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'ultrasonic')) checkBath(entity, context);
  },
  examples: {
    bad: [
      `
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
frequency: 132 kHz
           ^^^^^^^ This bath is outside what the page gives: "grasper": Frequency: above the highest value the page gives; both ends of a range bind (132 kHz here, 35-45 kHz on the page).
program: 5 min
=== devices/grasper.ifu.yaml
kind: device
id: grasper
ultrasonic: {use: required, frequency: {between: [35 kHz, 45 kHz]}, time: {at_most: 10 min}, src: s3}
statements:
  s3: {doc: SK-210, rev: F, page: 7, quote: "Ultrasonic bath: 35 to 45 kHz, at most 10 minutes."}
`,
      `
=== procedures/knee.ifu.yaml
kind: procedure
id: knee
applies_to: [trials]
steps:
  - {stage: ultrasonic, do: sonicate, time: 15 min, temp: 40 C}
                                            ^^^^^^ This bath is outside what the page gives: "trials": Time in the bath: above the highest value the page gives; both ends of a range bind (15 min here, at most 10 min on the page).
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
frequency: 40 kHz
=== devices/trials.ifu.yaml
kind: device
id: trials
cleaning: {all_of: [{stage: manual}]}
ultrasonic: {use: allowed, time: {at_most: 10 min}, src: s5}
statements:
  s5: {doc: FN-KS, rev: D, page: 6, quote: "Sonicate for up to 10 minutes."}
`,
    ],
    good: [
      // The set is without a route for it, and says so.
      `
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
frequency: 132 kHz
=== devices/grasper.ifu.yaml
kind: device
id: grasper
cleaning:
  all_of:
    - {stage: manual}
    - {stage: ultrasonic, use: required, frequency: {between: [35 kHz, 45 kHz]}}
=== sets/graspers.ifu.yaml
kind: set
id: graspers
members: [{device: grasper}]
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
frequency: 132 kHz
=== ultrasonics/u2.ifu.yaml
kind: ultrasonic
id: U2
frequency: 40 kHz
=== devices/grasper.ifu.yaml
kind: device
id: grasper
ultrasonic: {use: required, frequency: {between: [35 kHz, 45 kHz]}}
`,
      `
=== procedures/knee.ifu.yaml
kind: procedure
id: knee
applies_to: [trials]
steps:
  - {stage: ultrasonic, do: sonicate, machine: U1, time: 10 min}
=== ultrasonics/u1.ifu.yaml
kind: ultrasonic
id: U1
frequency: 40 kHz
program: 15 min
=== devices/trials.ifu.yaml
kind: device
id: trials
cleaning: {all_of: [{stage: manual}]}
ultrasonic: {use: allowed, time: {at_most: 10 min}}
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  for (const step of stepsOf(procedure)) {
    if (step.stage?.text !== 'ultrasonic' || step.when !== undefined) continue;
    const baths = bathsFor(step, view);
    const failures = devicesOfStep(step, procedure, view).flatMap((device) => {
      const inEach = baths.map((bath) => bathFailure(device, inBath(device, bath, step, view), isValue));
      return inEach.includes(undefined) ? [] : (inEach[0] ?? []);
    });
    const own = failures.map(({ judgement }) => judgement.factAt).find((at) => isInFile(at, procedure.at));
    const isToldElsewhere = own === undefined && failures.every(({ device }) => isToldByRoute(device, view));
    if (failures.length === 0 || isToldElsewhere) continue;
    report({
      at: own ?? placeOf(step),
      message: message.outside(message.step, whatFails(failures)),
      does: stepInWords(step),
      ...evidenceOf(failures),
    });
  }
}

/** The bath that the step means, else every one in service: what fails in each of them is the step's own. */
function bathsFor(step: ProcedureStep, view: RuleContext['view']): readonly Bath[] {
  const bath = bathOf(step, view);
  return bath === undefined && step.machine === undefined ? bathsInService(view) : bath === undefined ? [] : [bath];
}

function isInFile(at: Place | undefined, file: Place): at is Place {
  return at !== undefined && rootOf(at) === rootOf(file);
}

/** A bath that does not suit an item whose page demands one, where no other bath here does. What a procedure sets itself is told there. */
function checkBath(bath: Bath, { view, report }: RuleContext): void {
  const baths = bathsInService(view);
  const own = baths.indexOf(bath);
  if (own < 0) return;
  const byPlace = new Map<Place, Failure[]>();
  for (const { inEach } of view.ask(suitedByNone, '')) {
    const failure = inEach[own];
    if (failure === undefined) continue;
    const at = failure.judgement.factAt ?? bath.at;
    byPlace.set(at, [...(byPlace.get(at) ?? []), failure]);
  }
  for (const [at, failures] of byPlace) {
    const what = baths.length === 1 ? message.step : message.bath;
    report({ at, message: message.outside(what, whatFails(failures)), ...evidenceOf(failures) });
  }
}

function whatFails(failures: readonly Failure[]): string {
  return listed(
    failures.map(({ device, judgement: { reason, given, required } }) =>
      message.one(deviceName(device), reason, given, required),
    ),
  );
}
