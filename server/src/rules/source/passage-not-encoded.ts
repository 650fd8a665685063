import type { Fix } from '../../base/problem.ts';
import type { Statement } from '../../model/entities/statement.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import { sayingOf } from '../../model/saying.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import { defineRule } from '../rule.ts';
import { hasTrait } from '../support/applies.ts';
import { partsOf } from '../support/entity-parts.ts';
import { insertField } from '../support/flow-edits.ts';
import type { Transcribed } from '../support/transcription.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';

const message = {
  left: 'No field cites this passage: what it says may have been left out. Encode it; if it needs no field, write here: not_needed: [{text: its words, reason: why}].',
};

export const rule = defineRule({
  id: 'passage-not-encoded',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A prohibition or a step that was read and never encoded reaches nobody.',
  source: 'logic',
  fix: 'Notes the passage as not needed; the reason is left for the writer.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    if (isForOneUse(entity)) return;
    const cited = new Set(partsOf(entity).citations.flatMap(({ statements }) => statements.map(({ text }) => text)));
    // A passage with a number that nothing holds has a finding that names the number.
    const told = new Set(faultsNamed(entity, 'quote-number-not-encoded').map(({ quoted }) => quoted.id));
    for (const [id, { key, value }] of statementsOf(entity)) {
      if (value.quote === undefined || value.not_needed !== undefined || cited.has(id) || told.has(id)) continue;
      report({
        at: value.at,
        span: key.at.span,
        message: message.left,
        says: [sayingOf(value, value.at)],
        fixes: notNeeded(value, value.quote.text),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: light-guide
statements:
  s1: {doc: LG-4, rev: B, page: 3, quote: "Do not clean in an ultrasonic bath."}
  ^^ No field cites this passage: what it says may have been left out. Encode it; if it needs no field, write here: not_needed: [{text: its words, reason: why}].
  s2: {doc: LG-4, rev: B, page: 5, quote: "Dry with medical air."}
drying: {use: required, method: [air], src: s2}
`,
      `
kind: packaging
id: pouch-small
type: pouch
statements:
  s1: {doc: PP-5, rev: A, page: 1, quote: "For steam only."}
  s2: {doc: PP-5, rev: A, page: 2, quote: "Never put one pouch into another."}
  ^^ No field cites this passage: what it says may have been left out. Encode it; if it needs no field, write here: not_needed: [{text: its words, reason: why}].
src: s1
`,
    ],
    good: [
      `
kind: device
id: light-guide
statements:
  s1: {doc: LG-4, rev: B, page: 3, quote: "Do not clean in an ultrasonic bath."}
  s2: {doc: LG-4, rev: B, page: 9, quote: "Return worn guides to the maker.", not_needed: [{text: return, reason: handled by biomed}]}
ultrasonic: {use: forbidden, src: s1}
`,
      `
kind: device
id: cannula
traits: [single-use]
statements:
  s1: {doc: QP-1, rev: A, page: 1, quote: "For single use."}
`,
    ],
  },
});

/** The reason stays empty: the file is not in order before a person has given it. */
function notNeeded(statement: Statement, quote: string): readonly Fix[] {
  const words = quote
    .split(/\s+/)
    .slice(0, mostWords)
    .join(' ')
    .replace(/[.,;:]$/, '');
  const edit = insertField(statement, `not_needed: [{text: ${quoteScalar(words)}, reason: ""}]`);
  return edit === undefined
    ? []
    : [{ title: 'Note this passage as not needed (then write the reason)', edits: [edit], setsAside: true }];
}

/** Enough to know the passage by. */
const mostWords = 4;

function statementsOf(entity: Transcribed) {
  return entity.statements?.rows ?? [];
}

/** Of an item that is thrown away nothing more is encoded than that. */
function isForOneUse(entity: AnyEntity): boolean {
  return isOfKind(entity, 'device') && hasTrait(entity, 'single-use');
}
