import { Remembered } from '../../base/remembered.ts';
import { bindBounds } from './bounds.ts';
import type { NumberDraft, ReadingText } from './draft.ts';
import { markTopics, readFlags } from './flags.ts';
import { markSplitFootnotes } from './footnotes.ts';
import { readJoins, readStages } from './joins.ts';
import { guessLanguage } from './language.ts';
import { findPhrases, type Hit } from './lexicon.ts';
import { linkRanges, shareUnits, unitsBefore } from './links.ts';
import { draftNumbers } from './mentions.ts';
import { readMinTokens } from './min-token.ts';
import { readNegations } from './negations.ts';
import { linkPairs } from './pairing.ts';
import {
  type Flag,
  type Join,
  longestQuote,
  type Negation,
  type NumberMention,
  type QuoteReading,
  type StageMention,
} from './prose.ts';
import { asValue } from './ratio.ts';
import { markReferences } from './references.ts';
import { numberSentences } from './sentences.ts';
import { type Language, tokenize } from './token.ts';
import { markDifferences } from './tolerances.ts';

/**
 * Reads a quoted sentence. Without a language it is guessed from small words. Text beyond `longestQuote` characters is not read. Parts are
 * read when first asked for and kept.
 */
export function readQuote(quote: string, language?: Language): QuoteReading {
  const capped = quote.length > longestQuote ? quote.slice(0, longestQuote) : quote;
  return readings[language ?? guessLanguage(capped)].of(capped);
}

const readings: Readonly<Record<Language, Remembered<string, QuoteReading>>> = {
  en: readingsIn('en'),
  de: readingsIn('de'),
  fr: readingsIn('fr'),
};

/** The same sentences stand in many instructions of one maker, and several readers ask about each. */
function readingsIn(language: Language): Remembered<string, QuoteReading> {
  return new Remembered(400, (quote) => new LazyReading(quote, language));
}

interface Numbers {
  readonly mentions: readonly NumberMention[];
  readonly text: ReadingText;
  readonly usedUp: ReadonlySet<Hit>;
}

class LazyReading implements QuoteReading {
  readonly quote: string;
  readonly language: Language;
  #numbers: Numbers | undefined;
  #negations: readonly Negation[] | undefined;
  #stages: readonly StageMention[] | undefined;
  #joins: readonly Join[] | undefined;
  #flags: readonly Flag[] | undefined;

  constructor(quote: string, language: Language) {
    this.quote = quote;
    this.language = language;
  }

  get numbers(): readonly NumberMention[] {
    return this.#read().mentions;
  }

  get negations(): readonly Negation[] {
    const { text, usedUp } = this.#read();
    this.#negations ??= readNegations(text, usedUp);
    return this.#negations;
  }

  get stages(): readonly StageMention[] {
    this.#stages ??= readStages(this.#read().text);
    return this.#stages;
  }

  get joins(): readonly Join[] {
    this.#joins ??= readJoins(this.#read().text);
    return this.#joins;
  }

  get flags(): readonly Flag[] {
    this.#flags ??= readFlags(this.#read().text);
    return this.#flags;
  }

  #read(): Numbers {
    this.#numbers ??= readNumbers(this.quote, this.language);
    return this.#numbers;
  }
}

function readNumbers(quote: string, language: Language): Numbers {
  const tokens = tokenize(quote, language);
  const whole: ReadingText = {
    quote,
    language,
    tokens,
    hits: findPhrases(tokens, language),
    sentences: numberSentences(tokens, quote),
  };
  const drafts = draftNumbers(whole);
  const text = { ...whole, hits: whole.hits.filter((hit) => !isInsideNumber(drafts, hit)) };
  markReferences(text, drafts);
  unitsBefore(text, drafts);
  shareUnits(text, drafts);
  const kept = drafts.filter((draft) => draft.written === 'digits' || draft.units.length > 0);
  markSplitFootnotes(text, kept);
  markDifferences(text, kept);
  linkRanges(text, kept);
  linkPairs(text, kept);
  const usedUp = bindBounds(text, kept);
  readMinTokens(text, kept);
  markTopics(text, kept);
  for (const draft of kept) draft.quantities = quantitiesOf(draft);
  return { mentions: kept, text, usedUp };
}

/** The `min` of `4 min` is a unit, not a bound word. */
function isInsideNumber(drafts: readonly NumberDraft[], hit: Hit): boolean {
  return drafts.some((draft) => draft.first <= hit.first && hit.last <= draft.last);
}

function quantitiesOf(draft: NumberDraft): NumberMention['quantities'] {
  const likeliest = draft.readings[0];
  return likeliest === undefined ? [] : draft.units.map((unit) => asValue(likeliest, unit));
}
