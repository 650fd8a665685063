import { HashSet } from './key-hash.ts';
import type { KnownAnswers, LibraryState } from './library-state.ts';

/** What a change reaches. */
export interface Reached {
  /** Places of files that must be judged again. */
  readonly files: ReadonlySet<number>;
  /** Places of answers that must be worked out again; what is known of the others still holds. */
  readonly answers: ReadonlySet<number>;
}

/** How to find out which of the answers that a change may reach are as they were. */
export interface AnswersAgain {
  /** Told first: every answer that may not be what it was. */
  rest(perhapsOther: ReadonlySet<number>): void;
  stays(answer: number): boolean;
}

/** `changed`: the numbers of keys whose readers may find something else now. */
export function reachedFrom(changed: Iterable<number>, state: LibraryState, again?: AnswersAgain): Reached {
  const begin = [...changed];
  again?.rest(answersReached(setOf(begin), state.answers));
  const keys = setOf(begin);
  const answers = answersReached(keys, state.answers, again);
  const files = new Set<number>();
  for (let place = 0; place < state.reads.count; place++) if (keys.hasAnyOf(state.reads, place)) files.add(place);
  return { files, answers };
}

function setOf(hashes: readonly number[]): HashSet {
  const keys = new HashSet();
  for (const hash of hashes) keys.add(hash);
  return keys;
}

/** Answers rest on answers: this goes on until nothing new is reached. Adds the keys of those that don't stay to `keys`. */
function answersReached(keys: HashSet, { keys: own, reads }: KnownAnswers, again?: AnswersAgain): ReadonlySet<number> {
  const reached = new Set<number>();
  for (let before = -1; before !== keys.size; ) {
    before = keys.size;
    for (let place = 0; place < own.length; place++) {
      if (reached.has(place) || !keys.hasAnyOf(reads, place)) continue;
      reached.add(place);
      if (again?.stays(place) !== true) keys.add(own[place] ?? 0);
    }
  }
  return reached;
}
