import type { Judgement } from '../../judge/outcome.ts';
import type { LibraryView } from '../../library/view.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind, rootOfEntity } from '../../model/entity.ts';
import type { SetRoute, StageFit } from '../../route/model.ts';
import { routeOfDeviceSomewhere, routeOfSet } from '../../route/route.ts';
import { defineRule } from '../rule.ts';
import { listed } from '../support/lists.ts';
import { evidenceOfAll } from '../support/use-reports.ts';

const message = {
  none: (device: string, cycles: string) =>
    `No washer cycle here does what the instruction of "${device}" asks for.${cycles}`,
  nearest: (cycles: string) => ` Nearest: ${cycles}.`,
  cycle: (name: string, reasons: string) => `${name} (${reasons})`,
};

const nearestTold = 3;

export const rule = defineRule({
  id: 'washer-route-none',
  stage: 'washing',
  severity: 'error',
  settledBy: 'manager',
  why: 'A machine stage that no machine here can do makes every set that holds the item impossible to process as instructed.',
  source: 'logic',
  kinds: ['set', 'device'],
  check(entity: AnyEntity, { view, report }) {
    const route = routeOf(entity, view);
    for (const member of route?.members ?? []) {
      const stage = member.cleaning?.stages.find((one) => one.stage === 'mechanical');
      if (stage === undefined || route?.washing.without.includes(member.device) !== true) continue;
      const near = nearestOf(stage);
      report({
        at: member.at,
        message: message.none(member.device, near.length === 0 ? '' : message.nearest(listed(near))),
        ...evidenceOfAll(
          stage.judgements.filter(({ outcome }) => outcome === 'fails'),
          view,
        ),
      });
    }
  },
  examples: {
    bad: [
      `
=== devices/case.ifu.yaml
kind: device
id: case
    ^^^^ No washer cycle here does what the instruction of "case" asks for. Nearest: W2-std (pH: more alkaline than the page allows).
mechanical: {use: required, detergent: {ph: {between: [6, 8], of: in-use}, src: s3}}
statements:
  s3: {doc: OX-2, rev: A, page: 2, quote: "Wash in a washer-disinfector with an in-use pH between 6 and 8."}
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles: [{id: W2-std, doses: [C3], last_cleaning_test: 2025-03-01, phases: [{phase: wash, temp: 70 C, time: 4 min}]}]
=== chemistry/c3.ifu.yaml
kind: chemistry
id: C3
class: strong-alkaline
methods: [mechanical]
ph_in_use: {between: [11.8, 12.2], of: in-use}
`,
      `
=== sets/tubes.ifu.yaml
kind: set
id: tubes
members: [{device: tube, qty: 2}]
                   ^^^^ No washer cycle here does what the instruction of "tube" asks for. Nearest: W2-std (Connectors: the rack has none of this kind: spray does not enter a narrow bore).
=== devices/tube.ifu.yaml
kind: device
id: tube
cleaning: {all_of: [{stage: manual}, {stage: mechanical, connector: luer, src: s8}]}
statements:
  s8: {doc: QM-31, rev: E, page: 5, quote: "Connect the tube to a luer port of the washer rack."}
=== washers/w2.ifu.yaml
kind: washer
id: W2
rack: {ports: []}
cycles: [{id: W2-std, last_cleaning_test: 2025-03-01, phases: [{phase: wash, temp: 70 C, time: 4 min}]}]
`,
    ],
    good: [
      `
=== devices/forceps.ifu.yaml
kind: device
id: forceps
mechanical: {use: required}
=== washers/w2.ifu.yaml
kind: washer
id: W2
cycles: [{id: W2-std, last_cleaning_test: 2025-03-01, phases: [{phase: wash, temp: 70 C, time: 4 min}]}]
`,
      `
=== devices/tip.ifu.yaml
kind: device
id: tip
cleaning:
  any_of:
    - {id: machine, stage: mechanical, connector: luer}
    - {id: by-hand, stage: manual}
=== washers/w2.ifu.yaml
kind: washer
id: W2
rack: {ports: []}
cycles: [{id: W2-std, last_cleaning_test: 2025-03-01, phases: [{phase: wash, temp: 70 C, time: 4 min}]}]
`,
    ],
  },
});

/** A device is judged alone where no set holds it; else the set says it. */
function routeOf(entity: AnyEntity, view: LibraryView): SetRoute | undefined {
  const { id } = rootOfEntity(entity);
  if (isOfKind(entity, 'set')) return view.ask(routeOfSet, id);
  return view.users('device', id, 'set').length === 0 ? view.ask(routeOfDeviceSomewhere, id) : undefined;
}

/** What keeps the cycles that fail in fewest respects from doing it. */
function nearestOf(stage: StageFit): readonly string[] {
  const best = { means: stage.means, judgements: stage.judgements };
  const cycles = [best, ...stage.others]
    .filter(({ means }) => means !== '')
    .map(({ means, judgements }) => ({ means, failing: judgements.filter(({ outcome }) => outcome === 'fails') }))
    .sort((a, b) => a.failing.length - b.failing.length);
  return cycles.slice(0, nearestTold).map(({ means, failing }) => message.cycle(means, reasonsOf(failing)));
}

function reasonsOf(failing: readonly Judgement[]): string {
  return [...new Set(failing.map(({ reason }) => reason.replace(/\.$/, '')))].join('; ');
}
