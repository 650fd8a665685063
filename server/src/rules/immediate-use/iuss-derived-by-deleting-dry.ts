import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Citation, Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { demandInWords, demandOf } from '../support/limits-of.ts';
import { immediateUse } from '../support/word-lists.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  derived: (terminal: string) =>
    `This immediate-use option is the option "${terminal}" without its drying, taken from the same passage. The page does not offer it: remove it, or cite the passage that does.`,
  does: (dry: string) => `Dry time here: ${dry}.`,
  gap: (dry: string) => `${dry} of drying left out`,
};

export const rule = defineRule({
  id: 'iuss-derived-by-deleting-dry',
  stage: 'immediate-use',
  severity: 'error',
  settledBy: 'educator',
  why: 'A cycle without its drying is a new cycle that nobody has shown to work.',
  source: 'practice',
  kinds: ['device'],
  check(device, { report }) {
    const options = device.sterilization?.any_of?.items ?? [];
    for (const option of options) {
      if (option.context?.text !== 'iuss' || !isUndried(option)) continue;
      const terminal = options.find((other) => other.context?.text !== 'iuss' && isSameButDry(option, other));
      if (terminal === undefined || isOfferedOnPage(device, option)) continue;
      report({
        at: option.at,
        message: message.derived(terminal.id?.text ?? 'for stored packs'),
        says: sayingsOf(device, sourceOf(option)),
        does: message.does(option.dry === undefined ? 'none' : demandInWords(option.dry)),
        ...(terminal.dry !== undefined && { gap: message.gap(demandInWords(terminal.dry)) }),
        related: [{ at: terminal.at, note: 'the option it was made from' }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: bone-clamp
sterilization:
  any_of:
    - {id: t, modality: steam-prevac, context: terminal, exposure: {stated: 4 min}, dry: {at_least: 30 min}, src: s5}
    - {id: i, modality: steam-prevac, context: iuss, exposure: {stated: 4 min}, dry: {exactly: 0 min}, src: s5}
           ^ This immediate-use option is the option "t" without its drying, taken from the same passage. The page does not offer it: remove it, or cite the passage that does.
statements:
  s5: {doc: PM-9, rev: A, page: 2, quote: "Pre-vacuum steam, 4 minutes, dry at least 30 minutes."}
`,
      `
kind: device
id: retractor
sterilization:
  any_of:
    - id: gr132
      modality: steam-gravity
      context: terminal
      temp: {stated: 132 C}
      exposure: {at_least: 10 min}
      dry: {at_least: 15 min}
      src: [s1, s2]
    - id: urgent
          ^^^^^^ This immediate-use option is the option "gr132" without its drying, taken from the same passage. The page does not offer it: remove it, or cite the passage that does.
      modality: steam-gravity
      context: iuss
      temp: {stated: 132 C}
      exposure: {at_least: 10 min}
      src: s1
statements:
  s1: {doc: RT-1, rev: B, page: 5, quote: "Gravity steam 132 °C, at least 10 minutes."}
  s2: {doc: RT-1, rev: B, page: 5, quote: "Dry at least 15 minutes."}
`,
    ],
    good: [
      `
kind: device
id: power-handpiece
sterilization:
  any_of:
    - {id: t, modality: steam-prevac, context: terminal, exposure: {stated: 4 min}, dry: {at_least: 30 min}, src: s11}
    - {id: i, modality: steam-prevac, context: iuss, exposure: {stated: 4 min}, dry: {stated: 0 min}, src: s12}
statements:
  s11: {doc: TW-204, rev: C, page: 8, quote: "Pre-vacuum steam, 4 minutes, dry at least 30 minutes."}
  s12: {doc: TW-204, rev: C, page: 9, quote: "Immediate use: pre-vacuum steam, 4 minutes, dry time 0 minutes."}
`,
      `
kind: device
id: trocar
sterilization:
  any_of:
    - {id: t, modality: steam-prevac, context: terminal, exposure: {stated: 4 min}, dry: {at_least: 20 min}, src: s1}
    - {id: i, modality: steam-prevac, context: iuss, exposure: {stated: 4 min}, dry: {exactly: 0 min}, src: s1}
statements:
  s1: {doc: TR-3, rev: A, page: 7, quote: "Pre-vacuum 4 minutes; dry 20 minutes when wrapped, no drying for immediate use."}
`,
    ],
  },
});

function isUndried(option: SterilizationOption): boolean {
  return option.dry === undefined || demandOf(option.dry)?.high === 0;
}

function isSameButDry(one: SterilizationOption, other: SterilizationOption): boolean {
  return (
    one.modality?.text === other.modality?.text &&
    isSameDemand(one.temp, other.temp) &&
    isSameDemand(one.exposure, other.exposure) &&
    sharesPassage(sourceOf(one), sourceOf(other)) &&
    other.dry !== undefined
  );
}

function isSameDemand(one: Requirement | undefined, other: Requirement | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  return demandInWords(one) === demandInWords(other);
}

function sourceOf(option: SterilizationOption): Citation | undefined {
  return option.exposure?.src ?? option.src;
}

function sharesPassage(one: Citation | undefined, other: Citation | undefined): boolean {
  const cited = new Set(other?.statements.map((statement) => statement.text));
  return one?.statements.some((statement) => cited.has(statement.text)) === true;
}

function isOfferedOnPage(device: EntityOf['device'], option: SterilizationOption): boolean {
  return [...sayingsOf(device, option.src), ...sayingsOf(device, option.dry?.src)].some(({ quote }) =>
    isMentioned(quote, immediateUse),
  );
}
