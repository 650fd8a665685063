import { invariant } from '../base/assert.ts';
import type { Policies } from '../model/entities/site.generated.ts';
import type { Requirement } from '../model/node.ts';
import type { Bound } from '../quantity/bound.ts';
import { boundsOf, isUnreadable } from './bounds.ts';
import type { Cell, NumberRow } from './direction-row.ts';
import { numberRows, wordCells } from './directions.ts';
import { gapWords } from './gap.ts';
import type { Given } from './given.ts';
import { type Outcome, outcomeRanks, type Parameter } from './outcome.ts';
import { bareReading } from './policies.ts';
import { sameAsWritten } from './same-as-written.ts';

/** One requirement against one value of ours. */
export interface ValueQuestion {
  readonly parameter: Parameter;
  readonly requirement: Requirement;
  /** Undefined when the department's side gives no value. */
  readonly given: Given | undefined;
  readonly policies: Policies | undefined;
  /** Situations that hold (`prion-suspected`); a requirement with another `when` is not demanded. */
  readonly situations?: ReadonlySet<string>;
  /** Of two statements that differ, the one that a usable written answer of the maker confirms. */
  readonly settled?: Requirement | undefined;
  /** True when a usable written answer of the maker speaks of this field. */
  readonly answered?: boolean;
}

export interface ValueAnswer extends Cell {
  /** The gap in numbers: `10 min short`. */
  readonly gap?: string;
}

const rows = new Map<Parameter, NumberRow>(numberRows.map((row) => [row.parameter, row]));

/** The row of a parameter that is a number. */
export function rowFor(parameter: Parameter): NumberRow {
  const row = rows.get(parameter);
  invariant(row !== undefined, `the direction table has a row for ${parameter}`);
  return row;
}

/** A bare number of this parameter is its highest value, whatever a site says of bare numbers: `may be processed 200 times`. */
export function isHighestIfBare(parameter: Parameter): boolean {
  const row = rows.get(parameter);
  return row?.aboveBareMinimum.outcome === 'fails' && row.belowBare.outcome === 'meets';
}

/** The worst answer of all bound words on the requirement; the words that are no number where there is none. */
export function judgeValue(question: ValueQuestion): ValueAnswer {
  const { requirement } = question;
  if (requirement.when !== undefined && question.situations?.has(requirement.when.text) !== true)
    return wordCells.otherSituation;
  if (requirement.specific !== undefined) return judgeValue({ ...question, requirement: requirement.specific });
  if (requirement.not_applicable !== undefined) return wordCells.notApplicable;
  return softened(requirement, judgeBinding(question));
}

function judgeBinding(question: ValueQuestion): ValueAnswer {
  const { requirement } = question;
  if (requirement.conflict !== undefined) return judgeConflict(question);
  if (requirement.ambiguous !== undefined) return ambiguous(question);
  if (isUnreadable(requirement)) return wordCells.unreadable;
  const bounds = boundsOf(requirement);
  if (bounds.length === 0) return wordsOnly(question);
  if (question.given === undefined) return wordCells.givenMissing;
  let worst: ValueAnswer = wordCells.same;
  for (const bound of bounds) worst = worseAnswer(worst, judgeBound(question, bound, question.given));
  return worst;
}

function wordsOnly({ parameter, requirement }: ValueQuestion): Cell {
  if (requirement.silent?.on === true) return rowFor(parameter).silent;
  switch (requirement.defers_to?.text) {
    case 'department':
      return wordCells.defersToDepartment;
    case 'chemistry':
      return wordCells.defersToChemistry;
    case 'standard':
      return wordCells.defersToStandard;
    default:
      return wordCells.noBound;
  }
}

function ambiguous({ requirement, answered }: ValueQuestion): Cell {
  if (answered === true) return wordCells.answered;
  const { because, ...rest } = wordCells.ambiguous;
  return {
    ...rest,
    because: requirement.ask === undefined ? because : `${because}; question ${requirement.ask.text} is open`,
  };
}

/** Two documents differ: no side is chosen unless the maker has. What both refuse, fails. */
function judgeConflict(question: ValueQuestion): ValueAnswer {
  if (question.settled !== undefined)
    return judgeValue({ ...question, requirement: question.settled, settled: undefined });
  const sides = (question.requirement.conflict?.items ?? []).map((requirement) =>
    judgeValue({ ...question, requirement }),
  );
  const failing = sides.filter((side) => side.outcome === 'fails');
  if (failing[0] !== undefined && failing.length === sides.length) return failing[0];
  return question.answered === true ? wordCells.answered : wordCells.conflict;
}

/** What a page only suggests never fails: "should" is asked about, "may" is noted. */
function softened(requirement: Requirement, answer: ValueAnswer): ValueAnswer {
  if (answer.outcome !== 'fails') return answer;
  if (requirement.strength?.text === 'may')
    return { ...answer, outcome: 'meets-with-note', because: `${answer.because}; ${wordCells.optional.because}` };
  return requirement.strength?.text === 'should' ? { ...answer, outcome: 'needs-answer' } : answer;
}

function judgeBound(question: ValueQuestion, bound: Bound, given: Given): ValueAnswer {
  const row = rowFor(question.parameter);
  if (bound.bound === 'between' && bound.low > bound.high) return wordCells.reversed;
  const low =
    bound.bound === 'at_least' || bound.bound === 'between'
      ? bound.low
      : bound.bound === 'at_most'
        ? Number.NEGATIVE_INFINITY
        : bound.value;
  const high =
    bound.bound === 'at_most' || bound.bound === 'between'
      ? bound.high
      : bound.bound === 'at_least'
        ? low
        : bound.value;
  let answer: ValueAnswer = sameCell(question, bound);
  if (lessThan(given.low, low, question.requirement, given)) {
    const cell = belowCell(row, bound);
    answer = worseAnswer(answer, withGap(cell, question.requirement, given.low - low));
  }
  if (bound.bound === 'at_most' && given.high < high) answer = worseAnswer(answer, row.belowHighest);
  if (lessThan(high, given.high, question.requirement, given)) {
    const cell = aboveCell(question, row, bound, given);
    answer = worseAnswer(answer, withGap(cell, question.requirement, given.high - high));
  }
  return answer;
}

function sameCell(question: ValueQuestion, bound: Bound): Cell {
  if (bound.bound === 'about') return wordCells.aboutSame;
  if (bound.bound !== 'stated') return wordCells.same;
  const reading = bareReading(question.policies, question.parameter, question.requirement.dimension);
  return reading === 'needs-answer' ? wordCells.bareAsk : wordCells.same;
}

function belowCell(row: NumberRow, bound: Bound): Cell {
  if (bound.bound === 'stated') return row.belowBare;
  return bound.bound === 'about' ? row.belowAbout : row.belowLowest;
}

function aboveCell(question: ValueQuestion, row: NumberRow, bound: Bound, given: Given): Cell {
  switch (bound.bound) {
    case 'at_least':
      return row.farAboveLowest !== undefined && bound.low > 0 && given.high > row.farAboveLowest.times * bound.low
        ? row.farAboveLowest
        : row.aboveLowest;
    case 'stated':
      return bareReading(question.policies, question.parameter, question.requirement.dimension) === 'treat-as-minimum'
        ? row.aboveBareMinimum
        : row.aboveBare;
    case 'about':
      return row.aboveAbout;
    case 'exactly':
      return row.aboveExactly ?? row.aboveHighest;
    default:
      return row.aboveHighest;
  }
}

/** Only what does not meet has a gap worth showing. */
function withGap(cell: Cell, requirement: Requirement, difference: number): ValueAnswer {
  if (cell.outcome === 'meets' || cell.outcome === 'meets-with-note' || !Number.isFinite(difference)) return cell;
  return { ...cell, gap: gapWords(requirement, difference) };
}

/** `a` below `b`, noise of arithmetic aside, and the rounding of a page that prints both °C and °F. */
function lessThan(a: number, b: number, requirement: Requirement, given: Given): boolean {
  if (!(a < b)) return false;
  if (b - a <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b))) return false;
  return given.written === undefined || !sameAsWritten(requirement, given.written, a, b);
}

export function worseAnswer<One extends { readonly outcome: Outcome }>(a: One, b: One): One {
  return outcomeRanks[b.outcome] > outcomeRanks[a.outcome] || (a.outcome === 'meets' && b.outcome === 'meets') ? b : a;
}
