import type { SyntaxRuleId } from './problem-rules.ts';

/** A fault of one value, before it has a place. */
export interface Hazard {
  readonly rule: SyntaxRuleId;
  readonly message: string;
  /** What to write instead, when there is no doubt about it. `quote`: the same text in quotes. */
  readonly instead?: { readonly title: string; readonly text: string } | 'quote';
}
