import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';
import type { Citation, Place } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { defineRule } from '../rule.ts';
import { membersOf } from '../support/applies.ts';
import { deviceName } from '../support/device-names.ts';
import { quotesOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';
import { metalsOf } from '../support/metals.ts';

type Device = EntityOf['device'];

const message = {
  mixed: (metals: string, who: string) =>
    `Different metals go into one bath (${metals}), and the instruction of ${who} forbids that.`,
  of: (metal: string, devices: string) => `${metal}: ${devices}`,
};

export const rule = defineRule({
  id: 'ultrasonic-mixed-metals',
  stage: 'washing',
  severity: 'warning',
  settledBy: 'educator',
  why: 'In one bath the less noble metal goes over to the other, and both are spoiled.',
  source: 'practice',
  kinds: ['set'],
  check(set, { view, report }) {
    const { sonicate } = set;
    if (sonicate?.text !== 'together') return;
    const devices = membersOf(set, view);
    const metals = byMetal(devices);
    const bans = devices.flatMap((device) => banOnMixing(device) ?? []);
    if (metals.size < 2 || bans.length === 0) return;
    report({
      at: sonicate.at,
      message: message.mixed(
        listed([...metals].map(([metal, names]) => message.of(metal, listed(names)))),
        listed(bans.map(({ device }) => `"${deviceName(device)}"`)),
      ),
      says: quotesOf(bans.map(({ device, src }) => sayingsOf(device, src))),
      related: bans.map(({ device, at }) => ({
        at,
        note: `what the instruction of "${deviceName(device)}" forbids`,
      })),
    });
  },
  examples: {
    bad: [
      `
=== sets/mixed.ifu.yaml
kind: set
id: mixed
sonicate: together
          ^^^^^^^^ Different metals go into one bath (chrome plating: chrome-forceps and stainless steel: stainless-clamp), and the instruction of "chrome-forceps" forbids that.
members: [{device: chrome-forceps, qty: 1}, {device: stainless-clamp, qty: 1}]
=== devices/forceps.ifu.yaml
kind: device
id: chrome-forceps
materials: [brass-chrome-plated]
ultrasonic: {use: allowed, single_metal: true, src: s4}
statements:
  s4: {doc: CF-1, rev: A, page: 3, quote: "Do not sonicate together with other metals."}
=== devices/clamp.ifu.yaml
kind: device
id: stainless-clamp
materials: [stainless-martensitic]
`,
      `
=== sets/tray.ifu.yaml
kind: set
id: tray
sonicate: together
          ^^^^^^^^ Different metals go into one bath (titanium: titanium-hook and aluminium: bowl), and the instruction of "titanium-hook" forbids that.
members: [{device: titanium-hook, qty: 1}, {device: bowl, qty: 1}]
=== devices/hook.ifu.yaml
kind: device
id: titanium-hook
materials: [titanium, peek]
not: [{what: mixed-metals, src: s2}]
statements:
  s2: {doc: TH-1, rev: A, page: 3, quote: "Never mix metals in the bath."}
=== devices/bowl.ifu.yaml
kind: device
id: bowl
materials: [aluminium-anodised]
`,
    ],
    good: [
      `
=== sets/same.ifu.yaml
kind: set
id: same
sonicate: together
members: [{device: forceps, qty: 1}, {device: clamp, qty: 1}]
=== devices/forceps.ifu.yaml
kind: device
id: forceps
materials: [stainless-austenitic, silicone]
ultrasonic: {use: allowed, single_metal: true}
=== devices/clamp.ifu.yaml
kind: device
id: clamp
materials: [stainless-martensitic]
`,
      `
=== sets/mixed.ifu.yaml
kind: set
id: mixed
sonicate: apart
members: [{device: chrome-forceps, qty: 1}, {device: stainless-clamp, qty: 1}]
=== devices/forceps.ifu.yaml
kind: device
id: chrome-forceps
materials: [brass-chrome-plated]
ultrasonic: {use: allowed, single_metal: true}
=== devices/clamp.ifu.yaml
kind: device
id: stainless-clamp
materials: [stainless-martensitic]
`,
    ],
  },
});

function byMetal(devices: readonly Device[]): ReadonlyMap<string, readonly string[]> {
  const metals = new Map<string, string[]>();
  for (const device of devices) {
    for (const metal of metalsOf(device.materials?.items.map(({ text }) => text) ?? []))
      metals.set(metal, [...(metals.get(metal) ?? []), rootOfEntity(device).id]);
  }
  return metals;
}

interface MixingBan {
  readonly device: Device;
  readonly at: Place;
  readonly src: Citation | undefined;
}

function banOnMixing(device: Device): MixingBan | undefined {
  const { ultrasonic } = device;
  if (ultrasonic?.single_metal?.on === true) return { device, at: ultrasonic.single_metal.at, src: ultrasonic.src };
  const ban = device.not?.items.find(({ what, when }) => what?.text === 'mixed-metals' && when === undefined);
  return ban === undefined ? undefined : { device, at: ban.at, src: ban.src };
}
