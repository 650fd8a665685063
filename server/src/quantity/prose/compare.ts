import type { Claim, QuoteFault } from './claims.ts';
import { compareNumber, unencodedNumbers } from './compare-numbers.ts';
import { compareStructure, compareUse } from './compare-words.ts';
import { deltaPairErrors, unitPairMismatches } from './match.ts';
import type { QuoteReading } from './prose.ts';
import type { Language } from './token.ts';

/**
 * Everything in which the fields that cite one statement depart from its words. `claims` are ALL fields that cite it: a number left over is a
 * fault of the statement. One cause gives one fault.
 */
export function compareQuote(reading: QuoteReading, claims: readonly Claim[]): QuoteFault[] {
  const faults: QuoteFault[] = [];
  for (const [index, claim] of claims.entries()) {
    if (claim.claim === 'number') faults.push(...compareNumber(reading, claims, index));
    else if (claim.claim === 'use') faults.push(...compareUse(reading, claim, index));
    else if (claim.claim === 'structure') faults.push(...compareStructure(reading, claim, index));
  }
  faults.push(...pairFaults(reading, claims), ...minTokens(reading, claims));
  faults.push(...unencodedNumbers(reading, claims));
  return faults;
}

/** Wrong pairs stand in the document itself; marking the field ambiguous answers them. */
function pairFaults(reading: QuoteReading, claims: readonly Claim[]): QuoteFault[] {
  const faults: QuoteFault[] = [];
  const isAnswered = claims.some((claim) => claim.claim === 'ambiguous');
  if (!isAnswered) {
    for (const pair of unitPairMismatches(reading)) {
      faults.push({ fault: 'unit-pair-mismatch', spans: [pair.first.span, pair.second.span] });
    }
  }
  for (const pair of deltaPairErrors(reading)) {
    faults.push({ fault: 'delta-converted-as-absolute', spans: [pair.first.span, pair.second.span] });
  }
  return faults;
}

function minTokens(reading: QuoteReading, claims: readonly Claim[]): QuoteFault[] {
  const isAnswered = claims.some(
    (claim) => claim.claim === 'ambiguous' || (claim.claim === 'number' && claim.readAs !== undefined),
  );
  if (isAnswered) return [];
  const unclear = reading.numbers.filter((mention) => mention.minToken === 'ambiguous');
  return unclear.map((mention) => ({ fault: 'min-token-ambiguous', spans: [mention.span] }));
}

/** Language codes that the reader knows; anything else is guessed from the words. */
export function readerLanguage(code: string | undefined): Language | undefined {
  const short = code?.slice(0, 2).toLowerCase();
  return short === 'en' || short === 'de' || short === 'fr' ? short : undefined;
}
