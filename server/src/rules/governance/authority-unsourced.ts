import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Citation, Place, Text } from '../../model/node.ts';
import { rowOf } from '../../model/walk.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import { authorities } from '../support/word-lists.ts';
import { saidIn } from '../support/wording.ts';

type Procedure = EntityOf['procedure'];

const message = {
  none: (words: string) =>
    `“${words}” names no document. Give the document, its edition and the clause, or say it as the department's own reason.`,
  lacking: (words: string, source: string, what: string) =>
    `“${words}” rests on ${source}, which is given without ${what}.`,
};

export const rule = defineRule({
  id: 'authority-unsourced',
  stage: 'governance',
  severity: 'warning',
  settledBy: 'educator',
  why: 'What nobody can look up cannot be checked, and passes for a rule because it sounds like one.',
  source: 'practice',
  kinds: ['procedure', 'poster'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'poster') && (entity.sources?.items.length ?? 0) === 0) {
      checkTexts([entity.claim, entity.text], context);
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: p
claims:
  - {text: all standards require this}
     ^^^^ “standards require” names no document. Give the document, its edition and the clause, or say it as the department's own reason.
`,
      `
kind: procedure
id: soak-rule
justification: Surveyors expect an hour of soaking.
               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ “surveyors” names no document. Give the document, its edition and the clause, or say it as the department's own reason.
`,
      `
kind: procedure
id: indicators
claims:
  - {text: the guideline wants one in each tray, src: g1}
     ^^^^ “guideline” rests on "g1", which is given without its edition and the clause.
sources:
  - {id: g1, doc: LG-GUIDE-4}
`,
    ],
    good: [
      `
kind: procedure
id: p
claims:
  - {text: the guideline wants one in each tray, src: g1}
sources:
  - {id: g1, doc: LG-GUIDE-4, edition: "2024", clause: "5.2"}
`,
      `
kind: procedure
id: p
justification: Our own reason is that a dry tray is easier to check.
`,
    ],
  },
});

function checkProcedure(procedure: Procedure, context: RuleContext): void {
  for (const { text, src, at } of procedure.claims?.items ?? []) {
    const words = text === undefined ? undefined : saidIn(text.text, authorities);
    if (words === undefined) continue;
    const fault = faultOf(procedure, src, words);
    if (fault !== undefined) context.report({ at, message: fault });
  }
  if ((procedure.sources?.items.length ?? 0) > 0) return;
  const notes = (procedure.steps?.items ?? []).flatMap((step) => (step.src === undefined ? [step.note, step.why] : []));
  checkTexts([procedure.justification, procedure.reason, procedure.note, ...notes], context);
}

function checkTexts(texts: readonly (Text | undefined)[], { report }: RuleContext): void {
  const claims: { readonly at: Place; readonly words: string }[] = [];
  for (const text of texts) {
    const words = text === undefined ? undefined : saidIn(text.text, authorities);
    if (text !== undefined && words !== undefined) claims.push({ at: text.at, words });
  }
  const [first, ...others] = claims;
  if (first === undefined) return;
  report({
    at: first.at,
    message: message.none(first.words),
    related: others.map(({ at }) => ({ at, note: 'said here too' })),
  });
}

/** A source is complete with document, edition and clause. Statements quote one with its page. */
function faultOf(procedure: Procedure, src: Citation | undefined, words: string): string | undefined {
  if (src === undefined || (src.statements.length === 0 && src.inline?.doc === undefined)) return message.none(words);
  for (const { text: id } of src.statements) {
    if (rowOf(procedure.statements, id) !== undefined) continue;
    const source = procedure.sources?.items.find((one) => one.id?.text === id);
    if (source === undefined) return message.none(words);
    const lacking = [
      source.doc === undefined ? 'its document' : '',
      source.edition === undefined ? 'its edition' : '',
      source.clause === undefined ? 'the clause' : '',
    ].filter((part) => part !== '');
    if (lacking.length > 0) return message.lacking(words, `"${id}"`, listed(lacking));
  }
  return undefined;
}
