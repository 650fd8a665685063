import type { EntityOf } from '../../model/entities.generated.ts';
import { nameOf } from '../../model/entity.ts';
import type { Node } from '../../model/node.ts';
import { isRequirement } from '../../model/walk.ts';
import { isKind } from '../../schema/kinds.ts';
import { defineRule } from '../rule.ts';
import { demandInWords } from '../support/limits-of.ts';
import { allowedBy, answerOf, askedBy, isSameText } from '../support/quiz-values.ts';
import { shown } from '../support/shown.ts';

const message = {
  drift: (key: string, now: string) => `The key says ${key}, but the library says ${now} now.`,
  gone: (path: string, entity: string) => `The key rests on "${path}", but ${entity} has no such value any more.`,
  noFile: (kind: string, id: string) => `The key rests on ${kind} "${id}", and there is no such file.`,
  unsaid: 'nothing that can be asked: the page is silent or unclear about it',
};

export const rule = defineRule({
  id: 'answer-key-drift',
  stage: 'teaching',
  severity: 'error',
  settledBy: 'educator',
  why: 'A question whose key is out of date teaches last year’s instruction.',
  source: 'logic',
  kinds: ['quiz'],
  check(quiz, { view, report }) {
    const { path, key } = quiz;
    const asked = askedBy(quiz, view);
    if (path === undefined || asked === undefined) return;
    if (asked.found === 'no-file') {
      const isUnreadable = isKind(asked.kind) && view.exists(asked.kind, asked.id);
      if (!isUnreadable) report({ at: path.at, message: message.noFile(asked.kind, asked.id) });
    } else if (asked.found === 'no-value') {
      report({ at: path.at, message: message.gone(path.text, nameOf(asked.entity)) });
    } else if (key !== undefined && !isStill(key.text, asked.node, quiz)) {
      report({
        at: key.at,
        message: message.drift(key.text, inWords(asked.node)),
        related: [{ at: asked.node.at, note: 'the value that is asked for' }],
      });
    }
  },
  examples: {
    bad: [
      `
=== quizzes/q12.ifu.yaml
kind: quiz
id: q12
text: How long must the grasper dry at least?
path: "device.grasper.sterilization.any_of[pv134].dry"
key: 30 min
     ^^^^^^ The key says 30 min, but the library says at least 50 min now.
=== devices/grasper.ifu.yaml
kind: device
id: grasper
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, dry: {at_least: 50 min}}
`,
      `
=== quizzes/q13.ifu.yaml
kind: quiz
id: q13
path: device.grasper.limits.uses
      ^^^^^^^^^^^^^^^^^^^^^^^^^^ The key rests on "device.grasper.limits.uses", but device "grasper" has no such value any more.
key: 18 uses
=== devices/grasper.ifu.yaml
kind: device
id: grasper
limits: {temp: {at_most: 140 C}}
`,
      `
kind: quiz
id: q14
path: device.old-grasper.limits.uses
      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ The key rests on device "old-grasper", and there is no such file.
key: 18 uses
`,
    ],
    good: [
      `
=== quizzes/q12.ifu.yaml
kind: quiz
id: q12
path: "device.grasper.sterilization.any_of[pv134].dry"
key: 50 minutes
=== devices/grasper.ifu.yaml
kind: device
id: grasper
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, dry: {at_least: 50 min}}
`,
      `
kind: quiz
id: q15
text: A tray is wet. What now?
key: stop and call
`,
    ],
  },
});

/** A number is the key when it is an end of what the value allows; other values are compared as text. */
function isStill(key: string, node: Node, { tolerance }: EntityOf['quiz']): boolean {
  const allowed = allowedBy(node);
  if (allowed === undefined) return node.node === 'text' ? isSameText(key, node.text) : !isRequirement(node);
  const answer = answerOf(key, allowed.dimension);
  if (answer === undefined) return false;
  const off = tolerance === undefined ? undefined : answerOf(tolerance.text, allowed.dimension);
  const slack = Math.abs(off?.value ?? 0) + Math.abs(answer.value) * 1e-9;
  return [allowed.low, allowed.high].some((end) => Math.abs(end - answer.value) <= slack);
}

function inWords(node: Node): string {
  if (node.node === 'quantity') return shown(node);
  if (node.node === 'text') return `"${node.text}"`;
  const words = isRequirement(node) ? demandInWords(node) : '';
  return words === '' ? message.unsaid : words;
}
