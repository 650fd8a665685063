/** Questions that the server asks one after the other, and what comes of the answers: texts without markup. */

export interface AskedQuestion {
  readonly is: 'question';
  /** What is made, and of which part of it is asked. */
  readonly title: string;
  readonly asks: string;
  /** `text` is typed, `one` is chosen from a list, `many` are. */
  readonly takes: 'text' | 'one' | 'many';
  /** What stands there already, to be accepted or changed. */
  readonly value: string;
  /** What such an answer looks like; empty where nothing is known. */
  readonly typical: string;
  readonly choices: readonly AskedChoice[];
  /** Words that are not among the choices are fine too. */
  readonly free: boolean;
  /** What giving no answer means, such as `Leave it open`; empty where one is needed. */
  readonly pass: string;
  /** How many questions there are, where what is left is passed over. */
  readonly of?: number;
}

export interface AskedChoice {
  readonly label: string;
  readonly detail: string;
  /** What is answered when it is chosen, where that is not the label. */
  readonly gives?: string;
}

/** Why the last answer can't be taken. */
export interface AnswerProblem {
  readonly is: 'problem';
  readonly words: string;
}

/** All is asked; what is put in goes with it. */
export interface QuestionsDone {
  readonly is: 'made';
  /** For the person: what was made, or why nothing was. */
  readonly words: string;
}
