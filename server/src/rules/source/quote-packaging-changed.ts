import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import { sayingOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { packagingWords, specialPackaging } from '../support/packaging-words.ts';
import { passagesOf, sourceOf } from '../support/quoted-words.ts';
import { isMentioned } from '../support/wording.ts';

const message = {
  added: (type: string) => `The page does not name "${type}" where it says how to pack for this choice.`,
};

export const rule = defineRule({
  id: 'quote-packaging-changed',
  stage: 'source',
  severity: 'error',
  settledBy: 'educator',
  why: 'Packaging that the page does not name was not what the maker tested with this item.',
  source: 'logic',
  kinds: ['device'],
  check(device, { report }) {
    for (const option of device.sterilization?.any_of?.items ?? []) {
      const { quotes, names } = namedFor(device, option);
      if (names.size === 0) continue;
      for (const type of option.packaging?.allowed?.items ?? []) {
        if (!packagingWords.has(type.text) || names.has(type.text)) continue;
        report({
          at: type.at,
          message: message.added(type.text),
          says: quotes.map(({ statement }) => sayingOf(statement, statement.at)),
          does: typesInWords(option),
        });
      }
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Pre-vacuum steam, 132 °C, 4 minutes, double wrapped."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, packaging: {relation: validated_with, allowed: [double-wrap, pouch]}, src: s1}
                                                                                                       ^^^^^ The page does not name "pouch" where it says how to pack for this choice.
`,
      `
kind: device
id: lens-injector
statements:
  s1: {doc: LI-2, rev: C, page: 7, quote: "Pre-vacuum steam: 134 °C, at least 4 minutes."}
  s2: {doc: LI-2, rev: C, page: 8, lang: de, quote: "Im Klarsichtbeutel verpacken."}
sterilization:
  any_of:
    - id: pv134
      modality: steam-prevac
      exposure: {at_least: 4 min, src: s1}
      packaging: {relation: restricted_to, allowed: [rigid-container], src: s2}
                                                     ^^^^^^^^^^^^^^^ The page does not name "rigid-container" where it says how to pack for this choice.
`,
      `
kind: device
id: camera-head
statements:
  s1: {doc: CV-8, rev: G, page: 6, quote: "Hydrogen peroxide, in a non-cellulose pouch only."}
sterilization:
  any_of:
    - {id: surface, modality: vh2o2, packaging: {relation: restricted_to, allowed: [non-cellulose-pouch, pouch]}, src: s1}
                                                                                                         ^^^^^ The page does not name "pouch" where it says how to pack for this choice.
`,
    ],
    good: [
      `
kind: device
id: pale-forceps
statements:
  s1: {doc: PF-1, rev: A, page: 4, quote: "Pre-vacuum steam, in a double wrap or in a rigid container cleared for the cycle."}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, packaging: {relation: requires_class, allowed: [double-wrap, rigid-container]}, src: s1}
`,
      `
kind: device
id: lid-weight
statements:
  s1: {doc: LW-1, rev: A, page: 2, quote: "Pack with packaging cleared for the cycle."}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, packaging: {relation: requires_class, allowed: [pouch, double-wrap]}, src: s1}
`,
    ],
  },
});

/** The types that the passages on packing name. None when they speak of packaging in general. */
function namedFor(device: EntityOf['device'], option: SterilizationOption) {
  const { packaging } = option;
  const quotes = packaging === undefined ? [] : passagesOf(device, packaging, sourceOf(option));
  const names = new Set<string>();
  for (const { quote } of quotes) {
    const hidden = specialPackaging.flatMap(({ words, hides }) => (isMentioned(quote.text, words) ? hides : []));
    for (const [type, words] of packagingWords)
      if (isMentioned(quote.text, words) && !hidden.includes(type)) names.add(type);
  }
  return { quotes, names };
}

function typesInWords({ packaging }: SterilizationOption): string {
  const types: readonly Text[] = packaging?.allowed?.items ?? [];
  return types.map(({ text }) => text).join(', ');
}
