import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { ownValidation, processWords } from '../support/word-lists.ts';
import { isMentioned, saidIn } from '../support/wording.ts';

const message = {
  us: (words: string) =>
    `“${words}”: a department can verify that it follows an instruction, but a changed instruction can be validated only by its manufacturer. Ask the maker, or follow the page.`,
  iso: (words: string) =>
    `“${words}”: a department can validate that its machine delivers the process as instructed, but not an instruction that it has changed. Ask the maker, or follow the page.`,
  does: (text: string) => `The file says: “${text}”.`,
};

export const rule = defineRule({
  id: 'validation-claimed-by-department',
  stage: 'governance',
  severity: 'error',
  settledBy: 'manufacturer',
  why: 'Whoever changes an instruction would have to show what its manufacturer has shown, with tests that no department has.',
  source: 'standard',
  kinds: ['procedure', 'waiver'],
  check(entity: AnyEntity, { view, report }) {
    const vocabulary = view.site()?.vocabulary?.text ?? 'us';
    const claims = textsOf(entity).flatMap((text) => {
      const words = saidIn(text.text, ownValidation);
      // In ISO vocabulary, validating the process in one's own machine is a department's own work.
      const isProcess = vocabulary === 'iso' && isMentioned(text.text, processWords);
      return words === undefined || isProcess ? [] : [{ text, words }];
    });
    const [first, ...others] = claims;
    if (first === undefined) return;
    report({
      at: first.text.at,
      message: message[vocabulary](first.words),
      does: message.does(first.text.text),
      related: others.map(({ text }) => ({ at: text.at, note: 'said here too' })),
    });
  },
  examples: {
    bad: [
      `
kind: waiver
id: w1
rule: cycle-dry-short
reason: "we validated 20 min in-house"
        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ “we validated”: a department can verify that it follows an instruction, but a changed instruction can be validated only by its manufacturer. Ask the maker, or follow the page.
`,
      `
=== procedures/one-cycle.ifu.yaml
kind: procedure
id: one-cycle
overrides: {dry: 15 min}
justification: The shorter drying was validated by our department.
               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ “validated by our”: a department can validate that its machine delivers the process as instructed, but not an instruction that it has changed. Ask the maker, or follow the page.
claims:
  - {text: "Our own validation covers every set."}
=== site.ifu.yaml
kind: site
id: sea-view
vocabulary: iso
`,
    ],
    good: [
      `
kind: procedure
id: one-cycle
justification: The manufacturer validated both cycles; we verified ours.
claims:
  - {text: "We have not validated anything ourselves."}
`,
      `
=== procedures/release.ifu.yaml
kind: procedure
id: release
justification: We validated the process in this sterilizer (IQ, OQ, PQ).
=== site.ifu.yaml
kind: site
id: sea-view
vocabulary: iso
`,
    ],
  },
});

/** Every sentence by which a file justifies itself. */
function textsOf(entity: AnyEntity): readonly Text[] {
  const texts: (Text | undefined)[] = [];
  if (isOfKind(entity, 'waiver')) texts.push(entity.reason, entity.measure);
  if (isOfKind(entity, 'procedure')) {
    texts.push(entity.justification, entity.reason, entity.note);
    for (const claim of entity.claims?.items ?? []) texts.push(claim.text);
    for (const step of entity.steps?.items ?? []) texts.push(step.note, step.why);
  }
  return texts.filter((text) => text !== undefined);
}
