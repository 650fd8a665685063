import { formatQuantity } from '../../quantity/format.ts';
import { defineRule } from '../rule.ts';
import { mentionAt } from '../support/answered-faults.ts';
import { insertField } from '../support/flow-edits.ts';
import { pairFields } from '../support/pair-fields.ts';
import { placeInQuote } from '../support/quote-place.ts';
import { fieldName, quotedWords, quoteReport } from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  page: (words: string) =>
    `The page says "${words}", but a difference of temperatures has no offset of 32: it was converted like a temperature.`,
  field: (words: string, field: string, ours: string) =>
    `The page says "${words}", a difference converted like a temperature (with the offset of 32). "${field}" takes ${ours}.`,
};

export const rule = defineRule({
  id: 'delta-converted-as-absolute',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A tolerance of 3 °C is 5.4 °F and never 37.4 °F.',
  source: 'logic',
  fix: 'Notes at the statement what is wrong on the page.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const fault of faultsNamed(entity, 'delta-converted-as-absolute')) {
      const words = quotedWords(fault);
      const wrong = pairFields(entity, fault).find(({ quantity }) => quantity.unit.startsWith('°F'));
      const at = wrong?.field.at ?? placeInQuote(fault.quoted.quote, fault.fault.spans[1] ?? { start: 0, end: 0 });
      report({
        at,
        ...(wrong !== undefined && { span: wrong.quantity.at.span }),
        message:
          wrong === undefined
            ? message.page(words)
            : message.field(words, fieldName(wrong.field.at), formatQuantity(wrong.quantity)),
        ...quoteReport(fault),
        ...fixesFor(fault),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s6: {doc: PF-1, rev: A, page: 5, quote: "132 °C ±3 °C (270 °F ±37.4 °F)"}
                                                                 ^^^^^^^ The page says "3 °C (270 °F ±37.4 °F)", but a difference of temperatures has no offset of 32: it was converted like a temperature.
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, temp: {stated: 132 C, tol: 3 K, src: s6}}
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Cool slowly; the tolerance is 5 °C (41 °F)."}
                                                                               ^^^^^ The page says "5 °C (41 °F)", but a difference of temperatures has no offset of 32: it was converted like a temperature.
cooling: {method: slowly in air, src: s1}
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s6: {doc: PF-1, rev: A, page: 5, quote: "132 °C ±3 °C (270 °F ±5.4 °F)"}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, temp: {stated: 132 C, tol: 3 K, src: s6}}
`,
      `
kind: device
id: pale-forceps
statements:
  s6: {doc: PF-1, rev: A, page: 5, as_written_error: "37.4 °F should be 5.4 °F", quote: "132 °C ±3 °C (270 °F ±37.4 °F)"}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, temp: {stated: 132 C, tol: 3 K, src: s6}}
`,
    ],
  },
});

function fixesFor({ fault, quoted }: TranscriptionFault) {
  const [first, second] = fault.spans.map(({ start, end }) => quoted.quote.text.slice(start, end));
  const isDifference = mentionAt(quoted.reading, fault.spans[1]?.start)?.isDifference === true;
  if (first === undefined || second === undefined || !isDifference) return {};
  const edit = insertField(quoted.statement, `as_written_error: "${second} is ${first} converted like a temperature"`);
  return edit === undefined ? {} : { fixes: [{ title: 'Note the fault of the page at the statement', edits: [edit] }] };
}
