import { boundsOf } from '../../judge/bounds.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';

const message = {
  chemistry:
    'It is not said whether this is the pH of the concentrate or of the solution in use. Enter it as "ph_in_use" or "ph_concentrate".',
  device:
    'It is not said whether this pH is meant of the concentrate or of the solution in use. Add "of: in-use" if the page says so, or ask.',
};

export const rule = defineRule({
  id: 'detergent-ph-basis-unknown',
  stage: 'cleaning',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Concentrate and solution may lie units of pH apart.',
  source: 'practice',
  kinds: ['chemistry', 'device'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'chemistry')) checkChemistry(entity, context);
    else if (isOfKind(entity, 'device')) checkDevice(entity, context);
  },
  examples: {
    bad: [
      `
kind: chemistry
id: C2
class: mild-alkaline
ph: 10.6
    ^^^^ It is not said whether this is the pH of the concentrate or of the solution in use. Enter it as "ph_in_use" or "ph_concentrate".
`,
      `
kind: device
id: forceps
cleaning:
  any_of:
    - {id: by-hand, stage: manual, detergent: {ph: {between: [7, 10.8], src: s3}}}
                                               ^^ It is not said whether this pH is meant of the concentrate or of the solution in use. Add "of: in-use" if the page says so, or ask.
    - {id: machine, stage: mechanical, detergent: {ph: {between: [7, 10.8], src: s3}}}
statements:
  s3: {doc: QM-10, rev: B, page: 4, quote: "Use detergents with a pH between 7 and 10.8."}
`,
    ],
    good: [
      `
kind: chemistry
id: C2
class: mild-alkaline
ph_in_use: {between: [10.2, 10.6], of: in-use}
ph: 11.9
`,
      `
kind: device
id: forceps
limits: {ph: {between: [6, 10.8]}}
manual: {detergent: {ph: {between: [7, 10.8], of: in-use}}}
mechanical: {detergent: {ph: {silent: true, checked: 2025-02-24}}}
`,
    ],
  },
});

function checkChemistry({ ph, ph_in_use, ph_concentrate }: EntityOf['chemistry'], { report }: RuleContext): void {
  if (ph !== undefined && ph_in_use === undefined && ph_concentrate === undefined)
    report({ at: ph.at, message: message.chemistry, settledBy: 'vendor' });
}

/** A limit that holds at every stage is meant of what touches the item, so of the solution. */
function checkDevice(device: EntityOf['device'], { report }: RuleContext): void {
  const [first, ...others] = partsOf(device)
    .requirements.map(({ requirement }) => requirement)
    .filter(isWithoutBasis);
  if (first === undefined) return;
  report({
    at: first.at,
    message: message.device,
    says: sayingsOf(device, first.src),
    related: others.map(({ at }) => ({ at, note: 'the same here' })),
  });
}

const solutions: ReadonlySet<string | number> = new Set(['detergent', 'prewash', 'enzyme_wash', 'wash', 'neutralise']);

function isWithoutBasis(requirement: Requirement): boolean {
  if (requirement.dimension !== 'ph' || requirement.of !== undefined || requirement.at.key !== 'ph') return false;
  return (
    solutions.has(requirement.at.parent?.key ?? '') && requirement.ask === undefined && boundsOf(requirement).length > 0
  );
}
