import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { Place, Quantity } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { demandOf } from '../support/limits-of.ts';
import { shown } from '../support/shown.ts';
import { siteOf } from '../support/site-limits.ts';
import { stepsOf } from '../support/steps.ts';
import { coldSurfaces, handling } from '../support/word-lists.ts';
import { saidIn } from '../support/wording.ts';

const message = {
  surface: (surface: string) =>
    `Hot packs are set on "${surface}". Vapour condenses where a pack meets something cold and solid, and wicks through the wrap. Leave them on the loading cart.`,
  early: (at: string, time: string) =>
    `Packs are handled after ${at}, before the cool-down is over (${time}). Vapour condenses where they are touched.`,
  handled: (words: string) => `Hot packs are touched here (“${words}”). Vapour condenses where they are touched.`,
};

export const rule = defineRule({
  id: 'cool-touch-or-cold-surface',
  stage: 'storage',
  severity: 'error',
  settledBy: 'manager',
  why: 'Moisture that condenses under a hand or on a cold table carries germs through the wrap.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      if (step.stage?.text !== 'cooling') continue;
      const [first, ...others] = faultsOf(step, view);
      if (first === undefined) continue;
      report({ ...first, related: others.map(({ at }) => ({ at, note: 'and here' })) });
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: cool
steps: [{stage: cooling, surface: steel-table, handle_at: 5 min}]
                                  ^^^^^^^^^^^ Hot packs are set on "steel-table". Vapour condenses where a pack meets something cold and solid, and wicks through the wrap. Leave them on the loading cart.
`,
      `
kind: procedure
id: cool
steps:
  - {stage: cooling, do: cool, surface: loading-cart, time: 60 min, handle_at: 10 min}
                                                                               ^^^^^^ Packs are handled after 10 min, before the cool-down is over (60 min). Vapour condenses where they are touched.
  - {stage: cooling, do: cover with a towel}
                         ^^^^^^^^^^^^^^^^^^ Hot packs are touched here (“cover”). Vapour condenses where they are touched.
`,
    ],
    good: [
      `
kind: procedure
id: cool
steps: [{stage: cooling, do: cool, surface: loading-cart, time: 60 min, release_temp: 24 C}]
`,
      `
kind: procedure
id: shelf
steps:
  - {stage: cooling, do: leave untouched, surface: loading-cart}
  - {stage: storage, do: store, surface: steel-table}
`,
    ],
  },
});

interface Fault {
  readonly at: Place;
  readonly message: string;
}

function faultsOf(step: ProcedureStep, view: LibraryView): readonly Fault[] {
  const { surface, handle_at: handled, do: act } = step;
  const faults: Fault[] = [];
  if (surface !== undefined && saidIn(surface.text, coldSurfaces) !== undefined)
    faults.push({ at: surface.at, message: message.surface(surface.text) });
  const over = coolTime(step, view);
  if (handled !== undefined && handled.problem === undefined && over !== undefined && handled.value < over.value)
    faults.push({ at: handled.at, message: message.early(shown(handled), shown(over)) });
  const words = act === undefined ? undefined : saidIn(act.text, handling);
  if (act !== undefined && words !== undefined) faults.push({ at: act.at, message: message.handled(words) });
  return faults;
}

/** The shortest cool-down: of the step, else of the site. */
function coolTime({ time }: ProcedureStep, view: LibraryView): Quantity | undefined {
  return time?.problem === undefined && time !== undefined
    ? time
    : demandOf(siteOf({}, view)?.policies?.cool_time)?.lowest;
}
