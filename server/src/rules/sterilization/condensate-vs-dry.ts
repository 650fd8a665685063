import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { LoadCondensate } from '../../physics/condensate.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { packingRoom, steamCycleOf, waterIn } from '../support/set-condensate.ts';
import { shown } from '../support/shown.ts';
import type { Site } from '../support/site-limits.ts';
import { bySource, siteLimit, siteOf } from '../support/site-limits.ts';
import { unjudged } from '../support/unjudged.ts';

const message = {
  much: (water: string, limit: string, dry: string) =>
    `Steam leaves about ${water} of water in this set: more than ${limit}, from which a closer look is advised. Whether ${dry} of drying is enough, only a product test shows; a split, or heavy parts on separate levels, leave less.`,
  shares: (aluminium: string, polymer: string) => `aluminium takes ${aluminium} of the heat, plastic ${polymer}`,
  gap: (more: string) => `${more} more`,
  does: (range: string, shares: string) => `${range}; ${shares}`,
  range: (low: string, high: string) => `${low} to ${high} with the heat capacities in circulation`,
  what: 'Whether steam leaves much water in a set',
  noRoom:
    'Whether steam leaves much water in a set can’t be judged: no room of this site says both that packs are made there and how warm it is.',
};

export const rule = defineRule({
  id: 'condensate-vs-dry',
  stage: 'sterilization',
  severity: 'advice',
  settledBy: 'educator',
  why: 'Every kilogram that is heated leaves water behind, aluminium nearly twice as much as steel, and drying has to take it out again.',
  source: 'logic',
  kinds: ['set', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'set')) checkSet(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== sets/knee.ifu.yaml
kind: set
id: knee
masses: {steel: 9.2 kg, aluminium: 2.4 kg, polymer: 0.3 kg}
^^^^^^ Steam leaves about 0.38 kg of water in this set: more than 0.36 kg (dry-load trials 2024), from which a closer look is advised. Whether 30 min of drying is enough, only a product test shows; a split, or heavy parts on separate levels, leave less.
cycle: pv132-4-30
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
steam: {dryness: 0.98, measured: 2025-01-20}
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {condensate_share: {at_most: 0.36 kg, src: "dry-load trials 2024"}}
rooms: {clean-side: {temp: {between: [20 C, 23 C]}, stages: [assembly, packaging]}}
`,
      `
=== sets/case.ifu.yaml
kind: set
id: case
masses: {aluminium: 10 kg}
^^^^^^ Steam leaves about 0.41 kg of water in this set: more than 360 g (dry-load trials 2024), from which a closer look is advised. Whether 30 min of drying is enough, only a product test shows; a split, or heavy parts on separate levels, leave less.
cycle: gr121-30-30
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: gr121-30-30, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {condensate_share: {at_most: 360 g, src: "dry-load trials 2024"}}
rooms: {packing: {temp: {stated: 20 C}, stages: [packaging]}}
`,
      `
=== sets/case.ifu.yaml
kind: set
id: case
masses: {aluminium: 10 kg}
cycle: gr121-30-30
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: gr121-30-30, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether steam leaves much water in a set can't be judged: the limits of this site give no "condensate_share".
`,
    ],
    good: [
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
masses: {steel: 5.6 kg}
cycle: pv132-4-30
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {condensate_share: {at_most: 0.36 kg, src: "dry-load trials 2024"}}
rooms: {packing: {temp: {stated: 20 C}, stages: [packaging]}}
`,
      `
=== sets/camera.ifu.yaml
kind: set
id: camera
masses: {aluminium: 12 kg}
cycle: "P9:surface"
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:surface", modality: vh2o2, context: terminal, qualified: 2025-01-22}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds: {condensate_share: {at_most: 0.36 kg, src: "dry-load trials 2024"}}
rooms: {packing: {temp: {stated: 20 C}, stages: [packaging]}}
`,
    ],
  },
});

const limitName = 'condensate_share';

function checkSet(set: EntityOf['set'], { view, report }: RuleContext): void {
  const site = siteOf(set, view);
  const limit = siteLimit(site, limitName);
  const running = steamCycleOf(set, view);
  const start = packingRoom(site);
  if (set.masses === undefined || limit === undefined || running === undefined || start === undefined) return;
  const load = waterIn(set, running, start.coldestC, site);
  if (load === undefined || load.waterG / 1000 <= limit.value) return;
  const adopted = `${shown(limit.quantity)}${bySource(limit)}`;
  report({
    at: set.masses.at,
    message: message.much(inKg(load.waterG), adopted, shown(running.cycle.dry) || 'the time'),
    does: message.does(message.range(inKg(load.lowWaterG), inKg(load.highWaterG)), sharesOf(load)),
    gap: message.gap(inKg(load.waterG - limit.value * 1000)),
    related: [
      { at: limit.at, note: 'what the department has adopted' },
      { at: (running.cycle.dry ?? running.cycle).at, note: 'the drying of the cycle' },
    ],
  });
}

function sharesOf({ parts }: LoadCondensate): string {
  const share = (group: string) =>
    Math.round(
      100 * parts.filter(({ material }) => material.group === group).reduce((sum, part) => sum + part.share, 0),
    );
  return message.shares(`${share('aluminium')} %`, `${share('polymer')} %`);
}

function inKg(grams: number): string {
  return `${(grams / 1000).toFixed(2)} kg`;
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  const isLimited = siteLimit(site, limitName) !== undefined;
  if (isLimited && packingRoom(site) !== undefined) return;
  const isAsked = view.all('set').some((set) => set.masses !== undefined && steamCycleOf(set, view) !== undefined);
  if (!isAsked) return;
  const found = unjudged(site, 'thresholds', limitName, message.what);
  report(isLimited ? { ...found, at: (site.rooms ?? site.id ?? site).at, message: message.noRoom } : found);
}
