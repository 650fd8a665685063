import { counted } from '../../base/words.ts';
import { defineRule } from '../rule.ts';
import { indicatorsNeeded } from '../support/indicator-counts.ts';
import { indicatorPlaces } from '../support/packages.ts';
import { siteOf } from '../support/site-limits.ts';

const message = {
  few: (has: number, needed: number, levels: number, places: string) =>
    `${counted(has, 'indicator')} for ${counted(levels, 'level')}, and this packaging needs ${needed} (${places}).`,
  unjudged:
    'Whether these indicators are enough can’t be judged: neither the packaging nor the site says where indicators go.',
  does: (has: number) => `The set is packed with ${counted(has, 'indicator')}.`,
  gap: (missing: number) => `${missing} missing`,
};

export const rule = defineRule({
  id: 'indicator-level-missing',
  stage: 'monitoring',
  severity: 'error',
  settledBy: 'manager',
  why: 'The lowest tray is the coldest and wettest, and an indicator on another level says nothing about it.',
  source: 'standard',
  kinds: ['set'],
  check(set, { view, report }) {
    const has = set.indicators;
    const packaging = set.packaging === undefined ? undefined : view.get('packaging', set.packaging.text);
    if (has === undefined || has.problem !== undefined || packaging === undefined) return;
    const places = indicatorPlaces(packaging, siteOf(set, view));
    const levels = set.levels === undefined || set.levels.problem !== undefined ? 1 : set.levels.value;
    if (places === undefined) {
      report({
        at: has.at,
        severity: 'advice',
        message: message.unjudged,
        related: [{ at: packaging.at, note: 'the packaging' }],
      });
      return;
    }
    const needed = indicatorsNeeded(places.words, levels);
    if (has.value >= needed) return;
    report({
      at: has.at,
      message: message.few(has.value, needed, levels, places.words.join(' and ')),
      says: places.says,
      does: message.does(has.value),
      gap: message.gap(needed - has.value),
      related: [{ at: places.at, note: `where indicators go, by ${places.who}` }],
    });
  },
  examples: {
    bad: [
      `
=== sets/knee.ifu.yaml
kind: set
id: knee-A
packaging: wrap
levels: 3
indicators: 1
            ^ 1 indicator for 3 levels, and this packaging needs 3 (geometric-centre-per-level).
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
indicator_places: [geometric-centre-per-level]
`,
      `
=== sets/hip.ifu.yaml
kind: set
id: hip
packaging: container
levels: 2
indicators: 2
            ^ 2 indicators for 2 levels, and this packaging needs 4 (two-opposed-corners-per-level).
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
=== site.ifu.yaml
kind: site
id: lakeside
indicator_places:
  - {packaging_type: rigid-container, places: [two-opposed-corners-per-level], src: policy P-15}
`,
      `
=== sets/hip.ifu.yaml
kind: set
id: hip
packaging: container
indicators: 2
            ^ Whether these indicators are enough can’t be judged: neither the packaging nor the site says where indicators go.
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
`,
    ],
    good: [
      `
=== sets/knee.ifu.yaml
kind: set
id: knee-A
packaging: wrap
levels: 3
indicators: 3
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
indicator_places: [geometric-centre-per-level]
`,
      `
=== sets/single.ifu.yaml
kind: set
id: single
packaging: pouch
indicators: 1
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
indicator_places: [inside-visible]
`,
    ],
  },
});
