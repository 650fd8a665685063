import type { Fix } from '../../base/problem.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Node, Rec } from '../../model/node.ts';
import { besideSilence } from '../../model/silence.ts';
import { fieldOf, isRequirement } from '../../model/walk.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';
import { listed } from '../support/lists.ts';
import { fieldName } from '../support/quote-report.ts';
import { transcribedKinds } from '../support/transcription.ts';

const message = {
  banned: (field: string) => `"${field}" is marked silent, yet it stands among what the page forbids (not).`,
  filled: (field: string, filled: readonly string[]) =>
    `"${field}" is marked silent, yet it says ${listed(filled)}. What the department does of its own accord belongs in a procedure (own: true).`,
};

export const rule = defineRule({
  id: 'silent-field-filled',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'A habit of the department must not wear the maker’s name.',
  source: 'logic',
  fix: 'Takes the value out and leaves the silence.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const node of partsOf(entity).records) {
      if (!isSilent(node)) continue;
      const banned = prohibitionOf(node, entity);
      if (banned !== undefined)
        report({
          at: node.at,
          ...(node.at.keySpan !== undefined && { span: node.at.keySpan }),
          message: message.banned(fieldName(node.at)),
          related: [{ at: banned.at, note: 'what is forbidden' }],
        });
      const filled = filledFields(node);
      const first = filled[0];
      if (first === undefined) continue;
      report({
        at: node.at,
        span: first.at.keySpan ?? first.at.span,
        message: message.filled(fieldName(node.at), filled.map(wordsOf)),
        fixes: fixesFor(node),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: irrigating-tip
statements:
  s14: {doc: BW-1, rev: A, page: 6, quote: "Do not clean ultrasonically."}
ultrasonic: {silent: true, checked: 2025-02-24}
^^^^^^^^^^ "ultrasonic" is marked silent, yet it stands among what the page forbids (not).
not: [{what: ultrasonic, src: s14}]
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Use a pre-vacuum cycle."}
sterilization:
  any_of: [{id: a, modality: steam-prevac, dry: {silent: true, stated: 20 min}, src: s1}]
                                                               ^^^^^^ "dry" is marked silent, yet it says 20 min. What the department does of its own accord belongs in a procedure (own: true).
`,
      `
kind: device
id: pale-forceps
transport:
  silent: true
  checked: 2025-02-03
  container: closed box
  ^^^^^^^^^ "transport" is marked silent, yet it says container closed box. What the department does of its own accord belongs in a procedure (own: true).
ultrasonic: {use: silent, time: {at_most: 5 min}}
                          ^^^^ "ultrasonic" is marked silent, yet it says time. What the department does of its own accord belongs in a procedure (own: true).
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
transport: {silent: true, checked: 2025-02-03, note: looked through all pages}
limits: {uses: {silent: true, checked: 2025-02-03}}
`,
      `
kind: device
id: pale-forceps
ultrasonic: {use: silent, time: {silent: true}}
`,
    ],
  },
});

/** What may stand beside the silence: how it was found, and what is being done about it. */
const companions: ReadonlySet<string> = new Set(['node', 'at', 'dimension', 'silent', ...besideSilence]);

/** The prohibition of the very thing of which the page is said to be silent. */
function prohibitionOf(record: Rec, entity: AnyEntity): Rec | undefined {
  if (!isOfKind(entity, 'device') || record.at.parent !== entity.at) return undefined;
  return entity.not?.items.find(({ what }) => what?.text === record.at.key);
}

function isSilent(record: Rec): boolean {
  const silent = fieldOf(record, 'silent');
  const use = fieldOf(record, 'use');
  return (silent?.node === 'flag' && silent.on) || (use?.node === 'text' && use.text === 'silent');
}

function filledFields(record: Rec): readonly Node[] {
  const filled: Node[] = [];
  const use = fieldOf(record, 'use');
  if (use?.node === 'text' && use.text !== 'silent') filled.push(use);
  for (const key of Object.keys(record)) {
    const value = companions.has(key) ? undefined : fieldOf(record, key);
    if (value !== undefined && !(value.node === 'record' && isSilent(value))) filled.push(value);
  }
  return filled;
}

function wordsOf(node: Node): string {
  if (node.node === 'quantity') return node.text;
  return node.node === 'text' ? `${fieldName(node.at)} ${node.text}` : fieldName(node.at);
}

/** Only for one number: a group of fields may hold more than a habit. */
function fixesFor(record: Rec): readonly Fix[] {
  if (!isRequirement(record)) return [];
  const { checked, ask, reason } = record;
  const kept = ['silent: true'];
  if (checked !== undefined) kept.push(`checked: ${checked.text}`);
  if (ask !== undefined) kept.push(`ask: ${ask.text}`);
  if (reason !== undefined) kept.push(`reason: ${quoteScalar(reason.text)}`);
  return [{ title: 'Leave only the silence', edits: [{ span: record.at.span, text: `{${kept.join(', ')}}` }] }];
}
