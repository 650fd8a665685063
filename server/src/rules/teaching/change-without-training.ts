import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { defineRule } from '../rule.ts';

type Document = EntityOf['document'];
type Training = EntityOf['training'];

const message = {
  none: (doc: string, change: string) =>
    `${doc} ${change}, and nothing says who has to learn it. Add a training file for it, with the roles and a date.`,
  nobody: (doc: string, change: string, training: string) =>
    `${doc} ${change}, but the training "${training}" names nobody who has to learn it.`,
};

export const rule = defineRule({
  id: 'change-without-training',
  stage: 'teaching',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A new page that nobody has read changes nothing at the bench.',
  source: 'standard',
  kinds: ['document'],
  check(document, { view, report }) {
    const { diff_class: change, status } = document;
    const words = changes.get(change?.text ?? '');
    if (change === undefined || words === undefined || (status !== undefined && status.text !== 'current')) return;
    const trainings = trainingsFor(document, view);
    if (trainings.some(({ readers }) => (readers?.items.length ?? 0) > 0)) return;
    const name = `${document.doc?.text ?? rootOfEntity(document).id} ${document.rev?.text ?? ''}`.trim();
    const [empty] = trainings;
    report({
      at: change.at,
      message: empty === undefined ? message.none(name, words) : message.nobody(name, words, rootOfEntity(empty).id),
      ...(empty !== undefined && { related: [{ at: empty.at, note: 'the training without readers' }] }),
    });
  },
  examples: {
    bad: [
      `
kind: document
id: SK-210-F
doc: SK-210
rev: F
status: current
diff_class: new-prohibition
            ^^^^^^^^^^^^^^^ SK-210 F forbids something that was allowed, and nothing says who has to learn it. Add a training file for it, with the roles and a date.
`,
      `
=== documents/SC-3-D.ifu.yaml
kind: document
id: SC-3-D
doc: SC-3
rev: D
diff_class: stricter
            ^^^^^^^^ SC-3 D is stricter than the revision before, but the training "scissors-D" names nobody who has to learn it.
=== training/scissors.ifu.yaml
kind: training
id: scissors-D
topic: scissors, revision D
doc: SC-3
rev: D
`,
    ],
    good: [
      `
=== documents/SK-210-F.ifu.yaml
kind: document
id: SK-210-F
doc: SK-210
rev: F
diff_class: new-prohibition
=== training/SK-210-F.ifu.yaml
kind: training
id: SK-210-F-told
doc: SK-210
rev: F
readers: [{role: technician, due: 2025-04-01, done: 0, of: 18}]
`,
      `
kind: document
id: SK-210-F
doc: SK-210
rev: F
diff_class: re-citation
`,
    ],
  },
});

/** Changes after which someone has to do something else than before. */
const changes: ReadonlyMap<string, string> = new Map([
  ['stricter', 'is stricter than the revision before'],
  ['different', 'says something else than the revision before'],
  ['new-prohibition', 'forbids something that was allowed'],
  ['option-removed', 'takes back a way that was offered'],
  ['step-added', 'adds a step'],
  ['step-reordered', 'puts steps in another order'],
]);

/** Those the document names, and those that name it. */
function trainingsFor(document: Document, view: LibraryView): readonly Training[] {
  const { training: named, doc, rev } = document;
  const found = new Set<Training>(view.users('document', rootOfEntity(document).id, 'training'));
  const own = named === undefined ? undefined : view.get('training', named.text);
  if (own !== undefined) found.add(own);
  for (const training of doc === undefined ? [] : view.users('document-number', doc.text, 'training')) {
    if (training.rev === undefined || training.rev.text === rev?.text) found.add(training);
  }
  return [...found];
}
