/**
 * report/: findings as text, JSON and the other forms that people and build servers read: pure data in, a string out.
 * It must not touch the disk, the clock or a terminal, and must not know how a finding came about.
 */

/** A whole printed line. Build servers take lines that begin with `::` or `##` as commands, even indented: such a line gets a mark before it. */
export function harmlessLine(line: string): string {
  return /^\s{0,40}(?:::|##)/.test(line) ? `| ${line}` : line;
}
