import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import type { CycleUse } from '../support/cycle-uses.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { isLongerThanShown, longerThanShown } from '../support/longer-exposures.ts';
import { shown } from '../support/shown.ts';
import { reachOf, stepInWords, stepsOf } from '../support/steps.ts';
import { insteadOf, isAskedByRoute, membersEvidence } from '../support/use-reports.ts';

const message = {
  longer: (what: string, given: string, who: string, instead: string) =>
    `${what} holds for ${given}. Nobody has shown that the item stands so much more than the page gives: ${who}.${instead}`,
  step: 'This step',
};

export const rule = defineRule({
  id: 'cycle-exposure-longer-unstated',
  stage: 'sterilization',
  severity: 'warning',
  settledBy: 'manufacturer',
  why: 'A longer hold kills more, but heat also ages plastics, adhesives and edges, and the maker has not said how much is borne.',
  source: 'practice',
  kinds: ['set', 'procedure'],
  check(entity: AnyEntity, context) {
    for (const use of cycleUses(entity, context.view)) checkUse(use, context);
    if (isOfKind(entity, 'procedure')) checkSteps(entity, context);
  },
  examples: {
    bad: [
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132-10-30
       ^^^^^^^^^^^ pv132-10-30 holds for 10 min. Nobody has shown that the item stands so much more than the page gives: "hook" (at least 4 min).
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-10-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 10 min, dry: 30 min, qualified: 2025-01-15}
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== procedures/one-cycle.ifu.yaml
kind: procedure
id: one-cycle
applies_to: [handpiece]
steps: [{stage: steam, do: sterilize, exposure: 10 min}]
                                                ^^^^^^ This step holds for 10 min. Nobody has shown that the item stands so much more than the page gives: "handpiece" (4 min (no bound word)).
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {stated: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HA-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, 4 minutes, dry at least 30 minutes."}
`,
    ],
    good: [
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: wrap
cycle: pv132-6-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, wrapped."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-6-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 6 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== procedures/tips.ifu.yaml
kind: procedure
id: tips
applies_to: [tip]
steps: [{stage: steam, do: sterilize, exposure: 10 min}]
=== devices/tip.ifu.yaml
kind: device
id: tip
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {between: [3 min, 18 min]}, dry: {at_least: 15 min}, src: s1}
statements:
  s1: {doc: TI-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, 3 to 18 minutes, dry at least 15 minutes."}
`,
    ],
  },
});

function checkUse(use: CycleUse, { view, report }: RuleContext): void {
  const longer: Failure[] = [];
  for (const { device, option, judgements } of use.members) {
    const judgement = judgements.find(
      (one) => one.parameter === 'exposure' && isLongerThanShown(one, option) && !isAskedByRoute(one, use),
    );
    if (judgement !== undefined) longer.push({ device, judgement });
  }
  const [first] = longer;
  if (first === undefined) return;
  report({
    at: use.name.at,
    message: message.longer(use.name.text, first.judgement.given, whoAsks(longer), insteadOf(use, view)),
    ...membersEvidence(use, longer),
  });
}

/** A step may set an exposure of its own, whatever the cycle. */
function checkSteps(procedure: EntityOf['procedure'], { view, report }: RuleContext): void {
  if (procedure.when !== undefined) return;
  for (const step of stepsOf(procedure)) {
    const { exposure, when } = step;
    if (exposure === undefined || exposure.problem !== undefined || when !== undefined) continue;
    const longer = longerThanShown(reachOf(step, procedure, view), exposure, settingFor({}, view));
    if (longer.length === 0) continue;
    report({
      at: exposure.at,
      message: message.longer(message.step, shown(exposure), whoAsks(longer), ''),
      does: stepInWords(step),
      ...evidenceOf(longer),
    });
  }
}
