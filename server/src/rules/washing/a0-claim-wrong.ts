import type { MachinePhase, WasherCycle } from '../../model/entities/washer.generated.ts';
import type { Quantity } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { shown } from '../support/shown.ts';
import type { SiteLimit } from '../support/site-limits.ts';
import { siteLimit, siteOf } from '../support/site-limits.ts';
import { a0InWords, a0Of, thermalHolds } from '../support/thermal-holds.ts';

const message = {
  wrong: (claimed: string, computed: string) =>
    `The file claims an A0 of ${claimed}, but the thermal hold gives about ${computed}.`,
  withDrying: (claimed: string, computed: string) =>
    `The file claims an A0 of ${claimed}, but the thermal hold gives about ${computed}. The rest is the heat of drying, which does not count.`,
  noHold: (claimed: string) => `The file claims an A0 of ${claimed}, but the cycle has no thermal phase.`,
  gap: (difference: string, word: string) => `${difference} too ${word}`,
};

export const rule = defineRule({
  id: 'a0-claim-wrong',
  stage: 'washing',
  severity: 'error',
  settledBy: 'biomed',
  why: 'A written A0 that the hold does not give hides a short disinfection.',
  source: 'logic',
  kinds: ['washer'],
  check(washer, { view, report }) {
    for (const cycle of washer.cycles?.items ?? []) {
      const claim = cycle.a0;
      const holds = thermalHolds(cycle.phases);
      const computed = holds === undefined ? undefined : a0Of(holds);
      if (claim === undefined || claim.problem !== undefined || cycle.phases === undefined || holds === undefined)
        continue;
      if (computed === undefined || agrees(claim, computed, siteLimit(siteOf(washer, view), 'a0_difference'))) continue;
      report({
        at: claim.at,
        message: wording(claim, computed, cycle),
        does: holds.map(({ phase }) => `${shown(phase.temp)} for ${shown(phase.time)}`).join(', '),
        gap: message.gap(a0InWords(Math.abs(claim.value - computed)), claim.value > computed ? 'high' : 'low'),
        related: holds.map(({ phase }) => ({ at: (phase.time ?? phase).at, note: 'the thermal hold' })),
      });
    }
  },
  examples: {
    bad: [
      `
kind: washer
id: W1
cycles:
  - id: W1-std
    a0: 3000
        ^^^^ The file claims an A0 of 3000, but the thermal hold gives about 600.
    phases: [{phase: thermal, temp: 90 C, time: 1 min}]
`,
      `
kind: washer
id: W2
cycles:
  - id: W2-gentle
    a0: 2000
        ^^^^ The file claims an A0 of 2000, but the thermal hold gives about 190. The rest is the heat of drying, which does not count.
    phases:
      - {phase: thermal, temp: 82 C, time: 2 min}
      - {phase: dry, temp: 85 C, time: 10 min}
  - id: W2-rinse
    a0: 600
        ^^^ The file claims an A0 of 600, but the cycle has no thermal phase.
    phases:
      - {phase: wash, temp: 60 C, time: 5 min}
`,
    ],
    good: [
      `
kind: washer
id: W1
cycles:
  - id: W1-std
    a0: 3000
    phases: [{phase: thermal, temp: 90 C, time: 5 min}, {phase: dry, temp: 95 C, time: 15 min}]
  - id: W1-rounded
    a0: 190
    phases: [{phase: thermal, temp: 82 C, time: 2 min}]
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - id: W1-std
    a0: 620
    phases: [{phase: thermal, temp: 90 C, time: 1 min}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {a0_difference: {at_most: 5 %, src: "policy P-14"}}
`,
    ],
  },
});

function wording(claim: Quantity, computed: number, cycle: WasherCycle): string {
  const phases = cycle.phases?.items ?? [];
  if (!phases.some((phase) => phase.phase?.text === 'thermal')) return message.noHold(claim.text);
  const drying = dryingDose(phases);
  const isDrying = drying > 0 && agrees(claim, computed + drying, undefined);
  return isDrying
    ? message.withDrying(claim.text, a0InWords(computed))
    : message.wrong(claim.text, a0InWords(computed));
}

function dryingDose(phases: readonly MachinePhase[]): number {
  const dry = phases.filter((phase) => phase.phase?.text === 'dry');
  const holds = dry.flatMap(({ temp, time }) =>
    temp === undefined || time === undefined ? [] : [{ temperatureC: temp.value, holdS: time.value }],
  );
  return a0Of(holds) ?? 0;
}

/** Within the difference that the site has adopted; without one, within the digits that the claim is written with. */
function agrees(claim: Quantity, computed: number, limit: SiteLimit | undefined): boolean {
  if (limit !== undefined) return Math.abs(claim.value - computed) <= (limit.value / 100) * computed;
  return claim.value === 0 ? computed < 1 : Number(computed.toPrecision(significantDigits(claim.text))) === claim.value;
}

/** Digits of a number as written that are not only zeros at its end: 1 for 600, 2 for 190. */
function significantDigits(text: string): number {
  const digits = text.replace(/[^0-9]/g, '').slice(0, 20);
  let end = digits.length;
  while (end > 1 && digits.charAt(end - 1) === '0') end--;
  return Math.max(1, digits.slice(0, end).replace(/^0{1,20}/, '').length);
}
