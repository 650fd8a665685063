import { called } from '../../library/called.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import type { Decision } from '../support/packages.ts';
import { coolAim, packagesOfStep } from '../support/packages.ts';

type Packaging = EntityOf['packaging'];

const message = {
  wrong: (aim: string, right: readonly string[]) => `The thermometer is pointed at "${aim}", but ${listed(right)}.`,
  right: (packaging: string, { words, who }: Decision) =>
    `for ${packaging} it belongs at "${words.join(' or ')}" by ${who}`,
  unjudged: (packaging: string) =>
    `Whether this is the right aim can't be judged for ${packaging}: neither its file nor the site says where to point the thermometer.`,
  note: (packaging: string) => `where to point it for ${packaging}`,
};

export const rule = defineRule({
  id: 'cool-aim-wrong-for-packaging',
  stage: 'storage',
  severity: 'error',
  settledBy: 'manager',
  why: 'Elsewhere on the pack the reading is cooler than the place where vapour leaves, and the pack is handled too early.',
  source: 'practice',
  fix: 'Writes the aim that the packaging states, when it is the same for all packs meant.',
  kinds: ['procedure', 'poster'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'poster')) checkPoster(entity, context);
  },
  examples: {
    bad: [
      `
=== procedures/cool.ifu.yaml
kind: procedure
id: cool
steps:
  - {stage: cooling, applies_to_packaging: [pouch], aim: film-side}
                                                         ^^^^^^^^^ The thermometer is pointed at "film-side", but for pouch it belongs at "porous-side" by its own instruction.
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
cool_aim: porous-side
cool_aim_src: s4
statements:
  s4: {doc: PC-P4, rev: "2", page: 2, quote: "Measure the temperature on the porous side."}
`,
      `
=== posters/cooling.ifu.yaml
kind: poster
id: cooling
by_packaging:
  - {packaging: container, aim: lid-metal}
                                ^^^^^^^^^ The thermometer is pointed at "lid-metal", but for container it belongs at "vents" by the site (policy P-18).
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
=== site.ifu.yaml
kind: site
id: lakeside
cool_aims:
  - {packaging_type: rigid-container, aim: vents, src: policy P-18}
`,
      `
=== procedures/cool.ifu.yaml
kind: procedure
id: cool
packaging: container
steps:
  - {stage: cooling, aim: lid-metal}
                          ^^^^^^^^^ Whether this is the right aim can't be judged for container: neither its file nor the site says where to point the thermometer.
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
`,
    ],
    good: [
      `
=== procedures/cool.ifu.yaml
kind: procedure
id: cool
steps:
  - {stage: cooling, applies_to_packaging: [pouch], aim: porous-side}
=== packaging/pouch.ifu.yaml
kind: packaging
id: pouch
type: pouch
cool_aim: porous-side
`,
      `
=== posters/cooling.ifu.yaml
kind: poster
id: cooling
by_packaging:
  - {packaging: container, aim: vents}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
=== site.ifu.yaml
kind: site
id: lakeside
cool_aims:
  - {packaging_type: rigid-container, aim: vents, src: policy P-18}
`,
    ],
  },
});

function checkProcedure(procedure: EntityOf['procedure'], context: RuleContext): void {
  for (const step of procedure.steps?.items ?? []) {
    if (step.aim !== undefined) judge(step.aim, packagesOfStep(step, procedure, context.view), context);
  }
}

function checkPoster(poster: EntityOf['poster'], context: RuleContext): void {
  for (const line of poster.by_packaging?.items ?? []) {
    const packaging = line.packaging === undefined ? undefined : context.view.get('packaging', line.packaging.text);
    if (line.aim !== undefined && packaging !== undefined) judge(line.aim, [packaging], context);
  }
}

function judge(aim: Text, packages: readonly Packaging[], { view, report }: RuleContext): void {
  const decided = packages.map((packaging) => ({
    id: called('packaging', rootOfEntity(packaging).id, view),
    decision: coolAim(packaging, view.site()),
  }));
  const wrong = decided.flatMap(({ id, decision }) =>
    decision === undefined || decision.words.includes(aim.text) ? [] : [{ id, decision }],
  );
  const unknown = decided.filter(({ decision }) => decision === undefined).map(({ id }) => id);
  if (wrong.length > 0) {
    const words = new Set(decided.flatMap(({ decision }) => decision?.words ?? ['']));
    const [word] = words;
    report({
      at: aim.at,
      message: message.wrong(
        aim.text,
        wrong.map(({ id, decision }) => message.right(id, decision)),
      ),
      says: wrong.flatMap(({ decision }) => decision.says),
      related: wrong.map(({ id, decision }) => ({ at: decision.at, note: message.note(id) })),
      ...(words.size === 1 &&
        word !== undefined &&
        word !== '' && { fixes: [{ title: `Change to "${word}"`, edits: [{ span: aim.at.span, text: word }] }] }),
    });
  } else if (unknown.length > 0) {
    report({ at: aim.at, severity: 'advice', message: message.unjudged(listed(unknown)) });
  }
}
