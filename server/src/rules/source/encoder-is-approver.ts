import type { Review } from '../../model/entities/review.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { kinds } from '../../schema/kinds.ts';
import { defineRule } from '../rule.ts';

const message = {
  approver: (role: string) =>
    `${role} encoded this file and approved it too. A second person compares the quotes with the fields.`,
  reader: (role: string) =>
    `${role} encoded this file and is its second reader too. A second person compares the quotes with the fields.`,
};

export const rule = defineRule({
  id: 'encoder-is-approver',
  stage: 'source',
  severity: 'error',
  settledBy: 'manager',
  why: 'Nobody sees their own slip of the fingers.',
  source: 'practice',
  kinds,
  check(entity: AnyEntity & { readonly review?: Review }, { report }) {
    const { encoded_by, approved_by, second_reader } = entity.review ?? {};
    if (encoded_by === undefined) return;
    const related = [{ at: encoded_by.at, note: 'encoded by' }];
    const role = encoded_by.text;
    if (isSame(approved_by, encoded_by)) report({ at: approved_by.at, message: message.approver(role), related });
    if (isSame(second_reader, encoded_by)) report({ at: second_reader.at, message: message.reader(role), related });
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
review: {encoded_by: educator-1, approved_by: educator-1, on: 2025-03-02}
                                              ^^^^^^^^^^ educator-1 encoded this file and approved it too. A second person compares the quotes with the fields.
`,
      `
kind: packaging
id: P9-wrap
review:
  encoded_by: educator-2
  approved_by: manager
  second_reader: Educator-2
                 ^^^^^^^^^^ educator-2 encoded this file and is its second reader too. A second person compares the quotes with the fields.
  on: 2025-03-02
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
review: {encoded_by: educator-1, approved_by: educator-2, on: 2025-03-02}
`,
      `
kind: device
id: pale-forceps
review: {encoded_by: educator-1, on: 2025-03-02}
`,
    ],
  },
});

function isSame(one: Text | undefined, other: Text): one is Text {
  return one !== undefined && one.text.trim().toLowerCase() === other.text.trim().toLowerCase();
}
