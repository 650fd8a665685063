import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { deciding, discarding, holdingApart, keepingMoist, telling } from '../support/cleaning-words.ts';
import { listed } from '../support/lists.ts';
import { isForPrions } from '../support/prion-procedures.ts';
import { isAct, stepsOf } from '../support/steps.ts';
import type { Phrase } from '../support/wording.ts';
import { isMentioned } from '../support/wording.ts';

type Procedure = EntityOf['procedure'];

const message = {
  none: 'The department asks for a procedure for suspected prion disease, and no procedure in force is one.',
  lacking: (parts: string) => `The procedure for suspected prion disease does not settle ${parts}.`,
};

export const rule = defineRule({
  id: 'prion-branch-missing',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'infection-prevention',
  why: 'Ordinary processing does not inactivate prions and spreads them.',
  source: 'guideline',
  kinds: ['site', 'procedure'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'site')) checkSite(entity, context);
    else if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
  },
  examples: {
    bad: [
      `
kind: site
id: lakeside
required_procedures: [prion]
                      ^^^^^ The department asks for a procedure for suspected prion disease, and no procedure in force is one.
procedures: [iuss, loaner]
`,
      `
kind: procedure
id: prion
when: prion-suspected
steps:
^^^^^ The procedure for suspected prion disease does not settle how items are kept moist, what is discarded and when and who decides.
  - {stage: point-of-use, do: notify, who: infection-prevention}
  - {stage: quarantine, do: quarantine}
`,
      `
=== site.ifu.yaml
kind: site
id: lakeside
required_procedures: [iuss, prion]
                            ^^^^^ The department asks for a procedure for suspected prion disease, and no procedure in force is one.
=== procedures/iuss.ifu.yaml
kind: procedure
id: urgent
topics: [iuss]
`,
    ],
    good: [
      `
=== site.ifu.yaml
kind: site
id: lakeside
required_procedures: [prion]
=== procedures/prion.ifu.yaml
kind: procedure
id: prion
when: prion-suspected
steps:
  - {stage: point-of-use, do: notify, who: infection-prevention}
  - {stage: point-of-use, do: keep-moist, agent: water}
  - {stage: quarantine, do: quarantine}
  - {stage: quarantine, do: decide, who: infection-prevention}
  - {stage: quarantine, do: discard, note: when the diagnosis is confirmed}
`,
      `
kind: site
id: clinic
required_procedures: [loaner]
`,
    ],
  },
});

function checkSite(site: EntityOf['site'], { view, report }: RuleContext): void {
  const wanted = site.required_procedures?.items.find((topic) => topic.text === 'prion');
  if (wanted === undefined) return;
  const inForce = site.procedures === undefined ? undefined : new Set(site.procedures.items.map((name) => name.text));
  const found = view
    .all('procedure')
    .some((procedure) => isForPrions(procedure) && inForce?.has(rootOfEntity(procedure).id) !== false);
  if (!found) report({ at: wanted.at, message: message.none });
}

interface Part {
  readonly words: string;
  readonly acts: readonly Phrase[];
}

/** What such a procedure has to settle. That nothing goes to a shared sink or washer before the decision is a rule of its own. */
const parts: readonly Part[] = [
  { words: 'who is told', acts: telling },
  { words: 'how items are kept moist', acts: keepingMoist },
  { words: 'how they are held apart', acts: holdingApart },
  { words: 'what is discarded and when', acts: discarding },
];

function checkProcedure(procedure: Procedure, { report }: RuleContext): void {
  if (!isForPrions(procedure)) return;
  const lacking = parts.filter(({ acts }) => !isSettled(procedure, acts)).map(({ words }) => words);
  const decides = stepsOf(procedure).some((step) => step.who !== undefined && isAct(step, deciding));
  if (!decides) lacking.push('who decides');
  const at = (procedure.steps ?? procedure.when ?? procedure.id ?? procedure).at;
  if (lacking.length > 0) report({ at, message: message.lacking(listed(lacking)) });
}

function isSettled(procedure: Procedure, acts: readonly Phrase[]): boolean {
  return stepsOf(procedure).some(
    (step) => isAct(step, acts) || (step.note !== undefined && isMentioned(step.note.text, acts)),
  );
}
