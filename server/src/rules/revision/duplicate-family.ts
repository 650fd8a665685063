import { counted } from '../../base/words.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { pathOf } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { partsOf } from '../support/entity-parts.ts';
import { demandInWords } from '../support/limits-of.ts';
import { listed } from '../support/lists.ts';
import { marketsMeet } from '../support/markets.ts';
import { serialsApart } from '../support/serials.ts';
import type { SharedNumber } from '../support/shared-numbers.ts';
import { sharedNumbers } from '../support/shared-numbers.ts';

type Device = EntityOf['device'];

const message = {
  shared: (number: string, other: string) => `The catalogue number ${number} is also covered by the device "${other}".`,
  differs: (number: string, other: string, fields: readonly string[]) =>
    `The catalogue number ${number} is also covered by the device "${other}", and the two differ in ${listed(fields, 3)}.`,
  gap: (fields: number) => `${counted(fields, 'value')} ${fields === 1 ? 'differs' : 'differ'}`,
};

export const rule = defineRule({
  id: 'duplicate-family',
  stage: 'revision',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Two files for one instrument are two truths, and nobody knows which one the card was made from.',
  source: 'logic',
  kinds: ['device'],
  check(device, { view, report }) {
    const judged = new Set<Device>();
    for (const start of startsOf(device)) {
      for (const pair of view.ask(sharedNumbers, start).get(device) ?? []) {
        if (judged.has(pair.first) || areApart(pair)) continue;
        judged.add(pair.first);
        const { id } = rootOfEntity(pair.first);
        const fields = differing(device, pair.first);
        report({
          at: pair.entry.at,
          message: fields.length === 0 ? message.shared(pair.number, id) : message.differs(pair.number, id, fields),
          ...(fields.length > 0 && { severity: 'error' as const, gap: message.gap(fields.length) }),
          related: [{ at: pair.firstEntry.at, note: 'the same number in the other file' }],
        });
      }
    }
  },
  examples: {
    bad: [
      `
=== devices/a.ifu.yaml
kind: device
id: scissors-a
covers: ["DW-3301", "DW-3302"]
drying:
  time: {stated: 20 min, src: s1}
statements:
  s1: {doc: DW-1, rev: A, page: 2, quote: "Dry for 20 minutes."}
=== devices/b.ifu.yaml
kind: device
id: scissors-b
covers: ["DW-3301"]
         ^^^^^^^^^ The catalogue number DW-3301 is also covered by the device "scissors-a", and the two differ in drying.time.
drying:
  time: {stated: 30 min, src: s1}
statements:
  s1: {doc: DW-2, rev: A, page: 4, quote: "Dry for 30 minutes."}
`,
      `
=== devices/forceps-long.ifu.yaml
kind: device
id: forceps-long
covers: ["Q-100..Q-180"]
=== devices/forceps-special.ifu.yaml
kind: device
id: forceps-special
covers: ["R-7", "Q-15x"]
                ^^^^^^^ The catalogue number Q-150 is also covered by the device "forceps-long".
`,
    ],
    good: [
      `
=== devices/forceps-long.ifu.yaml
kind: device
id: forceps-long
covers: ["Q-100..Q-180"]
excludes: ["Q-150"]
=== devices/forceps-special.ifu.yaml
kind: device
id: forceps-special
covers: ["Q-150", "Q-181"]
`,
      `
=== devices/handpiece-1.ifu.yaml
kind: device
id: handpiece-first-series
covers: ["TW-20"]
applies_to: "900"
=== devices/handpiece-2.ifu.yaml
kind: device
id: handpiece-second-series
covers: ["TW-20"]
applies_from: "901"
`,
    ],
  },
});

/** The letters with which the numbers of a device begin, each once. */
function startsOf(device: Device): ReadonlySet<string> {
  return new Set((device.covers?.items ?? []).map(({ text }) => /^[^0-9]{0,16}/.exec(text)?.[0] ?? ''));
}

/** Two markets, or two ranges of serial numbers: then both files are right. */
function areApart({ first, second }: SharedNumber): boolean {
  const markets = marketsMeet(
    first.market?.items.map((item) => item.text),
    second.market?.items.map((item) => item.text),
  );
  return !markets || serialsApart(rangeOf(first), rangeOf(second));
}

function rangeOf(device: Device) {
  return { from: device.applies_from?.text, to: device.applies_to?.text };
}

/** Paths of the values that both files give and that differ. */
function differing(one: Device, other: Device): readonly string[] {
  const values = new Map<string, string>();
  for (const { requirement } of partsOf(other).requirements)
    values.set(pathOf(requirement.at), demandInWords(requirement));
  const paths: string[] = [];
  for (const { requirement } of partsOf(one).requirements) {
    const path = pathOf(requirement.at);
    const value = values.get(path);
    if (value !== undefined && value !== demandInWords(requirement)) paths.push(path);
  }
  return paths;
}
