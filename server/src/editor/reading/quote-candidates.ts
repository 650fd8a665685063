import type { StageWord } from '../../quantity/prose/meaning.ts';
import type { NumberMention, QuoteReading } from '../../quantity/prose/prose.ts';
import type { Dimension } from '../../quantity/quantity.ts';
import type { Group, Home } from './home.ts';
import { elsewhere } from './home.ts';
import { isAlike, phaseBefore } from './quote-clauses.ts';
import type { Sought } from './quote-nearness.ts';
import { nearness, stageBefore } from './quote-nearness.ts';
import { isAtUse } from './quote-section.ts';

/** A place that a number may have, and how sure that is. */
export interface Candidate {
  readonly mention: NumberMention;
  readonly group: Group;
  readonly home: Home;
  readonly near: number;
  readonly score: number;
}

/** Every place of the table that fits the number, its stage and its words. */
export function homesFor(mention: NumberMention, sought: Sought, groups: readonly Group[]): readonly Candidate[] {
  const { reading, words, above } = sought;
  if (isLong(mention) && every.test(reading.quote.slice(0, mention.span.start))) return [];
  const measured = mention.quantities.map(({ dimension }) => dimension);
  const dimensions = new Set(measured.filter((one) => one !== 'ph' || mention.amount <= highestPh));
  const text = withoutCoolWords(reading.quote);
  const found: Candidate[] = [];
  const governing = stageBefore(mention, reading);
  const phase = phaseBefore(words, mention);
  for (const group of groups) {
    const context = contextOf(group, reading, text, above);
    if (context === 0) continue;
    const governed = governing !== undefined && group.stages.includes(governing) ? governs + besides(group) : 0;
    const later = governing !== undefined && governed === 0 && isNamedLater(group, mention, reading) ? isLater : 0;
    if (isOfOtherStep(group, governing)) continue;
    for (const home of group.fields) {
      // What is flushed at once has a field of its own there.
      if (home.dimension === 'volume' && group.does === 'flush' && isAtUse({ text: above, stages: [] })) continue;
      if (home.ofStage !== undefined && !reading.stages.some(({ stage }) => home.ofStage?.includes(stage))) continue;
      if (home.dimension === 'magnification' && isCount(mention, text)) continue;
      // `brush 4419.95, three strokes`: nothing is done so many times and a part of it.
      if (home.dimension === 'count' && !Number.isInteger(mention.amount)) continue;
      const fits = dimensions.has(home.dimension) || (measured.length === 0 && unitless(home, text, mention));
      if (
        !fits ||
        !isBeside(home, mention, sought) ||
        (isLong(mention) && !ofLongTimes.has(group.path)) ||
        (group.path === 'storage' && isShort(mention)) ||
        (home.field === 'age' && !isLong(mention))
      )
        continue;
      const near =
        nearness(home, mention, sought) ?? (group.path === phase && home.field !== elsewhere ? underPhase : undefined);
      if (near === undefined || (near <= underPhase && isOtherPhase(group, phase, reading))) continue;
      found.push({
        mention,
        group,
        home,
        near,
        score:
          context + near + governed - later + (home.beside === undefined ? 0 : 1) + (isHighest(home, mention) ? 4 : 0),
      });
    }
  }
  return found;
}

const byHand: ReadonlySet<string> = new Set(['soak', 'immersion', 'brush', 'flush', 'rinse', 'wipe']);

/** `The lumen is flushed with 50 mL and the outside is brushed`: a number behind one step belongs to no other step. */
function isOfOtherStep({ does, stages }: Group, governing: StageWord | undefined): boolean {
  const isStep = does !== undefined && stages.length > 0;
  return isStep && governing !== undefined && byHand.has(governing) && !stages.includes(governing);
}

/** Months and years are no times of a step or a cycle. */
const ofLongTimes: ReadonlySet<string> = new Set(['storage', 'limits', '']);
const longUnits: ReadonlySet<string> = new Set(['weeks', 'months', 'years']);

function isLong({ quantities }: NumberMention): boolean {
  return quantities.length > 0 && quantities.every(({ unit }) => longUnits.has(unit));
}

/** `Every 12 months` is how often, and not how long. */
const every = /(?<!\p{L})(?:every|each|alle|tous les)\s$/iu;

/** Nothing is stored for minutes. */
function isShort({ quantities }: NumberMention): boolean {
  return quantities.length > 0 && quantities.every(({ dimension, value }) => dimension === 'time' && value < aDay / 2);
}

const aDay = 86_400;

/** `it weighs 6.5 kg; 10 kg must not be exceeded`: of two the one with its bound. */
function isHighest({ field }: Home, { bound }: NumberMention): boolean {
  return field.startsWith('max_') && bound === 'at_most';
}

/** `may be used 50 times`: no magnification, though it may be spelled as one. */
function isCount({ span }: NumberMention, text: string): boolean {
  return /(?:times|mal|fois)$/.test(text.slice(span.start, span.end)) && !/magnif|vergröß|grossiss/.test(text);
}

const highestPh = 14;
const isLater = 4;

/** `Prewash 20 °C, 2 min`: the name of a phase of a machine counts for each number behind it, up to the next name. */
const underPhase = 8;

/** `Wash at 55 °C`: a number under the name of one phase belongs to no other, nor to a step of the same name without a machine. */
function isOtherPhase({ path }: Group, phase: string | undefined, { stages }: QuoteReading): boolean {
  if (phase === undefined || path === phase) return false;
  if (outsideMachines.has(path)) return stages.some(({ stage }) => stage === 'mechanical');
  return path.startsWith('mechanical.') && path !== 'mechanical.detergent';
}

const outsideMachines: ReadonlySet<string> = new Set(['disinfection', 'rinse', 'drying']);

/** `Steam at 134 °C; the washer dries`: what a later part of the sentence is about. */
function isNamedLater(group: Group, { span }: NumberMention, { quote, stages }: QuoteReading): boolean {
  const parting = quote.indexOf(';', span.end);
  const text = quote.toLowerCase();
  const places = [
    ...stages.filter(({ stage }) => group.stages.includes(stage)).map((one) => one.span.start),
    ...group.words.map((word) => text.indexOf(word)).filter((at) => at >= 0),
  ];
  return parting >= 0 && places.length > 0 && places.every((at) => at > parting);
}

/** Of several times in `dry for 20 min or blow out at 1.5 bar for 30 s` the one nearest to the pressure. */
function isBeside({ beside, unlessAlso, only }: Home, mention: NumberMention, { reading, own }: Sought): boolean {
  if (only === true && own.some((other) => other !== mention && isAlike(other, mention))) return false;
  const has = (one: NumberMention, dimension: Dimension): boolean =>
    one.quantities.some((quantity) => quantity.dimension === dimension);
  if (unlessAlso !== undefined && reading.numbers.some((one) => has(one, unlessAlso))) return false;
  if (beside === undefined) return true;
  const partner = reading.numbers.find((one) => has(one, beside));
  if (partner === undefined) return false;
  const far = (one: NumberMention): number => Math.abs(one.span.start - partner.span.start);
  return !own.some((other) => other !== mention && isAlike(other, mention) && far(other) < far(mention));
}

/** pH and A0 are printed without a unit: their name must stand before the number. What is counted stands beside it (`100 reprocessing cycles`). */
function unitless({ dimension, near, counted }: Home, text: string, { span }: NumberMention): boolean {
  if (dimension === 'count') return counted !== undefined && isCounted(text, span);
  if (dimension !== 'ph' && dimension !== 'a0') return false;

  const before = text.slice(Math.max(0, span.start - 40), span.start);
  return near.some((word) => before.includes(word));
}

/** `cool running water` cools nothing down. */
function withoutCoolWords(quote: string): string {
  return quote.toLowerCase().replace(coolThings, (words) => '·'.repeat(words.length));
}

const coolThings = /\bcool(?=,?\s(?:and\s)?(?:running|tap|flowing|water|clean|dry|place|area|or cold|conditions))/g;

/** `Handle EW 33` is no number of uses: what is counted stands behind the number, or leads on to it. */
function isCounted(text: string, { start, end }: NumberMention['span']): boolean {
  const behind =
    /^\s*(?:[\p{L}-]+\s){0,2}(?:uses?|cycles?|times|procedures|operations|interventions|re-?processing|aufbereitung|anwendung|zykl|mal|fois|utilisation|retraitement)/u;
  return (
    behind.test(text.slice(end)) ||
    /(?:cycles|uses|reprocessings|times|anzahl|aufbereitungen|zyklen|nombre|utilisations)[^.;]{0,40}$/.test(
      text.slice(0, start),
    )
  );
}

function contextOf(group: Group, { quote, stages }: QuoteReading, text: string, above: string): number {
  if (group.unlessAbove?.test(above) === true || group.unlessSaid?.test(quote) === true) return 0;
  if (group.begins !== undefined) return group.begins.test(quote) && isBesides(group, stages) ? surelyBegun : 0;
  if (group.unlessStage?.some((other) => stages.some(({ stage }) => stage === other))) return 0;
  if (!isBesides(group, stages)) return 0;
  if (group.follows === true && !standsBehind(group, stages)) return 0;
  const named = new Set(stages.map(({ stage }) => stage).filter((stage) => group.stages.includes(stage))).size;
  const words = group.words.filter((word) => text.includes(word)).length;
  const heading = group.words.some((word) => above.includes(word)) ? 3 : 0;
  return named * 4 + words * 3 + heading;
}

const surelyBegun = 12;

function isBesides({ besideStage }: Group, stages: QuoteReading['stages']): boolean {
  return besideStage === undefined || stages.some(({ stage }) => stage === besideStage);
}

/** Its own stage is named after that of the way it belongs to: what is rinsed before the bath is no rinse after it. */
function standsBehind({ stages, besideStage }: Group, mentions: QuoteReading['stages']): boolean {
  const way = mentions.find(({ stage }) => stage === besideStage);
  return mentions.some(
    ({ stage, span }) => stages.includes(stage) && way !== undefined && span.start >= way.span.start,
  );
}

/** Less than a word of the group: a `flushing port` of a washer is no step of flushing. */
const governs = 2;

/** `Thermal disinfection in the washer`: the phase of a machine is meant, more surely than disinfection by itself or the wash. */
function besides({ besideStage }: Group): number {
  return besideStage === undefined ? 0 : 6;
}
