import { isDetergent } from '../../judge/agents.ts';
import { agentsOf } from '../../judge/washing.ts';
import { defineRule } from '../rule.ts';
import { evidenceOf, named } from '../support/failures.ts';
import { stockIn } from '../support/judging.ts';
import { washerUses, washFailures } from '../support/washer-uses.ts';

const message = {
  extra: (cycle: string, agent: string, who: string) =>
    `${cycle} also doses "${agent}", which the instruction of ${who} forbids. The machine adds it without being asked.`,
};

export const rule = defineRule({
  id: 'washer-dosed-extra',
  stage: 'washing',
  severity: 'warning',
  settledBy: 'educator',
  why: 'Lubricant, rinse aid and neutraliser come out of the machine unseen, and stay on what must not have them.',
  source: 'practice',
  kinds: ['set', 'procedure'],
  check(entity, { view, report }) {
    for (const { name, machine, cycle, devices } of washerUses(entity, view)) {
      for (const agent of agentsOf(machine, cycle, stockIn(view))) {
        if (isDetergent(agent)) continue;
        const failures = washFailures(
          name.text,
          devices,
          ({ parameter, factAt }) => parameter === 'prohibition' && factAt === agent.word.at,
          view,
        );
        if (failures.length === 0) continue;
        const evidence = evidenceOf(failures);
        report({
          at: name.at,
          message: message.extra(name.text, agent.word.text, named(failures.map(({ device }) => device))),
          ...evidence,
          related: [...(evidence.related ?? []), { at: agent.word.at, note: 'where the cycle doses it' }],
        });
      }
    }
  },
  examples: {
    bad: [
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: eye-tip, qty: 2}]
washer_cycle: W1-std
              ^^^^^^ W1-std also doses "instrument-milk", which the instruction of "eye-tip" forbids. The machine adds it without being asked.
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
mechanical: {use: required}
not: [{what: lubricant, src: s7}]
statements:
  s7: {doc: BW-5, rev: "3", page: 6, quote: "Do not lubricate."}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, doses: [C2, instrument-milk], phases: [{phase: wash, temp: 60 C, time: 5 min}]}]
=== chemistry/milk.ifu.yaml
kind: chemistry
id: instrument-milk
class: lubricant
methods: [mechanical]
=== chemistry/c2.ifu.yaml
kind: chemistry
id: C2
class: mild-alkaline
methods: [mechanical]
`,
      `
=== procedures/optics.ifu.yaml
kind: procedure
id: optics
applies_to: [optic]
steps: [{stage: mechanical, do: wash, cycle: W2-std}]
                                             ^^^^^^ W2-std also doses "shine", which the instruction of "optic" forbids. The machine adds it without being asked.
=== devices/optic.ifu.yaml
kind: device
id: optic
mechanical: {use: allowed}
not: [{what: rinse-aid, src: s2}]
statements:
  s2: {doc: OP-2, rev: A, page: 4, quote: "No rinse aid: it leaves a film on the window."}
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles: [{id: W2-std, phases: [{phase: wash, temp: 60 C, time: 5 min}, {phase: final-rinse, chemistry: shine, time: 1 min}]}]
=== chemistry/shine.ifu.yaml
kind: chemistry
id: shine
class: rinse-aid
methods: [mechanical]
`,
    ],
    good: [
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 2}]
washer_cycle: W1-std
=== devices/forceps.ifu.yaml
kind: device
id: forceps
mechanical: {use: allowed}
lubrication: {use: allowed, allowed: [water-soluble]}
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-std, doses: [instrument-milk], phases: [{phase: wash, temp: 60 C, time: 5 min}]}]
=== chemistry/milk.ifu.yaml
kind: chemistry
id: instrument-milk
class: lubricant
methods: [mechanical]
`,
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: eye-tip, qty: 2}]
washer_cycle: W1-gentle
=== devices/tip.ifu.yaml
kind: device
id: eye-tip
mechanical: {use: required}
not: [{what: lubricant}]
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles: [{id: W1-gentle, doses: [C5], phases: [{phase: wash, temp: 45 C, time: 8 min}]}]
=== chemistry/c5.ifu.yaml
kind: chemistry
id: C5
class: neutral
methods: [mechanical]
`,
    ],
  },
});
