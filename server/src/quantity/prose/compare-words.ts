import { contains, overlaps } from '../../base/span.ts';
import type { QuoteFault, StructureClaim, UseClaim } from './claims.ts';
import type { JoinKind, StageWord } from './meaning.ts';
import type { Join, Negation, QuoteReading, StageMention } from './prose.ts';

/** A field that allows or demands what the quote forbids, or loses its exception. */
export function compareUse(reading: QuoteReading, claim: UseClaim, index: number): QuoteFault[] {
  if (claim.use === 'forbidden') return [];
  const lost = reading.negations.find((negation) => isLost(reading, claim, negation));
  if (lost === undefined) return [];
  const quoted = reading.quote.slice(lost.span.start, lost.span.end);
  return [{ fault: 'quote-negation-lost', claim: index, spans: [lost.span], quoted }];
}

function isLost(reading: QuoteReading, claim: UseClaim, negation: Negation): boolean {
  if (!concerns(reading, claim.subject, negation)) return false;
  switch (negation.kind) {
    case 'prohibition':
      return true;
    case 'without':
      return claim.subject !== undefined && isNamed(reading, claim.subject);
    case 'exception':
      return claim.hasCondition !== true;
    case 'not-required':
      return claim.use === 'required';
  }
}

function isNamed(reading: QuoteReading, subject: StageWord): boolean {
  return reading.stages.some((stage) => stage.stage === subject);
}

/** A negation concerns a subject that stands in its scope; when the quote does not name the subject, every negation does. */
function concerns(reading: QuoteReading, subject: StageWord | undefined, negation: Negation): boolean {
  if (subject === undefined || !isNamed(reading, subject)) return true;
  const named = reading.stages.filter(({ stage }) => stage === subject);
  const negated = named.filter(({ span }) => contains(negation.target, span) || overlaps(negation.span, span));
  return negated.some((stage) => named.length === negated.length || !isMeans(reading, stage));
}

const means: ReadonlySet<string> = new Set(
  'oil oils lubricant lubricants öl öle silikonöl schmiermittel huile huiles lubrifiant lubrifiants'.split(' '),
);

/** `Lubricate the joint; do not use silicone oil`: a means is forbidden, and the step, which is named apart from it, stays. */
function isMeans({ quote }: QuoteReading, { span }: StageMention): boolean {
  return means.has(quote.slice(span.start, span.end).toLowerCase());
}

/** Stages under `any_of` that the quote joins with "and" or "then", or under `all_of` that it joins with "or". One fault a claim. */
export function compareStructure(reading: QuoteReading, claim: StructureClaim, index: number): QuoteFault[] {
  for (const [at, first] of claim.stages.entries()) {
    for (const second of claim.stages.slice(at + 1)) {
      const join = joinBetween(reading, first, second);
      if (join === undefined || agrees(claim.structure, join.join)) continue;
      const quoted = reading.quote.slice(join.span.start, join.span.end);
      return [{ fault: 'quote-and-or-changed', claim: index, spans: [join.span], quoted }];
    }
  }
  return [];
}

function agrees(structure: StructureClaim['structure'], join: JoinKind): boolean {
  if (join === 'and/or') return true;
  return (structure === 'any_of') === (join === 'or');
}

/** The last join word between a mention of one stage and the next mention of the other, in either order. */
function joinBetween(reading: QuoteReading, a: StageWord, b: StageWord): Join | undefined {
  let from: StageWord | undefined;
  let start = 0;
  for (const stage of reading.stages) {
    if (stage.stage !== a && stage.stage !== b) continue;
    if (from !== undefined && stage.stage !== from) {
      const joins = reading.joins.filter(
        (join) => join.before.span.start >= start && join.after.span.start <= stage.span.start,
      );
      return joins.at(-1);
    }
    from = stage.stage;
    start = stage.span.start;
  }
  return undefined;
}
