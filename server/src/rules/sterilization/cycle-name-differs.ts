import type { SterilizerCycle } from '../../model/entities/sterilizer.generated.ts';
import type { Quantity, Text } from '../../model/node.ts';
import { isEqualAmount } from '../../quantity/prose/ratio.ts';
import { defineRule } from '../rule.ts';
import { shown } from '../support/shown.ts';

const message = {
  differs: (name: string, says: string, what: string, given: string) =>
    `The name "${name}" says ${says}, but the ${what} is ${given} here. Whoever picks a cycle goes by its name.`,
  name: 'what it is called',
};

const longestName = 80;

export const rule = defineRule({
  id: 'cycle-name-differs',
  stage: 'sterilization',
  severity: 'warning',
  settledBy: 'biomed',
  why: 'A name with the times of another cycle makes people trust a drying or an exposure that is not there.',
  source: 'logic',
  kinds: ['sterilizer'],
  check(sterilizer, { report }) {
    for (const cycle of sterilizer.cycles?.items ?? []) {
      const told = new Set<Quantity>();
      for (const name of [cycle.id, cycle.name_on_screen]) {
        for (const { quantity, what, says } of departuresIn(name, cycle)) {
          if (name === undefined || told.has(quantity)) continue;
          told.add(quantity);
          report({
            at: quantity.at,
            message: message.differs(name.text, says, what, shown(quantity)),
            related: [{ at: name.at, note: message.name }],
          });
        }
      }
    }
  },
  examples: {
    bad: [
      `
kind: sterilizer
id: S1
cycles:
  - {id: S1-pv132-4-30, modality: steam-prevac, temp: 132 C, exposure: 4 min, dry: 20 min}
                                                                                   ^^^^^^ The name "S1-pv132-4-30" says 30, but the drying is 20 min here. Whoever picks a cycle goes by its name.
`,
      `
kind: sterilizer
id: ST1
cycles:
  - {id: prion, name_on_screen: PRION 134-18, modality: steam-prevac, temp: 134 C, exposure: 8 min, dry: 20 min}
                                                                                             ^^^^^ The name "PRION 134-18" says 18, but the exposure is 8 min here. Whoever picks a cycle goes by its name.
`,
    ],
    good: [
      `
kind: sterilizer
id: S2
cycles:
  - {id: S2-gr121-30-30, name_on_screen: GR121-30-30, modality: steam-gravity, temp: 121 C, exposure: 30 min, dry: 30 min}
  - {id: ST1-134-3.5, name_on_screen: UNIVERSAL B, modality: steam-prevac, temp: 134 C, exposure: 3.5 min, dry: 20 min}
  - {id: us270-4, modality: steam-prevac, temp: 270 F, exposure: 4 min, dry: 20 min}
`,
      `
kind: sterilizer
id: S3
cycles:
  - {id: "S3:lumen-2", name_on_screen: LUMEN 2, modality: vh2o2, load_max: 4.9 kg}
  - {id: program-7, modality: steam-prevac, temp: 134 C, exposure: 4 min, dry: 30 min}
`,
    ],
  },
});

interface Departure {
  readonly quantity: Quantity;
  readonly what: string;
  readonly says: string;
}

/** A name is read as temperature, exposure and drying only when its first number is the temperature. */
function departuresIn(name: Text | undefined, { temp, exposure, dry }: SterilizerCycle): readonly Departure[] {
  if (name === undefined || name.text.length > longestName || temp === undefined || temp.problem !== undefined)
    return [];
  const parts = name.text.split(/[-_/: ]/);
  const start = parts.findIndex(
    (part) => /^[A-Za-z]{0,12}\d/.test(part) && isNamed(part.replace(/^[A-Za-z]+/, ''), temp),
  );
  if (start < 0) return [];
  const found: Departure[] = [];
  for (const [offset, quantity, what] of [
    [1, exposure, 'exposure'],
    [2, dry, 'drying'],
  ] as const) {
    const says = parts[start + offset];
    if (says === undefined || !/^\d{1,4}(?:\.\d{1,2})?$/.test(says)) break;
    if (quantity !== undefined && quantity.problem === undefined && !isNamed(says, quantity))
      found.push({ quantity, what, says });
  }
  return found;
}

/** The number as it is written in the field, whatever its unit. */
function isNamed(word: string, { text }: Quantity): boolean {
  return isEqualAmount(Number(word), Number.parseFloat(text));
}
