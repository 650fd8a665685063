import { isSteam } from '../../judge/vocabulary.ts';
import type { LibraryView } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Text } from '../../model/node.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { stepsOf } from '../support/steps.ts';

const message = {
  other: (monitor: string, its: string, cycle: string, ours: string) =>
    `${monitor} is made for ${its}, and ${cycle} is ${ours}. It does not see what happens there.`,
};

export const rule = defineRule({
  id: 'indicator-modality-mismatch',
  stage: 'monitoring',
  severity: 'error',
  settledBy: 'educator',
  why: 'An ink for steam says nothing about peroxide, whatever colour it turns.',
  source: 'standard',
  kinds: ['set', 'procedure'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'set')) {
      for (const monitor of [entity.indicator, entity.external_indicator, entity.biological])
        checkPair(monitor, entity.cycle, context);
    } else if (isOfKind(entity, 'procedure')) {
      for (const step of stepsOf(entity)) checkPair(step.monitor, step.cycle, context);
    }
  },
  examples: {
    bad: [
      `
=== sets/camera.ifu.yaml
kind: set
id: camera
cycle: "P9:lumen"
indicator: M5-steam
           ^^^^^^^^ M5-steam is made for steam, and P9:lumen is vh2o2. It does not see what happens there.
=== monitors/m5.ifu.yaml
kind: monitor
id: M5-steam
type: 5
modality: steam
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:lumen", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
      `
=== procedures/release.ifu.yaml
kind: procedure
id: release
steps: [{stage: steam, do: sterilize, cycle: gr121-30-30, monitor: air-sheet}]
                                                                   ^^^^^^^^^ air-sheet is made for steam-prevac, and gr121-30-30 is steam-gravity. It does not see what happens there.
=== monitors/sheet.ifu.yaml
kind: monitor
id: air-sheet
type: 2
modality: steam-prevac
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: gr121-30-30, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
cycle: pv132-4-30
indicator: M5-steam
external_indicator: M1-steam
=== monitors/m5.ifu.yaml
kind: monitor
id: M5-steam
type: 5
modality: steam
=== monitors/m1.ifu.yaml
kind: monitor
id: M1-steam
type: 1
modality: steam-prevac
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/camera.ifu.yaml
kind: set
id: camera
cycle: "P9:lumen"
indicator: M4-peroxide
=== monitors/m4.ifu.yaml
kind: monitor
id: M4-peroxide
type: 4
modality: vh2o2
=== sterilizers/P9.ifu.yaml
kind: sterilizer
id: P9
cycles:
  - {id: "P9:lumen", modality: vh2o2, context: terminal, qualified: 2025-01-22}
`,
    ],
  },
});

function checkPair(name: Text | undefined, cycle: Text | undefined, { view, report }: RuleContext): void {
  const monitor = name === undefined ? undefined : view.get('monitor', name.text);
  const ours = cycle === undefined ? undefined : modalityOf(cycle.text, view);
  if (name === undefined || cycle === undefined || monitor?.modality === undefined || ours === undefined) return;
  if (sees(monitor.modality.text, ours.text)) return;
  report({
    at: name.at,
    message: message.other(name.text, monitor.modality.text, cycle.text, ours.text),
    related: [
      { at: monitor.modality.at, note: 'what the indicator is made for' },
      { at: ours.at, note: 'what the cycle is' },
    ],
  });
}

function modalityOf(cycle: string, view: LibraryView): Text | undefined {
  const running = view.sterilizerCycle(cycle);
  return running?.cycle.modality ?? running?.machine.modality;
}

/** One made for steam in general sees every kind of steam cycle. */
function sees(its: string, ours: string): boolean {
  return its === ours || (its === 'steam' && isSteam(ours));
}
