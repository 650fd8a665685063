import type { Fix } from '../../base/problem.ts';
import { unitNamed } from '../../judge/unit-named.ts';
import type { Node, Quantity, Rec } from '../../model/node.ts';
import { fieldOf } from '../../model/walk.ts';
import { formatIn } from '../../quantity/format.ts';
import { kinds } from '../../schema/kinds.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';

const message = {
  between: (low: string, high: string) => `The range begins at ${low} and ends at ${high}: nothing lies between.`,
  same: (end: string) =>
    `Both ends of this range are ${end}. One end was copied twice, or the page gives a single number.`,
  limits: (low: string, high: string) => `At least ${low} and at most ${high}: no number is both.`,
};

export const rule = defineRule({
  id: 'range-reversed',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'No cycle can satisfy it, so that every machine seems to fail.',
  source: 'logic',
  fix: 'Swaps the two numbers.',
  kinds,
  check(entity, { report }) {
    for (const node of partsOf(entity).records) {
      const ends = endsOf(node);
      if (ends === undefined) continue;
      const { low, high, words } = ends;
      if (words === 'between' && low.value === high.value)
        report({ at: high.at, severity: 'warning', message: message.same(high.text) });
      if (low.value <= high.value) continue;
      report({
        at: node.at,
        span: {
          start: Math.min(low.at.span.start, high.at.span.start),
          end: Math.max(low.at.span.end, high.at.span.end),
        },
        message: message[words](low.text, high.text),
        gap: `the lower end lies ${formatIn(low.value - high.value, unitNamed(low.dimension))} above the upper`,
        fixes: [swap(low, high)],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: aspiration-tip
statements:
  s1: {doc: QT-1, rev: A, page: 7, quote: "134 °C, 3 to 5 minutes."}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, temp: {stated: 134 C}, exposure: {between: [5 min, 5 min]}, src: s1}
                                                                                             ^^^^^ Both ends of this range are 5 min. One end was copied twice, or the page gives a single number.
`,
      `
kind: device
id: pale-forceps
statements:
  s9: {doc: PF-1, rev: A, page: 5, quote: "Dry at 80 °C to 110 °C."}
drying: {temp: {between: [110 C, 80 C], src: s9}}
                          ^^^^^^^^^^^ The range begins at 110 C and ends at 80 C: nothing lies between.
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Soak for 5 to 30 minutes."}
cleaning:
  all_of:
    - {stage: manual, soak: {at_least: 30 min, at_most: 300 s}, src: s1}
                                       ^^^^^^^^^^^^^^^^^^^^^^ At least 30 min and at most 300 s: no number is both.
`,
      `
kind: site
id: lakeside
thresholds: {a0: {between: [3000, 600], src: "policy P-9"}}
                            ^^^^^^^^^ The range begins at 3000 and ends at 600: nothing lies between.
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s9: {doc: PF-1, rev: A, page: 5, quote: "Dry at 80 °C to 230 °F, 20 minutes."}
drying: {temp: {between: [80 C, 230 F], src: s9}, time: {between: [20 min, 25 min], src: s9}}
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Soak for 5 to 30 minutes."}
cleaning:
  all_of:
    - {stage: manual, soak: {at_least: 300 s, at_most: 30 min}, src: s1}
`,
    ],
  },
});

interface Ends {
  readonly low: Quantity;
  readonly high: Quantity;
  readonly words: keyof typeof message;
}

function endsOf(record: Rec): Ends | undefined {
  const between = fieldOf(record, 'between');
  if (between?.node === 'list') return pairOf(between.items[0], between.items[1], 'between');
  return pairOf(fieldOf(record, 'at_least'), fieldOf(record, 'at_most'), 'limits');
}

function pairOf(low: Node | undefined, high: Node | undefined, words: Ends['words']): Ends | undefined {
  if (low?.node !== 'quantity' || high?.node !== 'quantity' || low.dimension !== high.dimension) return undefined;
  return low.problem === undefined && high.problem === undefined ? { low, high, words } : undefined;
}

function swap(low: Quantity, high: Quantity): Fix {
  return {
    title: `Swap: ${high.text} to ${low.text} (look at the page first)`,
    edits: [
      { span: low.at.span, text: high.text },
      { span: high.at.span, text: low.text },
    ],
  };
}
