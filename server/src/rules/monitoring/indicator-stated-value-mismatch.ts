import type { SterilizerCycle } from '../../library/view.ts';
import type { StatedCycle } from '../../model/entities/monitor.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Quantity, Text } from '../../model/node.ts';
import { isEqualAmount } from '../../quantity/prose/ratio.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import { shown } from '../support/shown.ts';

type Monitor = EntityOf['monitor'];

const message = {
  values: (monitor: string, stated: string, cycle: string, given: string) =>
    `${monitor} is labelled for ${stated}, and ${cycle} runs ${given}. It passes and fails for another cycle.`,
  outside: (monitor: string) =>
    `${monitor} only shows that a pack has been through a sterilizer. Inside, it says nothing about whether the method reached it.`,
  test: (monitor: string) =>
    `${monitor} is for the air-removal test of the empty chamber. Inside a set it shows nothing of the set.`,
  pair: (temp: string, time: string) => `${temp} for ${time}`,
};

export const rule = defineRule({
  id: 'indicator-stated-value-mismatch',
  stage: 'monitoring',
  severity: 'error',
  settledBy: 'educator',
  why: 'An indicator made for one cycle judges every load by that cycle, whichever one was run.',
  source: 'standard',
  kinds: ['set'],
  check(set, { view, report }) {
    const { indicator } = set;
    const monitor = indicator === undefined ? undefined : view.get('monitor', indicator.text);
    if (indicator === undefined || monitor === undefined) return;
    if (isForOutside(monitor) || isForTest(monitor)) {
      report({
        at: indicator.at,
        message: (isForTest(monitor) ? message.test : message.outside)(indicator.text),
        related: [{ at: (monitor.type ?? monitor.use ?? monitor).at, note: 'what it is' }],
      });
      return;
    }
    const cycle = set.cycle === undefined ? undefined : view.sterilizerCycle(set.cycle.text)?.cycle;
    const stated = statedBy(monitor);
    if (set.cycle === undefined || cycle === undefined || stated.length === 0 || monitor.type?.text !== '6') return;
    if (stated.some((one) => isFor(one, cycle))) return;
    report({
      at: indicator.at,
      message: message.values(
        indicator.text,
        listed(stated.map(({ temp, time }) => message.pair(shown(temp), shown(time)))),
        set.cycle.text,
        message.pair(shown(cycle.temp), shown(cycle.exposure)),
      ),
      related: [
        ...stated.map(({ at }) => ({ at, note: 'what the indicator is labelled for' })),
        { at: cycle.at, note: 'the cycle' },
      ],
    });
  },
  examples: {
    bad: [
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 4}]
indicator: helix
           ^^^^^ helix is for the air-removal test of the empty chamber. Inside a set it shows nothing of the set.
=== monitors/helix.ifu.yaml
kind: monitor
id: helix
type: 2
use: air-removal
pcd: true
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
cycle: pv132-4-30
indicator: M6-134-18
           ^^^^^^^^^ M6-134-18 is labelled for 134 °C for 18 min, and pv132-4-30 runs 132 °C for 4 min. It passes and fails for another cycle.
=== monitors/m6.ifu.yaml
kind: monitor
id: M6-134-18
type: 6
modality: steam
stated: {temp: 134 C, time: 18 min}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
cycle: pv132-4-30
indicator: M1-tape
           ^^^^^^^ M1-tape only shows that a pack has been through a sterilizer. Inside, it says nothing about whether the method reached it.
=== monitors/m1.ifu.yaml
kind: monitor
id: M1-tape
type: 1
modality: steam
use: external
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
cycle: pv132-4-30
indicator: M6-two
=== monitors/m6.ifu.yaml
kind: monitor
id: M6-two
type: 6
modality: steam
stated_values: [{temp: 134 C, time: 3.5 min}, {temp: 132 C, time: 4 min}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
cycle: pv134-10-30
indicator: M5-strip
external_indicator: M1-tape
=== monitors/m5.ifu.yaml
kind: monitor
id: M5-strip
type: 5
modality: steam
stated: {temp: 134 C, time: 3.5 min}
=== monitors/m1.ifu.yaml
kind: monitor
id: M1-tape
type: 1
modality: steam
use: external
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-10-30, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 10 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});

/** A process indicator: type 1, or one that is said to be for the outside. */
function isForTest({ use }: Monitor): boolean {
  return use?.text === 'air-removal';
}

function isForOutside({ type, use }: Monitor): boolean {
  return type?.text === '1' || isExternal(use);
}

function isExternal(use: Text | undefined): boolean {
  return use?.text === 'external';
}

function statedBy({ stated, stated_values: values }: Monitor): readonly StatedCycle[] {
  const all = [...(stated === undefined ? [] : [stated]), ...(values?.items ?? [])];
  return all.filter(({ temp, time }) => temp !== undefined && time !== undefined);
}

/** The same temperature and the same time. */
function isFor({ temp, time }: StatedCycle, cycle: SterilizerCycle): boolean {
  return isSame(temp, cycle.temp) && isSame(time, cycle.exposure);
}

/** What can't be compared is no mismatch. */
function isSame(stated: Quantity | undefined, ours: Quantity | undefined): boolean {
  if (stated === undefined || ours === undefined || stated.problem !== undefined || ours.problem !== undefined)
    return true;
  return isEqualAmount(stated.value, ours.value);
}
