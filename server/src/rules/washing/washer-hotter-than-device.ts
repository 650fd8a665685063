import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { listed } from '../support/lists.ts';
import { isTooHot, unfitForMachine } from '../support/washer-fits.ts';
import { washerUses, washFailures } from '../support/washer-uses.ts';

const message = {
  hot: (what: string, given: string, who: string, others: string) =>
    `${what} reaches ${given}. That is hotter than is borne by ${who}.${others}`,
  others: (cycles: string) => ` Cool enough here: ${cycles}.`,
  phase: 'This phase',
};

export const rule = defineRule({
  id: 'washer-hotter-than-device',
  stage: 'washing',
  severity: 'error',
  settledBy: 'educator',
  why: 'The air of drying is usually the hottest thing in the cycle, and a limit of heat holds for all of it.',
  source: 'logic',
  kinds: ['set', 'procedure', 'washer'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'washer')) checkWasher(entity, context);
    else checkUses(entity, context);
  },
  examples: {
    bad: [
      `
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles:
  - id: W2-std
    phases:
      - {phase: wash, temp: 60 C, time: 5 min}
      - {phase: dry, temp: 115 C, time: 20 min}
                           ^^^^^ This phase reaches 115 °C. That is hotter than is borne by "rigid-scope" (at most 95 °C).
=== devices/scope.ifu.yaml
kind: device
id: rigid-scope
limits: {temp: {at_most: 95 C, src: s1}}
mechanical: {use: allowed}
statements:
  s1: {doc: RS-1, rev: A, page: 2, quote: "Do not heat above 95 °C before sterilization."}
`,
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: bipolar, qty: 2}]
washer_cycle: W1-hot
              ^^^^^^ W1-hot reaches 110 °C. That is hotter than is borne by "bipolar" (at most 100 °C). Cool enough here: W1-std.
=== devices/bipolar.ifu.yaml
kind: device
id: bipolar
cleaning: {all_of: [{stage: mechanical, dry: {temp: {at_most: 100 C, src: s4}}}]}
statements:
  s4: {doc: YB-66, rev: B, page: 5, quote: "The drying air must be at most 100 °C."}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - {id: W1-hot, phases: [{phase: wash, temp: 60 C, time: 5 min}, {phase: dry, temp: 110 C, time: 15 min}]}
  - {id: W1-std, phases: [{phase: wash, temp: 60 C, time: 5 min}, {phase: dry, temp: 95 C, time: 15 min}]}
`,
    ],
    good: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - {id: W1-hot, phases: [{phase: dry, temp: 110 C, time: 15 min}]}
  - {id: W1-std, phases: [{phase: dry, temp: 95 C, time: 15 min}]}
=== devices/bipolar.ifu.yaml
kind: device
id: bipolar
cleaning: {all_of: [{stage: mechanical, dry: {temp: {at_most: 100 C}}}]}
`,
      `
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles: [{id: W2-std, phases: [{phase: dry, temp: 115 C, time: 20 min}]}]
=== devices/camera.ifu.yaml
kind: device
id: camera
limits: {temp: {at_most: 60 C}}
mechanical: {use: forbidden}
`,
    ],
  },
});

/** A machine that takes an item in none of its cycles. */
function checkWasher(washer: EntityOf['washer'], { view, report }: RuleContext): void {
  const byPlace = new Map<Place, Failure[]>();
  for (const failure of unfitForMachine(washer, 'heat', view)) {
    const at = failure.judgement.factAt ?? washer.at;
    byPlace.set(at, [...(byPlace.get(at) ?? []), failure]);
  }
  for (const [at, failures] of byPlace)
    report({
      at,
      message: message.hot(message.phase, hottest(failures), whoAsks(failures), ''),
      ...evidenceOf(failures),
    });
}

function checkUses(entity: AnyEntity, { view, report }: RuleContext): void {
  for (const { name, devices } of washerUses(entity, view)) {
    const failures = washFailures(name.text, devices, isTooHot, view);
    if (failures.length === 0) continue;
    const others = coolEnough(failures, name.text, view);
    const evidence = evidenceOf(failures);
    const phases = failures.flatMap(({ judgement }) => judgement.factAt ?? []);
    report({
      at: name.at,
      message: message.hot(
        name.text,
        hottest(failures),
        whoAsks(failures),
        others.length === 0 ? '' : message.others(listed(others)),
      ),
      ...evidence,
      related: [...(evidence.related ?? []), ...phases.map((at) => ({ at, note: 'the phase that is too hot' }))],
    });
  }
}

function hottest(failures: readonly Failure[]): string {
  return failures[0]?.judgement.given ?? '';
}

function coolEnough(failures: readonly Failure[], than: string, view: LibraryView): readonly string[] {
  const devices = failures.map(({ device }) => device);
  const cycles = view.all('washer').flatMap((washer) => washer.cycles?.items ?? []);
  return cycles.flatMap(({ id, withdrawn_on }) =>
    id !== undefined &&
    id.text !== than &&
    withdrawn_on === undefined &&
    washFailures(id.text, devices, isTooHot, view).length === 0
      ? [id.text]
      : [],
  );
}
