import type { StageWord } from '../quantity/prose/meaning.ts';
import type { QuoteReading } from '../quantity/prose/prose.ts';
import type { Kind } from '../schema/kinds.ts';
import type { NewField } from './insert-fields.ts';
import { marked } from './insert-fields.ts';

/** Stages of a device whose field says whether they are done. */
const fields: Partial<Record<StageWord, string>> = {
  ultrasonic: 'ultrasonic',
  mechanical: 'mechanical',
  lubrication: 'lubrication',
  disinfection: 'disinfection',
  dry: 'drying',
};

const uses = ['allowed', 'required', 'recommended', 'forbidden'];

/**
 * A sentence without numbers about one stage: whether it is done is a choice, and first what the sentence says outright. A prohibition of
 * something else (`Lubricate the joint; do not use silicone oil`) does not forbid the stage.
 */
export function factsOf({ stages, negations }: QuoteReading, kind: Kind, src: string): readonly NewField[] {
  const named = new Set(stages.flatMap(({ stage }) => fields[stage] ?? []));
  const [field] = named;
  if (kind !== 'device' || field === undefined || named.size !== 1) return [];
  const targets = negations.flatMap((negation) => (negation.kind === 'prohibition' ? [negation.target] : []));
  const forbidden = stages
    .filter(({ stage }) => fields[stage] === field)
    .every(({ span }) => targets.some(({ start, end }) => start <= span.start && span.end <= end));
  const first = forbidden ? 'forbidden' : 'required';
  const choice = marked.choice([first, ...uses.filter((use) => use !== first)]);
  return [{ path: field, value: `{use: ${choice}, src: ${src}}` }];
}
