import type { Judgement } from '../../judge/outcome.ts';
import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { MemberRoute, StageFit } from '../../route/model.ts';
import { routeOfSet } from '../../route/route.ts';
import type { Report } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { quotesOf } from '../support/failures.ts';
import { listed } from '../support/lists.ts';

type SetFile = EntityOf['set'];

const message = {
  washing: (groups: string) =>
    `These members cannot be washed together: ${groups}. The washer has one bath; put them in separate baskets on their own cycles, and join them at assembly.`,
  group: (devices: readonly string[], cycles: readonly string[]) => `${listed(devices)} only on ${listed(cycles)}`,
  sonics: (required: string, forbidden: string) =>
    `All contents go into one ultrasonic bath, but ${forbidden} must not, while ${required} must.`,
};

export const rule = defineRule({
  id: 'set-cleaning-clash',
  stage: 'route',
  severity: 'error',
  settledBy: 'manager',
  why: 'What suits one member in the same bath harms another or leaves it uncleaned.',
  source: 'logic',
  kinds: ['set'],
  check(set, { view, report }) {
    const route = view.ask(routeOfSet, set.id?.text ?? '');
    for (const members of basketsOf(set, route?.members ?? [])) {
      const clash = washingClash(set, members);
      if (clash !== undefined) report(clash);
    }
    const sonics = sonicsClash(set, view);
    if (sonics !== undefined) report(sonics);
  },
  examples: {
    bad: [
      `
=== sets/mixed.ifu.yaml
kind: set
id: mixed
members: [{device: anodised-box, qty: 1}, {device: scissors, qty: 4}]
washer_cycle: W9-strong
              ^^^^^^^^^ These members cannot be washed together: anodised-box only on W9-mild and scissors only on W9-strong. The washer has one bath; put them in separate baskets on their own cycles, and join them at assembly.
=== devices/box.ifu.yaml
kind: device
id: anodised-box
mechanical: {use: required, detergent: {ph: {between: [6, 8], of: in-use}}, src: s1}
limits: {ph: {between: [6, 8], of: in-use, src: s1}}
statements:
  s1: {doc: BX-2, rev: A, page: 2, quote: "Wash at an in-use pH between 6 and 8."}
=== devices/scissors.ifu.yaml
kind: device
id: scissors
mechanical: {use: required, detergent: {ph: {between: [9, 11], of: in-use}}, src: s1}
statements:
  s1: {doc: SC-2, rev: A, page: 2, quote: "Wash at an in-use pH between 9 and 11."}
=== chemistry/mild.ifu.yaml
kind: chemistry
id: mild
class: neutral
ph_in_use: {between: [6.8, 7.4]}
methods: [mechanical]
=== chemistry/strong.ifu.yaml
kind: chemistry
id: strong
class: alkaline
ph_in_use: {between: [9.8, 10.6]}
methods: [mechanical]
=== washers/W9.ifu.yaml
kind: washer
id: W9
cycles:
  - {id: W9-mild, doses: [mild], last_cleaning_test: 2025-02-20, phases: [{phase: wash, temp: 55 C, time: 5 min}]}
  - {id: W9-strong, doses: [strong], last_cleaning_test: 2025-02-20, phases: [{phase: wash, temp: 55 C, time: 5 min}]}
`,
      `
=== sets/sonics.ifu.yaml
kind: set
id: sonics
members: [{device: burr, qty: 3}, {device: telescope, qty: 1}]
sonicate: together
          ^^^^^^^^ All contents go into one ultrasonic bath, but telescope must not, while burr must.
=== devices/burr.ifu.yaml
kind: device
id: burr
ultrasonic: {use: required}
=== devices/telescope.ifu.yaml
kind: device
id: telescope
ultrasonic: {use: forbidden}
`,
    ],
    good: [
      `
=== sets/mixed.ifu.yaml
kind: set
id: mixed
members:
  - {device: anodised-box, qty: 1, basket: mild}
  - {device: scissors, qty: 4, basket: strong}
=== devices/box.ifu.yaml
kind: device
id: anodised-box
mechanical: {use: required, detergent: {ph: {between: [6, 8], of: in-use}}}
=== devices/scissors.ifu.yaml
kind: device
id: scissors
mechanical: {use: required, detergent: {ph: {between: [9, 11], of: in-use}}}
=== chemistry/mild.ifu.yaml
kind: chemistry
id: mild
class: neutral
ph_in_use: {between: [6.8, 7.4]}
methods: [mechanical]
=== chemistry/strong.ifu.yaml
kind: chemistry
id: strong
class: alkaline
ph_in_use: {between: [9.8, 10.6]}
methods: [mechanical]
=== washers/W9.ifu.yaml
kind: washer
id: W9
cycles:
  - {id: W9-mild, doses: [mild], last_cleaning_test: 2025-02-20, phases: [{phase: wash, temp: 55 C, time: 5 min}]}
  - {id: W9-strong, doses: [strong], last_cleaning_test: 2025-02-20, phases: [{phase: wash, temp: 55 C, time: 5 min}]}
`,
      `
=== sets/sonics.ifu.yaml
kind: set
id: sonics
members: [{device: burr, qty: 3}, {device: telescope, qty: 1}]
sonicate: apart
=== devices/burr.ifu.yaml
kind: device
id: burr
ultrasonic: {use: required}
=== devices/telescope.ifu.yaml
kind: device
id: telescope
ultrasonic: {use: forbidden}
`,
    ],
  },
});

/** Members that are washed together: those that the set gives the same basket. */
function basketsOf(set: SetFile, members: readonly MemberRoute[]): readonly (readonly MemberRoute[])[] {
  const baskets = new Map<string, MemberRoute[]>();
  for (const member of members) {
    const line = set.members?.items.find(({ device }) => device?.text === member.device);
    const name = line?.basket?.text ?? '';
    baskets.set(name, [...(baskets.get(name) ?? []), member]);
  }
  return [...baskets.values()];
}

interface Washed {
  readonly device: string;
  readonly stage: StageFit;
  readonly cycles: readonly string[];
}

/** Each member fits some cycle, and no cycle fits them all. A member that fits none is another fault. */
function washingClash(set: SetFile, members: readonly MemberRoute[]): Report | undefined {
  const washed = members.flatMap(washedOf);
  const [first, ...others] = washed;
  if (first === undefined || others.length === 0) return undefined;
  if (first.cycles.some((cycle) => others.every(({ cycles }) => cycles.includes(cycle)))) return undefined;
  const groups = new Map<string, { readonly devices: string[]; readonly cycles: readonly string[] }>();
  for (const { device, cycles } of washed) {
    const group = groups.get(cycles.join(' ')) ?? { devices: [], cycles };
    group.devices.push(device);
    groups.set(cycles.join(' '), group);
  }
  const against = washed.flatMap(({ stage }) => againstOthers(stage));
  return {
    at: (set.washer_cycle ?? set.members ?? set).at,
    message: message.washing(listed([...groups.values()].map(({ devices, cycles }) => message.group(devices, cycles)))),
    says: quotesOf(against.map(({ says }) => says)),
    related: against.map(({ demandAt, demandedBy }) => ({ at: demandAt, note: `what ${demandedBy} demands` })),
  };
}

function washedOf({ device, cleaning }: MemberRoute): readonly Washed[] {
  const stage = cleaning?.stages.find((one) => one.stage === 'mechanical');
  if (stage === undefined || stage.fitting.length === 0) return [];
  return [{ device, stage, cycles: stage.fitting.map(({ means }) => means) }];
}

/** The first reason why another cycle does not fit. */
function againstOthers({ others }: StageFit): readonly Judgement[] {
  const failing = others.flatMap(({ judgements }) => judgements.filter(({ outcome }) => outcome === 'fails'));
  return failing.slice(0, 1);
}

function sonicsClash(set: SetFile, view: LibraryView): Report | undefined {
  if (set.sonicate?.text !== 'together') return undefined;
  const use = (word: string) =>
    (set.members?.items ?? []).flatMap(({ device: name }) => {
      const device = name === undefined ? undefined : view.get('device', name.text);
      return device?.ultrasonic?.use?.text === word && name !== undefined ? [{ name: name.text, device }] : [];
    });
  const [required, forbidden] = [use('required'), use('forbidden')];
  if (required.length === 0 || forbidden.length === 0) return undefined;
  const names = (those: typeof required) => listed(those.map(({ name }) => name));
  return {
    at: set.sonicate.at,
    message: message.sonics(names(required), names(forbidden)),
    related: [...forbidden, ...required].map(({ name, device }) => ({
      at: (device.ultrasonic ?? device).at,
      note: `what the page of "${name}" says about ultrasonic cleaning`,
    })),
  };
}
