import type { RequiredTopic } from '../../model/entities/site.generated.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { AnyEntity } from '../../model/entity.ts';
import { isOfKind } from '../../model/entity.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { dayAfter, daysBetween, inDays } from '../support/days.ts';
import { listed } from '../support/lists.ts';
import { shown } from '../support/shown.ts';

type Training = EntityOf['training'];

const message = {
  due: (topic: string, role: string, done: string, day: string) => `"${topic}" was due for ${role} on ${day}; ${done}.`,
  done: (done: number, of: number) => `${done} of ${of} have done it`,
  never: (topic: string, roles: string) => `The site asks for "${topic}" for ${roles}, and no training file covers it.`,
  old: (topic: string, roles: string, every: string, last: string) =>
    `The site asks for "${topic}" for ${roles} every ${every}; the last time began on ${last}.`,
  gap: (days: number) => `${inDays(days)} late`,
};

export const rule = defineRule({
  id: 'competency-overdue',
  stage: 'teaching',
  severity: 'warning',
  settledBy: 'educator',
  why: 'What counts is whether the people at the bench know it, and that is what a surveyor asks them.',
  source: 'standard',
  kinds: ['training', 'site'],
  check(entity: AnyEntity, context) {
    if (isOfKind(entity, 'training')) checkReaders(entity, context);
    else if (isOfKind(entity, 'site')) {
      for (const topic of entity.required_topics?.items ?? []) checkTopic(topic, context);
    }
  },
  examples: {
    bad: [
      `
kind: training
id: T1-iuss
topic: iuss
readers: [{role: technician, due: 2024-12-31, done: 11, of: 18}]
           ^^^^ "iuss" was due for technician on 2024-12-31; 11 of 18 have done it.
`,
      `
=== site.ifu.yaml
kind: site
id: hillside
required_topics:
  - {topic: prion, roles: [technician, surgeon], every: 366 d}
     ^^^^^ The site asks for "prion" for surgeon, and no training file covers it.
     ^^^^^ The site asks for "prion" for technician every 366 d; the last time began on 2023-05-01.
  - {topic: insulation-test, roles: [technician]}
     ^^^^^ The site asks for "insulation-test" for technician, and no training file covers it.
=== training/prion.ifu.yaml
kind: training
id: T2-prion
topic: prion
on: 2023-05-01
readers: [{role: technician, due: 2023-12-31, done: 18, of: 18}]
`,
    ],
    good: [
      `
kind: training
id: T1-iuss
topic: iuss
readers: [{role: technician, due: 2024-12-31, done: 18, of: 18}, {role: educator, due: 2025-06-30, done: 0, of: 2}]
`,
      `
=== site.ifu.yaml
kind: site
id: hillside
required_topics:
  - {topic: prion, roles: [technician], every: 366 d}
=== training/prion.ifu.yaml
kind: training
id: T2-prion
topic: prion
on: 2024-05-01
readers: [{role: technician, due: 2024-12-31, done: 18, of: 18}]
`,
    ],
  },
});

/** A count that is not given has not been kept: nobody is known to have done it. */
function checkReaders(training: Training, { today, report }: RuleContext): void {
  if (training.closed !== undefined) return;
  for (const { role, due, done, of, at } of training.readers?.items ?? []) {
    if (due === undefined || due.text.slice(0, 10) >= today) continue;
    const [finished, all] = [numberIn(done) ?? 0, numberIn(of)];
    if (all === undefined ? finished > 0 : finished >= all) continue;
    report({
      at,
      message: message.due(
        training.topic?.text ?? training.change?.text ?? training.id?.text ?? '',
        role?.text ?? '',
        all === undefined ? 'nobody is known to have done it' : message.done(finished, all),
        due.text,
      ),
      gap: message.gap(daysBetween(due.text, today)),
    });
  }
}

function numberIn(quantity: { readonly value: number; readonly problem?: unknown } | undefined): number | undefined {
  return quantity === undefined || quantity.problem !== undefined ? undefined : quantity.value;
}

function checkTopic({ topic, roles, every, at }: RequiredTopic, { today, view, report }: RuleContext): void {
  if (topic === undefined) return;
  const given = view.all('training').filter((one) => one.topic?.text === topic.text);
  const uncovered: string[] = [];
  const old: { role: string; last: string }[] = [];
  for (const { text: role } of roles?.items ?? []) {
    const own = given.filter(({ readers }) => readers?.items.some((reader) => reader.role?.text === role) === true);
    const last = own
      .map(({ on }) => on?.text ?? '')
      .sort()
      .at(-1);
    const until = last === undefined || last === '' || every === undefined ? undefined : dayAfter(last, every);
    if (last === undefined) uncovered.push(role);
    else if (until !== undefined && until < today) old.push({ role, last });
  }
  if (uncovered.length > 0) report({ at, message: message.never(topic.text, listed(uncovered)) });
  const [first] = old;
  if (first !== undefined) {
    const who = listed(old.map(({ role }) => role));
    report({ at, message: message.old(topic.text, who, shown(every), first.last) });
  }
}
