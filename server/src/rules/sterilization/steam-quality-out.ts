import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Quantity } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { shown } from '../support/shown.ts';
import type { Site, SiteLimit } from '../support/site-limits.ts';
import { bySource, likeQuantity, siteLimit, siteOf } from '../support/site-limits.ts';
import { saturationWords } from '../support/sterilizing-words.ts';
import { unjudged } from '../support/unjudged.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  low: (title: string, value: string, limit: string) =>
    `${title} is ${value}; the department asks for at least ${limit}.`,
  high: (title: string, value: string, limit: string) =>
    `${title} is ${value}; the department accepts at most ${limit}.`,
  saturation:
    'Dryness is given here as saturation. They are two things: steam is saturated at its boiling temperature, wet or dry.',
  gap: (difference: string, word: string) => `${difference} too ${word}`,
  does: (day: string) => `measured on ${day}`,
  unjudged: (title: string) => `Whether the ${title} is good enough`,
};

export const rule = defineRule({
  id: 'steam-quality-out',
  stage: 'sterilization',
  severity: 'warning',
  settledBy: 'engineering',
  why: 'Wet steam carries water into packs, gas keeps heat away from surfaces, and superheated steam is only hot air.',
  source: 'standard',
  kinds: ['sterilizer', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'sterilizer')) checkSterilizer(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== sterilizers/s1.ifu.yaml
kind: sterilizer
id: S1
modality: steam-prevac
steam: {dryness: 0.92, ncg: 4.1 %, superheat: 6 K, measured: 2025-01-05}
                 ^^^^ Dryness of the steam is 0.92; the department asks for at least 0.97 (engineering note E-4).
                            ^^^^^ Share of gas in the steam is 4.1 %; the department accepts at most 3.5 % (engineering note E-4).
=== site.ifu.yaml
kind: site
id: lakeside
thresholds:
  steam_dryness: {at_least: 0.97, src: engineering note E-4}
  steam_ncg: {at_most: 3.5 %, src: engineering note E-4}
  steam_superheat: {at_most: 25 K, src: engineering note E-4}
`,
      `
=== sterilizers/s2.ifu.yaml
kind: sterilizer
id: S2
modality: steam-prevac
steam: {dryness: 0.98, superheat: 31 K, measured: 2025-01-05, reported_as: "98 % saturation"}
                                  ^^^^ Superheat of the steam is 31 K; the department accepts at most 25 K (engineering note E-4).
                                                                           ^^^^^^^^^^^^^^^^^ Dryness is given here as saturation. They are two things: steam is saturated at its boiling temperature, wet or dry.
=== site.ifu.yaml
kind: site
id: lakeside
thresholds:
  steam_dryness: {at_least: 0.97, src: engineering note E-4}
  steam_superheat: {at_most: 25 K, src: engineering note E-4}
`,
      `
=== sterilizers/s2.ifu.yaml
kind: sterilizer
id: S2
steam: {ncg: 2.4 %, measured: 2025-01-05}
=== site.ifu.yaml
kind: site
id: lakeside
    ^^^^^^^^ Whether the share of gas in the steam is good enough can't be judged: the limits of this site give no "steam_ncg".
`,
    ],
    good: [
      `
=== sterilizers/s1.ifu.yaml
kind: sterilizer
id: S1
steam: {dryness: 0.97, ncg: 3.5 %, superheat: 25 K, measured: 2025-01-05, reported_as: dryness value}
=== site.ifu.yaml
kind: site
id: lakeside
thresholds:
  steam_dryness: {at_least: 0.97, src: engineering note E-4}
  steam_ncg: {at_most: 3.5 %, src: engineering note E-4}
  steam_superheat: {at_most: 25 K, src: engineering note E-4}
`,
      `
=== sterilizers/p9.ifu.yaml
kind: sterilizer
id: P9
modality: vh2o2
=== site.ifu.yaml
kind: site
id: lakeside
`,
    ],
  },
});

type Reading = 'dryness' | 'ncg' | 'superheat';

/** What is measured, under which name the department adopts a limit, and on which side of it steam is out. */
const readings: readonly {
  readonly field: Reading;
  readonly limit: string;
  readonly title: string;
  readonly out: 'low' | 'high';
}[] = [
  { field: 'dryness', limit: 'steam_dryness', title: 'dryness of the steam', out: 'low' },
  { field: 'ncg', limit: 'steam_ncg', title: 'share of gas in the steam', out: 'high' },
  { field: 'superheat', limit: 'steam_superheat', title: 'superheat of the steam', out: 'high' },
];

function checkSterilizer(sterilizer: EntityOf['sterilizer'], { view, report }: RuleContext): void {
  const { steam } = sterilizer;
  if (steam === undefined || sterilizer.withdrawn_on !== undefined) return;
  const site = siteOf(sterilizer, view);
  for (const { field, limit: name, title, out } of readings) {
    const reading = steam[field];
    const limit = siteLimit(site, name);
    if (reading === undefined || reading.problem !== undefined || limit === undefined || !isOut(reading, limit, out))
      continue;
    const words = message[out](capital(title), shown(reading), `${shown(limit.quantity)}${bySource(limit)}`);
    report({
      at: reading.at,
      message: words,
      gap: message.gap(likeQuantity(Math.abs(reading.value - limit.value), limit.quantity), out),
      related: [{ at: limit.at, note: 'what the department has adopted' }],
      ...(steam.measured !== undefined && { does: message.does(steam.measured.text) }),
    });
  }
  const { reported_as: words } = steam;
  if (words !== undefined && steam.dryness !== undefined && isMentioned(words.text, saturationWords))
    report({ at: words.at, message: message.saturation, does: words.text });
}

function isOut(reading: Quantity, limit: SiteLimit, out: 'low' | 'high'): boolean {
  return out === 'low' ? reading.value < limit.value : reading.value > limit.value;
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function checkSite(site: Site, { view, report }: RuleContext): void {
  for (const { field, limit, title } of readings) {
    const isMeasured = view.all('sterilizer').some(({ steam }) => steam?.[field] !== undefined);
    if (isMeasured && siteLimit(site, limit) === undefined)
      report(unjudged(site, 'thresholds', limit, message.unjudged(title)));
  }
}
