import type { Setting } from '../../judge/setting.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place } from '../../model/node.ts';
import { defineRule } from '../rule.ts';
import { allDevicesOf } from '../support/applies.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import type { OwnValue } from '../support/own-values.ts';
import { contradictionOf, overriddenBy, ownTitles, setByStep } from '../support/own-values.ts';
import { shown } from '../support/shown.ts';
import { reachOf, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  replaces: (parts: string) =>
    `This sets the department's own value in place of the instruction: ${parts}. A policy cannot relax, replace or leave out what a page demands; follow the page, or take these devices out of its scope.`,
  part: (what: string, value: string, who: string) => `${what} ${value} against ${who}`,
};

export const rule = defineRule({
  id: 'procedure-overrides-manufacturer',
  stage: 'governance',
  severity: 'error',
  settledBy: 'manager',
  why: 'A policy of the department does not show that a device is cleaned or sterilized by it.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    const [first, ...others] = replaced(procedure, view);
    if (first === undefined) return;
    const evidence = evidenceOf(first.broken.flatMap(({ failures }) => failures));
    report({
      at: first.at,
      message: message.replaces(first.broken.map(partWords).join('; ')),
      ...evidence,
      related: [...others.map(({ at }) => ({ at, note: 'the same in a step' })), ...(evidence.related ?? [])],
    });
  },
  examples: {
    bad: [
      `
=== procedures/quick.ifu.yaml
kind: procedure
id: quick
applies_to_all: true
overrides: {dry: 15 min}
^^^^^^^^^ This sets the department's own value in place of the instruction: drying for 15 min against "hook" (at least 30 min). A policy cannot relax, replace or leave out what a page demands; follow the page, or take these devices out of its scope.
reason: works fine here
=== devices/hook.ifu.yaml
kind: device
id: hook
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam, at least 4 minutes, dry at least 30 minutes."}
`,
      `
=== procedures/evening.ifu.yaml
kind: procedure
id: evening
applies_to: [grasper]
steps:
  - {stage: steam, do: sterilize, exposure: 3 min, dry: 60 min}
                                            ^^^^^ This sets the department's own value in place of the instruction: an exposure of 3 min against "grasper" (at least 4 min). A policy cannot relax, replace or leave out what a page demands; follow the page, or take these devices out of its scope.
=== devices/grasper.ifu.yaml
kind: device
id: grasper
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, src: s1}
statements:
  s1: {doc: GR-1, rev: F, page: 12, quote: "134 °C, at least 4 minutes, dry at least 50 minutes."}
`,
      `
=== procedures/counts.ifu.yaml
kind: procedure
id: counts
applies_to: [grasper]
overrides:
^^^^^^^^^ This sets the department's own value in place of the instruction: up to 25 uses against "grasper" (at most 18 uses). A policy cannot relax, replace or leave out what a page demands; follow the page, or take these devices out of its scope.
  uses: 25 uses
=== devices/grasper.ifu.yaml
kind: device
id: grasper
limits: {uses: {at_most: 18 uses, src: s1}}
statements:
  s1: {doc: GR-1, rev: F, page: 4, quote: "Use at most 18 times."}
`,
    ],
    good: [
      `
=== procedures/longer.ifu.yaml
kind: procedure
id: longer
applies_to: [hook]
overrides: {dry: 40 min}
=== devices/hook.ifu.yaml
kind: device
id: hook
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, exposure: {at_least: 4 min}, dry: {at_least: 30 min}}
`,
      `
=== procedures/quick.ifu.yaml
kind: procedure
id: quick
applies_to: [hook]
overrides: {dry: 15 min}
=== devices/hook.ifu.yaml
kind: device
id: hook
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, exposure: {at_least: 4 min}, dry: {silent: true, checked: 2025-02-24}}
`,
    ],
  },
});

interface Broken {
  readonly value: OwnValue;
  readonly failures: readonly Failure[];
}

/** Every place of the procedure that breaks a page: what it sets for its whole scope first, then the numbers of its steam steps. */
function replaced(
  procedure: EntityOf['procedure'],
  view: LibraryView,
): readonly { at: Place; broken: readonly Broken[] }[] {
  const setting = settingFor({}, view);
  const places: { at: Place; broken: readonly Broken[] }[] = [];
  const { overrides } = procedure;
  if (overrides !== undefined) {
    const broken = brokenBy(overriddenBy(overrides), allDevicesOf(procedure, view), setting);
    if (broken.length > 0) places.push({ at: overrides.at, broken });
  }
  for (const step of stepsOf(procedure)) {
    // Numbers of cleaning steps have rules of their own.
    if (step.stage?.text !== 'steam' && step.stage?.text !== 'sterilization') continue;
    const values = setByStep(step);
    const broken = values.length === 0 ? [] : brokenBy(values, reachOf(step, procedure, view), setting);
    const [first] = broken;
    if (first !== undefined) places.push({ at: first.value.quantity.at, broken });
  }
  return places;
}

function brokenBy(values: readonly OwnValue[], devices: readonly Device[], setting: Setting): readonly Broken[] {
  return values.flatMap((value) => {
    const failures = devices.flatMap((device) => contradictionOf(value, device, setting) ?? []);
    return failures.length === 0 ? [] : [{ value, failures }];
  });
}

function partWords({ value, failures }: Broken): string {
  return message.part(ownTitles[value.field], shown(value.quantity), whoAsks(failures));
}
