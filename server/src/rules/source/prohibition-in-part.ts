import type { Detergent } from '../../model/entities/detergent.generated.ts';
import type { CleaningNode } from '../../model/entities/device-manual.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Text } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { readStatement } from '../support/transcription.ts';
import type { QuotedStatement } from '../support/transcription-fault.ts';

const message = {
  part: (what: string) =>
    `The page forbids "${what}" without naming a stage, and only this detergent does without it. Write it under not as well, so that it holds at every step.`,
};

export const rule = defineRule({
  id: 'prohibition-in-part',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'What is ruled out at the sink only is sprayed on in the theatre.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    const listed = new Set(device.not?.items.map(({ what }) => what?.text));
    const told = new Set<string>();
    for (const { what, src } of ruledOut(device)) {
      if (listed.has(what.text) || told.has(what.text)) continue;
      const passages = (src?.statements ?? []).flatMap(({ text }) => readStatement(device, text) ?? []);
      const general = passages.filter(forbidsThroughout);
      if (general.length === 0) continue;
      told.add(what.text);
      report({
        at: what.at,
        message: message.part(what.text),
        says: general.map(({ statement }) => sayingOf(statement, statement.at)),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: irrigating-tip
statements:
  s1: {doc: BW-1, rev: A, page: 4, quote: "Do not use enzymatic detergents."}
cleaning:
  all_of:
    - {stage: manual, detergent: {without: [enzymatic], src: s1}}
                                            ^^^^^^^^^ The page forbids "enzymatic" without naming a stage, and only this detergent does without it. Write it under not as well, so that it holds at every step.
    - {stage: mechanical, detergent: {without: [enzymatic], src: s1}}
`,
      `
kind: device
id: capsule-forceps
statements:
  s1: {doc: CF-1, rev: A, page: 4, lang: de, quote: "Keine enzymatischen Reiniger verwenden."}
  s2: {doc: CF-1, rev: A, page: 5, quote: "Do not use saline."}
cleaning: {stage: manual, detergent: {without: [enzymatic], src: s1}}
                                                ^^^^^^^^^ The page forbids "enzymatic" without naming a stage, and only this detergent does without it. Write it under not as well, so that it holds at every step.
not: [{what: saline, src: s2}]
`,
    ],
    good: [
      `
kind: device
id: irrigating-tip
statements:
  s1: {doc: BW-1, rev: A, page: 4, quote: "Do not use enzymatic detergents."}
cleaning: {stage: manual, detergent: {without: [enzymatic], src: s1}}
not: [{what: enzymatic, src: s1}]
`,
      `
kind: device
id: tube
statements:
  s1: {doc: ST-2, rev: A, page: 4, quote: "Do not use enzymatic detergents in an ultrasonic bath."}
cleaning: {stage: ultrasonic, detergent: {without: [enzymatic], src: s1}}
`,
    ],
  },
});

interface RuledOut {
  readonly what: Text;
  readonly src: Citation | undefined;
}

function ruledOut({ cleaning }: EntityOf['device']): readonly RuledOut[] {
  return cleaning === undefined ? [] : detergentsUnder(cleaning).flatMap(withoutIn);
}

function detergentsUnder(node: CleaningNode): readonly Detergent[] {
  const inner = [...(node.all_of?.items ?? []), ...(node.any_of?.items ?? [])].flatMap(detergentsUnder);
  return node.detergent === undefined ? inner : [node.detergent, ...inner];
}

function withoutIn({ without, src }: Detergent): readonly RuledOut[] {
  return (without?.items ?? []).map((what) => ({ what, src }));
}

function forbidsThroughout({ reading }: Omit<QuotedStatement, 'cited'>): boolean {
  return reading.negations.length > 0 && reading.stages.length === 0;
}
