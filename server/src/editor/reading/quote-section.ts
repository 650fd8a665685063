import type { StageWord } from '../../quantity/prose/meaning.ts';
import type { QuoteReading } from '../../quantity/prose/prose.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';

/** What the heading above a sentence says of it. */
export interface Section {
  readonly text: string;
  readonly stages: readonly StageWord[];
}

/** Ways of cleaning that have steps and phases of their own. */
export const ways = ['manual', 'ultrasonic', 'mechanical'] as const satisfies readonly StageWord[];
export type Way = (typeof ways)[number];

/** The stages that a heading names; under that of a machine, drying and disinfection are phases of the machine. */
export function sectionOf(text: string, language: 'en' | 'de' | 'fr' | undefined): Section {
  if (text === '') return { text: '', stages: [] };
  if (afterTheCycle.test(text)) return { text: 'cooling and storage', stages: [] };
  const named = new Set(readQuote(text.toLowerCase(), language).stages.map(({ stage }) => stage));
  const stages: readonly StageWord[] = named.has('mechanical') ? ['mechanical'] : [...named];
  return { text: text.toLowerCase(), stages };
}

/** `After sterilization` speaks of what follows the cycle, and of none. */
const afterTheCycle = /^(?:after|following|nach|après)\s(?:\p{L}+\s){0,2}(?:steril|stéril)/iu;

/** The one way of cleaning that the heading names. */
export function wayOf({ stages }: Section): Way | undefined {
  const named = ways.filter((way) => stages.includes(way));
  return named.length === 1 ? named[0] : undefined;
}

/** The heading speaks of the place where the device was used. */
export function isAtUse({ text }: Section): boolean {
  return atUse.test(text);
}

const atUse =
  /point[\s-]of[\s-]use|after (?:the )?(?:procedure|treatment|surgery|operation|intervention)|nach (?:der |dem )?(?:op(?:eration)?|eingriff)(?!\p{L})|après l.intervention|after (?:each )?use|place of use|(?<!\p{L})theatre|operating room|(?:gebrauchs|anwendungs)ort|nach (?:dem )?(?:gebrauch|anwendung)|lieu d.utilisation|après (?:l.)?utilisation|bloc opératoire/u;

/** What somebody said in place of a heading; another word than that of a way means none of them. */
export function toldSection(way: string): Section {
  const stages = ways.filter((one) => one === way);
  return { text: stages.join(), stages };
}

/** The reading with the stages of the heading standing before its first word. */
export function underHeading(reading: QuoteReading, { stages: above }: Section): QuoteReading {
  if (above.length === 0) return reading;
  const { quote, language, numbers, negations, joins, flags } = reading;
  const stages = [...above.map((stage) => ({ stage, span: { start: 0, end: 0 } })), ...reading.stages];
  return { quote, language, numbers, negations, stages, joins, flags };
}
