import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Place } from '../../model/node.ts';
import { pathOf } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { fieldOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';
import { proceduresFor, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  open: (field: string) =>
    `The page leaves "${field}" to the department, and no procedure for this device answers it. Write one, or name the field under "answers" of the procedure that does.`,
};

export const rule = defineRule({
  id: 'deferred-to-department-undefined',
  stage: 'governance',
  severity: 'error',
  settledBy: 'manager',
  why: 'The page points to the department and the department to the page, so that nobody has decided.',
  source: 'logic',
  kinds: ['device'],
  check(device, { view, report }) {
    const deferred = deferredIn(device);
    if (deferred.length === 0) return;
    const answers = [...proceduresFor(device, view)].map(answersOf);
    for (const { at, path, src } of deferred) {
      if (answers.some((one) => isAnswered(path, one))) continue;
      report({ at, message: message.open(path), says: sayingsOf(device, src) });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: d
storage: {defers_to: department, src: s9}
                     ^^^^^^^^^^ The page leaves "storage" to the department, and no procedure for this device answers it. Write one, or name the field under "answers" of the procedure that does.
statements:
  s9: {doc: DE-1, rev: A, page: 9, quote: "Store according to the procedure of the hospital."}
`,
      `
=== devices/scope.ifu.yaml
kind: device
id: scope
point_of_use:
  max_delay: {defers_to: department, src: s2}
                         ^^^^^^^^^^ The page leaves "point_of_use.max_delay" to the department, and no procedure for this device answers it. Write one, or name the field under "answers" of the procedure that does.
statements:
  s2: {doc: SC-1, rev: A, page: 3, quote: "The delay before cleaning follows the hospital's protocol."}
=== procedures/storage.ifu.yaml
kind: procedure
id: storage
applies_to_all: true
answers: [storage]
`,
    ],
    good: [
      `
=== devices/d.ifu.yaml
kind: device
id: d
storage: {defers_to: department, src: s9}
statements:
  s9: {doc: DE-1, rev: A, page: 9, quote: "Store according to the procedure of the hospital."}
=== procedures/storage.ifu.yaml
kind: procedure
id: storage
applies_to_all: true
answers: [storage]
`,
      `
=== devices/scope.ifu.yaml
kind: device
id: scope
drying: {defers_to: department}
=== procedures/scope.ifu.yaml
kind: procedure
id: scope-procedure
applies_to: [scope]
steps: [{stage: drying, do: dry, endpoint: completely dry}]
`,
    ],
  },
});

interface Deferred {
  readonly at: Place;
  readonly path: string;
  readonly src: Citation | undefined;
}

function deferredIn(device: Device): readonly Deferred[] {
  const found: Deferred[] = [];
  for (const node of partsOf(device).records) {
    const to = fieldOf(node, 'defers_to');
    if (to?.node !== 'text' || to.text !== 'department') continue;
    const src = fieldOf(node, 'src');
    found.push({ at: to.at, path: pathOf(node.at), src: src?.node === 'citation' ? src : undefined });
  }
  return found;
}

/** What a procedure answers: the fields it names, and the stages it has steps for. */
function answersOf(procedure: EntityOf['procedure']): ReadonlySet<string> {
  const stages = stepsOf(procedure).map(({ stage }) => stage?.text.replaceAll('-', '_'));
  const answers = (procedure.answers?.items ?? []).map(({ text }) => text);
  return new Set([...answers, ...stages].filter((text) => text !== undefined));
}

/** `storage` answers `storage.time` too. */
function isAnswered(path: string, answers: ReadonlySet<string>): boolean {
  const parts = path.split('.');
  return parts.some((_, index) => answers.has(parts.slice(0, index + 1).join('.')));
}
