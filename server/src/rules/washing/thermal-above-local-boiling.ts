import type { MachinePhase } from '../../model/entities/washer.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import { A0_SCALE, requiredHoldS } from '../../physics/lethality.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import { boilingHere } from '../support/local-air.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { bySource, likeQuantity, siteLimit, siteOf } from '../support/site-limits.ts';
import { a0Of } from '../support/thermal-holds.ts';

const message = {
  above: (setpoint: string, boiling: string) =>
    `Water boils at ${boiling} here, so this phase never reaches ${setpoint}: pumps draw steam and the hold is not kept.`,
  near: (setpoint: string, boiling: string, margin: string) =>
    `${setpoint} is too near to boiling: water boils at ${boiling} here, and the department keeps ${margin} away from it.`,
  sameDose: (time: string, temperature: string) => `; the same A0 takes ${time} at ${temperature}`,
  noMargin: (cycles: string) =>
    `Whether the water of ${cycles} stays far enough from boiling can't be judged: the site has adopted no limit "boiling_margin".`,
  noAltitude: (cycles: string) =>
    `Whether the water of ${cycles} would boil here can't be judged: the site gives neither its altitude nor its air pressure.`,
};

export const rule = defineRule({
  id: 'thermal-above-local-boiling',
  stage: 'washing',
  severity: 'error',
  settledBy: 'engineering',
  why: 'High up water boils early, and a setpoint above that is never held.',
  source: 'logic',
  kinds: ['washer', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'washer')) checkWasher(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
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
      - {phase: thermal, temp: 95 C, time: 1 min}
                               ^^^^ Water boils at 94.6 °C here, so this phase never reaches 95 °C: pumps draw steam and the hold is not kept.
      - {phase: dry, temp: 115 C, time: 20 min}
=== site.ifu.yaml
kind: site
id: lakeside
altitude: 1610 m
thresholds: {boiling_margin: {at_least: 1 K, src: "engineering note E-3"}}
policies: {accept_a0: true, accept_a0_src: "policy P-14"}
`,
      `
=== washers/w3.ifu.yaml
kind: washer
id: W3
cycles:
  - id: W3-std
    phases:
      - {phase: thermal, temp: 201.2 F, time: 1 min}
                               ^^^^^^^ 201.2 °F is too near to boiling: water boils at 94.6 °C here, and the department keeps 1 K (engineering note E-3) away from it.
=== site.ifu.yaml
kind: site
id: lakeside
atmosphere: 83.4 kPa
thresholds: {boiling_margin: {at_least: 1 K, src: "engineering note E-3"}}
`,
      `
=== washers/w3.ifu.yaml
kind: washer
id: W3
cycles: [{id: W3-std, phases: [{phase: thermal, temp: 90 C, time: 1 min}]}]
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether the water of W3-std would boil here can't be judged: the site gives neither its altitude nor its air pressure.
`,
    ],
    good: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - id: W1-std
    phases:
      - {phase: thermal, temp: 90 C, time: 5 min}
      - {phase: dry, temp: 115 C, time: 15 min}
=== site.ifu.yaml
kind: site
id: lakeside
altitude: 1610 m
thresholds: {boiling_margin: {at_least: 1 K, src: "engineering note E-3"}}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, phases: [{phase: thermal, temp: 95 C, time: 1 min}]}]
=== site.ifu.yaml
kind: site
id: sea-view
altitude: 5 m
thresholds: {boiling_margin: {at_least: 1 K, src: "engineering note E-3"}}
`,
    ],
  },
});

function checkWasher(washer: EntityOf['washer'], { view, report }: RuleContext): void {
  const site = siteOf(washer, view);
  const boiling = boilingHere(site);
  if (boiling === undefined) return;
  const margin = siteLimit(site, 'boiling_margin');
  for (const phase of waterPhases(washer)) {
    if (phase.temp === undefined || phase.temp.problem !== undefined) continue;
    const distance = boiling.temperatureC - phase.temp.value;
    if (distance > (margin?.value ?? 0)) continue;
    const boils = `${boiling.temperatureC.toFixed(1)} °C`;
    const kept = margin === undefined ? '' : `${shown(margin.quantity)}${bySource(margin)}`;
    report({
      at: phase.temp.at,
      message: distance <= 0 ? message.above(shown(phase.temp), boils) : message.near(shown(phase.temp), boils, kept),
      does: `${phase.phase?.text ?? 'phase'} at ${shown(phase.temp)}`,
      gap: `${Math.abs(distance).toFixed(1)} K ${distance <= 0 ? 'above' : 'below'} boiling${sameDoseBelow(phase, boiling.temperatureC, site)}`,
      related: [
        { at: boiling.at, note: 'from which boiling is worked out' },
        ...(margin === undefined ? [] : [{ at: margin.at, note: 'the distance the department keeps' }]),
      ],
    });
  }
}

/** Only where the department accepts A0: the highest whole degree that keeps its margin, and how long it takes there. */
function sameDoseBelow(phase: MachinePhase, boilingC: number, site: Site | undefined): string {
  const margin = siteLimit(site, 'boiling_margin');
  if (phase.phase?.text !== 'thermal' || phase.temp === undefined || phase.time === undefined || margin === undefined)
    return '';
  if (site?.policies?.accept_a0?.on !== true) return '';
  const temperatureC = Math.ceil(boilingC - margin.value) - 1;
  const dose = a0Of([{ temperatureC: phase.temp.value, holdS: phase.time.value }]);
  const seconds = dose === undefined ? undefined : requiredHoldS(A0_SCALE, dose, temperatureC, 0);
  if (seconds === undefined || !seconds.ok) return '';
  return message.sameDose(likeQuantity(Math.ceil(seconds.value), phase.time, 1), `${temperatureC} °C`);
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  const cycles: string[] = [];
  for (const washer of view.all('washer')) {
    if (siteOf(washer, view) === site && waterPhases(washer).some((phase) => phase.temp !== undefined))
      cycles.push(...cycleIds(washer));
  }
  if (cycles.length === 0) return;
  const at = site.thresholds?.at ?? site.id?.at ?? site.at;
  if (boilingHere(site) === undefined) report({ at, severity: 'advice', message: message.noAltitude(listed(cycles)) });
  else if (siteLimit(site, 'boiling_margin') === undefined)
    report({ at, severity: 'advice', message: message.noMargin(listed(cycles)) });
}

function waterPhases(washer: EntityOf['washer']): readonly MachinePhase[] {
  return (washer.cycles?.items ?? [])
    .flatMap((cycle) => cycle.phases?.items ?? [])
    .filter((phase) => phase.phase?.text !== 'dry');
}

function cycleIds(washer: EntityOf['washer']): readonly string[] {
  return (washer.cycles?.items ?? []).map((cycle) => cycle.id?.text ?? rootOfEntity(washer).id);
}
