import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { keepingMoist } from '../support/cleaning-words.ts';
import { deviceName } from '../support/device-names.ts';
import { isAct, proceduresFor, reaches, stepsOf } from '../support/steps.ts';

type Device = EntityOf['device'];
type Procedure = EntityOf['procedure'];

const message = {
  missing: (device: string) =>
    `The instruction wants "${device}" kept moist after use, and no step at the point of use does so.`,
};

export const rule = defineRule({
  id: 'keep-moist-missing',
  stage: 'point-of-use',
  severity: 'error',
  settledBy: 'manager',
  why: 'Soil that dries on the way needs more than the cleaning that was shown to work.',
  source: 'standard',
  kinds: ['device'],
  check(device, { view, report }) {
    const wanted = device.point_of_use?.keep_moist;
    if (wanted?.use?.text !== 'required') return;
    const atUse = [...proceduresFor(device, view)].filter((procedure) => isAtUse(procedure, device, view));
    const [first] = atUse;
    if (first === undefined || atUse.some((procedure) => keepsMoist(procedure, device, view))) return;
    report({
      at: wanted.at,
      message: message.missing(deviceName(device)),
      says: sayingsOf(device, wanted.src ?? device.point_of_use?.src),
      related: [{ at: (first.steps ?? first).at, note: 'the steps at the point of use' }],
    });
  },
  examples: {
    bad: [
      `
=== devices/forceps.ifu.yaml
kind: device
id: forceps
point_of_use: {keep_moist: {use: required, agents: [sterile-water], src: s1}}
               ^^^^^^^^^^ The instruction wants "forceps" kept moist after use, and no step at the point of use does so.
statements:
  s1: {doc: PF-1, rev: A, page: 3, quote: "Keep moist with sterile water."}
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [forceps]
steps: [{stage: point-of-use, do: wipe, agent: sterile-water}, {stage: transport}]
`,
      `
=== devices/trials.ifu.yaml
kind: device
id: trials
point_of_use: {keep_moist: {use: required, agents: [water], src: s1}}
               ^^^^^^^^^^ The instruction wants "trials" kept moist after use, and no step at the point of use does so.
statements:
  s1: {doc: KS-1, rev: D, page: 4, quote: "Keep the trials moist with water."}
=== devices/rasp.ifu.yaml
kind: device
id: rasp
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [trials, rasp]
steps:
  - {stage: point-of-use, do: wipe}
  - {stage: point-of-use, do: keep-moist, agent: water, applies_to: [rasp]}
`,
    ],
    good: [
      `
=== devices/forceps.ifu.yaml
kind: device
id: forceps
point_of_use: {keep_moist: {use: required, agents: [sterile-water], src: s1}}
statements:
  s1: {doc: PF-1, rev: A, page: 3, quote: "Keep moist with sterile water."}
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [forceps]
steps: [{stage: point-of-use, do: wipe}, {stage: point-of-use, do: keep-moist, agent: sterile-water}]
`,
      `
=== devices/camera.ifu.yaml
kind: device
id: camera
point_of_use: {keep_moist: {silent: true}, wipe: {use: required}}
=== procedures/case-end.ifu.yaml
kind: procedure
id: case-end
applies_to: [camera]
steps: [{stage: point-of-use, do: wipe}]
`,
    ],
  },
});

function isAtUse(procedure: Procedure, device: Device, view: LibraryView): boolean {
  return stepsOf(procedure).some(
    (step) => step.stage?.text === 'point-of-use' && reaches(step, procedure, device, view),
  );
}

function keepsMoist(procedure: Procedure, device: Device, view: LibraryView): boolean {
  return stepsOf(procedure).some(
    (step) =>
      step.stage?.text === 'point-of-use' && isAct(step, keepingMoist) && reaches(step, procedure, device, view),
  );
}
