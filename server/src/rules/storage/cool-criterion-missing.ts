import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import { defineRule } from '../rule.ts';
import { demandInWords } from '../support/limits-of.ts';
import { listed } from '../support/lists.ts';
import type { Site } from '../support/site-limits.ts';
import { siteOf } from '../support/site-limits.ts';
import { stepInWords, stepsOf } from '../support/steps.ts';

const message = {
  lacking: (what: string, adopted: string) =>
    `This cool-down gives ${what}. Time alone passes over how heavy a pack is, a temperature alone over what is in the middle.${adopted}`,
  adopted: (limits: string) => ` The site has adopted ${limits}.`,
  both: 'neither a shortest time nor a release temperature',
  time: 'no shortest time',
  temp: 'no release temperature',
};

export const rule = defineRule({
  id: 'cool-criterion-missing',
  stage: 'storage',
  severity: 'warning',
  settledBy: 'manager',
  why: 'A pack that is handled before both the time and the temperature are reached draws in moisture through the wrap.',
  source: 'practice',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const steps = stepsOf(procedure).filter(isCoolDown);
    const told: ProcedureStep[] = [];
    for (const step of steps) {
      const alike = steps.filter((other) => isForSamePacks(step, other));
      const lacking = lackingIn(alike);
      if (lacking === undefined || told.some((other) => isForSamePacks(step, other))) continue;
      told.push(step);
      report({
        at: step.at,
        message: message.lacking(lacking, adoptedBy(siteOf({}, view))),
        does: stepInWords(step),
      });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: cool
steps: [{stage: cooling, time: 30 min}]
         ^^^^^ This cool-down gives no release temperature. Time alone passes over how heavy a pack is, a temperature alone over what is in the middle.
`,
      `
=== procedures/cool.ifu.yaml
kind: procedure
id: cool
steps:
  - {stage: cooling, do: cool, surface: loading-cart}
     ^^^^^ This cool-down gives neither a shortest time nor a release temperature. Time alone passes over how heavy a pack is, a temperature alone over what is in the middle.
`,
    ],
    good: [
      `
kind: procedure
id: cool
steps:
  - {stage: cooling, do: cool, time: 60 min, release_temp: 24 C}
`,
      `
kind: procedure
id: cool
steps:
  - {stage: cooling, do: cool, time: 60 min}
  - {stage: cooling, do: aim, aim: vents, release_temp: 24 C}
`,
    ],
  },
});

/** A step that only points or moves is none, unless it says how long or how cool. */
function isCoolDown({ stage, do: act, time, release_temp, surface }: ProcedureStep): boolean {
  if (stage?.text !== 'cooling') return false;
  return act?.text !== 'aim' || time !== undefined || release_temp !== undefined || surface !== undefined;
}

function lackingIn(steps: readonly ProcedureStep[]): string | undefined {
  const hasTime = steps.some(({ time }) => time !== undefined);
  const hasTemp = steps.some(({ release_temp }) => release_temp !== undefined);
  if (hasTime) return hasTemp ? undefined : message.temp;
  return hasTemp ? message.time : message.both;
}

/** Both are for every packaging, or share one. */
function isForSamePacks(a: ProcedureStep, b: ProcedureStep): boolean {
  if (a.applies_to_packaging === undefined || b.applies_to_packaging === undefined) return true;
  const names = new Set(a.applies_to_packaging.items.map(({ text }) => text));
  return b.applies_to_packaging.items.some(({ text }) => names.has(text));
}

function adoptedBy(site: Site | undefined): string {
  const { release_temp: temp, cool_time: time } = site?.policies ?? {};
  const limits = [time, temp].flatMap((one) => (one === undefined ? [] : [demandInWords(one)]));
  return limits.length === 0 ? '' : message.adopted(listed(limits));
}
