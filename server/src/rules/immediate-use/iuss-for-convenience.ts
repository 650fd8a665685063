import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { immediateUsePlace } from '../support/iuss.ts';
import { listed } from '../support/lists.ts';
import { convenience } from '../support/word-lists.ts';
import { saidIn } from '../support/wording.ts';

const message = {
  one: (reason: string) =>
    `Immediate use is allowed for “${reason}”. That is a shortage or a plan that failed, not an emergency of this patient.`,
  does: (sets: string) => `In stock: ${sets}.`,
};

export const rule = defineRule({
  id: 'iuss-for-convenience',
  stage: 'immediate-use',
  severity: 'warning',
  settledBy: 'manager',
  why: 'Immediate use for lack of a set hides the shortage that causes it, and the risk becomes routine.',
  source: 'guideline',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    if (immediateUsePlace(procedure, view) === undefined) return;
    const [first, ...others] = reasonsOf(procedure).filter((reason) => saidIn(reason.text, convenience) !== undefined);
    if (first === undefined) return;
    const stock = stockOf(procedure, view);
    report({
      at: first.at,
      message: message.one(first.text),
      ...(stock.length > 0 && { does: message.does(listed(stock)) }),
      related: others.map((reason) => ({ at: reason.at, note: 'this reason too' })),
    });
  },
  examples: {
    bad: [
      `
kind: procedure
id: turnover
context: iuss
reasons: [late-loaner, one-set-two-cases]
          ^^^^^^^^^^^ Immediate use is allowed for “late-loaner”. That is a shortage or a plan that failed, not an emergency of this patient.
`,
      `
=== procedures/second-case.ifu.yaml
kind: procedure
id: second-case
context: iuss
applies_to_sets: [hand-tray]
reason: There is only one set and two cases follow each other.
        ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Immediate use is allowed for “There is only one set and two cases follow each other.”. That is a shortage or a plan that failed, not an emergency of this patient.
=== sets/hand-tray.ifu.yaml
kind: set
id: hand-tray
stock: 1
`,
    ],
    good: [
      `
kind: procedure
id: drop
context: iuss
reasons: [dropped-item]
`,
      `
kind: procedure
id: loaners
context: terminal
reasons: [late-loaner]
`,
    ],
  },
});

function reasonsOf(procedure: EntityOf['procedure']): readonly Text[] {
  const { reasons, reason, justification } = procedure;
  return [...(reasons?.items ?? []), reason, justification].filter((text) => text !== undefined);
}

/** How many there are of the sets it is for: what a request for another set begins with. */
function stockOf(procedure: EntityOf['procedure'], view: LibraryView): readonly string[] {
  return (procedure.applies_to_sets?.items ?? []).flatMap(({ text }) => {
    const stock = view.get('set', text)?.stock;
    return stock === undefined ? [] : [`${stock.text} of "${text}"`];
  });
}
