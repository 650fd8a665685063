import type { Fix } from '../../base/problem.ts';
import { sayingOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { insertField } from '../support/flow-edits.ts';
import { pairFields } from '../support/pair-fields.ts';
import { placeInQuote } from '../support/quote-place.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  unclear: (words: string) =>
    `In "${words}", "min" can mean minutes or minimum. Look at the page and say which: read_as: minutes, or read_as: minimum.`,
};

export const rule = defineRule({
  id: 'min-token-ambiguous',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'The same three letters carry a unit and a bound word.',
  source: 'practice',
  fix: 'Notes at the statement how "min" is read.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    const seen = new Set<string>();
    for (const fault of faultsNamed(entity, 'min-token-ambiguous')) {
      const words = fault.fault.spans[0];
      if (words === undefined || seen.has(fault.quoted.id)) continue;
      seen.add(fault.quoted.id);
      const { quote, statement } = fault.quoted;
      report({
        at: placeInQuote(quote, words),
        message: message.unclear(aroundWords(quote.text, words)),
        says: [sayingOf(statement, statement.at)],
        related: pairFields(entity, fault).map(({ field }) => ({ at: field.at, note: 'rests on it' })),
        fixes: fixesFor(fault),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: suction-tube
statements:
  s7: {doc: ST-2, rev: A, page: 2, quote: "Rinse min. 1 with purified water"}
                                                      ^ In "min. 1 with", "min" can mean minutes or minimum. Look at the page and say which: read_as: minutes, or read_as: minimum.
rinse: {time: {at_least: 1 min}, src: s7}
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 2, lang: de, quote: "Spülen: min. 2"}
                                                                  ^ In "min. 2", "min" can mean minutes or minimum. Look at the page and say which: read_as: minutes, or read_as: minimum.
rinse: {use: required, src: s1}
`,
    ],
    good: [
      `
kind: device
id: suction-tube
statements:
  s7: {doc: ST-2, rev: A, page: 2, read_as: minutes, quote: "Rinse min. 1 with purified water"}
rinse: {time: {stated: 1 min}, src: s7}
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 2, quote: "Rinse for min. 1 min with purified water, 4 min. in total"}
rinse: {time: {at_least: 1 min, src: s1}, note: 4 min in total}
`,
    ],
  },
});

const wordsAround = 12;

/** The number with the letters beside it. */
function aroundWords(text: string, words: { readonly start: number; readonly end: number }): string {
  const before = text.slice(Math.max(0, words.start - wordsAround), words.start);
  const after = text.slice(words.end, words.end + wordsAround);
  const start = before.lastIndexOf(' ', before.trimEnd().length - 1) + 1;
  const end = after.indexOf(' ', 1);
  return `${before.slice(start)}${text.slice(words.start, words.end)}${end < 0 ? after : after.slice(0, end)}`.trim();
}

function fixesFor({ quoted }: TranscriptionFault): readonly Fix[] {
  const fixes: Fix[] = [];
  for (const reading of ['minutes', 'minimum']) {
    const edit = insertField(quoted.statement, `read_as: ${reading}`);
    if (edit !== undefined) fixes.push({ title: `"min" means ${reading}`, edits: [edit] });
  }
  return fixes;
}
