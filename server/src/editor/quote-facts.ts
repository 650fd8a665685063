import type { StageWord } from '../quantity/prose/meaning.ts';
import type { QuoteReading, StageMention } from '../quantity/prose/prose.ts';
import type { Kind } from '../schema/kinds.ts';
import { quoteScalar } from '../syntax/quote.ts';
import type { NewField } from './insert-fields.ts';
import { marked } from './insert-fields.ts';
import { conditionOf } from './quote-conditions.ts';

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
]);

/**
 * A sentence without numbers about one stage: whether it is done is a choice, and first what the sentence says outright; what it names
 * (water, air, a cloth) comes with it. A prohibition of something else (`Lubricate the joint; do not use silicone oil`) does not forbid the
 * stage. Of several stages nothing is made, unless all are forbidden: which one the sentence asks for is not for us to say.
 */
export function factsOf(reading: QuoteReading, kind: Kind, src: string): readonly Fact[] {
  if (kind !== 'device') return [];
  const stages = new Map<string, Said>();
  for (const mention of reading.stages) {
    const said = saidOf(mention, reading);
    if (said === undefined) continue;
    const known = stages.get(said.field);
    stages.set(said.field, {
      ...said,
      forbidden: said.forbidden && (known?.forbidden ?? true),
      condition: said.condition ?? known?.condition,
    });
  }
  const all = [...stages.values()];
  const quote = reading.quote.toLowerCase();
  const last = lastRinse([...stages.keys()], quote, src);
  if (last !== undefined) return [last];
  if (all.length > 1 && !all.every(({ forbidden }) => forbidden)) return [];
  return all.flatMap((said) => fieldsOf(said, quote, src));
}

interface Said {
  readonly field: string;
  readonly stage: StageWord;
  readonly forbidden: boolean;
  readonly condition: string | undefined;
}

function saidOf(mention: StageMention, reading: QuoteReading): Said | undefined {
  const { stage, span } = mention;
  const forbidden = reading.negations.some(
    ({ kind, target }) => kind === 'prohibition' && target.start <= span.start && span.end <= target.end,
  );
  // What may not be soaked may not lie in a liquid.
  const field = stage === 'soak' && forbidden ? 'immersion' : fieldOfStage[stage];
  return field === undefined
    ? undefined
    : { field, stage, forbidden, condition: forbidden ? conditionOf(mention, reading) : undefined };
}

function fieldsOf({ field, stage, forbidden, condition }: Said, quote: string, src: string): readonly Fact[] {
  if (ofUse.has(field)) {
    const note = condition === undefined ? [] : [`note: ${quoteScalar(condition)}`];
    const details = forbidden ? note : detailsOf(field, quote);
    return [
      {
        path: field,
        ...(condition !== undefined && { condition }),
        value: `{${[`use: ${useChoice(forbidden ? 'forbidden' : 'required')}`, ...details, `src: ${src}`].join(', ')}}`,
      },
    ];
  }
  if (forbidden) return [];
  switch (field) {
    case 'manual.steps[]':
      return [{ path: field, value: `{do: ${stage}, src: ${src}}` }];
    case 'inspection':
      return [{ path: field, value: `{visual: ${marked.choice(['true', 'false'])}, src: ${src}}` }];
    default:
      return takenApart(quote).map((stages) => ({ path: field, value: `{${stages}, src: ${src}}` }));
  }
}

const uses = ['allowed', 'required', 'recommended', 'forbidden'];

function useChoice(first: 'forbidden' | 'required'): string {
  return marked.choice([first, ...uses.filter((use) => use !== first)]);
}

function detailsOf(field: string, quote: string): readonly string[] {
  if (field === 'drying') return dryingIn(quote);
  return field === 'rinse' ? waterIn(quote).map((water) => `water: {${water}}`) : [];
}

/** Grades of water by the words of a page. Where it names another water, the grade is left for the reader to choose. */
const grades: readonly (readonly [string, readonly string[]])[] = [
  ['critical', ['critical water']],
  ['sterile', ['sterile water', 'sterilised water', 'sterilized water', 'sterilem wasser', 'eau stérile']],
  ['purified', ['purified water', 'gereinigtem wasser', 'eau purifiée']],
  ['softened', ['softened water', 'enthärtetem wasser', 'eau adoucie']],
  ['utility', ['utility water', 'tap water', 'leitungswasser', 'eau du robinet']],
];

/** The water of the last rinse has a place of its own, by hand as in a washer. */
function lastRinse(fields: readonly string[], quote: string, src: string): NewField | undefined {
  const [water] = waterIn(quote);
  const isLast = /final rins|last rins|schlussspül|letzte spül|rinçage final|dernier rinçage/.test(quote);
  const inWasher = fields.includes('mechanical');
  if (water === undefined || !isLast || !fields.includes('rinse') || fields.length > (inWasher ? 2 : 1))
    return undefined;
  return { path: inWasher ? 'mechanical.final_rinse' : 'rinse.final', value: `{${water}, src: ${src}}` };
}

/** `grade: critical`, as the page names the water. */
function waterIn(quote: string): readonly string[] {
  const named = grades.find(([, words]) => words.some((word) => quote.includes(word)))?.[0];
  const all = grades.map(([grade]) => grade);
  if (named !== undefined) return [`grade: ${marked.choice([named, ...all.filter((one) => one !== named)])}`];
  const isOther =
    /(?:deioni|demineral|de-ioni|distilled|reverse.osmosis|destilliert|entmineral|vollentsalzt|déminéral|distillée)/;
  return isOther.test(quote) ? [`grade: ${marked.hole}`] : [];
}

const methods: readonly (readonly [string, readonly string[]])[] = [
  ['air', [' air', 'druckluft', ' luft']],
  ['cloth', ['cloth', 'tuch', 'chiffon']],
  ['cabinet', ['cabinet', 'schrank', 'armoire']],
];

function dryingIn(quote: string): readonly string[] {
  const named = methods.flatMap(([method, words]) => (words.some((word) => quote.includes(word)) ? [method] : []));
  const grade = ['medical', 'filtered'].filter((word) => quote.includes(`${word} air`) || quote.includes(`${word}, `));
  return [
    ...(named.length === 0 ? [] : [`method: [${named.join(', ')}]`]),
    ...(grade.length === 1 && named.includes('air') ? [`air: {grade: ${grade.join()}}`] : []),
  ];
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
  return named.length === 0 ? [] : [named.map(([stage]) => `${stage}: ${marked.choice(['false', 'true'])}`).join(', ')];
}
