import type { Printing } from '../amounts.ts';
import { cautionParts } from '../answer/cautions.ts';
import type { Paper } from '../paper.ts';
import type { Part } from '../paper-part.ts';
import type { Line } from '../piece.ts';
import { told } from '../piece.ts';
import type { Quiz } from './build.ts';
import type { Question } from './question.ts';

/** The sheet, and on a page of its own the key with reasons and pages. */
export function quizSheet(quiz: Quiz, checklist: readonly Line[], printing: Printing, day: string): Paper {
  return {
    title: `Questions, stamp ${quiz.stamp}`,
    language: 'en',
    facts: { 'page-kind': 'quiz', 'quiz-stamp': quiz.stamp, 'quiz-seed': quiz.seed, 'page-day': day },
    parts: [
      { is: 'heading', level: 1, line: ['Questions from our instructions'] },
      {
        is: 'small',
        line: [
          'Stamp ',
          told('print', quiz.stamp),
          ', seed ',
          told('print', quiz.seed),
          ', ',
          told('print', day),
          '. One answer is right. Results are kept by the educator and never in the rule files.',
        ],
      },
      { is: 'blank', label: 'Role, shift, day' },
      ...quiz.questions.flatMap(questionParts),
      ...(quiz.questions.length === 0
        ? [{ is: 'text', line: ['Nothing in this library can be asked without doubt.'] } as const]
        : []),
      { is: 'new-page' },
      ...checklistParts(checklist, quiz),
      { is: 'new-page' },
      { is: 'heading', level: 1, line: ['Key of sheet ', told('print', quiz.stamp)] },
      { is: 'table', head: ['No.', 'Right', 'Why', 'Page'], rows: quiz.questions.map(keyRow), narrow: [0, 3] },
      ...cautionParts(printing.view),
    ],
  };
}

const letters = 'abcdefgh';

function questionParts({ text, choices }: Question, index: number): readonly Part[] {
  return [
    { is: 'heading', level: 3, line: [told('print', `${index + 1}. `), ...text] },
    { is: 'choices', items: choices.map(({ line }, choice): Line => [`☐ ${letters.charAt(choice)}) `, ...line]) },
  ];
}

function keyRow({ choices, why, citation }: Question, index: number): readonly Line[] {
  const at = choices.findIndex(({ right }) => right);
  return [[told('print', String(index + 1))], [`${letters.charAt(at)}) `, ...(choices[at]?.line ?? [])], why, citation];
}

function checklistParts(checklist: readonly Line[], { stamp }: Quiz): readonly Part[] {
  if (checklist.length === 0) return [];
  return [
    { is: 'heading', level: 1, line: ['At the bench: watch and tick'] },
    { is: 'small', line: ['To sheet ', told('print', stamp), '. The observer reads aloud, the technician does.'] },
    { is: 'choices', items: checklist.map((line): Line => ['☐ seen  ☐ not seen   ', ...line]) },
    { is: 'blank', label: 'Observer (role), day' },
  ];
}
