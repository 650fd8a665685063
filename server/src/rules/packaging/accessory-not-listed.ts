import type { Judgement } from '../../judge/outcome.ts';
import { defineRule } from '../rule.ts';
import { asPacked } from '../support/cycle-uses.ts';
import { evidenceOfAll, whoDemands } from '../support/use-reports.ts';

const message = {
  open: (accessory: string, who: string) =>
    `"${accessory}" is not among what is accepted by ${who}. Mats, liners and caps change drying and the way in.`,
  forbidden: (accessory: string, who: string) => `"${accessory}" is not accepted by ${who}.`,
};

export const rule = defineRule({
  id: 'accessory-not-listed',
  stage: 'packaging',
  severity: 'warning',
  settledBy: 'vendor',
  why: 'A mat or a towel holds water, and a tight cap keeps steam out of the very place it protects.',
  source: 'practice',
  kinds: ['set'],
  check(set, { view, report }) {
    if (set.accessories === undefined || set.accessories.items.length === 0) return;
    const use = asPacked(set, view);
    const all = [...(use?.common ?? []), ...(use?.members.flatMap(({ judgements }) => judgements) ?? [])];
    for (const accessory of set.accessories.items) {
      const about = all.filter(({ parameter, factAt }) => parameter === 'accessory' && factAt === accessory.at);
      const forbidden = about.filter(({ outcome }) => outcome === 'fails');
      const unlisted = about.filter(({ outcome }) => outcome === 'needs-answer');
      const named = forbidden.length > 0 ? forbidden : unlisted;
      if (named.length === 0) continue;
      const words = forbidden.length > 0 ? message.forbidden : message.open;
      report({
        at: accessory.at,
        message: words(accessory.text, whoDemands(once(named), view)),
        ...evidenceOfAll(named, view),
        ...(forbidden.length > 0 && { severity: 'error' as const }),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: hook, qty: 2}]
packaging: container
accessories: [bracket, silicone-mat, solid-tip-cap]
                       ^^^^^^^^^^^^ "silicone-mat" is not among what is accepted by "container" (bracket, divider). Mats, liners and caps change drying and the way in.
                                     ^^^^^^^^^^^^^ "solid-tip-cap" is not among what is accepted by "container" (bracket, divider). Mats, liners and caps change drying and the way in.
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
accessories: [bracket, divider]
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/scopes.ifu.yaml
kind: set
id: scopes
members: [{device: rigid-scope, qty: 1}]
packaging: wrap
accessories: [silicone-mat]
              ^^^^^^^^^^^^ "silicone-mat" is not accepted by "rigid-scope" (no silicone-mat).
cycle: pv132-4-30
=== devices/rigid-scope.ifu.yaml
kind: device
id: rigid-scope
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, packaging: {relation: requires_class, allowed: [wrap], no_silicone_mat: true, src: s1}, src: s1}
statements:
  s1: {doc: RI-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes, wrapped. No silicone mats."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
accessories: [silicone-mat]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
members: [{device: hook, qty: 2}]
packaging: container
accessories: [bracket]
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
accessories: [bracket, divider]
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/hooks.ifu.yaml
kind: set
id: hooks
members: [{device: hook, qty: 2}]
packaging: wrap
accessories: []
cycle: pv132-4-30
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});

/** Each of those who demand, once. */
function once(judgements: readonly Judgement[]): readonly Judgement[] {
  return judgements.filter(
    (one, index) => judgements.findIndex(({ demandedBy }) => demandedBy === one.demandedBy) === index,
  );
}
