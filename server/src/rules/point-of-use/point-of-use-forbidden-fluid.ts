import { catchesAgent } from '../../judge/prohibitions.ts';
import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { Prohibition } from '../../model/entities/prohibition.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place, Text } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import type { Report } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { harshFluids } from '../support/cleaning-words.ts';
import { deviceName } from '../support/device-names.ts';
import { named, quotesOf } from '../support/failures.ts';
import { reachOf, stepInWords, stepsOf } from '../support/steps.ts';
import { saidIn } from '../support/wording.ts';

type Device = EntityOf['device'];

const message = {
  harsh: (fluid: string) =>
    `Instruments must not be wetted with ${fluid}: it attacks steel. Use water or a gel made for it.`,
  forbidden: (fluid: string, devices: string) => `The instruction forbids ${fluid} on ${devices}.`,
  fix: (agent: string) => `Change to ${agent}`,
};

export const rule = defineRule({
  id: 'point-of-use-forbidden-fluid',
  stage: 'point-of-use',
  severity: 'error',
  settledBy: 'OR',
  why: 'Salt, chlorine and iodine pit stainless steel while it waits to be cleaned.',
  source: 'standard',
  fix: 'Changes the fluid to one that the instructions name for keeping moist, or to water.',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      if (step.stage?.text !== 'point-of-use' && step.stage?.text !== 'transport') continue;
      const found = judged(step, reachOf(step, procedure, view), view);
      if (found !== undefined) report(found);
    }
  },
  examples: {
    bad: [
      `
kind: procedure
id: case-end
steps: [{stage: point-of-use, do: keep-moist, agent: saline}]
                                                     ^^^^^^ Instruments must not be wetted with saline: it attacks steel. Use water or a gel made for it.
`,
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [optic]
steps:
  - {stage: point-of-use, do: wipe, agent: water}
  - {stage: point-of-use, do: keep-moist, agent: alcohol}
                                                 ^^^^^^^ The instruction forbids alcohol on "optic".
=== devices/optic.ifu.yaml
kind: device
id: optic
point_of_use: {keep_moist: {use: required, agents: [gel], src: s1}}
not:
  - {what: alcohol, src: s2}
statements:
  s1: {doc: OP-4, rev: B, page: 2, quote: "Keep moist with gel."}
  s2: {doc: OP-4, rev: B, page: 3, quote: "Do not use alcohol."}
`,
      `
kind: procedure
id: clinic-end
steps:
  - {stage: point-of-use, do: soak in diluted bleach, time: 5 min}
                              ^^^^^^^^^^^^^^^^^^^^^^ Instruments must not be wetted with bleach: it attacks steel. Use water or a gel made for it.
`,
    ],
    good: [
      `
kind: procedure
id: case-end
steps:
  - {stage: point-of-use, do: keep-moist, agent: water, note: never with saline}
`,
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [polymer-trial]
steps: [{stage: point-of-use, do: keep-moist, agent: saline}]
=== devices/trial.ifu.yaml
kind: device
id: polymer-trial
point_of_use: {keep_moist: {use: allowed, agents: [saline], src: s1}}
statements:
  s1: {doc: PT-1, rev: A, page: 1, quote: "Keep moist with saline."}
`,
    ],
  },
});

function judged(step: ProcedureStep, devices: readonly Device[], view: LibraryView): Report | undefined {
  const place = step.agent ?? step.chemistry;
  const banned = place === undefined ? [] : bansOf(devices, place, view);
  const harsh = harshIn(step);
  const isWanted =
    place !== undefined && devices.length > 0 && devices.every((device) => agentsFor(device).includes(place.text));
  if (banned.length === 0 && (harsh === undefined || isWanted)) return undefined;
  const at = banned.length > 0 ? place : harsh?.place;
  if (at === undefined) return undefined;
  const allowed = [...devices.flatMap(agentsFor), 'water'].find(
    (agent) =>
      agent !== place?.text &&
      banned.every(({ device }) => agentsFor(device).length === 0 || agentsFor(device).includes(agent)),
  );
  return {
    at: at.at,
    message:
      harsh === undefined
        ? message.forbidden(at.text, named(banned.map(({ device }) => device)))
        : message.harsh(harsh.fluid),
    does: stepInWords(step),
    says: quotesOf(banned.map(({ device, ban }) => sayingsOf(device, ban.src))),
    related: banned.map(({ device, ban }) => ({
      at: ban.at,
      note: `what the instruction of "${deviceName(device)}" forbids`,
    })),
    fixes:
      place === undefined || allowed === undefined
        ? []
        : [{ title: message.fix(allowed), edits: [{ span: place.at.span, text: allowed }] }],
  };
}

interface Banned {
  readonly device: Device;
  readonly ban: Prohibition;
}

function bansOf(devices: readonly Device[], agent: Text, view: LibraryView): readonly Banned[] {
  const chemistry = view.get('chemistry', agent.text);
  const banned: Banned[] = [];
  for (const device of devices) {
    const bans = [...(device.point_of_use?.avoid?.items ?? []), ...(device.not?.items ?? [])];
    const ban = bans.find(
      ({ what, when }) => when === undefined && what !== undefined && catchesAgent(what.text, agent.text, chemistry),
    );
    if (ban !== undefined) banned.push({ device, ban });
  }
  return banned;
}

function harshIn(
  step: ProcedureStep,
): { readonly fluid: string; readonly place: { readonly at: Place; readonly text: string } } | undefined {
  for (const place of [step.agent, step.do, step.note]) {
    const fluid = place === undefined ? undefined : saidIn(place.text, harshFluids);
    if (place !== undefined && fluid !== undefined) return { fluid, place };
  }
  return undefined;
}

function agentsFor(device: Device): readonly string[] {
  return device.point_of_use?.keep_moist?.agents?.items.map((agent) => agent.text) ?? [];
}
