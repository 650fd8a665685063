import { nameOfText } from '../../base/mix.ts';
import type { Printing } from '../amounts.ts';
import type { OpenFinding } from '../card/draft.ts';
import { plain } from '../piece.ts';
import { calculationDrafts } from './calculations.ts';
import type { Ground } from './ground.ts';
import { groundOf } from './ground.ts';
import { mayIDrafts } from './may-i.ts';
import { placeDrafts } from './places.ts';
import type { Draft, Question, QuizStage } from './question.ts';
import { questionOf, quizTemplates } from './question.ts';
import { Random } from './random.ts';
import { sentenceDrafts } from './sentences.ts';
import { sequenceDrafts } from './sequence.ts';
import { stopDrafts } from './stops.ts';
import { valueDrafts } from './values.ts';

export interface QuizWish {
  /** The same seed gives the same sheet of the same library. */
  readonly seed: string;
  readonly count: number;
  readonly stage?: QuizStage;
}

export interface Quiz {
  readonly seed: string;
  /** Of the questions and their keys: another as soon as one of them changes. */
  readonly stamp: string;
  readonly questions: readonly Question[];
}

/** Everything that can be asked about this library, in the order of its keys. */
export function allDrafts(ground: Ground): readonly Draft[] {
  const drafts = [
    ...valueDrafts(ground),
    ...mayIDrafts(ground),
    ...sentenceDrafts(ground),
    ...placeDrafts(ground),
    ...sequenceDrafts(ground),
    ...stopDrafts(ground),
    ...calculationDrafts(ground),
  ];
  return drafts.toSorted((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0));
}

/** A sheet: the templates take turns, so that one kind of question never fills it. */
export function quizOf(printing: Printing, findings: readonly OpenFinding[], { seed, count, stage }: QuizWish): Quiz {
  const drafts = allDrafts(groundOf(printing, findings)).filter(
    (draft) => stage === undefined || draft.stage === stage,
  );
  const random = new Random(seed);
  const piles = quizTemplates.map((template) => [
    ...random.shuffled(drafts.filter((one) => one.template === template)),
  ]);
  const questions: Question[] = [];
  while (questions.length < count && piles.some((pile) => pile.length > 0)) {
    for (const pile of piles) {
      const draft = pile.shift();
      const question = draft === undefined ? undefined : questionOf(draft, new Random(`${seed} ${draft.key}`));
      if (question !== undefined && questions.length < count) questions.push(question);
    }
  }
  return { seed, stamp: stampOf(questions), questions };
}

function stampOf(questions: readonly Question[]): string {
  const texts = questions.map(({ text, choices, citation }) =>
    [text, ...choices.map(({ line }) => line), citation].map(plain).join('|'),
  );
  return nameOfText(texts.join('\n')).slice(0, 6);
}
