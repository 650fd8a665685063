import type { Fix } from '../../base/problem.ts';
import { sayingOf } from '../../model/saying.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { insertField } from '../support/flow-edits.ts';
import { listed } from '../support/lists.ts';
import { placeInQuote } from '../support/quote-place.ts';
import { quotedWords, spanOfWords } from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  left: (printed: string) => `The page says "${printed}", but no field that cites it holds that number.`,
  uncited: (printed: readonly string[]) =>
    `No field cites this passage, though it says ${listed(printed.map((text) => `"${text}"`))}.`,
};

export const rule = defineRule({
  id: 'quote-number-not-encoded',
  stage: 'source',
  severity: 'warning',
  settledBy: 'educator',
  why: 'A passage that is encoded by half loses its drying time or its highest value without a trace.',
  source: 'logic',
  fix: 'Notes the number as not needed; the reason is left for the writer.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    const uncited = new Map<string, TranscriptionFault[]>();
    for (const fault of faultsNamed(entity, 'quote-number-not-encoded')) {
      const { id, cited } = fault.quoted;
      if (cited > 0) reportLeft(fault, report);
      else uncited.set(id, [...(uncited.get(id) ?? []), fault]);
    }
    for (const faults of uncited.values()) reportUncited(faults, report);
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "132 °C, 4 min, dry 30 min."}
                                                              ^^^^^^^ The page says "30 min", but no field that cites it holds that number.
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, src: s1}
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: 'Soak for 5 to 30 minutes at 40 °C or below, then brush 3 times.'}
                                                                       ^^^^^ The page says "40 °C", but no field that cites it holds that number.
                                                                                                  ^^^^^^^ The page says "3 times", but no field that cites it holds that number.
  s2: {doc: ST-2, rev: A, page: 7, quote: "The tube withstands 100 cycles at 137 °C."}
  ^^ No field cites this passage, though it says "100 cycles" and "137 °C".
cleaning:
  all_of:
    - {stage: manual, soak: {between: [5 min, 30 min]}, brush: {required: true}, src: s1}
`,
      `
kind: device
id: pale-rasp
statements:
  s1: {doc: PR-3, rev: A, page: 5, quote: "Soak 5 to 10 minutes, then dry for 20–30 minutes."}
                                                                              ^^^^^^^^^^^^^ The page says "20–30 minutes", but no field that cites it holds that number.
  s2: {doc: PR-3, rev: A, page: 6, quote: "Let it cool for between 30 and 60 minutes."}
  ^^ No field cites this passage, though it says "30 and 60 minutes".
cleaning:
  all_of:
    - {stage: manual, soak: {between: [5 min, 10 min]}, src: s1}
`,
      `
kind: device
id: pale-probe
statements:
  s1:
    doc: PP-4
    rev: A
    page: 3
    quote: "Dry at \\"low\\" heat, 60 °C, for 20 minutes."
           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ The page says "20 minutes", but no field that cites it holds that number.
drying: {temp: {stated: 60 C}, src: s1}
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "132 °C (270 °F), 4 min, dry 30 min; tested with 25 sets.", not_needed: [{text: 25 sets, reason: how the maker tested}]}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, dry: {stated: 30 min}, src: s1}
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Do not use agents above pH 11; keep the tips 20 mm apart."}
  s2: {doc: ST-2, rev: A, page: 6, quote: "134 °C, 3 minutes (18 minutes where prion disease is suspected)."}
point_of_use: {separate: tips 20 mm apart, src: s1}
not:
  - {what: ph-above, value: "11", src: s1}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, temp: {stated: 134 C}, exposure: {stated: 3 min}, src: s2}
    - {id: prion, modality: steam-prevac, when: prion-suspected, temp: {stated: 134 C}, exposure: {stated: 18 min}, src: s2}
`,
    ],
  },
});

function reportLeft(fault: TranscriptionFault, report: RuleContext['report']): void {
  const { quoted } = fault;
  const words = spanOfWords(fault.fault.spans);
  if (words === undefined) return;
  const printed = quotedWords(fault);
  report({
    at: placeInQuote(quoted.quote, words),
    message: message.left(printed),
    says: [sayingOf(quoted.statement, quoted.statement.at)],
    fixes: notNeeded(fault, [printed]),
  });
}

function reportUncited(faults: readonly TranscriptionFault[], report: RuleContext['report']): void {
  const first = faults[0];
  if (first === undefined) return;
  const { statement } = first.quoted;
  const printed = faults.map(quotedWords);
  report({
    at: statement.at,
    ...(statement.at.keySpan !== undefined && { span: statement.at.keySpan }),
    message: message.uncited(printed),
    says: [sayingOf(statement, statement.at)],
    fixes: notNeeded(first, printed),
  });
}

/** The reason stays empty: the file is not in order before a person has given it. */
function notNeeded({ quoted }: TranscriptionFault, printed: readonly string[]): readonly Fix[] {
  const rows = printed.map((text) => `{text: "${text.replaceAll('"', '\\"')}", reason: ""}`);
  const { not_needed } = quoted.statement;
  const edit = not_needed === undefined ? insertField(quoted.statement, `not_needed: [${rows.join(', ')}]`) : undefined;
  return edit === undefined
    ? []
    : [{ title: `Note ${listed(printed)} as not needed (then write the reason)`, edits: [edit], setsAside: true }];
}
