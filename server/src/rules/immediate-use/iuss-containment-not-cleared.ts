import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { immediateUseOfSet, immediateUsePlace } from '../support/iuss.ts';
import { stepsOf } from '../support/steps.ts';

type Packaging = EntityOf['packaging'];

const message = {
  unknown: (name: string) =>
    `No packaging file says that "${name}" may go through immediate use and be carried to the field afterwards.`,
  notFor: (name: string) =>
    `The instruction of "${name}" covers no immediate use: nothing shows that it keeps its contents covered on the way to the field.`,
};

export const rule = defineRule({
  id: 'iuss-containment-not-cleared',
  stage: 'immediate-use',
  severity: 'error',
  settledBy: 'manager',
  why: 'What leaves the sterilizer in an open pan, or in a container made for other cycles, is lost on the way to the field.',
  source: 'guideline',
  kinds: ['procedure', 'set'],
  check(entity: AnyEntity, { view, report }) {
    for (const name of containments(entity, view)) {
      const packaging = view.get('packaging', name.text);
      if (packaging === undefined && view.exists('packaging', name.text)) continue;
      if (packaging !== undefined && isForImmediateUse(packaging)) continue;
      report({
        at: name.at,
        message: packaging === undefined ? message.unknown(name.text) : message.notFor(name.text),
        says: packaging === undefined ? [] : scopeOf(packaging),
        ...(packaging !== undefined && {
          related: [{ at: (packaging.validated ?? packaging).at, note: 'what the packaging is made for' }],
        }),
      });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: drop
context: iuss
packaging: open-pan
           ^^^^^^^^ No packaging file says that "open-pan" may go through immediate use and be carried to the field afterwards.
steps:
  - {stage: steam}
`,
      `
=== sets/single-drill.ifu.yaml
kind: set
id: single-drill
context: iuss
members:
  - {device: power-handpiece, qty: 1}
packaging: tall-container
           ^^^^^^^^^^^^^^ The instruction of "tall-container" covers no immediate use: nothing shows that it keeps its contents covered on the way to the field.
=== packaging/tall-container.ifu.yaml
kind: packaging
id: tall-container
type: rigid-container
validated:
  - {modality: steam-prevac, context: terminal, src: s1}
statements:
  s1: {doc: TC-2, rev: B, page: 4, quote: "For terminal pre-vacuum cycles."}
=== devices/power-handpiece.ifu.yaml
kind: device
id: power-handpiece
`,
    ],
    good: [
      `
=== procedures/drop.ifu.yaml
kind: procedure
id: drop
context: iuss
packaging: flash-case
steps:
  - {stage: packaging, do: pack, packaging: flash-case}
=== packaging/flash-case.ifu.yaml
kind: packaging
id: flash-case
type: iuss-container
validated:
  - {modality: steam-prevac, context: iuss}
`,
      `
kind: procedure
id: evening-load
context: terminal
packaging: open-pan
`,
    ],
  },
});

/** Each packaging that goes through immediate use here, once. */
function containments(entity: AnyEntity, view: LibraryView): readonly Text[] {
  if (isOfKind(entity, 'set')) {
    return entity.packaging === undefined || immediateUseOfSet(entity, view) === undefined ? [] : [entity.packaging];
  }
  if (!isOfKind(entity, 'procedure') || immediateUsePlace(entity, view) === undefined) return [];
  const names = new Map<string, Text>();
  for (const name of [entity.packaging, ...stepsOf(entity).map((step) => step.packaging)]) {
    if (name !== undefined && !names.has(name.text)) names.set(name.text, name);
  }
  return [...names.values()];
}

function isForImmediateUse(packaging: Packaging): boolean {
  return packaging.validated?.items.some(({ context }) => context?.text === 'iuss') === true;
}

function scopeOf(packaging: Packaging): readonly Saying[] {
  return (packaging.validated?.items ?? []).flatMap(({ src }) => sayingsOf(packaging, src)).slice(0, 3);
}
