import type { KnownLibrary } from './known-library.ts';

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
export function reachedFrom(changed: ReadonlySet<number>, known: KnownLibrary, again?: AnswersAgain): Reached {
  again?.rest(answersReached(new Set(changed), known));
  const keys = new Set(changed);
  const answers = answersReached(keys, known, again);
  const files = new Set<number>();
  for (const key of keys) for (const place of known.readers(key)) files.add(place);
  return { files, answers };
}

/** Answers rest on answers. Adds the keys of those that don't stay to `keys`: a set that grows while it is walked is walked to its end. */
function answersReached(keys: Set<number>, { answers }: KnownLibrary, again?: AnswersAgain): ReadonlySet<number> {
  const reached = new Set<number>();
  for (const key of keys) {
    for (const place of answers.readers(key)) {
      if (reached.has(place)) continue;
      reached.add(place);
      if (again?.stays(place) !== true) keys.add(answers.key(place));
    }
  }
  return reached;
}
