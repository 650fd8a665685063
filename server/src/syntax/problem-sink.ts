import type { Fix, Problem } from '../base/problem.ts';
import { type Span, span } from '../base/span.ts';
import { isStructureFault, type SyntaxRuleId, severityOf } from './problem-rules.ts';

export interface Details {
  readonly fixes?: readonly Fix[];
  readonly related?: readonly { readonly span: Span; readonly note: string }[];
}

/** Problems listed for one file before the rest are only counted in memory too (a hostile file must not fill it). */
const HARD_CAP = 400;

/** Collects the problems of one file, then keeps one for each root cause. */
export class ProblemSink {
  readonly #text: string;
  readonly #found: Problem[] = [];
  readonly #echoes: Span[] = [];
  #uncounted = 0;

  constructor(text: string) {
    this.#text = text;
  }

  report(rule: SyntaxRuleId, at: Span, message: string, details?: Details): void {
    if (this.#found.length >= HARD_CAP) {
      this.#uncounted++;
      return;
    }
    this.#found.push({ rule, message, span: at, severity: severityOf(rule), ...details });
  }

  /** Later faults of structure inside `range` are the echo of one that is reported already. */
  expectEchoes(range: Span): void {
    if (this.#echoes.length < HARD_CAP) this.#echoes.push(range);
  }

  /** For faults of single characters: whatever else seems wrong with the structure of their lines comes from them. */
  expectEchoesOnLines(): void {
    for (const { span: at } of this.#found) {
      const end = this.#text.indexOf('\n', at.start);
      this.expectEchoes(span(this.#lineStart(at.start) - 1, end < 0 ? this.#text.length : end));
    }
  }

  /** A sink that holds what this one holds. */
  copy(): ProblemSink {
    const other = new ProblemSink(this.#text);
    other.#found.push(...this.#found);
    other.#echoes.push(...this.#echoes);
    other.#uncounted = this.#uncounted;
    return other;
  }

  has(rule: SyntaxRuleId): boolean {
    return this.#found.some((problem) => problem.rule === rule);
  }

  /** Takes back problems of `rule` that start inside one of the ranges. */
  withdrawInside(rule: SyntaxRuleId, ranges: readonly Span[]): void {
    if (ranges.length === 0 || !this.has(rule)) return;
    const inside = (at: number) => ranges.some((range) => range.start <= at && at < range.end);
    const kept = this.#found.filter((problem) => problem.rule !== rule || !inside(problem.span.start));
    this.#found.length = 0;
    this.#found.push(...kept);
  }

  /** In order of place, echoes removed, at most `limit` and then one that counts the rest. */
  finish(limit: number): readonly Problem[] {
    if (this.#found.length === 0) return [];
    const kept = this.#withoutEchoes();
    const more = kept.length - limit + this.#uncounted;
    if (more <= 0) return kept;
    const listed = kept.slice(0, limit);
    const last = listed[listed.length - 1];
    listed.push({
      rule: 'too-many-problems',
      message: `… and ${more} more problems in this file. Settle the first ones; the rest may go with them.`,
      span: last === undefined ? span(0, 0) : last.span,
      severity: severityOf('too-many-problems'),
    });
    return listed;
  }

  #withoutEchoes(): Problem[] {
    const sorted = this.#found.map((problem, order) => ({ problem, order }));
    sorted.sort((a, b) => a.problem.span.start - b.problem.span.start || a.order - b.order);
    const firstOnLine = new Map<number, Problem>();
    const kept: Problem[] = [];
    for (const { problem } of sorted) {
      const line = this.#lineStart(problem.span.start);
      const earlier = firstOnLine.get(line);
      if (isStructureFault(problem.rule) && (earlier !== undefined || this.#isEcho(problem))) continue;
      if (earlier === undefined && problem.severity === 'error') firstOnLine.set(line, problem);
      kept.push(problem);
    }
    return kept;
  }

  #isEcho(problem: Problem): boolean {
    const at = problem.span.start;
    return this.#echoes.some((range) => range.start < at && at < range.end);
  }

  #lineStart(at: number): number {
    const line = at === 0 ? 0 : this.#text.lastIndexOf('\n', at - 1) + 1;
    // Looked for on this line only: most texts have none, and each look would go back to their beginning.
    return line + this.#text.slice(line, at).lastIndexOf('\r') + 1;
  }
}
