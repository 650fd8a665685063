import { dryPhases } from '../../judge/vocabulary.ts';
import type { MachinePhase, WasherCycle } from '../../model/entities/washer.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { bySource, siteLimit, siteOf } from '../support/site-limits.ts';
import { unjudged } from '../support/unjudged.ts';
import { isInService, washerUses, washFailures } from '../support/washer-uses.ts';

const message = {
  site: (temp: string, limit: string) =>
    `The first water of this cycle has ${temp}; the department accepts at most ${limit}. Hot water sets blood before anything is washed off.`,
  device: (cycle: string, given: string, who: string) =>
    `${cycle} begins with water of ${given}. That is hotter than the page allows: ${who}.`,
  gap: (kelvin: string) => `${kelvin} K too high`,
  what: 'Whether the first water of washer cycles is cool enough',
};

export const rule = defineRule({
  id: 'washer-prewash-hot',
  stage: 'washing',
  severity: 'warning',
  settledBy: 'biomed',
  why: 'Heat sets protein, and what is set no later phase takes off.',
  source: 'standard',
  kinds: ['washer', 'set', 'procedure', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'washer')) checkWasher(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
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
      - {phase: prewash, temp: 60 C, time: 2 min}
                               ^^^^ The first water of this cycle has 60 °C; the department accepts at most 45 °C (policy P-13). Hot water sets blood before anything is washed off.
      - {phase: wash, temp: 70 C, time: 4 min}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {prewash_temp: {at_most: 45 C, src: policy P-13}}
`,
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: tube, qty: 2}]
washer_cycle: W1-std
              ^^^^^^ W1-std begins with water of 40 °C. That is hotter than the page allows: "tube" (at most 35 °C).
=== devices/tube.ifu.yaml
kind: device
id: tube
mechanical: {use: required, prewash: {temp: {at_most: 35 C}, src: s2}}
statements:
  s2: {doc: TU-1, rev: A, page: 4, quote: "Pre-wash at no more than 35 °C."}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, phases: [{phase: prewash, temp: 40 C, time: 3 min}, {phase: wash, temp: 60 C, time: 5 min}]}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {prewash_temp: {at_most: 45 C, src: policy P-13}}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, phases: [{phase: prewash, temp: 40 C, time: 3 min}]}]
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether the first water of washer cycles is cool enough can't be judged: the limits of this site give no "prewash_temp".
`,
    ],
    good: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, phases: [{phase: prewash, temp: 20 C, time: 3 min}, {phase: wash, temp: 60 C, time: 5 min}]}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {prewash_temp: {at_most: 45 C, src: policy P-13}}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-disinfect, phases: [{phase: thermal, temp: 90 C, time: 5 min}]}]
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

function checkWasher(washer: EntityOf['washer'], { view, report }: RuleContext): void {
  const limit = siteLimit(siteOf(washer, view), 'prewash_temp');
  if (limit === undefined || !isInService(washer)) return;
  for (const cycle of washer.cycles?.items ?? []) {
    const temp = firstWater(cycle)?.temp;
    if (
      temp === undefined ||
      temp.problem !== undefined ||
      cycle.withdrawn_on !== undefined ||
      temp.value <= limit.value
    )
      continue;
    report({
      at: temp.at,
      message: message.site(shown(temp), `${shown(limit.quantity)}${bySource(limit)}`),
      gap: message.gap(String(Number((temp.value - limit.value).toFixed(1)))),
      related: [{ at: limit.at, note: 'what the department has adopted' }],
    });
  }
}

/** The first phase that brings water. A cycle that begins with thermal disinfection is meant for clean items. */
function firstWater({ phases }: WasherCycle): MachinePhase | undefined {
  const first = phases?.items.find(({ phase }) => phase !== undefined && !dryPhases.has(phase.text));
  return first?.phase?.text === 'thermal' ? undefined : first;
}

/** What single pages allow may be less. */
function checkUses(entity: AnyEntity, { view, report }: RuleContext): void {
  for (const { name, devices } of washerUses(entity, view)) {
    const failures = washFailures(
      name.text,
      devices,
      ({ parameter, demandedBy }) => parameter === 'first-rinse-temperature' && demandedBy.startsWith('device/'),
      view,
    );
    const [first] = failures;
    if (first === undefined) continue;
    report({
      at: name.at,
      severity: 'error',
      settledBy: 'educator',
      message: message.device(name.text, first.judgement.given, whoAsks(failures)),
      ...evidenceOf(failures),
    });
  }
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  if (siteLimit(site, 'prewash_temp') !== undefined) return;
  const hasWater = view
    .all('washer')
    .some((washer) => washer.cycles?.items.some((cycle) => firstWater(cycle)?.temp !== undefined));
  if (hasWater) report(unjudged(site, 'thresholds', 'prewash_temp', message.what));
}
