import type { Judgement } from '../../judge/outcome.ts';
import { called, demanderCalled } from '../../library/called.ts';
import type { LibraryView } from '../../library/view.ts';
import { pathOf, rootOf } from '../../model/node.ts';
import { openJudgements, questionKey, questionWords } from '../../route/questions.ts';
import { routeOfSet } from '../../route/route.ts';
import { defineRule } from '../rule.ts';
import { quotesOf } from '../support/failures.ts';

const message = {
  one: (way: string, question: string) =>
    `There is a route${way} only if one open question is answered in our favour: ${question}`,
  many: (way: string, questions: string, count: number) =>
    `There is a route${way} only if ${count} open questions are answered in our favour: ${questions}`,
  way: (packaging: string, cycle: string) => ` (${packaging} on ${cycle})`,
  asked: (day: string) => ` Asked on ${day}.`,
};

export const rule = defineRule({
  id: 'route-needs-answer',
  stage: 'route',
  severity: 'warning',
  settledBy: 'manufacturer',
  why: 'Until the maker answers, the department works on an assumption.',
  source: 'logic',
  kinds: ['set'],
  check(set, { view, report }) {
    const route = view.ask(routeOfSet, set.id?.text ?? '');
    if (route === undefined) return;
    const open = new Map(openJudgements(route).map((judgement) => [questionKey(judgement), judgement]));
    const [first, ...others] = open.values();
    if (first === undefined) return;
    const { chosen } = route;
    const way = chosen === undefined ? '' : message.way(called('packaging', chosen.packaging, view), chosen.cycle);
    const questions = [first, ...others].map((one) => `${questionWords(one, view)}${askedWords(one, view)}`);
    report({
      at: route.at,
      message:
        others.length === 0
          ? message.one(way, questions[0] ?? '')
          : message.many(way, questions.map((one, index) => `(${index + 1}) ${one}`).join(' '), questions.length),
      says: quotesOf([first, ...others].map(({ says }) => says)),
      settledBy: first.settledBy,
      related: [first, ...others].map(({ demandAt, demandedBy }) => ({
        at: demandAt,
        note: `asked of ${demanderCalled(demandedBy, view)}`,
      })),
    });
  },
  examples: {
    bad: [
      `
=== sets/lap.ifu.yaml
kind: set
id: lap
    ^^^ There is a route (container on pv132) only if one open question is answered in our favour: hook (HO-1, rev A, p. 2): the page gives tested with two layers of wrap; here it is container. Packaging: the page tells what it was tested with; that neither allows nor forbids another packaging.
members: [{device: hook, qty: 2}]
packaging: container
=== devices/hook.ifu.yaml
kind: device
id: hook
maker: Pallant
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: validated_with, allowed: [double-wrap], src: s2}, src: s1}
statements:
  s1: {doc: HO-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes."}
  s2: {doc: HO-1, rev: A, page: 2, quote: "Validated in a double wrap."}
=== packaging/container.ifu.yaml
kind: packaging
id: container
type: rigid-container
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv132, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
`,
      `
=== sets/eye.ifu.yaml
kind: set
id: eye
    ^^^ There is a route (wrap on pv134) only if one open question is answered in our favour: tip (TI-1, rev A, p. 2): the page gives 132 °C (no bound word); here it is 134 °C. Sterilization temperature: the page gives one temperature and ours is hotter: a different cycle, not the same one but better. Asked on 2025-02-17.
members: [{device: tip, qty: 2}]
packaging: wrap
=== devices/tip.ifu.yaml
kind: device
id: tip
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {stated: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}, src: s1}
statements:
  s1: {doc: TI-1, rev: A, page: 2, quote: "Pre-vacuum steam 132 °C, at least 4 minutes, dry at least 20 minutes, wrapped."}
=== questions/q-134.ifu.yaml
kind: question
id: q-134
about: tip
field: "sterilization.any_of[pv132].temp"
text: May it also be sterilized at 134 °C?
asked_on: 2025-02-17
=== packaging/wrap.ifu.yaml
kind: packaging
id: wrap
type: wrap
validated: [{modality: steam-prevac, context: terminal}]
=== sterilizers/S9.ifu.yaml
kind: sterilizer
id: S9
cycles:
  - {id: pv134, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
=== site.ifu.yaml
kind: site
id: hillside
policies: {stated_temp: setpoint}
`,
    ],
    good: [
      `
=== sets/lap.ifu.yaml
kind: set
id: lap
members: [{device: hook, qty: 2}]
packaging: wrap
=== devices/hook.ifu.yaml
kind: device
id: hook
manual: {use: required}
sterilization:
  any_of:
    - {id: pv132, modality: steam-prevac, context: terminal, temp: {at_least: 132 C}, exposure: {at_least: 4 min}, dry: {at_least: 20 min}, packaging: {relation: requires_class, allowed: [wrap]}}
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
      `
=== sets/lap.ifu.yaml
kind: set
id: lap
members: [{device: hook, qty: 2}]
=== devices/hook.ifu.yaml
kind: device
id: hook
class: non-critical
manual: {use: required}
`,
    ],
  },
});

/** When it was already asked and no answer is in: the question's own file tells. */
function askedWords({ demandAt }: Judgement, view: LibraryView): string {
  const { kind, id } = rootOf(demandAt);
  const path = pathOf(demandAt);
  const asked = view
    .users(kind, id, 'question')
    .find(({ about, field, closed }) => about?.text === id && field?.text === path && closed === undefined);
  return asked?.asked_on === undefined ? '' : message.asked(asked.asked_on.text);
}
