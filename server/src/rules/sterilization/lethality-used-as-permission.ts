import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { stepsOf } from '../support/steps.ts';
import { a0Words, lethalityWords } from '../support/sterilizing-words.ts';
import type { Phrase } from '../support/wording.ts';
import { isMentioned, saidIn } from '../support/wording.ts';

const message = {
  permission:
    'This takes a dose of heat for a permission. Equal kill is no equal instruction: only the maker can accept it.',
};

export const rule = defineRule({
  id: 'lethality-used-as-permission',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'manufacturer',
  why: 'F0 and A0 count what dies, not what the item stands, how it dries, or whether it was tested that way.',
  source: 'practice',
  kinds: ['procedure', 'waiver'],
  check(entity: AnyEntity, context) {
    const texts = isOfKind(entity, 'procedure')
      ? textsOf(entity)
      : isOfKind(entity, 'waiver')
        ? [entity.reason, entity.measure]
        : [];
    const quotes = isOfKind(entity, 'procedure') ? quotesIn(entity) : [];
    const phrases = phrasesHere(context);
    for (const text of texts) {
      const isSaid = text !== undefined && saidIn(text.text, phrases) !== undefined;
      if (!isSaid || quotes.some((quote) => isMentioned(quote, phrases))) continue;
      context.report({ at: text.at, message: message.permission, does: text.text });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: hotter
steps: [{stage: steam, do: sterilize}]
justification: F0 of 3 min at 134 exceeds 4 min at 132
               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ This takes a dose of heat for a permission. Equal kill is no equal instruction: only the maker can accept it.
`,
      `
kind: waiver
id: WV-9
rule: a0-inadequate
scope: [W1]
reason: The A0 of the drying makes up for it.
        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ This takes a dose of heat for a permission. Equal kill is no equal instruction: only the maker can accept it.
owner: manager
expires: 2025-12-31
`,
    ],
    good: [
      `
kind: procedure
id: by-card
steps: [{stage: steam, do: sterilize, note: "the cycle of the card, no calculation with F0"}]
justification: The instruction names the cycle.
`,
      `
=== waivers/WV-9.ifu.yaml
kind: waiver
id: WV-9
rule: washer-phase-short-or-cool
scope: [W1]
reason: The pair on the page is replaced by its A0, as policy P-14 allows.
owner: manager
expires: 2025-12-31
=== site.ifu.yaml
kind: site
id: lakeside
policies: {accept_a0: true, accept_a0_src: policy P-14}
`,
    ],
  },
});

/** Where the department has adopted A0 with a source, speaking of it is no fault. */
function phrasesHere({ view }: RuleContext): readonly Phrase[] {
  const policies = view.site()?.policies;
  const accepted = policies?.accept_a0?.on === true && policies.accept_a0_src !== undefined;
  return accepted ? lethalityWords : [...lethalityWords, ...a0Words];
}

function textsOf(procedure: EntityOf['procedure']): readonly (Text | undefined)[] {
  const { justification, reason, note, claims } = procedure;
  const steps = stepsOf(procedure).flatMap((step) => [step.note, step.why]);
  return [justification, reason, note, ...(claims?.items.map((claim) => claim.text) ?? []), ...steps];
}

/** What the procedure quotes from a page: where the maker speaks of the dose, it is accepted by the maker. */
function quotesIn({ statements }: EntityOf['procedure']): readonly string[] {
  return [...(statements?.rows.values() ?? [])].map(({ value }) => value.quote?.text ?? '');
}
