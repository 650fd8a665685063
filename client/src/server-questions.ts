import type { AnswerProblem, AskedChoice, AskedQuestion, QuestionsDone } from '../../server/src/panel/questions.ts';
import { either, type Is, isCount, isFlag, isText, listOf, maybe, recordOf, word } from '../page/forms.ts';
import { isNull, isServerEdit, type ServerEdit } from './server-sentences.ts';

/** All is asked: what is put in, and the version of the text that it is meant for. */
export interface ServerMade extends QuestionsDone {
  readonly edits: readonly ServerEdit[];
  readonly version: number | null;
}

/** A list to which something can be added. */
export interface ServerList {
  readonly path: string;
  readonly title: string;
  readonly about: string;
  readonly where: string;
  /** The cursor stands in it. */
  readonly here: boolean;
}

const isChoice = recordOf<AskedChoice>({ label: isText, detail: isText, gives: maybe(isText) });

export const isServerQuestion: Is<AskedQuestion> = recordOf<AskedQuestion>({
  is: word('question'),
  title: isText,
  asks: isText,
  takes: word('text', 'one', 'many'),
  value: isText,
  typical: isText,
  choices: listOf(isChoice),
  free: isFlag,
  pass: isText,
  of: maybe(isCount),
});

export const isAnswerProblem: Is<AnswerProblem> = recordOf<AnswerProblem>({ is: word('problem'), words: isText });

export const isServerMade: Is<ServerMade> = recordOf<ServerMade>({
  is: word('made'),
  words: isText,
  edits: listOf(isServerEdit),
  version: either(isCount, isNull),
});

export const isServerLists = listOf(
  recordOf<ServerList>({ path: isText, title: isText, about: isText, where: isText, here: isFlag }),
);
