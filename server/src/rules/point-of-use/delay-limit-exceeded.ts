import { givenOf } from '../../judge/given.ts';
import { factOf, judgeDemand } from '../../judge/judgement.ts';
import type { Setting } from '../../judge/setting.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { Place, Quantity } from '../../model/node.ts';
import { rowOf } from '../../model/walk.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { allDevicesOf } from '../support/applies.ts';
import type { Failure } from '../support/failures.ts';
import { evidenceOf, whoAsks } from '../support/failures.ts';
import { settingFor } from '../support/judging.ts';
import { siteOf } from '../support/site-limits.ts';
import { stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];

const message = {
  late: (time: string, place: string, who: string) =>
    `From "${place}" it can take ${time} until cleaning begins. That is too long for ${who}.`,
  does: (time: string, place: string) => `worst time from "${place}": ${time}`,
};

export const rule = defineRule({
  id: 'delay-limit-exceeded',
  stage: 'point-of-use',
  severity: 'error',
  settledBy: 'manager',
  why: 'The manufacturer has shown that the item comes clean inside that time, and nobody has shown it for longer.',
  source: 'logic',
  kinds: ['procedure', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'procedure')) checkProcedure(entity, context);
    else if (isOfKind(entity, 'site')) checkSite(entity, context);
  },
  examples: {
    bad: [
      `
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
point_of_use: {max_delay: {at_most: 60 min, src: s1}}
statements:
  s1: {doc: QM-31, rev: E, page: 3, quote: "Start cleaning within 60 minutes after use."}
=== site.ifu.yaml
kind: site
id: lakeside
transport_times: {theatre: 20 min, off-site-clinic: 150 min}
                                                    ^^^^^^^ From "off-site-clinic" it can take 150 min until cleaning begins. That is too long for "suction-tube" (at most 60 min).
`,
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [suction-tube, forceps]
places: [theatre, eye-clinic]
                  ^^^^^^^^^^ From "eye-clinic" it can take 95 min until cleaning begins. That is too long for "suction-tube" (at most 60 min).
steps:
  - {stage: point-of-use, do: wipe, agent: water}
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
point_of_use: {max_delay: {at_most: 60 min, src: s1}}
statements:
  s1: {doc: QM-31, rev: E, page: 3, quote: "Start cleaning within 60 minutes after use."}
=== devices/forceps.ifu.yaml
kind: device
id: forceps
point_of_use: {max_delay: {silent: true, checked: 2025-02-24}}
=== site.ifu.yaml
kind: site
id: lakeside
transport_times: {theatre: 20 min, eye-clinic: 95 min}
`,
    ],
    good: [
      `
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [suction-tube]
places: [eye-clinic]
steps:
  - {stage: point-of-use, do: wipe, agent: water}
  - {stage: transport, container: closed-rigid-labelled, time: 45 min}
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
point_of_use: {max_delay: {at_most: 60 min}}
=== site.ifu.yaml
kind: site
id: lakeside
transport_times: {eye-clinic: 95 min}
`,
      `
=== devices/tube.ifu.yaml
kind: device
id: suction-tube
point_of_use:
  max_delay: {at_most: 60 min}
  on_delay_exceeded: [{do: soak in enzymatic detergent before cleaning, time: {at_least: 10 min}}]
=== site.ifu.yaml
kind: site
id: lakeside
transport_times: {eye-clinic: 95 min}
`,
    ],
  },
});

/** Where the procedure promises a time of its own for the way, that time counts. */
function checkProcedure(procedure: EntityOf['procedure'], context: RuleContext): void {
  const places = procedure.places?.items ?? [];
  if (places.length === 0) return;
  const promised = stepsOf(procedure).find((step) => step.stage?.text === 'transport' && step.time !== undefined)?.time;
  const site = siteOf({}, context.view);
  const setting = settingFor({}, context.view);
  for (const place of places) {
    const time = promised ?? rowOf(site?.transport_times, place.text);
    if (time !== undefined) reportLate(place, time, allDevicesOf(procedure, context.view), setting, context);
  }
}

/** Places that no procedure answers for: every device may come from there. */
function checkSite(site: EntityOf['site'], context: RuleContext): void {
  const rows = [...(site.transport_times?.rows.values() ?? [])];
  if (rows.length === 0) return;
  const answered = placesIn(context.view);
  const setting = settingFor(site.id === undefined ? {} : { site: site.id }, context.view);
  for (const { key, value } of rows) {
    if (answered.has(key.text)) continue;
    reportLate({ at: value.at, text: key.text }, value, context.view.all('device'), setting, context);
  }
}

function placesIn(view: LibraryView): ReadonlySet<string> {
  return new Set(
    view.all('procedure').flatMap((procedure) => procedure.places?.items.map((place) => place.text) ?? []),
  );
}

function reportLate(
  place: { readonly at: Place; readonly text: string },
  time: Quantity,
  devices: readonly Device[],
  setting: Setting,
  { report }: RuleContext,
): void {
  const failures = devices.map((device) => failureOf(device, time, setting)).filter((one) => one !== undefined);
  if (failures.length === 0) return;
  const shown = formatQuantity(time);
  const evidence = evidenceOf(failures);
  const related = [
    ...(evidence.related ?? []),
    ...(time.at === place.at ? [] : [{ at: time.at, note: `the time from "${place.text}"` }]),
  ];
  report({
    at: place.at,
    message: message.late(shown, place.text, whoAsks(failures)),
    does: message.does(shown, place.text),
    ...evidence,
    related,
  });
}

function failureOf(device: Device, time: Quantity, setting: Setting): Failure | undefined {
  const requirement = device.point_of_use?.max_delay;
  if (requirement === undefined || device.point_of_use?.on_delay_exceeded !== undefined) return undefined;
  const demand = {
    by: device,
    parameter: 'delay',
    requirement,
    src: requirement.src ?? device.point_of_use?.src,
  } as const;
  const judgement = judgeDemand(demand, factOf(time, givenOf(time)), setting);
  return judgement.outcome === 'fails' ? { device, judgement } : undefined;
}
