import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { membersOf } from '../support/applies.ts';
import { banOf, isOutOfScope } from '../support/cleaning-ways.ts';
import { deviceName } from '../support/device-names.ts';
import { named, quotesOf } from '../support/failures.ts';
import { placeOf, reachOf, stepInWords, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  step: (devices: string) => `This step puts ${devices} into an ultrasonic bath, which the instruction forbids.`,
  set: (devices: string) => `The set goes into an ultrasonic bath, and the instruction of ${devices} forbids it.`,
};

export const rule = defineRule({
  id: 'ultrasonic-forbidden',
  stage: 'washing',
  severity: 'error',
  settledBy: 'educator',
  why: 'Ultrasound loosens cement, plating and bearings.',
  source: 'standard',
  kinds: ['procedure', 'set'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'set')) checkSet(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/scopes.ifu.yaml
kind: procedure
id: scopes
applies_to: [rigid-scope, trocar]
steps: [{stage: ultrasonic, do: sonicate, time: 5 min}]
                                ^^^^^^^^ This step puts "rigid-scope" into an ultrasonic bath, which the instruction forbids.
=== devices/scope.ifu.yaml
kind: device
id: rigid-scope
traits: [optic]
ultrasonic: {use: forbidden, src: s2}
statements:
  s2: {doc: RS-1, rev: A, page: 2, quote: "Do not clean ultrasonically."}
=== devices/trocar.ifu.yaml
kind: device
id: trocar
ultrasonic: {use: allowed}
`,
      `
=== sets/drills.ifu.yaml
kind: set
id: drills
members: [{device: drill, qty: 1}, {device: trocar, qty: 1}]
sonicate: together
          ^^^^^^^^ The set goes into an ultrasonic bath, and the instruction of "drill" forbids it.
=== devices/drill.ifu.yaml
kind: device
id: drill
not: [{what: ultrasonic, src: s3}]
statements:
  s3: {doc: DR-1, rev: A, page: 2, quote: "Never put the drill into an ultrasonic bath."}
=== devices/trocar.ifu.yaml
kind: device
id: trocar
ultrasonic: {use: allowed}
`,
    ],
    good: [
      `
=== procedures/trocars.ifu.yaml
kind: procedure
id: trocars
applies_to: [trocar]
steps: [{stage: ultrasonic, do: sonicate, time: 5 min}]
=== devices/trocar.ifu.yaml
kind: device
id: trocar
ultrasonic: {silent: true, checked: 2025-02-24}
`,
      `
=== sets/drills.ifu.yaml
kind: set
id: drills
members: [{device: drill, qty: 1}]
sonicate: never
=== devices/drill.ifu.yaml
kind: device
id: drill
ultrasonic: {use: forbidden}
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  for (const step of stepsOf(procedure)) {
    if (step.stage?.text !== 'ultrasonic') continue;
    const banned = bannedAmong(reachOf(step, procedure, view));
    if (banned.length > 0) report({ ...reportOf(placeOf(step), banned, message.step), does: stepInWords(step) });
  }
}

/** All contents in one bath, or a route that leads through one. Kinds that are sonicated apart may leave out what is forbidden. */
function checkSet(set: EntityOf['set'], { view, report }: RuleContext): void {
  const { sonicate } = set;
  const baths = set.routes?.items.flatMap(({ ultrasonic }) => ultrasonic ?? []) ?? [];
  const places = [...(sonicate?.text === 'together' ? [sonicate.at] : []), ...baths.map(({ at }) => at)];
  if (places.length === 0) return;
  const banned = bannedAmong(membersOf(set, view));
  if (banned.length === 0) return;
  for (const at of places) report(reportOf(at, banned, message.set));
}

interface Banned {
  readonly device: Device;
  readonly ban: NonNullable<ReturnType<typeof banOf>>;
}

function bannedAmong(devices: readonly Device[]): readonly Banned[] {
  return devices.flatMap((device) => {
    const ban = isOutOfScope(device) ? undefined : banOf(device, 'ultrasonic');
    return ban === undefined ? [] : [{ device, ban }];
  });
}

function reportOf(at: Place, banned: readonly Banned[], words: typeof message.step) {
  return {
    at,
    message: words(named(banned.map(({ device }) => device))),
    says: quotesOf(banned.map(({ device, ban }) => sayingsOf(device, ban.src))),
    related: banned.map(({ device, ban }) => ({
      at: ban.at,
      note: `what the instruction of "${deviceName(device)}" forbids`,
    })),
  };
}
