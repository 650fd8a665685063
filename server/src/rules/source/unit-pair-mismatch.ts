import type { Fix } from '../../base/problem.ts';
import { unitNamed } from '../../judge/unit-named.ts';
import { isRequirement } from '../../model/walk.ts';
import { shortNumber } from '../../quantity/format.ts';
import { fromBase } from '../../quantity/units.ts';
import { quoteScalar } from '../../syntax/quote.ts';
import { defineRule } from '../rule.ts';
import { mentionAt } from '../support/answered-faults.ts';
import type { PairField } from '../support/pair-fields.ts';
import { pairFields } from '../support/pair-fields.ts';
import { placeInQuote } from '../support/quote-place.ts';
import { fieldName, quotedWords, quoteReport } from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  encoded: (words: string, apart: string, field: string, ours: string) =>
    `The page says "${words}", but the two are ${apart} apart. "${field}" takes ${ours}; which of them the maker tested is not known.`,
  unused: (words: string, apart: string) =>
    `The page says "${words}", but the two are ${apart} apart. Which of them the maker tested is not known.`,
};

export const rule = defineRule({
  id: 'unit-pair-mismatch',
  stage: 'source',
  severity: 'error',
  settledBy: 'manufacturer',
  why: 'One of the two numbers was tested, and nobody but the maker knows which.',
  source: 'logic',
  fix: 'Marks the field as ambiguous, with the words of the page.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const fault of faultsNamed(entity, 'unit-pair-mismatch')) {
      const [first, ...others] = pairFields(entity, fault);
      const words = quotedWords(fault);
      const apart = apartOf(fault);
      const shown = quoteReport(fault);
      if (first === undefined) {
        const place = placeInQuote(fault.quoted.quote, fault.fault.spans[0] ?? { start: 0, end: 0 });
        report({ at: place, message: message.unused(words, apart), ...shown, gap: apart });
        continue;
      }
      const quantity = first.quantity;
      report({
        at: first.field.at,
        span: quantity.at.span,
        message: message.encoded(words, apart, fieldName(first.field.at), quantity.text),
        ...shown,
        does: `${fieldName(first.field.at)}: ${quantity.text}`,
        gap: apart,
        related: [...(shown.related ?? []), ...others.map(({ field }) => ({ at: field.at, note: 'takes it too' }))],
        fixes: fixesFor(fault, first),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s5: {doc: PF-1, rev: A, page: 5, quote: "Pre-vacuum 270 °F (134 °C) 3 min"}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, temp: {stated: 134 C}, exposure: {stated: 3 min}, src: s5}
                                                      ^^^^^ The page says "270 °F (134 °C)", but the two are 1.8 °C apart. "temp" takes 134 C; which of them the maker tested is not known.
`,
      `
kind: device
id: knee-system
statements:
  s1: {doc: KS-1, rev: C, page: 10, quote: "A loaded case must weigh at most 25 lb (10 kg)."}
packaging:
  max_mass: {at_most: 10 kg, src: s1}
                      ^^^^^ The page says "25 lb (10 kg)", but the two are 1.3 kg apart. "max mass" takes 10 kg; which of them the maker tested is not known.
  no_stack: true
`,
      `
kind: device
id: pale-probe
statements:
  s1: {doc: PP-4, rev: A, page: 3, quote: "Dry with air of at most 20 psi (2.4 bar)."}
                                                                   ^^^^^^ The page says "20 psi (2.4 bar)", but the two are 1 bar apart. Which of them the maker tested is not known.
drying: {use: required, src: s1}
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s4: {doc: PF-1, rev: A, page: 5, quote: "Pre-vacuum 273 °F (134 °C) 3 min"}
  s5: {doc: PF-1, rev: A, page: 5, quote: "A loaded case must weigh at most 25 lb (11.3 kg)."}
packaging: {max_mass: {at_most: 11.3 kg, src: s5}}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, temp: {stated: 134 C}, exposure: {stated: 3 min}, src: s4}
`,
      `
kind: device
id: pale-forceps
statements:
  s5: {doc: PF-1, rev: A, page: 5, quote: "Pre-vacuum 270 °F (134 °C) 3 min"}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, temp: {ambiguous: "270 °F (134 °C)", ask: q-270}, exposure: {stated: 3 min}, src: s5}
`,
    ],
  },
});

/** `1.8 °C`: how far apart the two are, in the unit of the second. */
function apartOf({ fault, quoted }: TranscriptionFault): string {
  const [first, second] = fault.spans.map(({ start }) => mentionAt(quoted.reading, start));
  for (const other of second?.quantities ?? []) {
    const one = first?.quantities.find((quantity) => quantity.dimension === other.dimension);
    if (one === undefined) continue;
    const apart = Math.abs(fromBase(one.value, unitNamed(other.dimension, other.unit)) - other.amount);
    return `${shortNumber(Number(apart.toFixed(1)))} ${other.unit}`.trimEnd();
  }
  return 'too far';
}

/** The words of the page in place of the number; a question can be asked then. */
function fixesFor({ quoted, fault }: TranscriptionFault, { field, quantity }: PairField): readonly Fix[] {
  const key = quantity.at.keySpan;
  const last = fault.spans[fault.spans.length - 1];
  if (!isRequirement(field.record) || field.quantities?.length !== 1 || key === undefined || last === undefined)
    return [];
  const { text } = quoted.quote;
  const words = text.slice(fault.spans[0]?.start, text.charAt(last.end) === ')' ? last.end + 1 : last.end);
  const edits = [
    { span: key, text: 'ambiguous' },
    { span: quantity.at.span, text: quoteScalar(words) },
  ];
  return [{ title: `Mark as ambiguous: ${words}`, edits }];
}
