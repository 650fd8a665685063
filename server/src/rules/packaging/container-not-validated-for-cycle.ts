import type { Judgement } from '../../judge/outcome.ts';
import { judgePackaging } from '../../judge/packaging.ts';
import { demanderCalled } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import { rootOfEntity } from '../../model/entity.ts';
import { defineRule } from '../rule.ts';
import { cycleUses } from '../support/cycle-uses.ts';
import { settingFor } from '../support/judging.ts';
import { listed } from '../support/lists.ts';
import { commonWith, evidenceOfAll, insteadOf } from '../support/use-reports.ts';

const message = {
  uncovered: (packaging: string, cycle: string, reasons: string, others: string, instead: string) =>
    `${packaging} is not made for ${cycle}. ${reasons}${others}${instead}`,
  others: (names: string) => ` Packaging here that covers this cycle: ${names}.`,
  does: (cycle: string, given: string) => `${cycle}: ${given}`,
};

export const rule = defineRule({
  id: 'container-not-validated-for-cycle',
  stage: 'packaging',
  severity: 'error',
  settledBy: 'educator',
  why: 'Packaging is a device with an instruction of its own: what its maker does not cover was not shown to let the method in and keep germs out.',
  source: 'standard',
  kinds: ['set'],
  check(set, { view, report }) {
    for (const use of cycleUses(set, view)) {
      const failures = commonWith('fails', use, isAboutCycle);
      const [first] = failures;
      if (first === undefined) continue;
      const others = coveringHere(use.name.text, view);
      report({
        at: (set.packaging ?? use.name).at,
        message: message.uncovered(
          demanderCalled(first.demandedBy, view),
          use.name.text,
          failures.map(({ reason }) => reason).join(' '),
          others.length === 0 ? '' : message.others(listed(others)),
          insteadOf(use, view),
        ),
        does: message.does(use.name.text, first.given),
        ...evidenceOfAll(failures, view),
      });
    }
  },
  examples: {
    bad: [
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}]
packaging: container
           ^^^^^^^^^ container is not made for gr121-30-30. Packaging and cycle: the maker of the packaging gives no instructions for this kind of cycle. Packaging here that covers this cycle: wrap.
cycle: gr121-30-30
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Gravity steam 121 °C, at least 30 minutes, dry at least 30 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-prevac, context: terminal, src: s1}]
statements:
  s1: {doc: KL-3, rev: C, page: 11, quote: "Pre-vacuum steam only."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: gr121-30-30, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/graspers.ifu.yaml
kind: set
id: graspers
members: [{device: grasper, qty: 2}]
packaging: container
           ^^^^^^^^^ container is not made for pv134-4-50. Sterilization temperature: above the highest value the page gives; both ends of a range bind.
cycle: pv134-4-50
=== devices/grasper.ifu.yaml
kind: device
id: grasper
manual: {use: required}
sterilization:
  any_of:
    - {id: pv134, modality: steam-prevac, context: terminal, temp: {stated: 134 C}, exposure: {at_least: 4 min}, dry: {at_least: 50 min}, src: s1}
statements:
  s1: {doc: GR-1, rev: A, page: 2, quote: "Pre-vacuum steam 134 °C, at least 4 minutes, dry at least 50 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-prevac, context: terminal, temp: {at_most: 132 C}, exposure: {at_least: 4 min}, src: s1}]
statements:
  s1: {doc: KL-4, rev: A, page: 9, quote: "Pre-vacuum steam at no more than 132 °C, at least 4 minutes."}
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: 2025-01-15}
`,
    ],
    good: [
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}]
packaging: wrap
cycle: gr121-30-30
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
sterilization:
  any_of:
    - {id: gr121, modality: steam-gravity, context: terminal, temp: {stated: 121 C}, exposure: {at_least: 30 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Gravity steam 121 °C, at least 30 minutes, dry at least 30 minutes."}
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}, {modality: steam-gravity, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: gr121-30-30, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/forceps.ifu.yaml
kind: set
id: forceps
members: [{device: forceps, qty: 4}]
packaging: container
cycle: pv132-4-30
=== devices/forceps.ifu.yaml
kind: device
id: forceps
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}, src: s1}
statements:
  s1: {doc: FO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 30 minutes."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
    ],
  },
});

/** Its entries for cycles, and what it forbids. Its drying and its limits of heat are other findings. */
function isAboutCycle({ parameter, demandedBy }: Judgement): boolean {
  const ofEntry = ['container-cycle', 'steam-temperature', 'exposure', 'prohibition', 'heat-limit'].includes(parameter);
  return ofEntry && demandedBy.startsWith('packaging/');
}

function coveringHere(cycleName: string, view: LibraryView): readonly string[] {
  const running = view.sterilizerCycle(cycleName);
  if (running === undefined) return [];
  const setting = settingFor(running.machine, view);
  const covering = view.all('packaging').filter((packaging) => {
    const judgements = judgePackaging({ packaging, ...running, setting });
    return packaging.type?.text !== 'case' && judgements.every(({ outcome }) => outcome === 'meets');
  });
  return covering.map((packaging) => rootOfEntity(packaging).id);
}
