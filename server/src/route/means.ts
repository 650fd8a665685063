import type { Judgement } from '../judge/outcome.ts';

/** One means for one stage: a washer cycle, a bath, or an agent at the sink. */
export interface Means {
  readonly machine: string;
  readonly means: string;
  readonly judgements: readonly Judgement[];
}
