import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingOf } from '../../model/saying.ts';
import { fieldOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import { faultsNamed, readStatement } from '../support/transcription.ts';
import type { QuotedStatement } from '../support/transcription-fault.ts';

const message = {
  left: (names: readonly string[]) =>
    `The page asks for ${listed(names)} as well, and this choice has no such stage. One stage of the sequence may have been left out.`,
};

const stageNames: ReadonlyMap<string, string> = new Map([
  ['manual', 'cleaning by hand'],
  ['ultrasonic', 'ultrasonic cleaning'],
  ['mechanical', 'machine washing'],
]);

export const rule = defineRule({
  id: 'quote-stage-left-out',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'A sequence was shown to clean as a whole; the machine does not make up for the sink.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    // A passage whose "or" was taken for "and" has a finding that names it.
    const told = new Set(faultsNamed(device, 'quote-and-or-changed').map(({ quoted }) => quoted.id));
    for (const way of waysOf(device.cleaning)) {
      const stages = stagesUnder(way);
      const present = new Set(stages.map(({ stage }) => stage?.text));
      for (const node of stages) {
        const left = leftOut(node, device, present, told);
        if (node.stage === undefined || left.names.length === 0) continue;
        report({
          at: node.stage.at,
          message: message.left(left.names),
          says: left.quotes.map(({ statement }) => sayingOf(statement, statement.at)),
        });
        break;
      }
    }
  },
  examples: {
    bad: [
      `
kind: device
id: irrigating-tip
statements:
  s9: {doc: BW-1, rev: "3", page: 5, alt: A, quote: "Clean manually, then in a washer-disinfector."}
  s13: {doc: BW-1, rev: "3", page: 5, alt: B, quote: "Alternatively, clean manually only."}
cleaning:
  any_of:
    - {id: a, all_of: [{stage: mechanical, src: s9}]}
                               ^^^^^^^^^^ The page asks for cleaning by hand as well, and this choice has no such stage. One stage of the sequence may have been left out.
    - {id: b, stage: manual, src: s13}
`,
      `
kind: device
id: grasper
statements:
  s5: {doc: SK-1, rev: F, page: 6, quote: "Flush manually, then clean in an irrigated ultrasonic bath, then in a washer-disinfector."}
cleaning:
  all_of:
    - {stage: manual, src: s5}
              ^^^^^^ The page asks for ultrasonic cleaning as well, and this choice has no such stage. One stage of the sequence may have been left out.
    - {stage: mechanical, src: s5}
`,
    ],
    good: [
      `
kind: device
id: lid-weight
statements:
  s1: {doc: NK-9, rev: "1", page: 1, quote: "Clean by hand or in a washer-disinfector."}
cleaning:
  any_of:
    - {id: by-hand, stage: manual, src: s1}
    - {id: by-machine, stage: mechanical, src: s1}
`,
      `
kind: device
id: grasper
statements:
  s5: {doc: SK-1, rev: F, page: 6, quote: "Flush manually, then clean in an irrigated ultrasonic bath."}
  s6: {doc: SK-1, rev: F, page: 6, quote: "Clean by hand and not in a washer-disinfector."}
cleaning: {stage: manual, src: [s5, s6]}
ultrasonic: {use: required, irrigated: true, src: s5}
`,
    ],
  },
});

/** Complete ways of cleaning: the choices, or everything when there is no choice. */
function waysOf(cleaning: CleaningNode | undefined): readonly CleaningNode[] {
  if (cleaning === undefined) return [];
  return cleaning.any_of === undefined ? [cleaning] : cleaning.any_of.items;
}

function stagesUnder(node: CleaningNode): readonly CleaningNode[] {
  const inner = [...(node.all_of?.items ?? []), ...(node.any_of?.items ?? [])].flatMap(stagesUnder);
  return node.stage === undefined ? inner : [node, ...inner];
}

/** Stages that a passage joins by "then" or "and" with the one that cites it. A passage with "or" or with a "not" leaves it open. */
function leftOut(
  node: CleaningNode,
  device: EntityOf['device'],
  present: ReadonlySet<string | undefined>,
  told: ReadonlySet<string>,
) {
  const read = (node.src?.statements ?? []).flatMap(({ text }) => readStatement(device, text) ?? []);
  const quotes = read.filter((one) => isSequence(one) && !told.has(one.id));
  const named = new Set(quotes.flatMap(({ reading }) => reading.stages.map(({ stage }) => stage)));
  const names: string[] = [];
  for (const [stage, name] of stageNames)
    if (named.has(stage as 'manual') && !present.has(stage) && fieldOf(device, stage) === undefined) names.push(name);
  return { quotes, names };
}

function isSequence({ reading }: Omit<QuotedStatement, 'cited'>): boolean {
  return (
    reading.negations.length === 0 &&
    reading.joins.some(({ join }) => join !== 'or') &&
    !reading.joins.some(({ join }) => join === 'or')
  );
}
