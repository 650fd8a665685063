import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Quantity, Rec, Text } from '../../model/node.ts';
import { fieldOf } from '../../model/walk.ts';
import { formatQuantity } from '../../quantity/format.ts';
import type { RuleContext } from '../rule.ts';
import { defineRule } from '../rule.ts';
import { dayAfter, daysBetween, inDays } from '../support/days.ts';
import { partsOf } from '../support/entity-parts.ts';
import { sitePeriod } from '../support/site-limits.ts';
import { transcribedKinds } from '../support/transcription.ts';

const message = {
  unasked: (words: string) =>
    `"${words}" can't be carried out as written, and nobody has asked the maker. Write a question and name it here (ask).`,
  old: (id: string, day: string, days: number, limit: string) =>
    `The question ${id} was asked on ${day}, ${inDays(days)} ago, and has no answer. The department waits ${limit} at most: ask again.`,
};

export const rule = defineRule({
  id: 'ambiguous-without-question',
  stage: 'source',
  severity: 'warning',
  settledBy: 'manufacturer',
  why: '"As appropriate" stays for ever unless somebody asks.',
  source: 'practice',
  kinds: transcribedKinds,
  check(entity, context) {
    for (const record of partsOf(entity).records) {
      const ambiguous = fieldOf(record, 'ambiguous');
      if (ambiguous?.node === 'text') checkQuestion(record, ambiguous, context);
    }
  },
  examples: {
    bad: [
      `
kind: device
id: suction-tube
statements:
  s1: {doc: ST-2, rev: A, page: 3, quote: "Use an appropriate brush."}
cleaning:
  all_of:
    - {stage: manual, brush: {ambiguous: "use an appropriate brush"}, src: s1}
                                         ^^^^^^^^^^^^^^^^^^^^^^^^^^ "use an appropriate brush" can't be carried out as written, and nobody has asked the maker. Write a question and name it here (ask).
`,
      `
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s5: {doc: PF-1, rev: A, page: 5, quote: "Pre-vacuum 270 °F (134 °C) 3 min"}
sterilization:
  any_of:
    - id: pv
      modality: steam-prevac
      temp: {ambiguous: "270 °F (134 °C)", ask: q-270}
                                                ^^^^^ The question q-270 was asked on 2024-12-20, 73 days ago, and has no answer. The department waits 60 d at most: ask again.
      exposure: {stated: 3 min}
      src: s5
=== questions/q-270.ifu.yaml
kind: question
id: q-270
about: pale-forceps
text: Is it 132 °C or 134 °C?
asked_on: 2024-12-20
=== library.ifu.yaml
kind: library
id: lakeside
question_age: 60 d
`,
    ],
    good: [
      `
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
statements:
  s5: {doc: PF-1, rev: A, page: 5, quote: "Pre-vacuum 270 °F (134 °C) 3 min"}
sterilization:
  any_of:
    - {id: pv, modality: steam-prevac, temp: {ambiguous: "270 °F (134 °C)", ask: q-270}, exposure: {stated: 3 min}, src: s5}
=== questions/q-270.ifu.yaml
kind: question
id: q-270
about: pale-forceps
text: Is it 132 °C or 134 °C?
asked_on: 2025-02-20
=== library.ifu.yaml
kind: library
id: lakeside
question_age: 60 d
`,
      `
=== devices/pale-forceps.ifu.yaml
kind: device
id: pale-forceps
drying: {time: {ambiguous: "until dry", ask: q-dry, src: {doc: PF-1, rev: A, page: 5}}}
=== questions/q-dry.ifu.yaml
kind: question
id: q-dry
about: pale-forceps
text: How long does it dry?
asked_on: 2023-02-20
answered_by: r-dry
=== library.ifu.yaml
kind: library
id: lakeside
question_age: 60 d
`,
    ],
  },
});

function checkQuestion(record: Rec, ambiguous: Text, { view, today, report }: RuleContext): void {
  const ask = fieldOf(record, 'ask');
  if (ask?.node !== 'text') {
    report({ at: record.at, span: ambiguous.at.span, message: message.unasked(ambiguous.text) });
    return;
  }
  const question = view.get('question', ask.text);
  const limit = longestWait(view);
  if (question?.asked_on === undefined || limit === undefined || isSettled(question)) return;
  const asked = lastAsked(question);
  const due = dayAfter(asked, limit);
  if (due === undefined || daysBetween(due, today) <= 0) return;
  report({
    at: record.at,
    span: ask.at.span,
    message: message.old(ask.text, asked, daysBetween(asked, today), formatQuantity(limit)),
    gap: `${inDays(daysBetween(due, today))} too long`,
    related: [
      { at: question.asked_on.at, note: 'when it was asked' },
      { at: limit.at, note: 'how long the department waits' },
    ],
  });
}

function isSettled(question: EntityOf['question']): boolean {
  return question.answered_by !== undefined || question.closed !== undefined;
}

/** The day it was asked, or the last reminder. */
function lastAsked({ asked_on, reminded_on }: EntityOf['question']): string {
  const days = [asked_on, ...(reminded_on?.items ?? [])].map((day) => day?.text ?? '');
  return days.sort()[days.length - 1] ?? '';
}

/** The library's own limit, else the period that the site has set for questions. */
function longestWait(view: LibraryView): Quantity | undefined {
  const own = view.all('library')[0]?.question_age;
  return own?.problem === undefined && own !== undefined ? own : sitePeriod(view.site(), 'question')?.quantity;
}
