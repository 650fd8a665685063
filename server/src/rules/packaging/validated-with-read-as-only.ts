import type { PackagingStatement } from '../../model/entities/packaging-statement.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { onlyWords, testedWith } from '../support/sterilizing-words.ts';
import { isMentioned } from '../support/wording.ts';

type Relation = NonNullable<PackagingStatement['relation']>['text'];

const message = {
  only: 'The page tells what it was tested with ("validated"), and the file makes a restriction of it. A test describes; it forbids no other packaging.',
  test: 'The page allows only this packaging, and the file makes a mere test report of it.',
  fix: (relation: Relation) => `Change to ${relation}`,
};

export const rule = defineRule({
  id: 'validated-with-read-as-only',
  stage: 'packaging',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Read too strictly, packaging that would do is refused; read too loosely, packaging that was never allowed is used.',
  source: 'practice',
  fix: 'Writes the relation that the words of the page mean.',
  kinds: ['device'],
  check(device, { report }) {
    for (const { statement, src } of statementsIn(device)) {
      const { relation } = statement;
      const sayings = sayingsOf(device, statement.src ?? src);
      const meant = relation === undefined ? undefined : meantBy(sayings, relation.text);
      if (relation === undefined || meant === undefined) continue;
      report({
        at: relation.at,
        message: meant === 'validated_with' ? message.only : message.test,
        says: sayings,
        fixes: [{ title: message.fix(meant), edits: [{ span: relation.at.span, text: meant }] }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: hook
packaging: {relation: restricted_to, allowed: [double-wrap], src: s5}
                      ^^^^^^^^^^^^^ The page tells what it was tested with ("validated"), and the file makes a restriction of it. A test describes; it forbids no other packaging.
statements:
  s5: {doc: HO-1, rev: A, page: 5, quote: "Validated using a double wrap."}
`,
      `
kind: device
id: grasper
sterilization:
  any_of:
    - id: pv134
      modality: steam-prevac
      packaging: {relation: validated_with, allowed: [case-SK-9]}
                            ^^^^^^^^^^^^^^ The page allows only this packaging, and the file makes a mere test report of it.
      src: s14
statements:
  s14: {doc: SK-210, rev: F, page: 12, quote: "Sterilize only in the bracket case."}
`,
    ],
    good: [
      `
kind: device
id: hook
packaging: {relation: validated_with, allowed: [double-wrap], src: s5}
statements:
  s5: {doc: HO-1, rev: A, page: 5, quote: "Validated using a double wrap."}
`,
      `
kind: device
id: tip
packaging: {relation: restricted_to, allowed: [double-wrap], src: s5}
statements:
  s5: {doc: TI-1, rev: A, page: 5, quote: "Validated with a double wrap. Use only a double wrap."}
`,
    ],
  },
});

interface Cited {
  readonly statement: PackagingStatement;
  readonly src: Citation | undefined;
}

function statementsIn(device: EntityOf['device']): readonly Cited[] {
  const cited: Cited[] = [];
  if (device.packaging !== undefined) cited.push({ statement: device.packaging, src: device.packaging.src });
  for (const { packaging, src } of device.sterilization?.any_of?.items ?? [])
    if (packaging !== undefined) cited.push({ statement: packaging, src });
  return cited;
}

/** The other relation, where the words of the page mean that one alone. A page that says both is read as it is encoded. */
function meantBy(sayings: readonly Saying[], relation: Relation): Relation | undefined {
  const isTest = sayings.some(({ quote }) => isMentioned(quote, testedWith));
  const isOnly = sayings.some(({ quote }) => isMentioned(quote, onlyWords));
  if (isTest === isOnly) return undefined;
  if (relation === 'restricted_to' && isTest) return 'validated_with';
  return relation === 'validated_with' && isOnly ? 'restricted_to' : undefined;
}
