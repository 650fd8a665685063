import { called } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { isSameSpot } from '../support/indicator-counts.ts';
import { listed } from '../support/lists.ts';
import type { Decision } from '../support/packages.ts';
import { indicatorPlaces, packagesOfStep } from '../support/packages.ts';
import type { Site } from '../support/site-limits.ts';

type Packaging = EntityOf['packaging'];

const message = {
  wrong: (place: string, right: readonly string[]) =>
    `"${place}" is not where the indicator goes in every pack meant here: ${listed(right)}.`,
  right: (packaging: string, { words, who }: Decision) => `in ${packaging} it goes ${words.join(' and ')} (${who})`,
  unjudged: (packaging: string) =>
    `Whether this is the right place can't be judged for ${packaging}: neither its file nor the site says where indicators go.`,
  does: (place: string) => `The indicator is put at "${place}".`,
};

export const rule = defineRule({
  id: 'indicator-place-wrong-for-packaging',
  stage: 'monitoring',
  severity: 'error',
  settledBy: 'manager',
  why: 'The indicator must sit where that packaging is hardest to penetrate; elsewhere it passes too easily.',
  source: 'standard',
  fix: 'Writes the place that the packaging states, when it is the same for all packs meant.',
  kinds: ['procedure', 'set', 'poster'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'set')) checkSet(entity, context);
    else if (isOfKind(entity, 'poster')) checkPoster(entity, context);
  },
  examples: {
    bad: [
      `
=== posters/indicators.ifu.yaml
kind: poster
id: indicators
by_packaging:
  - {packaging: wrap, indicator_places: [two-opposed-corners-per-level]}
                      ^^^^^^^^^^^^^^^^ "two-opposed-corners-per-level" is not where the indicator goes in every pack meant here: in wrap it goes geometric-centre-per-level (its own instruction).
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
indicator_places: [geometric-centre-per-level]
`,
      `
=== procedures/indicators.ifu.yaml
kind: procedure
id: indicators
steps:
  - {stage: packaging, do: place-indicator, applies_to_all_packaging: true, indicator: centre}
                                                                                       ^^^^^^ "centre" is not where the indicator goes in every pack meant here: in container it goes two-opposed-corners-per-level (its own instruction).
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
indicator_places: [two-opposed-corners-per-level]
indicator_src: s1
statements:
  s1: {doc: KL-3, rev: C, page: 14, quote: "Place indicators in two opposed corners of each level."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
indicator_places: [geometric-centre-per-level]
`,
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
packaging: pouch-small
indicator_places: [centre]
^^^^^^^^^^^^^^^^ "centre" is not where the indicator goes in every pack meant here: in pouch-small it goes inside-visible (the site (policy P-15)).
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch-small
type: pouch
=== site.ifu.yaml
kind: site
id: lakeside
indicator_places:
  - {packaging_type: pouch, places: [inside-visible], src: policy P-15}
`,
      `
=== procedures/cases.ifu.yaml
kind: procedure
id: cases
steps:
  - {stage: packaging, do: place-indicator, applies_to_packaging: [big-case], indicator: corner}
                                                                                         ^^^^^^ Whether this is the right place can't be judged for big-case: neither its file nor the site says where indicators go.
=== packaging/case.ifu.yaml
kind: packaging
id: big-case
type: case
`,
    ],
    good: [
      `
=== procedures/indicators.ifu.yaml
kind: procedure
id: indicators
steps:
  - {stage: packaging, do: place-indicator, applies_to_packaging: [wrap], indicator: centre}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
indicator_places: [geometric-centre-per-level]
`,
      `
=== sets/minor.ifu.yaml
kind: set
id: minor
packaging: container
indicator_places: [two-opposed-corners-per-level]
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
indicator_places: [two-opposed-corners-per-level]
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], context: RuleContext): void {
  for (const step of procedure.steps?.items ?? []) {
    if (step.indicator !== undefined)
      judge([step.indicator], step.indicator, packagesMeant(step, procedure, context.view), context);
  }
}

/** A step for everything that names no packaging is for all of it. */
function packagesMeant(step: ProcedureStep, procedure: EntityOf['procedure'], view: LibraryView): readonly Packaging[] {
  const namesNone = [step.applies_to_packaging, step.packaging, procedure.packaging, step.applies_to].every(
    (one) => one === undefined,
  );
  const isForAll = namesNone && step.cycle === undefined && procedure.applies_to_all?.on === true;
  return isForAll ? view.all('packaging') : packagesOfStep(step, procedure, view);
}

function checkSet(set: EntityOf['set'], context: RuleContext): void {
  const packaging = set.packaging === undefined ? undefined : context.view.get('packaging', set.packaging.text);
  if (packaging === undefined || set.indicator_places === undefined || set.indicator_places.items.length === 0) return;
  judge(set.indicator_places.items, set.indicator_places, [packaging], context);
}

function checkPoster(poster: EntityOf['poster'], context: RuleContext): void {
  for (const { packaging: name, indicator_places: places } of poster.by_packaging?.items ?? []) {
    const packaging = name === undefined ? undefined : context.view.get('packaging', name.text);
    if (packaging !== undefined && places !== undefined && places.items.length > 0)
      judge(places.items, places, [packaging], context);
  }
}

function judge(
  places: readonly Text[],
  where: Pick<Text, 'at'>,
  packages: readonly Packaging[],
  { view, report }: RuleContext,
): void {
  const shown = places.map((place) => place.text).join(' and ');
  const wrong = packages.flatMap((packaging) => wrongIn(packaging, places, view.site()));
  if (wrong.length > 0) {
    report({
      at: where.at,
      message: message.wrong(
        shown,
        wrong.map(({ packaging, decision }) => message.right(calledHere(packaging, view), decision)),
      ),
      says: wrong.flatMap(({ decision }) => decision.says),
      does: message.does(shown),
      related: wrong.map(({ packaging, decision }) => ({
        at: decision.at,
        note: `where it goes in ${calledHere(packaging, view)}`,
      })),
      fixes: fixesFor(places, packages, view.site()),
    });
    return;
  }
  const unknown = packages
    .filter((packaging) => indicatorPlaces(packaging, view.site()) === undefined)
    .map((packaging) => calledHere(packaging, view));
  if (unknown.length > 0)
    report({ at: where.at, severity: 'advice', message: message.unjudged(listed(unknown)), does: message.does(shown) });
}

function calledHere(packaging: Packaging, view: LibraryView): string {
  return called('packaging', rootOfEntity(packaging).id, view);
}

function wrongIn(packaging: Packaging, places: readonly Text[], site: Site | undefined) {
  const decision = indicatorPlaces(packaging, site);
  const isRight = decision?.words.every((word) => places.some((place) => isSameSpot(place.text, word))) ?? true;
  return decision === undefined || isRight ? [] : [{ packaging, decision }];
}

/** Only when one place is written, and one place holds for every pack that is meant. */
function fixesFor(places: readonly Text[], packages: readonly Packaging[], site: Site | undefined) {
  const words = new Set(packages.flatMap((packaging) => indicatorPlaces(packaging, site)?.words ?? ['']));
  const [place] = places;
  const [word] = words;
  if (place === undefined || word === undefined || word === '' || places.length !== 1 || words.size !== 1) return [];
  return [{ title: `Change to "${word}"`, edits: [{ span: place.at.span, text: word }] }];
}
