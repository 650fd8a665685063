import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Rec } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { fieldOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';
import { passagesOf, sourceOf } from '../support/quoted-words.ts';
import { onlyWords } from '../support/sterilizing-words.ts';
import type { Phrase } from '../support/wording.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  absent: 'This is encoded as forbidden, but the sentence that is cited forbids nothing. Look at the page again.',
};

/** Ways to forbid without a "not". */
const forbidding: readonly Phrase[] = [
  ...onlyWords,
  ...[
    ['avoid*'],
    ['forbid*'],
    ['forbidden'],
    ['prohibit*'],
    ['unsuitable'],
    ['incompatible'],
    ['instead', 'of'],
    ['rather', 'than'],
  ],
  ...[['single', 'use'], ['pictogram'], ['damage*'], ['above'], ['below'], ['exceed*'], ['discard'], ['ban*']],
  ...[['vermeiden'], ['verboten'], ['untersagt'], ['ungeeignet'], ['éviter'], ['interdit*'], ['proscri*']],
];

export const rule = defineRule({
  id: 'prohibition-not-in-quote',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'Either the sentence lost its "not" when it was copied, or the department forbids what the maker allows.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    for (const record of prohibitionsIn(device)) {
      const src = sourceOf(record);
      const passages = src === undefined ? [] : passagesOf(device, record, src);
      if (passages.length === 0 || passages.some(({ quote, reading }) => forbids(quote.text, reading.negations.length)))
        continue;
      report({
        at: record.at,
        message: message.absent,
        says: passages.map(({ statement }) => sayingOf(statement, statement.at)),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: camera-head
statements:
  s1: {doc: CH-8, rev: G, page: 3, quote: "Clean in an ultrasonic bath."}
ultrasonic: {use: forbidden, src: s1}
^^^^^^^^^^ This is encoded as forbidden, but the sentence that is cited forbids nothing. Look at the page again.
`,
      `
kind: device
id: knee-system
statements:
  s1: {doc: KS-1, rev: D, page: 6, quote: "Use chlorine bleach."}
  s2: {doc: KS-1, rev: D, page: 6, quote: "Do not use saline."}
not:
  - {what: hypochlorite, src: s1}
     ^^^^ This is encoded as forbidden, but the sentence that is cited forbids nothing. Look at the page again.
  - {what: saline, src: s2}
`,
    ],
    good: [
      `
kind: device
id: camera-head
statements:
  s1: {doc: CH-8, rev: G, page: 3, quote: "Do not clean ultrasonically."}
  s2: {doc: CH-8, rev: G, page: 4, quote: "Clean by hand only."}
ultrasonic: {use: forbidden, src: s1}
mechanical: {use: forbidden, src: s2}
`,
      `
kind: device
id: light-guide
statements:
  s1: {doc: LG-1, rev: A, page: 2, lang: fr, quote: "Éviter les produits alcalins."}
  s2: {doc: LG-1, rev: A, page: 2, quote: "[pictogram: no immersion]"}
not: [{what: alkaline, src: s1}]
immersion: {use: forbidden, src: s2}
`,
    ],
  },
});

function forbids(quote: string, negations: number): boolean {
  return negations > 0 || isMentioned(quote, negating) || isMentioned(quote, forbidding);
}

const negating: readonly Phrase[] = [
  ...[['no'], ['not'], ['never'], ['without'], ['nothing'], ['none'], ['neither']],
  ...[['kein*'], ['nicht'], ['nie*'], ['ohne'], ['ne'], ['pas'], ['jamais'], ['sans'], ['aucun*']],
];

function prohibitionsIn(device: EntityOf['device']): readonly (Rec & { readonly src?: Citation })[] {
  return partsOf(device).records.filter((record) => {
    const use = fieldOf(record, 'use');
    return (use?.node === 'text' && use.text === 'forbidden') || record.at.parent?.key === 'not';
  });
}
