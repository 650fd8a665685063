import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place, Text } from '../../model/node.ts';
import { isRequirement } from '../../model/walk.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import { unitList } from '../../quantity/unit-list.ts';
import { defineRule } from '../rule.ts';
import { demandInWords } from '../support/limits-of.ts';
import { allowedBy, answerOf, askedBy, isSameText } from '../support/quiz-values.ts';

const message = {
  key: (answer: string) => `"${answer}" stands among the wrong answers and is the key.`,
  range: (answer: string, from: string, to: string) =>
    `"${answer}" is marked wrong, but everything from ${from} to ${to} is right.`,
  allowed: (answer: string, demand: string) =>
    `"${answer}" is marked wrong, but the page allows it too (${demand}). Ask for the limit in other words, or choose another wrong answer.`,
};

export const rule = defineRule({
  id: 'question-many-true',
  stage: 'teaching',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A right answer that is marked wrong destroys the trust in every other question.',
  source: 'logic',
  kinds: ['quiz'],
  check(quiz, { view, report }) {
    const tests = [keyTest(quiz), rangeTest(quiz), pageTest(quiz, view)];
    for (const answer of quiz.distractors?.items ?? []) {
      const hit = tests.map((test) => test(answer)).find((one) => one !== undefined);
      if (hit !== undefined)
        report({
          at: answer.at,
          message: hit.message,
          related: hit.at === undefined ? [] : [{ at: hit.at, note: 'why it is right' }],
        });
    }
  },
  examples: {
    bad: [
      `
kind: quiz
id: q3
text: Which exposure at 134 °C is acceptable?
range: [3 min, 18 min]
key: 4 min
distractors: [10 min, 2 min]
              ^^^^^^ "10 min" is marked wrong, but everything from 3 min to 18 min is right.
`,
      `
=== quizzes/q4.ifu.yaml
kind: quiz
id: q4
text: How long may scissors soak?
path: device.scissors.manual.soak
key: 15 min
distractors: [10 min, 30 min, 15 min]
              ^^^^^^ "10 min" is marked wrong, but the page allows it too (between 1 min and 15 min). Ask for the limit in other words, or choose another wrong answer.
                              ^^^^^^ "15 min" stands among the wrong answers and is the key.
=== devices/scissors.ifu.yaml
kind: device
id: scissors
manual: {soak: {between: [1 min, 15 min]}}
`,
    ],
    good: [
      `
kind: quiz
id: q3
range: [3 min, 18 min]
key: 4 min
distractors: [20 min, 2 min]
`,
      `
=== quizzes/q4.ifu.yaml
kind: quiz
id: q4
text: How long must scissors dry at least?
path: "device.scissors.sterilization.any_of[pv132].dry"
key: 30 min
distractors: [10 min, 20 min, until they look dry]
=== devices/scissors.ifu.yaml
kind: device
id: scissors
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, dry: {at_least: 30 min}}
`,
    ],
  },
});

interface Hit {
  readonly message: string;
  readonly at?: Place;
}

type Test = (answer: Text) => Hit | undefined;

function keyTest({ key }: EntityOf['quiz']): Test {
  return (answer) =>
    key !== undefined && isSameText(key.text, answer.text)
      ? { message: message.key(answer.text), at: key.at }
      : undefined;
}

/** `range` is written as two ends; which kind of number they are follows from their units. */
function rangeTest({ range }: EntityOf['quiz']): Test {
  const [from, to] = range?.items ?? [];
  const ends = from === undefined || to === undefined ? undefined : dimensionOf(from.text, to.text);
  if (from === undefined || to === undefined || ends === undefined) return () => undefined;
  return ({ text }) => {
    const value = answerOf(text, ends.dimension)?.value;
    if (value === undefined || value < ends.low || value > ends.high) return undefined;
    return { message: message.range(text, from.text, to.text), at: from.at };
  };
}

function dimensionOf(from: string, to: string): { dimension: Dimension; low: number; high: number } | undefined {
  for (const dimension of new Set(unitList.map((unit) => unit.dimension))) {
    const [low, high] = [answerOf(from, dimension)?.value, answerOf(to, dimension)?.value];
    if (low !== undefined && high !== undefined) return { dimension, low, high };
  }
  return undefined;
}

function pageTest(quiz: EntityOf['quiz'], view: LibraryView): Test {
  const asked = askedBy(quiz, view);
  const node = asked?.found === 'value' ? asked.node : undefined;
  const allowed = node === undefined ? undefined : allowedBy(node);
  if (node === undefined || allowed === undefined) return () => undefined;
  const demand = isRequirement(node) ? demandInWords(node) : '';
  return ({ text }) => {
    const value = answerOf(text, allowed.dimension)?.value;
    if (value === undefined || value < allowed.low || value > allowed.high) return undefined;
    return { message: message.allowed(text, demand), at: node.at };
  };
}
