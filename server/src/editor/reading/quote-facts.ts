import { span } from '../../base/span.ts';
import type { StageWord } from '../../quantity/prose/meaning.ts';
import { laidInBath, ofPart, sentToService, whenNeeded } from '../../quantity/prose/named/acts.ts';
import { onlyDescribed } from '../../quantity/prose/named/brushes.ts';
import { unoiledPart } from '../../quantity/prose/named/lubricants.ts';
import { lastRinse } from '../../quantity/prose/named/phases.ts';
import { aboutStoring } from '../../quantity/prose/named/storing.ts';
import { untried } from '../../quantity/prose/named/untried.ts';
import { onlyUnder } from '../../quantity/prose/named/uses.ts';
import type { QuoteReading, StageMention } from '../../quantity/prose/prose.ts';
import type { Kind } from '../../schema/kinds.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { marked } from '../writing/marked.ts';
import { waterIn } from './quote-agents.ts';
import { doneAtUse } from './quote-at-use.ts';
import { conditionOf } from './quote-conditions.ts';
import { dryingIn } from './quote-drying.ts';
import { methodsAlone } from './quote-forbidden.ts';
import { lookedAt, lookedFor } from './quote-inspection.ts';
import { oiling } from './quote-lubrication.ts';
import type { Section, Way } from './quote-section.ts';
import { isAtUse, wayOf } from './quote-section.ts';
import { stepsInOrder } from './quote-steps.ts';
import { type UseWord, useChoice, useSaid } from './quote-uses.ts';

/** Stages of a device that a sentence without numbers may be about, with the field that holds what it says. */
const fieldOfStage: Partial<Record<StageWord, string>> = {
  ultrasonic: 'ultrasonic',
  mechanical: 'mechanical',
  lubrication: 'lubrication',
  disinfection: 'disinfection',
  immersion: 'immersion',
  dry: 'drying',
  rinse: 'rinse',
  disassembly: 'disassembly.assembled_for',
  inspection: 'inspection',
  wipe: 'point_of_use.wipe',
  flush: 'manual.steps[]',
  brush: 'manual.steps[]',
  soak: 'manual.steps[]',
};

/** A field, and the words under which alone its prohibition holds. */
export interface Fact extends NewField {
  readonly condition?: string;
}

/** A phase of a machine for which the word lists have no stage of its own. */
const neutralised = /(?<!\p{L})neutralis(?:e|ieren|er)\b|(?<!\p{L})neutralize\b/iu;
const phaseSaid = { mentions: [], use: 'required', forbidden: false, condition: undefined } as const;

/** Fields that say whether something is done. */
const ofUse: ReadonlySet<string> = new Set([
  'ultrasonic',
  'mechanical',
  'lubrication',
  'disinfection',
  'immersion',
  'drying',
  'rinse',
  'point_of_use.wipe',
  'ultrasonic.rinse',
  'mechanical.rinse',
  'mechanical.dry',
  'mechanical.thermal',
  'mechanical.neutralise',
]);

/**
 * A sentence without numbers about one stage: whether it is done is a choice, and first what the sentence says outright; what it names
 * (water, air, a cloth) comes with it. A prohibition of something else (`Lubricate the joint; do not use silicone oil`) does not forbid the
 * stage. Of several stages nothing is made, unless all are forbidden: which one the sentence asks for is not for us to say.
 */
export function factsOf(reading: QuoteReading, kind: Kind, src: string, section: Section): readonly Fact[] {
  if (kind !== 'device' || sentToService.test(reading.quote) || ofPart.test(reading.quote)) return [];
  if (isTitle(reading, section)) return [];
  const stages = saidIn(reading, section);
  const all = [...stages.values()];
  const quote = reading.quote.toLowerCase();
  const last = waterOfLastRinse([...stages.keys()], quote, src);
  if (last !== undefined) return [last];
  const beside = [...forbiddenMethods(reading, src, section), ...doneAtUse(reading, src, section)];
  if (stages.size === 0) return [...beside, ...apart(section, quote, src)];
  if (beside.length > 0) return beside;
  if (all.length > 1 && !all.every(({ forbidden }) => forbidden) && !areInOrder(all, reading)) return [];
  if (onlyBeforeMachine.test(reading.quote) && all.every(({ field }) => field === 'mechanical')) return [];
  return all.flatMap((said) => fieldsOf(said, reading, src));
}

/** What the sentence says of each stage, by the field that holds it. */
function saidIn(reading: QuoteReading, section: Section): ReadonlyMap<string, Said> {
  const stages = new Map<string, Said>();
  for (const mention of reading.stages) {
    const said = saidOf(mention, reading, section);
    if (said === undefined) continue;
    const known = stages.get(said.field);
    stages.set(said.field, {
      ...said,
      mentions: [...(known?.mentions ?? []), ...said.mentions],
      use: known?.forbidden === false ? known.use : said.use,
      forbidden: said.forbidden && (known?.forbidden ?? true),
      condition: said.condition ?? known?.condition,
    });
  }
  if (wayOf(section) === 'manual' && stages.size + reading.negations.length === 0 && laidInBath.test(reading.quote))
    stages.set('manual.steps[]', {
      field: 'manual.steps[]',
      ...phaseSaid,
      mentions: [{ stage: 'soak', span: span(0, 0) }],
    });
  if (wayOf(section) === 'mechanical' && neutralised.test(reading.quote) && reading.negations.length === 0)
    stages.set('mechanical.neutralise', { field: 'mechanical.neutralise', ...phaseSaid });
  return stages;
}

/** A title names steps and asks for none. */
function isTitle({ quote, negations }: QuoteReading, { text }: Section): boolean {
  return (
    text === '' &&
    negations.length === 0 &&
    quote.length < longestTitle &&
    /^\p{Lu}[^.!?;:]*[\p{L}\d)]$/u.test(quote) &&
    /\d|,/.test(quote)
  );
}

const longestTitle = 120;

/** `also before automated cleaning`: the machine is only what comes after it. */
const onlyBeforeMachine =
  /^(?!.*\b(?:automated|machine|mechanical|washer)\b.*\b(?:automated|machine|mechanical|washer)\b).*\b(?:before|prior to|precedes)\s(?:\p{L}+\s)?(?:automated|machine|mechanical|washer|the washer)/iu;

/** `Neutralise and rinse` in a machine, `wipe, then rinse and dry` by hand: what follows each other is all done. */
function areInOrder(all: readonly Said[], { joins, negations }: QuoteReading): boolean {
  const isFollowing = joins.every(({ join }) => join === 'and' || join === 'then');
  const fields = all.map(({ field }) => field);
  const isByHand =
    fields.includes('manual.steps[]') && fields.every((one) => one === 'manual.steps[]' || one === 'drying');
  return isFollowing && negations.length === 0 && (isByHand || fields.every((one) => one.startsWith('mechanical.')));
}

interface Said {
  readonly field: string;
  readonly mentions: readonly StageMention[];
  readonly use: UseWord;
  readonly forbidden: boolean;
  readonly condition: string | undefined;
}

/** Under the heading of one way of cleaning, what every way has belongs to that way. */
const fieldUnder: Readonly<Record<Way, Partial<Record<StageWord, string>>>> = {
  manual: { rinse: 'manual.steps[]', wipe: 'manual.steps[]', immersion: 'manual.steps[]' },
  ultrasonic: { rinse: 'ultrasonic.rinse' },
  mechanical: { rinse: 'mechanical.rinse', dry: 'mechanical.dry', disinfection: 'mechanical.thermal' },
};

const atUseSteps = 'point_of_use.steps[]';

/** Steps by hand under the heading of the point of use are steps there. */
function ofSteps(field: string | undefined, section: Section): string | undefined {
  return (field === 'manual.steps[]' || field === 'rinse') && isAtUse(section) ? atUseSteps : field;
}

function saidOf(mention: StageMention, reading: QuoteReading, section: Section): Said | undefined {
  const { stage } = mention;
  const way = wayOf(section);
  const forbidden = isForbidden(mention, reading);
  if (isNotNeeded(mention, reading)) return undefined;
  if (stage === 'lubrication' && forbidden && unoiledPart.test(reading.quote)) return undefined;
  // One way of disinfecting is forbidden, and no other; nor what it lies in for that.
  if (forbidden && oneWayOfDisinfecting.test(reading.quote)) return undefined;
  // What may not be soaked may not lie in a liquid.
  const under = way === undefined || forbidden ? undefined : fieldUnder[way][stage];
  const field = stage === 'soak' && forbidden ? 'immersion' : (under ?? ofSteps(fieldOfStage[stage], section));
  // Drying after a cycle is no drying after the last rinse, and what is stored dry is not dried then.
  const isOther = /sterili|stérili|autoclav/.test(section.text) || aboutStoring.test(section.text);
  // Under the heading of drying a cloth wipes nothing off.
  const isDried = stage === 'wipe' && section.stages[0] === 'dry';
  const isOfCycle = isDried || (field === 'drying' && isOther);
  // What is asked for under a condition only is asked for by nobody else.
  const isOnlyThen = !forbidden && !whenNeeded.test(reading.quote) && onlyUnder.test(reading.quote);
  if (field === undefined || isOfCycle || isOnlyThen || (!forbidden && isAside(mention, reading.quote)))
    return undefined;
  const use = forbidden ? 'forbidden' : useSaid(mention, reading);
  // What may be done is no step that everybody does.
  if (use === 'allowed' && field.endsWith('steps[]')) return undefined;
  const done = stage === 'immersion' && field.endsWith('steps[]') ? ({ ...mention, stage: 'soak' } as const) : mention;
  return {
    field,
    mentions: [done],
    use,
    forbidden,
    condition: forbidden ? conditionOf(mention, reading) : undefined,
  };
}

/** `Lubrication is not necessary`, `none of the parts needs lubrication`: neither asked for nor forbidden. */
function isNotNeeded({ span }: StageMention, { quote, negations }: QuoteReading): boolean {
  const isIn = ({ target }: QuoteReading['negations'][number]): boolean =>
    target.start <= span.start && span.end <= target.end;
  return negations.some((one) => one.kind === 'not-required' && isIn(one)) || noneNeeds.test(quote);
}

const noneNeeds = /^(?:no|none|neither)\b.{0,40}\b(?:needs?|requires?|necessary|required|needed)(?!\p{L})/iu;

/** `when the lumen is flushed`, `after brushing`: it says when, and asks for nothing; so does what only describes a brush. */
function isAside({ stage, span }: StageMention, quote: string): boolean {
  if (stage === 'brush' && onlyDescribed.test(quote)) return true;
  const before = quote.slice(0, span.start);
  return onlyWhenDone.test(before.slice(Math.max(...[',', ';', '.'].map((mark) => before.lastIndexOf(mark))) + 1));
}

/** Words of a clause that says when. */
const onlyWhenDone =
  /(?:^|\s)(?:when|while|once|as soon as|after|before|prior to|following|nach|vor|beim|après|avant|lors)(?:\s|$)/i;

const oneWayOfDisinfecting =
  /(?<!\p{L})(?:chemical|cold|manual|liquid|chemische|manuelle)\s(?:high[\s-]level\s)?(?:disinfection|disinfectants?|desinfektion)|désinfection (?:chimique|manuelle)|chemothermal|chemothermisch/iu;

function isForbidden({ span }: StageMention, { negations }: QuoteReading): boolean {
  return negations.some(
    ({ kind, target }) => kind === 'prohibition' && target.start <= span.start && span.end <= target.end,
  );
}

/** What a narrowed prohibition is of, in the word of the list of prohibitions. */
const forbiddenWhat: Readonly<Record<string, string>> = {
  ultrasonic: 'ultrasonic',
  mechanical: 'mechanical',
  immersion: 'immersion',
  lubrication: 'lubricant',
};

function fieldsOf(
  { field, mentions, use, forbidden, condition }: Said,
  reading: QuoteReading,
  src: string,
): readonly Fact[] {
  const quote = reading.quote.toLowerCase();
  const what = forbiddenWhat[field];
  // What is forbidden only then is not forbidden.
  if (condition !== undefined)
    return what === undefined
      ? []
      : [{ path: 'not[]', condition, value: `{what: ${what}, when: ${asValue(condition)}, src: ${src}}` }];
  if (ofUse.has(field)) {
    const details = forbidden ? [] : [...detailsOf(field, quote), ...onlyWhen(quote)];
    return [{ path: field, value: `{${[`use: ${useChoice(use)}`, ...details, `src: ${src}`].join(', ')}}` }];
  }
  if (forbidden) return [];
  switch (field) {
    case 'manual.steps[]':
    case atUseSteps:
      return stepsInOrder(mentions, reading, field, src);
    case 'inspection':
      if (beforeInspection.test(quote)) return [];
      return lookedAt(lookedFor(quote), src);
    default:
      return takenApart(quote).map((stages) => ({ path: field, value: `{${stages}, src: ${src}}` }));
  }
}

/** What is done before it says nothing of the inspection itself. */
const beforeInspection =
  /\b(?:before|prior to|avant)\s(?:the\s|l.)?(?:visual\s)?inspect|\bvor der (?:sicht)?(?:prüfung|kontrolle|inspektion)/i;

/** `if necessary`: it is asked for only then. */
function onlyWhen(quote: string): readonly string[] {
  const [words] = whenNeeded.exec(quote) ?? [];
  return words === undefined ? [] : [`when: ${asValue(words)}`];
}

function detailsOf(field: string, quote: string): readonly string[] {
  if (field === 'drying') return dryingIn(quote);
  if (field === 'lubrication') return oiling(quote).map(([name, value]) => `${name}: ${value}`);
  return field.endsWith('rinse') ? waterIn(quote).map((water) => `water: {${water}}`) : [];
}

/** The water of the last rinse has a place of its own, by hand as in a washer. */
function waterOfLastRinse(fields: readonly string[], quote: string, src: string): NewField | undefined {
  const [water] = waterIn(quote);
  const inWasher = fields.includes('mechanical') || fields.includes('mechanical.rinse');
  const isRinse = fields.includes('rinse') || fields.includes('mechanical.rinse');
  if (water === undefined || !lastRinse.test(quote) || !isRinse || fields.length > (inWasher ? 2 : 1)) return undefined;
  return { path: inWasher ? 'mechanical.final_rinse' : 'rinse.final', value: `{${water}, src: ${src}}` };
}

/** Ways of sterilizing that a sentence forbids outright. */
const methodNames: Partial<Record<StageWord, string>> = {
  gravity: 'steam-gravity',
  prevac: 'steam-prevac',
  iuss: 'iuss',
  vh2o2: 'vh2o2',
  eo: 'eo',
  'dry-heat': 'dry-heat',
  formaldehyde: 'ltsf',
};

/** `Gravity displacement: not permitted.`: a name and the prohibition, with nothing that narrows it. */
const onlyForbidden =
  /^[^:.;,()|]{1,60}[:|]\s*(?:(?:not|nicht|non)\s\p{L}+|do not use|nicht verwenden|ne pas utiliser)\.?$/iu;

function forbiddenMethods(reading: QuoteReading, src: string, section: Section): readonly Fact[] {
  // What was not tried out is not therefore forbidden.
  const isUntried = untried.test(reading.quote);
  // Narrowed, or a preference only: `of the assembled device`, `not recommended`.
  if (/\b(?:assembled|unless|except)\b|not recommended|nicht empfohlen|déconseill/i.test(reading.quote)) return [];
  const isNamed =
    /sterili|stérili|autoclav/i.test(`${section.text} ${reading.quote}`) ||
    reading.stages.some(({ stage }) => methodsAlone.has(stage));
  const isSterilizing = isNamed && !isUntried;
  const isAll = onlyForbidden.test(reading.quote) && reading.negations.some(({ kind }) => kind === 'prohibition');
  const forbidden = reading.stages.filter((mention) => isSterilizing && (isAll || isForbidden(mention, reading)));
  const whats = forbidden.flatMap((mention) => {
    const what = methodNames[mention.stage];
    return what === undefined || conditionOf(mention, reading) !== undefined ? [] : [what];
  });
  // A method may be named by two words: `hydrogen peroxide plasma`.
  return [...new Set(whats)].map((what) => ({ path: 'not[]', value: `{what: ${what}, src: ${src}}` }));
}

/** What is taken off before cleaning and is no part. */
const noPart =
  /\b(?:soil|blood|debris|residue|tissue|matter|cement|contamina|dirt|fluid|label|packag|wrap|schmutz|blut|rückst|gewebe|verschmutz|souill|sang|résidu)/;

/** `Remove the obturator from the cannula before any cleaning step`. */
const takenFrom =
  /^(?:always )?(?:disassemble|dismantle|unscrew|detach|take apart)\b.{2,80}\sbefore\s(?:\p{L}+\s)?(?:clean|reprocess)|^(?:always )?(?:pull|remove|unscrew|detach|withdraw|take)\s.{2,40}\s(?:from|out of|off)\s.{2,40}\sbefore\s(?:\p{L}+\s)?(?:clean|reprocess)/u;

/** `Pull off the cap before cleaning`, under a heading that speaks of taking apart. */
function apart({ stages }: Section, quote: string, src: string): readonly Fact[] {
  const isTakenFrom = takenFrom.test(quote) && !noPart.test(quote);
  const isMeant =
    isTakenFrom ||
    (stages.includes('disassembly') &&
      /\b(?:apart|pull|remove|unscrew|detach|abnehmen|abziehen|abschrauben|retire)/.test(quote));
  return isMeant
    ? takenApart(quote).map((inside) => ({ path: 'disassembly.assembled_for', value: `{${inside}, src: ${src}}` }))
    : [];
}

/** Before which stages it must be apart, where the sentence says so: `Disassemble before cleaning`. */
function takenApart(quote: string): readonly string[] {
  const named = (
    [
      ['cleaning', /clean|reinig|nettoy/],
      ['packaging', /\bpack|verpack|emball/],
      ['sterilization', /sterili|stérili/],
    ] as const
  ).filter(([, word]) => word.test(quote));
  return named.length === 0
    ? []
    : [named.map(([stage]) => `${stage}: ${marked.choice(['false', 'true'], stage)}`).join(', ')];
}
