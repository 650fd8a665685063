import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';

const message = {
  packaging:
    'Nothing is cited for these places. Cite the page of this packaging that names them, or leave them to the decision of the site.',
  site: (type: string) => `The decision where indicators go in packaging of the type "${type}" names no source.`,
};

export const rule = defineRule({
  id: 'indicator-place-unsourced',
  stage: 'monitoring',
  severity: 'advice',
  settledBy: 'educator',
  why: 'Where an indicator goes is handed down by word of mouth more than anything else.',
  source: 'practice',
  kinds: ['packaging', 'site'],
  check(entity: AnyEntity, { report }) {
    if (isOfKind(entity, 'packaging')) {
      const { indicator_places: places, indicator_src: src } = entity;
      if (places !== undefined && places.items.length > 0 && sayingsOf(entity, src).length === 0)
        report({ at: places.at, message: message.packaging });
    } else if (isOfKind(entity, 'site')) {
      for (const decision of entity.indicator_places?.items ?? []) {
        if (decision.src === undefined)
          report({
            at: (decision.packaging_type ?? decision).at,
            message: message.site(decision.packaging_type?.text ?? ''),
            settledBy: 'manager',
          });
      }
    }
  },
  examples: {
    bad: [
      `
kind: packaging
id: wrap
type: wrap
indicator_places: [geometric-centre-per-level]
^^^^^^^^^^^^^^^^ Nothing is cited for these places. Cite the page of this packaging that names them, or leave them to the decision of the site.
`,
      `
kind: site
id: lakeside
indicator_places:
  - {packaging_type: wrap, places: [geometric-centre-per-level], src: policy P-15}
  - {packaging_type: pouch, places: [inside-visible]}
                     ^^^^^ The decision where indicators go in packaging of the type "pouch" names no source.
`,
    ],
    good: [
      `
kind: packaging
id: wrap
type: wrap
indicator_places: [geometric-centre-per-level]
indicator_src: s3
statements:
  s3: {doc: PC-W1, rev: "4", page: 4, quote: "Place an indicator in the geometric centre of each level."}
`,
      `
kind: packaging
id: case
type: case
`,
    ],
  },
});
