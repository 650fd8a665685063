import { isSteam } from '../../judge/vocabulary.ts';
import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { insertField } from '../support/flow-edits.ts';
import { listed } from '../support/lists.ts';

type Device = EntityOf['device'];

const message = {
  incomplete: (missing: string) =>
    `This option does not say ${missing}. An incomplete option would let any cycle pass: encode it, or say that the page is silent, with the question to the maker.`,
  fix: (field: string) => `Add "${field}" as silent, to be confirmed on the page`,
};

export const rule = defineRule({
  id: 'option-incomplete',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'educator',
  why: 'Method, temperature, time and packaging belong together; an option that leaves one out fits everything.',
  source: 'standard',
  fix: 'Adds what is missing as silent, to be confirmed by looking at the page.',
  kinds: ['device'],
  check(device, { report }) {
    for (const option of device.sterilization?.any_of?.items ?? []) {
      const missing = missingIn(option, device);
      if (missing.length === 0) continue;
      report({
        at: option.at,
        message: message.incomplete(listed(missing.map(({ words }) => words))),
        says: sayingsOf(device, option.src),
        fixes: missing.flatMap(({ field }) => fixFor(field, option)),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: hook
sterilization:
  any_of:
    - {id: a, temp: {stated: 132 C}, src: s1}
           ^ This option does not say by which method, how long and in which packaging. An incomplete option would let any cycle pass: encode it, or say that the page is silent, with the question to the maker.
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Sterilize at 132 °C."}
`,
      `
kind: device
id: tube
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
           ^^^^^ This option does not say at which temperature. An incomplete option would let any cycle pass: encode it, or say that the page is silent, with the question to the maker.
statements:
  s1: {doc: TU-1, rev: A, page: 2, quote: "Pre-vacuum steam, at least 4 minutes, dry at least 20 minutes, wrapped."}
`,
    ],
    good: [
      `
kind: device
id: tube
packaging: {relation: requires_class, allowed: [wrap]}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {silent: true, checked: 2025-02-03, ask: q4}, dry: {at_least: 20 min}}
=== questions/q4.ifu.yaml
kind: question
id: q4
about: tube
`,
      `
kind: device
id: camera
sterilization:
  any_of:
    - {id: surface, modality: vh2o2, context: terminal, listed: ["P9:surface"]}
    - {id: urgent, modality: steam-prevac, context: iuss, temp: {stated: 132 C}, exposure: {at_least: 4 min}}
    - {id: old, ambiguous: "as usual in the hospital"}
`,
    ],
  },
});

type Field = 'modality' | 'temp' | 'exposure' | 'packaging';

interface Missing {
  readonly field: Field;
  readonly words: string;
}

/** Drying has a rule of its own. */
function missingIn(option: SterilizationOption, device: Device): readonly Missing[] {
  if (!isJudged(option)) return [];
  const { modality, temp, exposure, packaging } = option;
  if (modality !== undefined && !isSteam(modality.text)) return [];
  const fields = [
    { field: 'modality', words: 'by which method', is: modality !== undefined },
    { field: 'temp', words: 'at which temperature', is: temp !== undefined },
    { field: 'exposure', words: 'how long', is: exposure !== undefined },
    { field: 'packaging', words: 'in which packaging', is: packaging !== undefined || device.packaging !== undefined },
  ] as const;
  return fields.filter(({ is }) => !is);
}

/** What is known to be open, immediate use, and test figures have rules of their own. */
function isJudged({ context, silent, ambiguous, not_applicable, evidence, defers_to }: SterilizationOption): boolean {
  if (context?.text === 'iuss' || evidence?.on === true) return false;
  return silent === undefined && ambiguous === undefined && not_applicable === undefined && defers_to === undefined;
}

function fixFor(field: Field, option: SterilizationOption) {
  const edit = field === 'modality' ? undefined : insertField(option, `${field}: {silent: true}`);
  return edit === undefined ? [] : [{ title: message.fix(field), edits: [edit] }];
}
