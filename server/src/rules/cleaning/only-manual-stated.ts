import { cleaningAlternatives } from '../../judge/demands.ts';
import { routineSetting } from '../../judge/setting.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { banOf, isOutOfScope } from '../support/cleaning-ways.ts';

const message = {
  onlyByHand:
    'The page gives cleaning by hand only and does not say that a machine harms this item. Ask the manufacturer for a way by machine, or for the reason against it.',
};

export const rule = defineRule({
  id: 'only-manual-stated',
  stage: 'cleaning',
  severity: 'advice',
  settledBy: 'manufacturer',
  why: 'A machine does the same each time, and current standards expect the manufacturer to offer one or to say why not.',
  source: 'standard',
  kinds: ['device'],
  check(device, context) {
    if (device.cleaning === undefined && device.manual === undefined) return;
    if (isOutOfScope(device) || banOf(device, 'mechanical') !== undefined || isAsked(device, context)) return;
    const { alternatives } = cleaningAlternatives(device, routineSetting(context.today));
    const stages = alternatives.flatMap((way) => way.stages);
    if (stages.length === 0 || stages.some((stage) => stage.stage !== 'manual')) return;
    const stated = device.cleaning ?? device.manual;
    const node = stages[0]?.voices[0];
    if (stated === undefined || node === undefined) return;
    const { mechanical } = device;
    context.report({
      at: stated.at,
      message: message.onlyByHand,
      says: sayingsOf(device, node.src),
      related: mechanical === undefined ? [] : [{ at: mechanical.at, note: 'what is encoded about the machine' }],
    });
  },
  examples: {
    bad: [
      `
kind: device
id: legacy-clamp
cleaning: {all_of: [{stage: manual, src: s1}]}
^^^^^^^^ The page gives cleaning by hand only and does not say that a machine harms this item. Ask the manufacturer for a way by machine, or for the reason against it.
mechanical: {silent: true, checked: 2025-02-24}
statements:
  s1: {doc: PM-9, rev: A, page: 1, quote: "Wash by hand."}
`,
      `
kind: device
id: bone-curette
manual:
^^^^^^ The page gives cleaning by hand only and does not say that a machine harms this item. Ask the manufacturer for a way by machine, or for the reason against it.
  src: s1
statements:
  s1: {doc: BC-2, rev: B, page: 2, quote: "Brush under running water."}
`,
    ],
    good: [
      `
kind: device
id: camera-head
cleaning: {all_of: [{stage: manual, src: s1}]}
mechanical: {use: forbidden, src: s2}
statements:
  s1: {doc: CV-8, rev: G, page: 6, quote: "Clean by hand."}
  s2: {doc: CV-8, rev: G, page: 3, quote: "Do not clean in a washer."}
`,
      `
kind: device
id: forceps
cleaning: {any_of: [{id: by-hand, stage: manual}, {id: machine, stage: mechanical}]}
`,
      `
=== devices/clamp.ifu.yaml
kind: device
id: legacy-clamp
cleaning: {all_of: [{stage: manual}]}
=== questions/q-clamp.ifu.yaml
kind: question
id: q-clamp-washer
about: legacy-clamp
field: mechanical
text: May the clamp be cleaned in a washer?
asked_on: 2025-02-20
`,
    ],
  },
});

/** Whoever has asked waits for the answer. */
function isAsked(device: EntityOf['device'], { view }: RuleContext): boolean {
  if (device.mechanical?.ask !== undefined) return true;
  const questions = view.users('device', rootOfEntity(device).id, 'question');
  return questions.some((question) => question.field?.text.split('.')[0] === 'mechanical');
}
