import type { QuoteReading, StageMention } from '../../quantity/prose/prose.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';
import type { Language } from '../../quantity/prose/token.ts';

/** What follows a word that only describes a thing: a dry place is no drying, a flush port no flushing. */
const described: Readonly<
  Partial<Record<StageMention['stage'], { readonly before?: RegExp; readonly after: RegExp; readonly own?: RegExp }>>
> = {
  dry: {
    before:
      /(?:\b(?:allow(?:ed)?|let|left)\s(?:\p{L}+\s){0,2}(?:to\s)?|transport\p{L}*\s|(?:endroit|lieu|local)\s(?:\p{L}+,?\s(?:et\s)?)?|\b(?:keep|kept|store|stored|remain|stay|tenir|garder)\s|\b(?:soil|soiling|blood|debris|residues?|contamination|schmutz|blut|rückstände|verschmutzung(?:en)?|souillures?|sang|résidus)\s(?:(?:has|have|can|may|to|is)\s)?)$/u,
    after:
      /^\s(?:out|up(?!\sto\b)|on)\b|^(?:en|em|er)?(?:(?:,|\sand|\sund)\s\p{L}+)?\s(?:place|location|area|room|environment|condition|storage|disposal|transport|pre-?treatment|entsorgung|cupboard|ort|raum|räum|soil|blood|debris|residue|deposit|secretion)/u,
  },
  'dry-heat': {
    before: /(?<!\p{L})dr(?:y|ied|ying)\s(?:\p{L}+\s){0,3}(?:with|in|by|using)\s(?:\p{L}+\s)?$/u,
    after: /^(?!)/,
  },
  flush: {
    before: /(?:connecteur|embout|buse|raccord|adaptateur|orifice)s?\sd.$/u,
    after:
      /^\p{L}*\/\p{L}|^(?:\p{L}*)[\s-](?:channels?(?!\s(?:with|at)\s)|lumens?(?!\s(?:with|at)\s)|pumps?|functions?|ports?|connectors?|adapt[eo]rs?|valves?|caps?|nozzles?|manifolds?|lines?|cannulas?|tubes?|sets?|handpieces?)\b(?!\s(?:for|with|at)\s)/u,
  },
  lubrication: {
    before: /(?:free (?:of|from)|without)\s$/u,
    after:
      /^(?:\p{L}*)(?:[\s-]free\b|\s(?:nozzles?|adapt[eo]rs?|ports?|holes?|openings?|caps?|düsen?|öffnung)(?!\p{L}))/u,
  },
  immersion: { after: /^\s(?:disinfectant|heater|bath\sdisinfect|method|depth)/ },
  brush: {
    before:
      /(?:check|inspect|clean|replace|discard|disinfect|sterili[sz]e|rinse|renew|change)\s(?:(?:the|all|each|used|cleaning)\s){0,2}$/u,
    after: /^(?!)/,
  },
  wipe: {
    before:
      /(?:lint[\s-]free|dry|soft|absorbent|paper|disposable|clean|damp|moist|cleaning|sterile|pre-moistened|with|an?|of|or|alcohol)\s$/u,
    after: /^(?!)/,
  },
  rinse: { after: /^(?!)/, own: /düse|anschluss|adapter|konnektor|lanze/ },
  inspection: {
    before: /(?:pass(?:es|ed)?|fails?|until|besteht|bestehen)\s(?:(?:the|its|die|der)\s)?(?:visual\s)?$/u,
    after: /^(?!)/,
  },
  soak: {
    before: /(?:swab|cloth|wipe|sponge|gauze|towel|pad|tuch|tupfer)s?\s(?:(?:that\sis|lightly)\s)?$/u,
    after: /^(?!)/,
  },
};

/** The reading without the words that only describe a thing: they name no step, though they are spelled as one. */
export function stepsMeant(reading: QuoteReading): QuoteReading {
  const quote = reading.quote.toLowerCase();
  const stages = reading.stages.filter(({ stage, span }) => {
    const words = described[stage];
    if (words === undefined) return true;
    if (words.own?.test(quote.slice(span.start, span.end)) === true) return false;
    return !words.after.test(quote.slice(span.end)) && words.before?.test(quote.slice(0, span.start)) !== true;
  });
  const { language, numbers, negations, joins, flags } = reading;
  return { quote: reading.quote, language, numbers, negations, stages, joins, flags };
}

/** A sentence read without the number of its step: `3.2 Press the button` begins with what is done. A value (`2.5 Liter`) stays. */
export function readStep(quote: string, language: Language | undefined): QuoteReading {
  const reading = readQuote(quote, language);
  const [first] = reading.numbers;
  const isValue = first?.span.start === 0 && first.units.length > 0;
  return isValue || !stepNumber.test(quote) ? reading : readQuote(quote.replace(stepNumber, ''), language);
}

/** Before a word or a further number: a value has its unit right behind it. */
const stepNumber = /^\d{1,2}(?:\.\d{1,2}){1,3}\.?\s+(?=\p{Lu}[\p{Ll}-]|\d)/u;
