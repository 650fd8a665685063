import { nameOf, rootOfEntity } from '../../model/entity.ts';
import { fieldOf } from '../../model/walk.ts';
import { kinds } from '../../schema/kinds.ts';
import { defineRule } from '../rule.ts';

const message = {
  taken: (name: string, file: string) =>
    `The ${name} is already described in ${file}. Give this one another id, or remove one of the two.`,
};

export const rule = defineRule({
  id: 'duplicate-id',
  stage: 'file',
  severity: 'error',
  settledBy: 'educator',
  why: 'Two files under one name are two truths: only the first would be read.',
  source: 'logic',
  kinds,
  check(entity, { view, report }) {
    const { kind, id } = rootOfEntity(entity);
    const [first] = view.claimants(kind, id);
    if (first === undefined || first === entity) return;
    report({
      at: fieldOf(entity, 'id')?.at ?? entity.at,
      message: message.taken(nameOf(entity), rootOfEntity(first).file),
      related: [{ at: first.at, note: 'the first file with this id' }],
    });
  },
  examples: {
    bad: [
      `
=== a.ifu.yaml
kind: device
id: pale-forceps
=== b.ifu.yaml
kind: device
id: pale-forceps
    ^^^^^^^^^^^^ The device "pale-forceps" is already described in a.ifu.yaml. Give this one another id, or remove one of the two.
`,
      `
=== a.ifu.yaml
kind: water
id: RO-1
=== copy-of-a.ifu.yaml
kind: water
id: RO-1
    ^^^^ The water "RO-1" is already described in a.ifu.yaml. Give this one another id, or remove one of the two.
`,
    ],
    good: [
      `
=== a.ifu.yaml
kind: device
id: pale-forceps
=== b.ifu.yaml
kind: device
id: dark-forceps
`,
      `
=== a.ifu.yaml
kind: device
id: case-9
=== b.ifu.yaml
kind: packaging
id: case-9
`,
    ],
  },
});
