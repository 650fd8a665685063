import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { modalityName, modalityWords } from '../support/modality-words.ts';
import { passagesOf, sourceOf } from '../support/quoted-words.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  changed: (page: string, field: string) => `The page speaks of ${page} here, but this choice is encoded as ${field}.`,
};

export const rule = defineRule({
  id: 'quote-modality-changed',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'Ways of sterilizing never stand for one another: what was shown for one says nothing about the other.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    for (const option of device.sterilization?.any_of?.items ?? []) {
      const { modality } = option;
      if (modality === undefined || !modalityWords.has(modality.text)) continue;
      const { quotes, names } = namedFor(device, option);
      const [first] = names;
      if (first === undefined || names.has(modality.text)) continue;
      report({
        at: modality.at,
        message: message.changed(modalityName(first), modalityName(modality.text)),
        says: quotes.map(({ statement }) => sayingOf(statement, statement.at)),
        does: modality.text,
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Pre-vacuum steam: 132 °C, at least 4 minutes."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-gravity, temp: {stated: 132 C}, exposure: {at_least: 4 min}, src: s1}
                            ^^^^^^^^^^^^^ The page speaks of steam with air removal by vacuum here, but this choice is encoded as steam with air removal by gravity.
`,
      `
kind: device
id: lens-injector
statements:
  s1: {doc: LI-2, rev: C, page: 7, lang: de, quote: "Niedertemperatur mit Wasserstoffperoxid, Zyklus STANDARD."}
sterilization:
  any_of:
    - id: low
      modality: eo
                ^^ The page speaks of hydrogen peroxide here, but this choice is encoded as ethylene oxide.
      src: s1
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Steam with pre-vacuum or by gravity: 132 °C, see the table."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, src: s1}
    - {id: gr132, modality: steam-gravity, temp: {stated: 132 C}, src: s1}
`,
      `
kind: device
id: lid-weight
statements:
  s1: {doc: LW-1, rev: A, page: 2, quote: "Steam, 134 °C, 5 minutes."}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, temp: {stated: 134 C}, src: s1}
`,
    ],
  },
});

function namedFor(device: EntityOf['device'], option: SterilizationOption) {
  const quotes = passagesOf(
    device,
    option,
    device.sterilization === undefined ? undefined : sourceOf(device.sterilization),
  );
  const names = new Set<string>();
  for (const { quote } of quotes) {
    for (const [modality, words] of modalityWords) if (isMentioned(quote.text, words)) names.add(modality);
  }
  return { quotes, names };
}
