import { catchesAgent } from '../../judge/prohibitions.ts';
import { isSteam } from '../../judge/vocabulary.ts';
import type { LibraryView } from '../../library/view.ts';
import type { ProcedureStep } from '../../model/entities/procedure.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Citation, Place, Text } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { isOutOfScope } from '../support/cleaning-ways.ts';
import { filmLubricants, lubricating } from '../support/cleaning-words.ts';
import { named, quotesOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';
import { isAct, reachOf, stepInWords, stepsOf } from '../support/steps.ts';
import { isMentioned } from '../support/wording.ts';

type Device = EntityOf['device'];

const message = {
  forbidden: (agent: string, devices: string) => `The instruction of ${devices} does not allow "${agent}".`,
  film: (agent: string, devices: string) =>
    `"${agent}" leaves a film that keeps steam away, and no instruction allows it on ${devices}.`,
  allowed: (device: string, agents: string) => `what "${device}" may be lubricated with: ${agents}`,
  none: (device: string) => `"${device}" may not be lubricated`,
  silent: (device: string) => `"${device}" goes through steam`,
};

export const rule = defineRule({
  id: 'lubricant-not-permitted',
  stage: 'inspection',
  severity: 'error',
  settledBy: 'manager',
  why: 'A film of oil or silicone keeps steam from the surface.',
  source: 'standard',
  kinds: ['procedure'],
  check(procedure, { view, report }) {
    for (const step of stepsOf(procedure)) {
      const agent = step.chemistry ?? step.agent;
      if (agent === undefined || !lubricates(step)) continue;
      const faults = reachOf(step, procedure, view)
        .map((device) => faultOf(device, agent, view))
        .filter((one) => one !== undefined);
      for (const kind of ['forbidden', 'film'] as const) {
        const found = faults.filter((fault) => fault.kind === kind);
        if (found.length === 0) continue;
        report({
          at: agent.at,
          message: message[kind](agent.text, named(found.map(({ device }) => device))),
          does: stepInWords(step),
          says: quotesOf(found.map(({ device, src }) => sayingsOf(device, src))),
          related: found.map(({ at, note }) => ({ at, note })),
        });
      }
    }
  },
  examples: {
    bad: [
      `
=== procedures/care.ifu.yaml
kind: procedure
id: care
applies_to: [forceps]
steps: [{stage: lubrication, agent: silicone-spray}]
                                    ^^^^^^^^^^^^^^ The instruction of "forceps" does not allow "silicone-spray".
=== devices/forceps.ifu.yaml
kind: device
id: forceps
lubrication: {allowed: [water-soluble], src: s8}
statements:
  s8: {doc: QM-10, rev: B, page: 5, quote: "The hinge may be treated with a water-soluble lubricant."}
`,
      `
=== procedures/care.ifu.yaml
kind: procedure
id: care
applies_to: [tip, rongeur]
steps:
  - {stage: inspection, do: visual}
  - {stage: lubrication, do: lubricate, agent: oil}
                                               ^^^ The instruction of "tip" does not allow "oil".
                                               ^^^ "oil" leaves a film that keeps steam away, and no instruction allows it on "rongeur".
=== devices/tip.ifu.yaml
kind: device
id: tip
lubrication: {use: forbidden, src: s15}
statements:
  s15: {doc: BW-5, rev: "3", page: 6, quote: "Do not lubricate."}
=== devices/rongeur.ifu.yaml
kind: device
id: rongeur
lubrication: {silent: true, checked: 2025-02-24}
sterilization: {any_of: [{id: pv132, modality: steam-prevac}]}
`,
    ],
    good: [
      `
=== procedures/care.ifu.yaml
kind: procedure
id: care
applies_to: [forceps, handpiece]
steps:
  - {stage: lubrication, do: lubricate, chemistry: milk, applies_to: [forceps]}
  - {stage: lubrication, do: lubricate, agent: maker-oil, applies_to: [handpiece]}
=== devices/forceps.ifu.yaml
kind: device
id: forceps
lubrication: {allowed: [water-soluble]}
=== devices/handpiece.ifu.yaml
kind: device
id: handpiece
lubrication: {required: true, agent: maker-oil}
sterilization: {any_of: [{id: pv132, modality: steam-prevac}]}
=== chemistry/milk.ifu.yaml
kind: chemistry
id: milk
class: lubricant
ingredients: [water-soluble]
`,
      `
=== procedures/care.ifu.yaml
kind: procedure
id: care
applies_to: [rongeur]
steps: [{stage: lubrication, do: lubricate, agent: water-soluble}]
=== devices/rongeur.ifu.yaml
kind: device
id: rongeur
lubrication: {silent: true, checked: 2025-02-24}
`,
    ],
  },
});

function lubricates(step: ProcedureStep): boolean {
  return step.stage?.text === 'lubrication' || isAct(step, lubricating);
}

interface Fault {
  readonly device: Device;
  readonly kind: 'forbidden' | 'film';
  readonly at: Place;
  readonly note: string;
  readonly src: Citation | undefined;
}

function faultOf(device: Device, agent: Text, view: LibraryView): Fault | undefined {
  if (isOutOfScope(device)) return undefined;
  const { lubrication } = device;
  const { id } = rootOfEntity(device);
  const chemistry = view.get('chemistry', agent.text);
  const ban = device.not?.items.find(
    (one) => one.when === undefined && one.what !== undefined && catchesAgent(one.what.text, agent.text, chemistry),
  );
  if (ban !== undefined) return { device, kind: 'forbidden', at: ban.at, note: message.none(id), src: ban.src };
  if (lubrication !== undefined && (lubrication.use?.text === 'forbidden' || allowedBy(lubrication).includes('none'))) {
    return { device, kind: 'forbidden', at: lubrication.at, note: message.none(id), src: lubrication.src };
  }
  const allowed = lubrication === undefined ? [] : allowedBy(lubrication);
  if (lubrication !== undefined && allowed.length > 0) {
    if (
      allowed.some(
        (word) => word === agent.text || catchesAgent(word, agent.text, chemistry) || word === chemistry?.class?.text,
      )
    )
      return undefined;
    return {
      device,
      kind: 'forbidden',
      at: lubrication.at,
      note: message.allowed(id, listed(allowed)),
      src: lubrication.src,
    };
  }
  const steam = device.sterilization?.any_of?.items.find((option) => isSteam(option.modality?.text));
  if (steam === undefined || !isMentioned(agent.text, filmLubricants)) return undefined;
  return { device, kind: 'film', at: steam.at, note: message.silent(id), src: undefined };
}

function allowedBy(stated: NonNullable<Device['lubrication']>): readonly string[] {
  return [
    ...(stated.allowed?.items.map((one) => one.text) ?? []),
    ...(stated.agent === undefined ? [] : [stated.agent.text]),
  ];
}
