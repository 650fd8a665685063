import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { Statement } from '../../model/entities/statement.generated.ts';
import { sayingsOf, statementsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { insertField } from '../support/flow-edits.ts';
import { demandInWords, demandOf } from '../support/limits-of.ts';
import { bySource } from '../support/site-limits.ts';
import { prions } from '../support/word-lists.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  routine:
    'This option comes from a sentence about suspected prion disease, but it is encoded for every day. Write when it holds ("when: prion-suspected").',
  does: (exposure: string) => `The option is open to every load${exposure === '' ? '' : `, with ${exposure}`}.`,
};

export const rule = defineRule({
  id: 'tse-note-encoded-as-routine',
  stage: 'cleaning',
  severity: 'error',
  settledBy: 'educator',
  why: 'A cycle meant for suspected prion disease would pass as an ordinary one and wear the device out.',
  source: 'practice',
  fix: 'Adds the condition to the option.',
  kinds: ['device'],
  check(device, { view, report }) {
    for (const option of device.sterilization?.any_of?.items ?? []) {
      if (option.when !== undefined && isMentioned(option.when.text, prions)) continue;
      const statements = statementsOf(device, option.exposure?.src ?? option.src);
      if (!statements.some((statement) => isAboutPrions(statement, option))) continue;
      const policies = view.site()?.policies;
      if (policies?.tse_routine?.on === true && policies.tse_routine_src !== undefined) continue;
      const edit = insertField(option, 'when: prion-suspected');
      report({
        at: option.at,
        message: message.routine,
        says: sayingsOf(device, option.exposure?.src ?? option.src),
        does: message.does(option.exposure === undefined ? '' : demandInWords(option.exposure)),
        ...(policies?.tse_routine !== undefined && {
          related: [
            {
              at: policies.tse_routine.at,
              note: `the department’s decision${bySource({ source: policies.tse_routine_src?.text ?? '' })}`,
            },
          ],
        }),
        ...(edit !== undefined && { fixes: [{ title: 'Add "when: prion-suspected"', edits: [edit] }] }),
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: brain-spatula
statements:
  s9: {doc: BS-1, rev: A, page: 8, quote: "If TSE is suspected, 134 °C for 18 min."}
sterilization:
  any_of:
    - {id: tse18, modality: steam-prevac, exposure: {stated: 18 min}, src: s9}
           ^^^^^ This option comes from a sentence about suspected prion disease, but it is encoded for every day. Write when it holds ("when: prion-suspected").
`,
      `
kind: device
id: skull-clamp
statements:
  s2: {doc: SC-4, rev: C, page: 6, quote: "Pre-vacuum 134 °C, 3 min (18 min where prion disease is suspected)."}
sterilization:
  any_of:
    - {id: pv134-3, modality: steam-prevac, temp: {stated: 134 C}, exposure: {stated: 3 min}, src: s2}
    - {id: pv134-18, modality: steam-prevac, temp: {stated: 134 C}, exposure: {stated: 18 min}, src: s2}
           ^^^^^^^^ This option comes from a sentence about suspected prion disease, but it is encoded for every day. Write when it holds ("when: prion-suspected").
`,
    ],
    good: [
      `
kind: device
id: brain-spatula
statements:
  s9: {doc: BS-1, rev: A, page: 8, quote: "If TSE is suspected, 134 °C for 18 min."}
sterilization:
  any_of:
    - {id: tse18, when: prion-suspected, modality: steam-prevac, exposure: {stated: 18 min}, src: s9}
`,
      `
=== devices/spatula.ifu.yaml
kind: device
id: brain-spatula
statements:
  s9: {doc: BS-1, rev: A, page: 8, quote: "If TSE is suspected, 134 °C for 18 min."}
sterilization:
  any_of:
    - {id: tse18, modality: steam-prevac, exposure: {stated: 18 min}, src: s9}
=== site.ifu.yaml
kind: site
id: sea-view
policies: {tse_routine: true, tse_routine_src: "national directive N-1, 2023"}
`,
    ],
  },
});

/** True when the option's exposure stands in a part of the passage about prions, and in no other part. */
function isAboutPrions(statement: Statement, option: SterilizationOption): boolean {
  if (statement.when !== undefined && isMentioned(statement.when.text, prions)) return true;
  const parts = (statement.quote?.text ?? '').slice(0, 2000).split(/[;()]|\.(?!\d)|\bor\b/);
  const about = parts.filter((part) => isMentioned(part, prions));
  if (about.length === 0) return false;
  const demand = demandOf(option.exposure);
  const amounts = [demand?.lowest?.amount, demand?.highest?.amount].filter((amount) => amount !== undefined);
  const ordinary = parts.filter((part) => !about.includes(part));
  return amounts.length === 0 || !amounts.every((amount) => ordinary.some((part) => numbersIn(part).includes(amount)));
}

function numbersIn(part: string): readonly number[] {
  return (part.match(/\d{1,9}(?:[.,]\d{1,6})?/g) ?? []).map((text) => Number(text.replace(',', '.')));
}
