import { isAscii } from '../base/ascii.ts';
import type { Fix, Problem } from '../base/problem.ts';
import { calendarHazard, dateHazard } from './date-hazards.ts';
import type { Hazard } from './hazard.ts';
import { idHazard } from './id-hazards.ts';
import { numberHazard } from './number-hazards.ts';
import { isOrdinaryAmount, isOrdinaryDate, isOrdinaryText } from './ordinary.ts';
import { severityOf } from './problem-rules.ts';
import { quoteScalar } from './quote.ts';
import { textHazard } from './text-hazards.ts';
import type { ScalarTree } from './tree.ts';

/** What a place of a rule file holds, as far as the reading of one value goes. */
export type Expected = 'text' | 'id' | 'number' | 'quantity' | 'date' | 'flag';

/** Longer than any number, date or word that a reader could take for something else. */
const LONGEST = 64;

/**
 * What other programs would take the value for, or what of it they would lose, when it stands where `expected` stands. Undefined
 * when every program reads it as what is meant. Text in quotes is never at risk of this, only of look-alike letters and of naming a
 * day that does not exist.
 */
export function scalarHazard(scalar: ScalarTree, expected: Expected): Problem | undefined {
  const hazard = hazardOf(scalar, expected);
  if (hazard === undefined) return undefined;
  const problem = { rule: hazard.rule, message: hazard.message, span: scalar.span, severity: severityOf(hazard.rule) };
  const fix = fixOf(scalar, hazard);
  return fix === undefined ? problem : { ...problem, fixes: [fix] };
}

function hazardOf(scalar: ScalarTree, expected: Expected): Hazard | undefined {
  return isOrdinary(scalar, expected) ? undefined : closerLook(scalar, expected);
}

function isOrdinary({ text, style }: ScalarTree, expected: Expected): boolean {
  switch (expected) {
    case 'id':
      return isAscii(text) && (style !== 'plain' || isOrdinaryText(text));
    case 'date':
      return isOrdinaryDate(text);
    case 'number':
    case 'quantity':
      return isOrdinaryAmount(text);
    case 'flag':
      return style !== 'plain' || text === 'true' || text === 'false';
    case 'text':
      return style !== 'plain' || isOrdinaryText(text);
  }
}

/** What may be amiss with a value. */
export function closerLook(scalar: ScalarTree, expected: Expected): Hazard | undefined {
  if (expected === 'id') {
    const hazard = idHazard(scalar.text);
    if (hazard !== undefined) return hazard;
  }
  if (scalar.text.length > LONGEST) return undefined;
  if (expected === 'date') return dateHazard(scalar.text);
  if (expected === 'number' || expected === 'quantity') return numberHazard(scalar.text, scalar.style, expected);
  if (scalar.style !== 'plain') return undefined;
  return expected === 'flag'
    ? textHazard(scalar.text, 'flag')
    : (calendarHazard(scalar.text) ?? textHazard(scalar.text, 'text'));
}

function fixOf(scalar: ScalarTree, hazard: Hazard): Fix | undefined {
  const { instead } = hazard;
  if (instead === undefined) return undefined;
  if (instead === 'quote')
    return { title: 'Put it in quotes', edits: [{ span: scalar.span, text: quoteScalar(scalar.text) }] };
  return { title: instead.title, edits: [{ span: scalar.span, text: instead.text }] };
}
