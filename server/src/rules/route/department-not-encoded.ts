import { defineRule } from '../rule.ts';
import { undescribedIn } from '../support/department.ts';

const message = {
  missing: (lacking: readonly string[]) =>
    `No file describes ${lacking.join(' or ')} yet, so no route can be derived for any set. Describe what the department has first.`,
};

export const rule = defineRule({
  id: 'department-not-encoded',
  stage: 'route',
  severity: 'warning',
  settledBy: 'educator',
  why: 'An instruction can only be held against machines and packaging that are described; until then nothing is said about routes.',
  source: 'logic',
  kinds: ['library'],
  check(library, { view, report }) {
    if (view.ids('set').size === 0) return;
    // Sets exist before machines in a young library: one sentence about the library instead of one about each set.
    const lacking = undescribedIn(view);
    if (lacking.length > 0) report({ at: library.id?.at ?? library.at, message: message.missing(lacking) });
  },
  examples: {
    bad: [
      `
kind: library
id: first-library
    ^^^^^^^^^^^^^ No file describes a cycle of a sterilizer or packaging yet, so no route can be derived for any set. Describe what the department has first.
=== sets/tray.ifu.yaml
kind: set
id: tray
members: [{device: clamp, qty: 2}]
=== devices/clamp.ifu.yaml
kind: device
id: clamp
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}}
`,
      `
kind: library
id: half-a-library
    ^^^^^^^^^^^^^^ No file describes a cycle of a sterilizer yet, so no route can be derived for any set. Describe what the department has first.
=== sets/tray.ifu.yaml
kind: set
id: tray
members: [{device: clamp, qty: 2}]
packaging: wrap
=== devices/clamp.ifu.yaml
kind: device
id: clamp
manual: {use: required}
sterilization: {silent: true}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
`,
    ],
    good: [
      `
kind: library
id: without-sets
=== devices/clamp.ifu.yaml
kind: device
id: clamp
manual: {use: required}
`,
      `
kind: library
id: complete
=== sets/tray.ifu.yaml
kind: set
id: tray
members: [{device: clamp, qty: 2}]
packaging: wrap
=== devices/clamp.ifu.yaml
kind: device
id: clamp
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});
