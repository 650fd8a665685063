import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Node, Rec } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { childrenOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { actWords } from '../support/act-words.ts';
import { partsOf } from '../support/entity-parts.ts';
import { listed } from '../support/lists.ts';
import { readStatement } from '../support/transcription.ts';
import { isMentioned, saidIn } from '../support/wording.ts';

const message = {
  left: (acts: readonly string[]) =>
    `The page says ${listed(acts.map((act) => `"${act}"`))}, but no step that cites it does so. A step may have been left out.`,
};

export const rule = defineRule({
  id: 'quote-step-left-out',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A sentence with three steps of which two were encoded looks complete to everybody who has not read the page.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    for (const id of citedBySteps(device)) {
      const read = readStatement(device, id);
      if (read === undefined) continue;
      const holders = holdersOf(id, device);
      const left: string[] = [];
      for (const words of actWords) {
        const said = saidIn(read.quote.text, words);
        if (said !== undefined && !holders.some((text) => isMentioned(text, words))) left.push(said);
      }
      if (left.length === 0) continue;
      const { statement } = read;
      report({
        at: statement.at,
        span: statement.at.keySpan ?? statement.at.span,
        message: message.left(left),
        says: [sayingOf(statement, statement.at)],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: handpiece
statements:
  s1: {doc: TW-1, rev: C, page: 5, quote: "Wipe with a cloth moistened with detergent, then brush the coupling."}
  ^^ The page says "brush", but no step that cites it does so. A step may have been left out.
cleaning:
  all_of:
    - stage: manual
      steps: [{do: wipe, extent: full, src: s1}]
      src: s1
`,
      `
kind: device
id: tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, lang: de, quote: "Mit weicher Bürste bürsten und anschließend spülen."}
  ^^ The page says "spülen", but no step that cites it does so. A step may have been left out.
cleaning: {stage: manual, steps: [{do: brush, tool: soft brush, src: s1}]}
`,
    ],
    good: [
      `
kind: device
id: handpiece
statements:
  s1: {doc: TW-1, rev: C, page: 5, quote: "Wipe with a cloth, then brush the coupling. Do not soak."}
cleaning:
  all_of:
    - stage: manual
      steps: [{do: wipe, src: s1}, {do: brush, tool: soft brush, src: s1}]
`,
      `
kind: device
id: tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Flush each port, then brush."}
cleaning:
  stage: manual
  steps: [{do: flush, port: P1, src: s1}, {do: flush, port: P2, src: s1}]
  brush: {required: true, src: s1}
`,
    ],
  },
});

type Device = EntityOf['device'];

/** Statements from which steps of cleaning were copied one by one. */
function citedBySteps(device: Device): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const step of device.cleaning === undefined ? [] : stepsUnder(device.cleaning))
    for (const { text } of step.src?.statements ?? []) ids.add(text);
  return ids;
}

function stepsUnder(node: CleaningNode): readonly NonNullable<CleaningNode['steps']>['items'][number][] {
  const inner = [...(node.all_of?.items ?? []), ...(node.any_of?.items ?? [])];
  return [...(node.steps?.items ?? []), ...inner.flatMap(stepsUnder)];
}

/** What the records that cite the statement are called and say, parts of theirs that cite nothing included. */
function holdersOf(id: string, device: Device): readonly string[] {
  const texts: string[] = [];
  for (const record of partsOf(device).records) {
    if (!cites(record, id)) continue;
    for (const inner of ownNodes(record)) {
      if (typeof inner.at.key === 'string') texts.push(inner.at.key.replaceAll('_', ' '));
      if (inner.node === 'text') texts.push(inner.text);
    }
  }
  return texts;
}

function cites(record: Rec, id: string): boolean {
  return childrenOf(record).some(
    (child) => child.node === 'citation' && child.statements.some(({ text }) => text === id),
  );
}

/** The record and what stands in it, without records that cite for themselves. */
function ownNodes(record: Node): readonly Node[] {
  const inner = childrenOf(record).filter(
    (child) => child.node !== 'record' || !childrenOf(child).some(({ node }) => node === 'citation'),
  );
  return [record, ...inner.flatMap((child) => (child.node === 'citation' ? [] : ownNodes(child)))];
}
