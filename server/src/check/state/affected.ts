import { HashSet } from './key-hash.ts';
import type { KnownAnswers, LibraryState } from './library-state.ts';

/** What a change reaches. */
export interface Reached {
  /** Places of files that must be judged again. */
  readonly files: ReadonlySet<number>;
  /** Places of answers that must be worked out again; what is known of the others still holds. */
  readonly answers: ReadonlySet<number>;
}

/** `changed`: the numbers of keys whose readers may find something else now. */
export function reachedFrom(changed: Iterable<number>, state: LibraryState): Reached {
  const keys = new HashSet();
  for (const hash of changed) keys.add(hash);
  const answers = answersReached(keys, state.answers);
  const files = new Set<number>();
  for (let place = 0; place < state.reads.count; place++) if (keys.hasAny(state.reads.row(place))) files.add(place);
  return { files, answers };
}

/** Answers rest on answers: this goes on until nothing new is reached. Adds their keys to `keys`. */
function answersReached(keys: HashSet, { keys: own, reads }: KnownAnswers): ReadonlySet<number> {
  const reached = new Set<number>();
  for (let before = -1; before !== keys.size; ) {
    before = keys.size;
    for (let place = 0; place < own.length; place++) {
      if (reached.has(place) || !keys.hasAny(reads.row(place))) continue;
      reached.add(place);
      keys.add(own[place] ?? 0);
    }
  }
  return reached;
}
