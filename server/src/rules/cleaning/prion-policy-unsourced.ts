import type { EntityOf } from '../../model/entities.generated.ts';
import { defineRule } from '../rule.ts';
import { isForPrions } from '../support/prion-procedures.ts';
import { infectionPreventers } from '../support/word-lists.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  lacking: (parts: string) => `This procedure for suspected prion disease ${parts}.`,
  guideline: 'names no guideline it rests on',
  tissue: 'does not say which tissues carry which risk',
  owner: 'is not owned or put in force by infection prevention',
};

export const rule = defineRule({
  id: 'prion-policy-unsourced',
  stage: 'cleaning',
  severity: 'warning',
  settledBy: 'infection-prevention',
  why: 'Published guidance goes by tissue and differs between countries, so a rule without its source may be another country’s.',
  source: 'guideline',
  kinds: ['procedure'],
  check(procedure, { report }) {
    if (!isForPrions(procedure)) return;
    const lacking = lackingIn(procedure);
    if (lacking.length === 0) return;
    const at = (procedure.sources ?? procedure.when ?? procedure.topics ?? procedure).at;
    const words =
      lacking.length === 1
        ? (lacking[0] ?? '')
        : `${lacking.slice(0, -1).join(', ')} and ${lacking[lacking.length - 1]}`;
    report({ at, message: message.lacking(words) });
  },
  examples: {
    bad: [
      `
kind: procedure
id: prion
when: prion-suspected
steps: [{stage: quarantine, do: discard-all}]
sources: []
^^^^^^^ This procedure for suspected prion disease names no guideline it rests on, does not say which tissues carry which risk and is not owned or put in force by infection prevention.
`,
      `
kind: procedure
id: prion
topics: [prion]
when: prion-suspected
tissue_risk: high-risk tissue is brain, spinal cord and the back of the eye
sources:
^^^^^^^ This procedure for suspected prion disease names no guideline it rests on.
  - {id: a1, doc: P-19, type: policy}
owner: infection-prevention
`,
    ],
    good: [
      `
kind: procedure
id: prion
when: prion-suspected
tissue_risk: high-risk tissue is brain, spinal cord and the back of the eye
sources:
  - {id: a1, doc: LG-GUIDE-4, edition: "2024", type: guideline, clause: chapter 3}
owner: manager
approver: infection-prevention
`,
      `
kind: procedure
id: prion
when: prion-suspected
tissue_risk: the retina and the optic nerve are high-risk tissue
sources:
  - {id: a1, doc: LG-GUIDE-4, edition: "2024", type: guideline, clause: chapter 3}
owner: hygiene-officer
`,
      `
kind: procedure
id: case-end
steps: [{stage: point-of-use, do: wipe}]
`,
    ],
  },
});

const authorities: ReadonlySet<string> = new Set(['guideline', 'directive', 'standard']);

function lackingIn({ sources, tissue_risk, owner, approver }: EntityOf['procedure']): readonly string[] {
  const lacking: string[] = [];
  if (sources?.items.some((source) => source.doc !== undefined && authorities.has(source.type?.text ?? '')) !== true)
    lacking.push(message.guideline);
  if (tissue_risk === undefined) lacking.push(message.tissue);
  const isOwned = [owner, approver].some((role) => role !== undefined && isMentioned(role.text, infectionPreventers));
  if (!isOwned) lacking.push(message.owner);
  return lacking;
}
