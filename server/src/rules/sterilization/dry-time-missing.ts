import type { SterilizationOption } from '../../model/entities/device-sterilization.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Requirement } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';

const message = {
  absent:
    'This steam option says nothing about drying. Encode the dry time, or that the page is silent together with the question to the maker.',
  silent:
    'The page is silent on drying for this steam option, and nobody has asked the maker. Add the id of the question ("ask").',
};

export const rule = defineRule({
  id: 'dry-time-missing',
  stage: 'sterilization',
  severity: 'error',
  settledBy: 'manufacturer',
  why: 'A pack that comes out wet does not keep what is in it.',
  source: 'standard',
  kinds: ['device'],
  check(device, { report }) {
    for (const option of device.sterilization?.any_of?.items ?? []) {
      if (!isPackagedSteam(option, device)) continue;
      if (option.dry === undefined) {
        report({ at: option.at, message: message.absent, says: sayingsOf(device, option.src) });
      } else if (isUnasked(option.dry)) {
        report({ at: option.dry.at, message: message.silent, says: sayingsOf(device, option.dry.src ?? option.src) });
      }
    }
  },
  examples: {
    bad: [
      `
kind: device
id: pale-forceps
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, exposure: {stated: 4 min}, packaging: {allowed: [double-wrap]}, src: s1}
           ^^^^^ This steam option says nothing about drying. Encode the dry time, or that the page is silent together with the question to the maker.
statements:
  s1: {doc: PF-1, rev: A, page: 3, quote: "Pre-vacuum, 4 minutes, double wrapped."}
`,
      `
kind: device
id: bone-clamp
sterilization:
  any_of:
    - id: gr121
      modality: steam-gravity
      exposure: {at_least: 30 min}
      dry: {silent: true, checked: 2025-02-03}
      ^^^ The page is silent on drying for this steam option, and nobody has asked the maker. Add the id of the question ("ask").
`,
    ],
    good: [
      `
=== devices/clamp.ifu.yaml
kind: device
id: bone-clamp
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, exposure: {at_least: 30 min}, dry: {silent: true, checked: 2025-02-03, ask: q4}}
    - {id: iuss, modality: steam-prevac, context: iuss, exposure: {at_least: 4 min}}
=== questions/q4.ifu.yaml
kind: question
id: q4
about: bone-clamp
`,
      `
kind: device
id: camera
sterilization:
  any_of:
    - {id: surface, modality: vh2o2, context: terminal}
    - {id: open, modality: steam-gravity, packaging: {allowed: [unwrapped]}}
    - {id: pv, modality: steam-prevac, dry: {at_least: 20 min}}
`,
    ],
  },
});

function isPackagedSteam(option: SterilizationOption, device: EntityOf['device']): boolean {
  if (
    option.modality?.text.startsWith('steam') !== true ||
    option.context?.text === 'iuss' ||
    option.silent !== undefined
  )
    return false;
  if (option.ambiguous !== undefined || option.not_applicable !== undefined) return false;
  const allowed = (option.packaging ?? device.packaging)?.allowed?.items.map((item) => item.text) ?? [];
  return allowed.length === 0 || allowed.some((packaging) => packaging !== 'unwrapped');
}

function isUnasked(dry: Requirement): boolean {
  return dry.silent?.on === true && dry.ask === undefined;
}
