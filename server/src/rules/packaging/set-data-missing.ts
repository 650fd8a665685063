import type { EntityOf } from '../../model/entities.generated.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';

const message = {
  missing: (what: string) => `The file of this set does not say ${what}. Whoever packs it has to guess.`,
};

export const rule = defineRule({
  id: 'set-data-missing',
  stage: 'packaging',
  severity: 'warning',
  settledBy: 'educator',
  why: 'What the card leaves out is done by habit.',
  source: 'practice',
  kinds: ['set'],
  check(set, { report }) {
    if (set.members === undefined || set.members.items.length === 0) return;
    const missing = needed.filter(({ fields }) => fields.every((field) => set[field] === undefined));
    // A set of which nothing is said yet is being built: its route is looked for first.
    if (missing.length === 0 || missing.length === needed.length) return;
    report({
      at: (set.name ?? set.id)?.at ?? set.at,
      message: message.missing(listed(missing.map(({ what }) => what))),
    });
  },
  examples: {
    bad: [
      `
kind: set
id: minor
    ^^^^^ The file of this set does not say its packaging. Whoever packs it has to guess.
members: [{device: pale-forceps, qty: 4}]
cycle: S1-pv132-4-30
indicators: 1
indicator: M5
external_indicator: M1
`,
      `
kind: set
id: eye
name: Eye set
      ^^^^^^^ The file of this set does not say how many indicators lie in it and its indicator outside. Whoever packs it has to guess.
members:
  - {device: eye-tip, qty: 2}
packaging: P4-pouch
cycle: S1-pv134
indicator: M5
`,
    ],
    good: [
      `
kind: set
id: minor
members: [{device: pale-forceps, qty: 4}]
packaging: P1-wrap
cycle: S1-pv132-4-30
indicators: 1
indicator: M5
external_indicator: M1
`,
      `
kind: set
id: being-built
members: [{device: pale-forceps, qty: 4}]
`,
    ],
  },
});

type Field = Extract<keyof EntityOf['set'], string>;

const needed: readonly { readonly fields: readonly Field[]; readonly what: string }[] = [
  { fields: ['packaging'], what: 'its packaging' },
  { fields: ['cycle'], what: 'its sterilizer cycle' },
  { fields: ['indicators'], what: 'how many indicators lie in it' },
  { fields: ['indicator'], what: 'its indicator inside' },
  { fields: ['external_indicator'], what: 'its indicator outside' },
];
