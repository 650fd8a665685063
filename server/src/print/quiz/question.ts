import type { Line } from '../piece.ts';
import { plain } from '../piece.ts';
import type { Random } from './random.ts';

export const quizTemplates = [
  'value',
  'who-governs',
  'may-i',
  'spot-the-error',
  'where',
  'sequence',
  'bound-words',
  'stop-point',
  'calculation',
] as const;

export type QuizTemplate = (typeof quizTemplates)[number];

export type QuizStage = 'decontamination' | 'inspection' | 'packing' | 'sterilizing' | 'cooling';

export interface Choice {
  readonly line: Line;
  readonly right: boolean;
}

/** One question, ready to print: exactly one choice is right, every other was proven wrong by the same judgement. */
export interface Question {
  /** Stable: template and what it is about; the same for one library whatever the seed. */
  readonly key: string;
  readonly template: QuizTemplate;
  readonly stage: QuizStage;
  readonly text: Line;
  readonly choices: readonly Choice[];
  readonly why: Line;
  readonly citation: Line;
  /** How many facts have to be joined to answer it, 1 to 4. */
  readonly difficulty: number;
}

/** A question before its choices are drawn. */
export interface Draft extends Omit<Question, 'choices'> {
  readonly right: Line;
  /** More than are needed; a seed picks among them. Every one has been proven wrong. */
  readonly wrong: readonly Line[];
  /** Where asking first is itself the right answer, it is `right`; else it is offered as a further choice, and wrong. */
  readonly asking: 'right' | 'wrong' | 'not-offered';
}

export const askFirst: Line = ['Ask first: the files leave it open.'];

const wrongWanted = 3;

/** Draws the choices. Undefined where too few wrong ones were proven, or two choices read alike. */
export function questionOf(draft: Draft, random: Random): Question | undefined {
  const { right, wrong, asking, ...rest } = draft;
  const distinct = distinctFrom(wrong, plain(right));
  if (distinct.length < (asking === 'not-offered' ? 2 : 1)) return undefined;
  const chosen = random.shuffled(distinct).slice(0, wrongWanted);
  const choices: Choice[] = [{ line: right, right: true }, ...chosen.map((line): Choice => ({ line, right: false }))];
  const mixed = random.shuffled(choices);
  return { ...rest, choices: asking === 'wrong' ? [...mixed, { line: askFirst, right: false }] : mixed };
}

function distinctFrom(lines: readonly Line[], right: string): readonly Line[] {
  const seen = new Set([right]);
  return lines.filter((line) => !seen.has(plain(line)) && seen.add(plain(line)));
}
