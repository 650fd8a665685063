import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { Quantity, Requirement } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { coolingRooms } from '../support/cooling-rooms.ts';
import { demandOf } from '../support/limits-of.ts';
import { shown } from '../support/shown.ts';
import { siteOf } from '../support/site-limits.ts';
import { stepsOf } from '../support/steps.ts';

const message = {
  short: (given: string, wanted: string) => `Packs cool for ${given} here, and the site has adopted ${wanted} or more.`,
  hot: (given: string, wanted: string) =>
    `Packs are handled from ${given} on here, and the site has adopted ${wanted} or less.`,
};

export const rule = defineRule({
  id: 'cool-short-of-policy',
  stage: 'storage',
  severity: 'error',
  settledBy: 'manager',
  why: 'A warm pack that is handled draws in moisture through the wrap.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, context) {
    for (const step of stepsOf(procedure)) if (step.stage?.text === 'cooling') checkStep(step, context);
  },
  examples: {
    bad: [
      `
=== procedures/cool.ifu.yaml
kind: procedure
id: cool
steps: [{stage: cooling, do: cool, time: 15 min, release_temp: 24 C}]
                                         ^^^^^^ Packs cool for 15 min here, and the site has adopted 60 min or more.
=== site.ifu.yaml
kind: site
id: lakeside
policies: {cool_time: {at_least: 60 min}, release_temp: {at_most: 24 C}}
`,
      `
=== procedures/cool.ifu.yaml
kind: procedure
id: cool
steps:
  - {stage: cooling, do: cool, time: 60 min, release_temp: 42 C}
                                                           ^^^^ Packs are handled from 42 °C on here, and the site has adopted 24 °C or less.
=== site.ifu.yaml
kind: site
id: lakeside
policies: {release_temp: {at_most: 24 C}}
`,
    ],
    good: [
      `
=== procedures/cool.ifu.yaml
kind: procedure
id: cool
steps: [{stage: cooling, do: cool, time: 2 h, release_temp: 24 C}]
=== site.ifu.yaml
kind: site
id: lakeside
policies: {cool_time: {at_least: 60 min}, release_temp: {at_most: 24 C}}
`,
      `
kind: procedure
id: cool
steps: [{stage: cooling, do: cool, time: 15 min}]
`,
    ],
  },
});

function checkStep({ time, release_temp }: ProcedureStep, context: RuleContext): void {
  const site = siteOf({}, context.view);
  const policies = site?.policies;
  const shortest = demandOf(policies?.cool_time)?.lowest;
  if (isGiven(time) && shortest !== undefined && time.value < shortest.value)
    reportAt(time, policies?.cool_time, message.short(shown(time), shown(shortest)), context);
  const warmest = demandOf(policies?.release_temp)?.highest;
  // A limit that no pack reaches in its room is a fault of the site's own.
  if (site !== undefined && coolingRooms(site).some(({ demand }) => (warmest?.value ?? 0) <= demand.high)) return;
  if (isGiven(release_temp) && warmest !== undefined && release_temp.value > warmest.value)
    reportAt(release_temp, policies?.release_temp, message.hot(shown(release_temp), shown(warmest)), context);
}

function isGiven(quantity: Quantity | undefined): quantity is Quantity {
  return quantity !== undefined && quantity.problem === undefined;
}

function reportAt(given: Quantity, policy: Requirement | undefined, text: string, { report }: RuleContext): void {
  report({
    at: given.at,
    message: text,
    ...(policy !== undefined && { related: [{ at: policy.at, note: 'what the site has adopted' }] }),
  });
}
