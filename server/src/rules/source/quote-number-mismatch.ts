import type { Fix } from '../../base/problem.ts';
import { unitNamed } from '../../judge/unit-named.ts';
import { formatIn, formatQuantity } from '../../quantity/format.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import type { Candidate } from '../support/quote-report.ts';
import {
  candidatesFor,
  fieldName,
  numbersOfKind,
  quantityAtFault,
  quoteReport,
  sortOf,
} from '../support/quote-report.ts';
import { faultsNamed, transcribedKinds } from '../support/transcription.ts';
import type { TranscriptionFault } from '../support/transcription-fault.ts';

const message = {
  other: (field: string, written: string, printed: readonly string[]) =>
    `The page does not say ${written} for "${field}". It says ${listed(printed.map((text) => `"${text}"`))}.`,
  none: (field: string, written: string, sort: string) =>
    `The page does not say ${written} for "${field}", nor ${sort} of any other size.`,
};

export const rule = defineRule({
  id: 'quote-number-mismatch',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'A slip of the fingers is the likeliest fault of all, and it looks as sure as the right number.',
  source: 'logic',
  fix: 'Puts the number of the quote in its place.',
  kinds: transcribedKinds,
  check(entity, { report }) {
    for (const fault of faultsNamed(entity, 'quote-number-mismatch')) {
      const { field } = fault;
      const quantity = quantityAtFault(fault);
      if (field === undefined) continue;
      const written = quantity === undefined ? 'the tolerance' : formatQuantity(quantity);
      const candidates = candidatesFor(fault);
      const printed = (candidates.length > 0 ? candidates : numbersOfKind(fault)).map((one) => one.printed);
      report({
        at: field.at,
        ...(quantity !== undefined && { span: quantity.at.span }),
        message:
          printed.length > 0
            ? message.other(fieldName(field.at), written, printed)
            : message.none(fieldName(field.at), written, sortOf(fault.fault.value)),
        ...quoteReport(fault),
        ...gapTo(fault),
        fixes: fixesFor(fault, candidates),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: needle-holder
statements:
  s1: {doc: NH-1, rev: A, page: 1, section: Machine, quote: "Step   Time (min)   Temp. (°C)   Agent"}
  s2: {doc: NH-1, rev: A, page: 1, section: Machine, quote: "Pre-wash   2   < 40   tap water"}
cleaning:
  all_of:
    - stage: mechanical
      prewash: {time: {stated: 40 min, src: s2}, temp: {at_most: 40 °C, src: s2}, water: {grade: utility, src: s2}}
                               ^^^^^^ The page does not say 40 min for "time". It says "2".
`,
      `
kind: device
id: lens-injector
statements:
  s1: {doc: LI-4, rev: A, page: 9, quote: "Pre-vacuum steam: 134 °C, at least 4 minutes, dry at least 20 minutes."}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
                                                                                                              ^^^^^^ The page does not say 30 min for "dry". It says "20 minutes".
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Expose at 132 °C for 4 minutes."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 14 min}, src: s1}
                                                                                    ^^^^^^ The page does not say 14 min for "exposure". It says "4 minutes".
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Flush the tube with at least 50 mL of water."}
  s2: {doc: ST-2, rev: A, page: 5, quote: "Dry the bore with medical air."}
lumens:
  - {id: tube, bore: 3.0 mm, length: 180 mm, src: s2}
                     ^^^^^^ The page does not say 3.0 mm for "bore", nor a length of any other size.
                                     ^^^^^^ The page does not say 180 mm for "length", nor a length of any other size.
cleaning:
  all_of:
    - stage: manual
      flush:
        volume:
          at_least: 60 mL
                    ^^^^^ The page does not say 60 mL for "volume". It says "50 mL".
        src: s1
`,
      `
kind: packaging
id: P9-container
mass_max: 11.3 kg
          ^^^^^^^ The page does not say 11.3 kg for "mass max". It says "10 kg".
mass_src: s1
statements:
  s1: {doc: KL-3, rev: C, page: 12, quote: "The loaded container must weigh at most 10 kg."}
`,
      `
kind: sterilizer
id: S3
modality: vh2o2
statements:
  s2: {doc: GL-VP, rev: "2", page: 22, quote: "Cycle LUMEN takes loads of at most 3.9 kg."}
cycles:
  - {id: lumen, modality: vh2o2, context: terminal, load_max: 4.9 kg, src: s2}
                                                              ^^^^^^ The page does not say 4.9 kg for "load max". It says "3.9 kg".
`,
    ],
    good: [
      `
kind: device
id: needle-holder
statements:
  s1: {doc: NH-1, rev: A, page: 1, section: Machine, quote: "Step   Time (min)   Temp. (°C)   Agent"}
  s2: {doc: NH-1, rev: A, page: 1, section: Machine, quote: "Pre-wash   2   < 40   tap water"}
  s3: {doc: NH-1, rev: A, page: 1, section: Machine, quote: "Wash   min. 5   55   alkaline"}
  s4: {doc: NH-1, rev: A, page: 1, section: Machine, quote: "Dry   20   max. 110   -"}
cleaning:
  all_of:
    - stage: mechanical
      prewash: {time: {stated: 2 min, src: s2}, temp: {at_most: 40 °C, src: s2}, water: {grade: utility, src: s2}}
      wash: {time: {at_least: 5 min, src: s3}, temp: {stated: 55 °C, src: s3}}
      dry: {time: {stated: 20 min, src: s4}, temp: {at_most: 110 °C, src: s4}}
`,
      `
kind: sterilizer
id: S3
modality: vh2o2
statements:
  s2: {doc: GL-VP, rev: "2", page: 22, quote: "Cycle LUMEN takes loads of at most 4.9 kg."}
cycles:
  - {id: lumen, modality: vh2o2, context: terminal, load_max: 4.0 kg, src: s2}
`,
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Expose at 270 °F for 4 minutes, then dry for half an hour (30 min)."}
  s2: {doc: PF-1, rev: A, page: 4, quote: "Use the cycle with 3 pulses."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {stated: 4 min}, dry: {stated: 30 min}, pulses: {stated: 3 times}, src: [s1, s2]}
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Soak for at least 5 minutes."}
  s2: {doc: ST-2, rev: A, page: 3, quote: "Never soak for longer than 30 minutes."}
cleaning:
  all_of:
    - {stage: manual, soak: {between: [5 min, 30 min], src: [s1, s2]}, src: s1}
`,
    ],
  },
});

function gapTo({ fault, quoted }: TranscriptionFault): { readonly gap?: string } {
  const { value, spans, taken = [] } = fault;
  const unit = value === undefined ? undefined : unitNamed(value.dimension, value.unit);
  // The number that the message names first: one that another field holds is not what this one was copied from.
  const start = (spans.find((span) => !taken.includes(span)) ?? spans[0])?.start;
  const mention = quoted.reading.numbers.find((one) => one.span.start === start);
  const printed = mention?.quantities.find((one) => one.dimension === value?.dimension);
  if (value === undefined || unit === undefined || unit.zero !== 0 || printed === undefined) return {};
  const apart = value.value - printed.value;
  return { gap: `${formatIn(Math.abs(apart), unit)} ${apart > 0 ? 'more' : 'less'} than the page says` };
}

function fixesFor(fault: TranscriptionFault, candidates: readonly Candidate[]): readonly Fix[] {
  const quantity = quantityAtFault(fault);
  if (quantity === undefined) return [];
  return candidates.map(({ text }) => ({ title: `Change to ${text}`, edits: [{ span: quantity.at.span, text }] }));
}
