import type { Statement } from '../../model/entities/statement.generated.ts';
import type { Node, Rec } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { childrenOf, fieldOf, rowOf } from '../../model/walk.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';
import { listed } from '../support/lists.ts';
import type { Transcribed } from '../support/transcription.ts';

const message = {
  mixed: (alternatives: readonly string[]) =>
    `This choice takes its numbers from alternatives ${listed(alternatives)} of the document. Together they make a cycle that nobody tested: write one choice for each.`,
};

export const rule = defineRule({
  id: 'alternatives-mixed',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'The temperature of one tested cycle with the time of another is a new cycle, and an untested one.',
  source: 'logic',
  kinds: ['device', 'packaging'],
  check(entity, { report }) {
    for (const choice of choicesIn(entity)) {
      const cited = statementsIn(choice, entity);
      const alternatives = new Set(cited.map(({ alt }) => alt?.text ?? ''));
      const own = fieldOf(choice, 'alt');
      if (own?.node === 'text') alternatives.add(own.text);
      if (alternatives.size < 2) continue;
      report({
        at: choice.at,
        message: message.mixed([...alternatives].sort()),
        says: cited.map((statement) => sayingOf(statement, statement.at)),
        related: cited.map((statement) => ({
          at: statement.alt?.at ?? statement.at,
          note: `alternative ${statement.alt?.text}`,
        })),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s12: {doc: PF-1, rev: A, page: 5, alt: A, quote: "121 °C 30 min"}
  s13: {doc: PF-1, rev: A, page: 5, alt: B, quote: "132 °C 4 min"}
sterilization:
  any_of:
    - {id: mix, modality: steam-gravity, temp: {stated: 121 C, src: s12}, exposure: {stated: 4 min, src: s13}}
           ^^^ This choice takes its numbers from alternatives A and B of the document. Together they make a cycle that nobody tested: write one choice for each.
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, alt: A, quote: "Soak for 5 minutes at 40 °C."}
  s2: {doc: ST-2, rev: A, page: 3, alt: B, quote: "Brush for 2 minutes."}
cleaning:
  any_of:
    - id: by-hand
          ^^^^^^^ This choice takes its numbers from alternatives A and B of the document. Together they make a cycle that nobody tested: write one choice for each.
      stage: manual
      soak: {stated: 5 min, src: s1}
      brush: {required: true, time: {stated: 2 min}, src: s2}
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s11: {doc: PF-1, rev: A, page: 5, quote: "Wrap twice."}
  s12: {doc: PF-1, rev: A, page: 5, alt: A, quote: "121 °C 30 min"}
  s13: {doc: PF-1, rev: A, page: 5, alt: B, quote: "132 °C 4 min"}
sterilization:
  any_of:
    - {id: a, alt: A, modality: steam-gravity, temp: {stated: 121 C}, exposure: {stated: 30 min}, src: [s12, s11]}
    - {id: b, alt: B, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, src: [s13, s11]}
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, alt: A, quote: "Soak for 5 minutes at 40 °C."}
  s2: {doc: ST-2, rev: A, page: 3, alt: A, quote: "Brush for 2 minutes."}
cleaning:
  any_of:
    - {id: by-hand, stage: manual, soak: {stated: 5 min, src: s1}, brush: {required: true, time: {stated: 2 min}, src: s2}}
`,
    ],
  },
});

const choiceKeys: ReadonlySet<string> = new Set(['any_of', 'options', 'validated']);

/** Everything of which one is chosen: sterilization options, ways of cleaning, disinfection options, tested packings. */
function choicesIn(entity: Transcribed): readonly Rec[] {
  const hasAlternatives = [...(entity.statements?.rows.values() ?? [])].some((row) => row.value.alt !== undefined);
  if (!hasAlternatives) return [];
  return partsOf(entity).records.filter(isChoice);
}

function isChoice(node: Rec): boolean {
  const list = node.at.parent?.key;
  return typeof list === 'string' && choiceKeys.has(list) && node.at.keySpan === undefined;
}

/** The statements of an alternative that are cited in the choice, each once. Choices inside it may each take another alternative. */
function statementsIn(choice: Rec, entity: Transcribed): readonly Statement[] {
  const found = new Set<Statement>();
  addStatements(choice, entity, found);
  return [...found];
}

function addStatements(node: Node, entity: Transcribed, found: Set<Statement>): void {
  for (const child of childrenOf(node)) {
    if (child.node === 'citation') {
      for (const { text } of child.statements) {
        const statement = rowOf(entity.statements, text);
        if (statement?.alt !== undefined) found.add(statement);
      }
    } else if (child.node !== 'record' || !isChoice(child)) addStatements(child, entity, found);
  }
}
