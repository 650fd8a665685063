import type { CleaningStep } from '../../model/entities/cleaning-step.generated.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import { sayingOf } from '../../model/saying.ts';
import { fieldOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { readStatement } from '../support/transcription.ts';
import type { Phrase } from '../support/wording.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  uneven: (field: string, place: string, others: string) =>
    `The page speaks of every channel, but "${field}" stands at ${others} and not at ${place}.`,
};

/** Numbers that a step holds. */
const fields = ['volume', 'time', 'times', 'pressure', 'temp'] as const;

/** A page that says the same of all of them. */
const everyWords: readonly Phrase[] = [
  ...[['each'], ['every'], ['both'], ['all']],
  ...[['jede*'], ['beide*'], ['alle*'], ['chaque'], ['tous'], ['toutes'], ['deux']],
];

export const rule = defineRule({
  id: 'step-detail-uneven',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A port whose volume or time was forgotten is flushed by feeling.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    for (const group of device.cleaning === undefined ? [] : groupsUnder(device.cleaning)) {
      const id = group[0]?.src?.statements[0]?.text ?? '';
      const read = readStatement(device, id);
      if (read === undefined || !isMentioned(read.quote.text, everyWords)) continue;
      for (const field of fields) {
        const holders = group.filter((step) => fieldOf(step, field) !== undefined);
        for (const step of holders.length === 0 ? [] : group) {
          if (holders.includes(step)) continue;
          report({
            at: (step.port ?? step.lumen ?? step.do ?? step).at,
            message: message.uneven(field, placeName(step), holders.map(placeName).join(', ')),
            says: [sayingOf(read.statement, read.statement.at)],
          });
        }
      }
    }
  },
  examples: {
    bad: [
      `
kind: device
id: grasper
statements:
  s6: {doc: SK-1, rev: F, page: 6, quote: "Flush every port for at least 90 s at 2 to 3 bar."}
cleaning:
  stage: manual
  steps:
    - {do: flush, port: P1, time: {at_least: 90 s}, pressure: {between: [2 bar, 3 bar]}, src: s6}
    - {do: flush, port: P2, time: {at_least: 90 s}, src: s6}
                        ^^ The page speaks of every channel, but "pressure" stands at P1 and not at P2.
`,
      `
kind: device
id: tip
statements:
  s7: {doc: QT-3, rev: "2", page: 4, quote: "Flush each bore with no less than 60 mL, 2 times."}
cleaning:
  all_of:
    - stage: manual
      steps:
        - {do: flush, lumen: outer, volume: {at_least: 60 mL}, src: s7}
                             ^^^^^ The page speaks of every channel, but "times" stands at inner and not at outer.
        - {do: flush, lumen: inner, volume: {at_least: 60 mL}, times: {stated: 2 times}, src: s7}
`,
    ],
    good: [
      `
kind: device
id: grasper
statements:
  s6: {doc: SK-1, rev: F, page: 6, quote: "Flush every port for at least 90 s."}
cleaning:
  stage: manual
  steps:
    - {do: flush, port: P1, time: {at_least: 90 s}, src: s6}
    - {do: flush, port: P2, time: {at_least: 90 s}, src: s6}
    - {do: brush, port: P2, src: s6}
`,
      `
kind: device
id: tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Flush port A with 50 mL for 2 minutes and port B with 20 mL."}
cleaning:
  stage: manual
  steps:
    - {do: flush, port: A, volume: {stated: 50 mL}, time: {stated: 2 min}, src: s1}
    - {do: flush, port: B, volume: {stated: 20 mL}, src: s1}
`,
    ],
  },
});

/** Steps of one list that do the same at different places by the same single passage. */
function groupsUnder(node: CleaningNode): readonly (readonly CleaningStep[])[] {
  const inner = [...(node.all_of?.items ?? []), ...(node.any_of?.items ?? [])].flatMap(groupsUnder);
  const groups = new Map<string, CleaningStep[]>();
  for (const step of node.steps?.items ?? []) {
    const cited = step.src?.statements ?? [];
    if (cited.length !== 1 || (step.port === undefined && step.lumen === undefined)) continue;
    const key = `${step.do?.text ?? ''} ${cited[0]?.text ?? ''}`;
    groups.set(key, [...(groups.get(key) ?? []), step]);
  }
  return [...groups.values(), ...inner];
}

function placeName({ port, lumen, do: act }: CleaningStep): string {
  return (port ?? lumen ?? act)?.text ?? 'a step';
}
