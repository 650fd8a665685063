import type { PackagingStatement } from '../../model/entities/packaging-statement.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { passagesOf } from '../support/quoted-words.ts';
import { clearedWords, onlyWords, testedWith } from '../support/sterilizing-words.ts';
import type { Phrase } from '../support/wording.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  changed: (page: string, field: string) => `The page ${page}, but this is encoded as ${field}.`,
};

export const rule = defineRule({
  id: 'quote-relation-changed',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'Packaging that was tested, packaging that alone is allowed and packaging with a property are three different demands.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    for (const { packaging, src } of statementsIn(device)) {
      const { relation } = packaging;
      if (relation === undefined) continue;
      const passages = passagesOf(device, packaging, src);
      const meant = relations.filter(({ words }) => passages.some(({ quote }) => isMentioned(quote.text, words)));
      const [first] = meant;
      // A page that says several of these is read as it is encoded; tested against only has a rule of its own.
      if (first === undefined || meant.length > 1 || first.relation === relation.text) continue;
      const own = relations.find((one) => one.relation === relation.text);
      if (own === undefined || (first.relation !== 'requires_class' && relation.text !== 'requires_class')) continue;
      report({
        at: relation.at,
        message: message.changed(first.page, own.field),
        says: passages.map(({ statement }) => sayingOf(statement, statement.at)),
        does: relation.text,
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "In a double wrap or a rigid container cleared for the cycle."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, packaging: {relation: restricted_to, allowed: [double-wrap, rigid-container]}, src: s1}
                                                                ^^^^^^^^^^^^^ The page asks for packaging that is cleared for the cycle, but this is encoded as the only packaging allowed.
`,
      `
kind: device
id: eye-tip
statements:
  s1: {doc: ET-5, rev: "3", page: 8, quote: "Pack in a double wrap only."}
sterilization:
  any_of:
    - id: pv134
      modality: steam-prevac
      packaging: {relation: requires_class, allowed: [double-wrap], src: s1}
                            ^^^^^^^^^^^^^^ The page allows this packaging only, but this is encoded as any packaging of the class.
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "In a double wrap cleared for the cycle."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, packaging: {relation: requires_class, allowed: [double-wrap]}, src: s1}
`,
      `
kind: device
id: grasper
statements:
  s1: {doc: SK-1, rev: A, page: 4, quote: "Pack in a pouch or in double wrap."}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, packaging: {relation: restricted_to, allowed: [pouch, double-wrap]}, src: s1}
`,
    ],
  },
});

interface Relation {
  readonly relation: string;
  readonly words: readonly Phrase[];
  readonly page: string;
  readonly field: string;
}

const relations: readonly Relation[] = [
  {
    relation: 'requires_class',
    words: clearedWords,
    page: 'asks for packaging that is cleared for the cycle',
    field: 'any packaging of the class',
  },
  {
    relation: 'restricted_to',
    words: onlyWords,
    page: 'allows this packaging only',
    field: 'the only packaging allowed',
  },
  {
    relation: 'validated_with',
    words: testedWith,
    page: 'tells with what it was tested',
    field: 'packaging it was tested with',
  },
];

interface Cited {
  readonly packaging: PackagingStatement;
  readonly src: Citation | undefined;
}

function statementsIn(device: EntityOf['device']): readonly Cited[] {
  const cited: Cited[] = [];
  if (device.packaging !== undefined) cited.push({ packaging: device.packaging, src: device.packaging.src });
  for (const { packaging, src } of device.sterilization?.any_of?.items ?? [])
    if (packaging !== undefined) cited.push({ packaging, src });
  return cited;
}
