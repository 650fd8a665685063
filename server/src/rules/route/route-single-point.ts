import type { SetRoute, StageFit } from '../../route/model.ts';
import { routeOfSet } from '../../route/route.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';

const message = {
  single: (machines: string) => `Only ${machines} can process this set: one fault there and cases are cancelled.`,
  machine: (stage: string, machine: string) => `${machine} (${stage})`,
};

export const rule = defineRule({
  id: 'route-single-point',
  stage: 'route',
  severity: 'advice',
  settledBy: 'manager',
  why: 'Where one machine alone can process a set, its fault or its service day cancels surgery.',
  source: 'practice',
  kinds: ['set'],
  check(set, { view, report }) {
    const route = view.ask(routeOfSet, set.id?.text ?? '');
    if (route === undefined || route.status === 'none') return;
    const single = singlePoints(route);
    if (single.length > 0) report({ at: route.at, message: message.single(listed(single)) });
  },
  examples: {
    bad: [
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
    ^^^ Only S9 (sterilization) can process this set: one fault there and cases are cancelled.
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
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
=== sets/bowls.ifu.yaml
kind: set
id: bowls
    ^^^^^ Only W9 (washing) can process this set: one fault there and cases are cancelled.
members: [{device: bowl, qty: 4}]
=== devices/bowl.ifu.yaml
kind: device
id: bowl
class: non-critical
mechanical: {use: required}
=== washers/W9.ifu.yaml
kind: washer
id: W9
cycles:
  - {id: W9-std, last_cleaning_test: 2025-02-20, phases: [{phase: wash, temp: 55 C, time: 5 min}]}
`,
    ],
    good: [
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S8.ifu.yaml
kind: sterilizer
id: S8
cycles:
  - {id: S8-pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/bowls.ifu.yaml
kind: set
id: bowls
members: [{device: bowl, qty: 4}]
=== devices/bowl.ifu.yaml
kind: device
id: bowl
class: non-critical
manual: {use: required}
`,
    ],
  },
});

/** Machines without which the set can't be processed. */
function singlePoints({ chosen, machines, members }: SetRoute): readonly string[] {
  const single = new Set<string>();
  for (const { cleaning } of members) {
    for (const stage of cleaning?.stages ?? []) {
      const [only, ...others] = machinesOf(stage);
      if (only !== undefined && others.length === 0) single.add(message.machine(stageWords[stage.stage], only));
    }
  }
  const [only, ...others] = machines;
  if (chosen !== undefined && only !== undefined && others.length === 0)
    single.add(message.machine('sterilization', only));
  return [...single];
}

const stageWords = {
  manual: 'cleaning by hand',
  ultrasonic: 'ultrasonic cleaning',
  mechanical: 'washing',
  disinfection: 'disinfection',
} as const;

/** Work by hand needs no machine. */
function machinesOf({ stage, fitting }: StageFit): readonly string[] {
  if (stage !== 'mechanical' && stage !== 'ultrasonic') return [];
  return [...new Set(fitting.map(({ machine }) => machine).filter((machine) => machine !== ''))];
}
