import type { Problem } from '../base/problem.ts';

/** What a new file writes behind a line that is still to be filled. */
export const toDoMark = '# to do: ';

export const stillToWrite = 'still-to-write';

/**
 * An empty line that a new file has left open on purpose is no mistake of anybody: it is told in other words, at the name of its field. It
 * counts as before, so that no unfinished file passes a check.
 */
export function asToDo(problem: Problem, text: string): Problem {
  if (problem.rule !== 'empty-value') return problem;
  const start = text.lastIndexOf('\n', problem.span.start - 1) + 1;
  const [, key, about] = /^([a-z_]+):[ \t]*# to do: ([^\r\n]*)/.exec(text.slice(start, start + longestLine)) ?? [];
  if (key === undefined || about === undefined || problem.span.start > start + key.length + 2) return problem;
  return {
    ...problem,
    rule: stillToWrite,
    message: `Still to write: ${about.charAt(0).toLowerCase()}${about.slice(1)}`,
    span: { start, end: start + key.length },
  };
}

const longestLine = 1_000;
