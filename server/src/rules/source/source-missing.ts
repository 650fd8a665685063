import type { Fix } from '../../base/problem.ts';
import type { Rec } from '../../model/node.ts';
import { fieldOf, isRequirement } from '../../model/walk.ts';
import { matchNumber } from '../../quantity/prose/match.ts';
import { defineRule } from '../rule.ts';
import { insertField } from '../support/flow-edits.ts';
import { fieldName } from '../support/quote-report.ts';
import type { Transcribed } from '../support/transcription.ts';
import { readStatement } from '../support/transcription.ts';
import { amountsIn, uncitedDemands } from '../support/uncited.ts';

const message = {
  field: (name: string) => `Nothing says where "${name}" comes from. Cite the statement that holds it (src).`,
  part: (name: string) => `Nothing says where ${name} comes from. Cite the statement that holds it (src).`,
};

export const rule = defineRule({
  id: 'source-missing',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'A demand without a source can be neither defended nor brought up to date.',
  source: 'standard',
  fix: 'Cites a statement of the file that holds the number.',
  kinds: ['device', 'packaging', 'chemistry'],
  check(entity, { report }) {
    for (const record of uncitedDemands(entity)) {
      report({ at: record.at, message: messageFor(record), fixes: fixesFor(record, entity) });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 2, quote: "The bore is 3.2 mm wide."}
  s2: {doc: ST-2, rev: A, page: 2, quote: "The side channel is 1.5 mm wide."}
lumens:
  - {id: main, bore: 3.2 mm, src: s1}
  - {id: side, bore: 1.5 mm, ends: open-both}
         ^^^^ Nothing says where the lumen "side" comes from. Cite the statement that holds it (src).
`,
      `
kind: device
id: pale-forceps
sterilization:
  any_of: [{id: pv132, modality: steam-prevac, exposure: {at_least: 4 min}}]
                ^^^^^ Nothing says where the choice "pv132" comes from. Cite the statement that holds it (src).
`,
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Flush with at least 50 mL of water, 3 times."}
ultrasonic: {use: forbidden}
^^^^^^^^^^ Nothing says where "ultrasonic" comes from. Cite the statement that holds it (src).
cleaning:
  all_of:
    - stage: manual
      flush: {volume: {at_least: 50 mL}, times: {stated: 3 times, src: s1}}
              ^^^^^^ Nothing says where "volume" comes from. Cite the statement that holds it (src).
not:
  - {what: saline}
     ^^^^ Nothing says where the prohibition "saline" comes from. Cite the statement that holds it (src).
`,
      `
kind: chemistry
id: C9
ph_in_use: {between: [6, 8], of: in-use}
^^^^^^^^^ Nothing says where "ph in use" comes from. Cite the statement that holds it (src).
temp: {silent: true, checked: 2025-02-03}
`,
    ],
    good: [
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Flush with at least 50 mL of water, 3 times."}
cleaning:
  all_of:
    - {stage: manual, flush: {volume: {at_least: 50 mL}, times: {stated: 3 times}}, src: s1}
drying: {time: {at_least: 20 min, src: {doc: ST-2, rev: A, page: 5}}}
ultrasonic: {silent: true, checked: 2025-02-03}
disassembly: {not_applicable: one piece}
`,
      `
kind: packaging
id: P9-container
dry: {at_least: 30 min, src: s1}
storage: {silent: true}
statements:
  s1: {doc: KL-3, rev: C, page: 11, quote: "A dry time of at least 30 minutes."}
`,
    ],
  },
});

function messageFor(record: Rec): string {
  if (record.at.keySpan !== undefined) return message.field(fieldName(record.at));
  for (const [key, sort] of namingFields) {
    const name = fieldOf(record, key);
    const word = record.at.parent?.key === 'lumens' ? 'the lumen' : sort;
    if (name?.node === 'text') return message.part(`${word} "${name.text}"`);
  }
  return message.part(`this part of "${record.at.parent === undefined ? '' : fieldName(record.at.parent)}"`);
}

/** By what a person knows the members of a list. */
const namingFields: ReadonlyMap<string, string> = new Map([
  ['what', 'the prohibition'],
  ['id', 'the choice'],
  ['modality', 'the choice'],
  ['stage', 'the stage'],
  ['do', 'the step'],
]);

/** Statements whose quote holds every number of the field. */
function fixesFor(record: Rec, entity: Transcribed): readonly Fix[] {
  if (!isRequirement(record)) return [];
  const amounts = amountsIn(record);
  const fixes: Fix[] = [];
  for (const id of amounts.length === 0 ? [] : (entity.statements?.rows.keys() ?? [])) {
    const reading = readStatement(entity, id)?.reading;
    if (reading === undefined) continue;
    const holdsAll = amounts.every((amount) => matchNumber(reading, amount, amount.dimension).kind === 'exact');
    const edit = holdsAll ? insertField(record, `src: ${id}`) : undefined;
    if (edit !== undefined) fixes.push({ title: `Cite ${id}: ${reading.quote}`, edits: [edit] });
  }
  return fixes;
}
