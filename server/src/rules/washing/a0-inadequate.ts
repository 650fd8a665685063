import type { LibraryView } from '../../library/view.ts';
import type { WasherCycle } from '../../model/entities/washer.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import { sayingsOf } from '../../model/saying.ts';
import { A0_SCALE, requiredHoldS } from '../../physics/lethality.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { a0AskedBy } from '../support/a0-asked.ts';
import { deviceName } from '../support/device-names.ts';
import { partsOf } from '../support/entity-parts.ts';
import { demandOf } from '../support/limits-of.ts';
import { listed } from '../support/lists.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { bySource, siteLimit, siteOf } from '../support/site-limits.ts';
import type { ThermalHold } from '../support/thermal-holds.ts';
import { a0InWords, a0Of, thermalHolds } from '../support/thermal-holds.ts';
import { itemsOnCards } from '../support/washer-cards.ts';

const message = {
  low: (given: string, required: string, who: string) =>
    `This hold gives an A0 of about ${given}, and ${who} asks for ${required}.`,
  gap: (missing: string, temperature: string, needed: string) =>
    `${missing} short; at ${temperature} this takes ${needed}`,
  unjudged: (cycles: string) =>
    `Whether the thermal hold of ${cycles} is enough can't be judged: the site has adopted no limit "a0".`,
};

export const rule = defineRule({
  id: 'a0-inadequate',
  stage: 'washing',
  severity: 'error',
  settledBy: 'biomed',
  why: 'A hold a few degrees cooler needs many times the minutes.',
  source: 'standard',
  kinds: ['washer', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'washer')) checkWasher(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - id: W1-gentle
    phases:
      - {phase: thermal, temp: 82 C, time: 2 min}
                                           ^^^^^ This hold gives an A0 of about 190, and the site (policy P-14) asks for 600.
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {a0: {at_least: 600, src: "policy P-14"}}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - id: W1-eye
    phases:
      - {phase: thermal, temp: 90 C, time: 1 min}
                                           ^^^^^ This hold gives an A0 of about 600, and "eye-tip" asks for 3000.
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {a0: {at_least: 600, src: "policy P-14"}}
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: eye-tip, qty: 2}]
washer_cycle: W1-eye
=== devices/eye-tip.ifu.yaml
kind: device
id: eye-tip
disinfection: {a0: {at_least: 3000, src: s4}}
statements:
  s4: {doc: ET-1, rev: A, page: 3, quote: "Thermal disinfection with A0 of at least 3000."}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, phases: [{phase: thermal, temp: 90 C, time: 5 min}]}]
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether the thermal hold of W1-std is enough can't be judged: the site has adopted no limit "a0".
`,
    ],
    good: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, phases: [{phase: thermal, temp: 90 C, time: 5 min}]}]
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {a0: {at_least: 600, src: "policy P-14"}}
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-wash-only, phases: [{phase: wash, temp: 60 C, time: 5 min}]}]
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

interface A0Demand {
  readonly value: number;
  readonly who: string;
  readonly at: Place;
  readonly says: readonly Saying[];
}

function checkWasher(washer: EntityOf['washer'], { view, report }: RuleContext): void {
  const site = siteOf(washer, view);
  for (const cycle of washer.cycles?.items ?? []) {
    const holds = thermalHolds(cycle.phases) ?? [];
    const [longest] = [...holds].sort((a, b) => b.holdS - a.holdS);
    const given = a0Of(holds);
    if (longest === undefined || given === undefined || cycle.withdrawn_on !== undefined) continue;
    const unmet = demandsOn(cycle, site, view).filter((demand) => given < demand.value * (1 - 1e-9));
    const [highest] = [...unmet].sort((a, b) => b.value - a.value);
    if (highest === undefined) continue;
    report({
      at: (longest.phase.time ?? longest.phase).at,
      message: message.low(a0InWords(given), a0InWords(highest.value), highest.who),
      says: unmet.flatMap((demand) => demand.says),
      does: `${shown(longest.phase.temp)} for ${shown(longest.phase.time)}`,
      gap: gapOf(highest.value, given, longest),
      related: unmet.map(({ at, who }) => ({ at, note: `asked for by ${who}` })),
    });
  }
}

/** What the site has adopted, and what the devices of the sets ask for whose card names this cycle. */
function demandsOn(cycle: WasherCycle, site: Site | undefined, view: LibraryView): readonly A0Demand[] {
  const demands: A0Demand[] = [];
  addSiteDemand('a0', site, demands);
  for (const id of cycle.id === undefined ? [] : view.ask(itemsOnCards, cycle.id.text)) {
    const { class: named, asks } = view.ask(a0AskedBy, id);
    if (named !== '') addSiteDemand(`a0_${named.replaceAll('-', '_')}`, site, demands);
    const device = asks ? view.get('device', id) : undefined;
    if (device === undefined) continue;
    for (const { requirement, src } of partsOf(device).requirements) {
      const lowest = requirement.dimension === 'a0' ? demandOf(requirement)?.lowest : undefined;
      if (lowest === undefined) continue;
      demands.push({
        value: lowest.value,
        who: `"${deviceName(device)}"`,
        at: requirement.at,
        says: sayingsOf(device, src),
      });
    }
  }
  return demands;
}

function addSiteDemand(name: string, site: Site | undefined, demands: A0Demand[]): void {
  const limit = siteLimit(site, name);
  if (limit === undefined || demands.some((demand) => demand.at === limit.at)) return;
  demands.push({ value: limit.value, who: `the site${bySource(limit)}`, at: limit.at, says: [] });
}

function gapOf(required: number, given: number, hold: ThermalHold): string {
  const seconds = requiredHoldS(A0_SCALE, required, hold.temperatureC, 0);
  const needed = seconds.ok ? `${(Math.ceil(seconds.value / 6) / 10).toFixed(1)} min` : 'longer than can be said';
  return message.gap(a0InWords(required - given), shown(hold.phase.temp), needed);
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  if (siteLimit(site, 'a0') !== undefined) return;
  const cycles: string[] = [];
  for (const washer of view.all('washer')) {
    for (const cycle of washer.cycles?.items ?? [])
      if ((thermalHolds(cycle.phases) ?? []).length > 0) cycles.push(cycle.id?.text ?? 'a cycle');
  }
  if (cycles.length > 0)
    report({
      at: site.thresholds?.at ?? site.id?.at ?? site.at,
      severity: 'advice',
      settledBy: 'manager',
      message: message.unjudged(listed(cycles)),
    });
}
