import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place, Quantity } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { coolingRooms } from '../support/cooling-rooms.ts';
import { demandOf } from '../support/limits-of.ts';
import { shown } from '../support/shown.ts';
import { siteOf } from '../support/site-limits.ts';
import { stepsOf } from '../support/steps.ts';

type Site = EntityOf['site'];

const message = {
  below: (release: string, room: string, temp: string) =>
    `Packs are released at ${release} or below, but ${room} may be as warm as ${temp}: a pack never cools below the air around it.`,
  gap: (kelvin: number) => `${Math.round(kelvin * 10) / 10} K between them`,
};

export const rule = defineRule({
  id: 'cool-release-below-room',
  stage: 'storage',
  severity: 'error',
  settledBy: 'manager',
  why: 'A temperature that cannot be reached is a rule that everyone learns to pass over.',
  source: 'logic',
  kinds: ['site', 'procedure'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'site')) {
      const limit = entity.policies?.release_temp;
      const highest = demandOf(limit)?.highest;
      if (limit !== undefined && highest !== undefined) judge(highest, limit.at, entity, context);
    } else if (isOfKind(entity, 'procedure')) {
      for (const { release_temp } of stepsOf(entity)) {
        const site = release_temp === undefined ? undefined : siteOf({}, context.view);
        if (release_temp !== undefined && site !== undefined) judge(release_temp, release_temp.at, site, context);
      }
    }
  },
  examples: {
    bad: [
      `
kind: site
id: hillside
rooms: {sterile-side: {temp: {between: [21 C, 24 C]}}}
policies: {release_temp: {at_most: 20 C}}
           ^^^^^^^^^^^^ Packs are released at 20 °C or below, but "sterile-side" may be as warm as 24 °C: a pack never cools below the air around it.
`,
      `
=== procedures/cool.ifu.yaml
kind: procedure
id: cool
steps:
  - {stage: cooling, do: cool, time: 60 min, release_temp: 22 C}
                                                           ^^^^ Packs are released at 22 °C or below, but "Packing room" may be as warm as 25 °C: a pack never cools below the air around it.
=== site.ifu.yaml
kind: site
id: hillside
rooms:
  wash-side: {temp: {between: [16 C, 20 C]}, stages: [manual, mechanical]}
  pack-side: {name: Packing room, temp: {at_most: 25 C}, stages: [cooling, storage]}
`,
    ],
    good: [
      `
kind: site
id: hillside
rooms: {sterile-side: {temp: {between: [20 C, 22 C]}}}
policies: {release_temp: {at_most: 24 C}}
`,
      `
kind: site
id: hillside
rooms:
  wash-side: {temp: {between: [20 C, 26 C]}, stages: [manual]}
  pack-side: {temp: {between: [19 C, 21 C]}, stages: [cooling]}
policies: {release_temp: {at_most: 24 C}}
`,
    ],
  },
});

function judge(release: Quantity, at: Place, site: Site, { report }: RuleContext): void {
  if (release.problem !== undefined) return;
  for (const { room, name, demand } of coolingRooms(site)) {
    const { highest } = demand;
    if (highest === undefined || release.value > demand.high) continue;
    report({
      at,
      message: message.below(shown(release), `"${name}"`, shown(highest)),
      gap: message.gap(demand.high - release.value),
      related: [{ at: (room.temp ?? room).at, note: 'the temperature of the room' }],
    });
    return;
  }
}
