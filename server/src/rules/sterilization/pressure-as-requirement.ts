import { boundsOf } from '../../judge/bounds.ts';
import { isSteam } from '../../judge/vocabulary.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { insertField } from '../support/flow-edits.ts';

const message = {
  required:
    'This pressure is encoded as a requirement beside the temperature. Steam pressure follows temperature, and what a gauge shows depends on the altitude: keep it for information only.',
  fix: 'Mark the pressure as information only',
};

export const rule = defineRule({
  id: 'pressure-as-requirement',
  stage: 'sterilization',
  severity: 'advice',
  settledBy: 'educator',
  why: 'A gauge pressure from a page printed at sea level is another temperature at altitude.',
  source: 'logic',
  fix: 'Marks the pressure as information only.',
  kinds: ['device'],
  check(device, { report }) {
    for (const option of device.sterilization?.any_of?.items ?? []) {
      const { pressure, pressure_informational, modality, temp } = option;
      if (pressure === undefined || pressure_informational?.on === true || temp === undefined) continue;
      if (!isSteam(modality?.text) || boundsOf(pressure).length === 0) continue;
      const edit =
        pressure_informational === undefined ? insertField(option, 'pressure_informational: true') : undefined;
      report({
        at: pressure.at,
        message: message.required,
        says: sayingsOf(device, pressure.src ?? option.src),
        related: [{ at: temp.at, note: 'the temperature that decides' }],
        fixes: edit === undefined ? [] : [{ title: message.fix, edits: [edit] }],
      });
    }
  },
  examples: {
    bad: [
      `
kind: device
id: bone-clamp
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, temp: {stated: 121 C}, pressure: {at_least: 15 psi}, exposure: {at_least: 30 min}, src: s4}
                                                                  ^^^^^^^^ This pressure is encoded as a requirement beside the temperature. Steam pressure follows temperature, and what a gauge shows depends on the altitude: keep it for information only.
statements:
  s4: {doc: PM-9, rev: A, page: 2, quote: "Gravity steam at 121 °C and 15 psi, at least 30 minutes."}
`,
      `
kind: device
id: old-retractor
sterilization:
  any_of:
    - id: pv134
      modality: steam-prevac
      temp: {stated: 134 C}
      pressure: {stated: 2.1 bar}
      ^^^^^^^^ This pressure is encoded as a requirement beside the temperature. Steam pressure follows temperature, and what a gauge shows depends on the altitude: keep it for information only.
      src: s2
statements:
  s2: {doc: OR-1, rev: A, page: 3, quote: "Pre-vacuum steam at 134 °C and 2.1 bar."}
`,
    ],
    good: [
      `
kind: device
id: bone-clamp
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, temp: {stated: 121 C}, pressure: {stated: 15 psi}, pressure_informational: true, exposure: {at_least: 30 min}}
`,
      `
kind: device
id: tube
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, temp: {stated: 132 C}, exposure: {at_least: 4 min}}
`,
    ],
  },
});
