import type { WasherCycle } from '../../library/view.ts';
import { defineRule } from '../rule.ts';
import { agentsOfCycle } from '../support/agents.ts';
import { listed } from '../support/lists.ts';
import { isInService } from '../support/washer-uses.ts';

const message = {
  none: (cycle: string, doses: string) =>
    `${cycle} has a washing phase, and nothing that it doses is a detergent (${doses}).`,
  unused: (cycle: string, doses: string) => `${cycle} doses ${doses}, and has no phase that washes.`,
};

export const rule = defineRule({
  id: 'wash-without-detergent',
  stage: 'washing',
  severity: 'error',
  settledBy: 'biomed',
  why: 'Lubricant and warm water do not take off soil.',
  source: 'logic',
  kinds: ['washer'],
  check(washer, { view, report }) {
    if (!isInService(washer)) return;
    for (const cycle of washer.cycles?.items ?? []) {
      const agents = agentsOfCycle(washer, cycle, view);
      const classes = agents.map(({ chemistry }) => chemistry?.class?.text);
      if (agents.length === 0 || cycle.phases === undefined || cycle.withdrawn_on !== undefined) continue;
      // One that is not on file may be a detergent.
      const washes = classes.some((one) => one === undefined || !helpers.has(one));
      const detergents = agents.filter(({ chemistry }) => !helpers.has(chemistry?.class?.text ?? ''));
      if (washes === hasWash(cycle)) continue;
      const names = listed((washes ? detergents : agents).map(({ word }) => word.text));
      const text = washes ? message.unused : message.none;
      report({ at: (cycle.doses ?? cycle).at, message: text(cycle.id?.text ?? '', names) });
    }
  },
  examples: {
    bad: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - {id: W1-std, doses: [milk], phases: [{phase: wash, temp: 60 C, time: 5 min}, {phase: dry, temp: 90 C, time: 10 min}]}
                 ^^^^^ W1-std has a washing phase, and nothing that it doses is a detergent (milk).
=== chemistry/milk.ifu.yaml
kind: chemistry
id: milk
class: lubricant
`,
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - {id: W1-std, doses: [C2], phases: [{phase: prewash, temp: 20 C, time: 3 min}, {phase: thermal, temp: 90 C, time: 5 min}]}
                 ^^^^^ W1-std doses C2, and has no phase that washes.
=== chemistry/c2.ifu.yaml
kind: chemistry
id: C2
class: mild-alkaline
`,
    ],
    good: [
      `
=== washers/w1.ifu.yaml
kind: washer
id: W1
cycles:
  - {id: W1-std, doses: [C2, milk], phases: [{phase: wash, temp: 60 C, time: 5 min}]}
  - {id: W1-rinse, doses: [milk], phases: [{phase: rinse, temp: 60 C, time: 2 min}]}
=== chemistry/c2.ifu.yaml
kind: chemistry
id: C2
class: mild-alkaline
=== chemistry/milk.ifu.yaml
kind: chemistry
id: milk
class: lubricant
`,
      `
kind: washer
id: W1
cycles: [{id: W1-std, doses: [unknown], phases: [{phase: wash, temp: 60 C, time: 5 min}]}]
`,
    ],
  },
});

/** Classes of chemistry that take off no soil by themselves. */
const helpers: ReadonlySet<string> = new Set([
  'lubricant',
  'neutraliser',
  'acid',
  'disinfectant',
  'rust-remover',
  'rinse-aid',
  'alcohol',
]);

const washing: ReadonlySet<string> = new Set(['wash', 'enzyme-wash']);

function hasWash({ phases }: WasherCycle): boolean {
  return phases?.items.some(({ phase }) => washing.has(phase?.text ?? '')) === true;
}
