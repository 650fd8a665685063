import { unitNamed } from '../../judge/unit-named.ts';
import type { SterilizerCycle } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Quantity } from '../../model/node.ts';
import { sayingsOf } from '../../model/saying.ts';
import { standardAtmosphereKPa } from '../../physics/atmosphere.ts';
import { A0_SCALE, amountOf, F0_SCALE } from '../../physics/lethality.ts';
import type { NotCounted } from '../../physics/lethality-curve.ts';
import { formatIn } from '../../quantity/format.ts';
import type { CycleDemand, CycleField } from '../../rules/support/set-demands.ts';
import { type SiteLimit, siteLimit } from '../../rules/support/site-limits.ts';
import { amount, demanded, type Printing } from '../amounts.ts';
import { cautionParts } from '../answer/cautions.ts';
import { citationLine } from '../card/foot.ts';
import { nameOf } from '../names.ts';
import type { Paper } from '../paper.ts';
import type { Part } from '../paper-part.ts';
import type { Line, Piece } from '../piece.ts';
import { judged, originOf, plain, told } from '../piece.ts';
import type { RecordAnalysis, RecordQuestion } from './analyse.ts';
import { analyse, usualLongestStep } from './analyse.ts';
import { recordPlot } from './plot.ts';
import type { CycleLog } from './read-log.ts';

/** The cycle of the log, and what pages ask of it. */
export interface RecordSubject {
  readonly machine: EntityOf['sterilizer'] | EntityOf['washer'];
  readonly name: Line;
  readonly kind: 'sterilizer' | 'washer';
  readonly temp: Quantity;
  readonly exposure?: Quantity;
  readonly dry?: Quantity;
  readonly band?: SterilizerCycle['band'];
  /** By field; empty where no set was named. */
  readonly demands: Readonly<Partial<Record<CycleField, readonly CycleDemand[]>>>;
  readonly set?: EntityOf['set'];
}

export interface RecordSettings {
  readonly file: string;
  readonly uncertaintyK: number;
  /** Undefined: from the readings themselves. */
  readonly longestStepS?: number;
}

/** What a logged curve shows, beside what the cycle and the pages ask. It releases nothing. */
export function cycleRecordSheet(
  log: CycleLog,
  subject: RecordSubject,
  settings: RecordSettings,
  printing: Printing,
): Paper {
  const question = questionOf(log, subject, settings, printing);
  const analysis = analyse(question);
  return {
    title: `Cycle record ${settings.file}`,
    language: 'en',
    facts: { 'page-kind': 'cycle-record' },
    parts: [
      { is: 'heading', level: 1, line: ['Cycle record: ', ...subject.name] },
      {
        is: 'text',
        line: [
          'Read from ',
          told('asked', settings.file),
          ': ',
          told('log', `${log.rows.length} readings`),
          ', ',
          told('log', log.probes === 1 ? 'one probe' : `${log.probes} probes, of which the coldest counts`),
          '. What is said here is what the log shows. It releases no load.',
        ],
      },
      {
        is: 'figure',
        drawing: recordPlot(question, analysis),
        caption: ['Grey: the band of the cycle. Bracket: the longest time in it without a break.'],
      },
      { is: 'heading', level: 2, line: ['Seen and asked for'] },
      {
        is: 'table',
        head: ['What', 'Seen in the log', 'Asked for', 'By'],
        rows: tableRows(question, analysis, subject, printing),
      },
      ...problemParts(log, analysis, question),
      ...(subject.kind === 'sterilizer' ? saturationParts(question, analysis, printing) : []),
      ...cautionParts(printing.view, ['Lethality figures are aids to find faults. They never justify another cycle.']),
    ],
  };
}

function questionOf(
  log: CycleLog,
  { temp, band, machine, kind }: RecordSubject,
  settings: RecordSettings,
  { view }: Printing,
): RecordQuestion {
  const lowC = temp.value - (band?.minus?.value ?? 0);
  const highC = band?.plus === undefined ? Number.POSITIVE_INFINITY : temp.value + band.plus.value;
  const site = view.site();
  const own = 'atmosphere' in machine ? machine.atmosphere?.value : undefined;
  const altitude = site?.altitude === undefined ? undefined : standardAtmosphereKPa(site.altitude.value);
  return {
    log,
    scale: kind === 'washer' ? A0_SCALE : F0_SCALE,
    band: { lowC, highC },
    atmosphereKPa: own ?? site?.atmosphere?.value ?? (altitude?.ok === true ? altitude.value : undefined),
    uncertaintyK: settings.uncertaintyK,
    longestStepS: settings.longestStepS ?? usualLongestStep(log),
  };
}

function tableRows(
  question: RecordQuestion,
  analysis: RecordAnalysis,
  subject: RecordSubject,
  printing: Printing,
): readonly (readonly Line[])[] {
  const { exposure, dryingS } = analysis;
  const held = exposure === undefined ? 0 : exposure.toS - exposure.fromS;
  return [
    [
      ['exposure in the band, without a break'],
      [seen(inMinutes(held))],
      ...ownAsk(subject.exposure, subject, printing),
    ],
    ...demandRows('exposure', subject, printing),
    [['all times in the band'], [seen(inMinutes(analysis.inBandS))], [], []],
    [
      ['temperature, lowest in the exposure'],
      [seen(degrees(analysis.lowestInExposureC))],
      ...ownAsk(subject.temp, subject, printing),
    ],
    ...demandRows('temp', subject, printing),
    [
      ['temperature, highest in the whole log'],
      [seen(degrees(analysis.highestC))],
      highestAllowed(question, subject),
      [],
    ],
    ...lethalityRows(analysis, question),
    ...(subject.kind === 'sterilizer'
      ? [
          [
            ['drying, pressure under that of the air'],
            [seen(dryingS === undefined ? 'not to be told from this log' : inMinutes(dryingS))],
            ...ownAsk(subject.dry, subject, printing),
          ] as readonly Line[],
          ...demandRows('dry', subject, printing),
        ]
      : []),
  ];
}

/** The upper end of the cycle's band: its temperature and what may come on top. */
function highestAllowed({ band: { highC } }: RecordQuestion, { temp, band }: RecordSubject): Line {
  return Number.isFinite(highC)
    ? ['at most ', judged(degrees(highC), [temp.at, band?.plus?.at])]
    : ['no upper end is written'];
}

function seen(words: string): Piece {
  return told('log', words);
}

function ownAsk(quantity: Quantity | undefined, subject: RecordSubject, printing: Printing): readonly Line[] {
  return quantity === undefined ? [[], []] : [[amount(quantity, printing)], ['cycle ', ...subject.name]];
}

function demandRows(field: CycleField, { demands }: RecordSubject, printing: Printing): readonly (readonly Line[])[] {
  // A container may say the same for itself and for the cycle: it is printed once.
  const rows = new Map<string, readonly Line[]>();
  for (const { by, who, requirement, src } of demands[field] ?? []) {
    const cited = citationLine(sayingsOf(by, src)[0], printing);
    const name = nameOf(by, who.slice(who.indexOf('/') + 1));
    const row = [demanded(requirement, printing), [name, ...(cited.length === 0 ? [] : [' (', ...cited, ')'])]];
    rows.set(row.map(plain).join(' '), [[], [], ...row]);
  }
  return [...rows.values()];
}

function lethalityRows({ lethality }: RecordAnalysis, { uncertaintyK }: RecordQuestion): readonly (readonly Line[])[] {
  if ('why' in lethality) return [[['lethality'], [lethality.why], [], []]];
  const { scale } = lethality.lethality;
  const taken: Line = uncertaintyK > 0 ? [', ', told('asked', `${uncertaintyK} K`), ' taken off each reading'] : [];
  const show = (value: number): string => (scale.unit === 'min' ? `${value.toFixed(1)} min` : value.toFixed(0));
  return [
    [[told('formula', scale.name), ' of the curve', ...taken], [seen(show(amountOf(lethality.lethality)))], [], []],
    [
      [told('formula', scale.name), ', lower bound (each step at its colder end)'],
      [seen(show(amountOf(lethality.lowerBound)))],
      ['the careful figure'],
      [],
    ],
  ];
}

const reasons: Readonly<Record<NotCounted['reason'], string>> = {
  gap: 'a gap',
  'out-of-order': 'time out of order',
  unreadable: 'a reading that is no number',
};

const listed = 12;

function problemParts(
  { rows, unread }: CycleLog,
  { notCounted }: RecordAnalysis,
  { longestStepS }: RecordQuestion,
): readonly Part[] {
  const items = notCounted.map(
    ({ fromIndex, reason }): Line => [
      reasons[reason],
      ' after line ',
      told('log', String(rows[fromIndex]?.line ?? '?')),
    ],
  );
  items.push(...unread.map((line): Line => ['line ', told('log', String(line)), ' could not be read']));
  const longest = `${longestStepS.toFixed(0)} s`;
  if (items.length === 0)
    return [{ is: 'text', line: ['No gap and no disorder in the log (a gap is more than ', seen(longest), ').'] }];
  const more = items.length - listed;
  return [
    { is: 'heading', level: 2, line: ['Counted for nothing'] },
    { is: 'list', items: more > 0 ? [...items.slice(0, listed), ['and ', told('log', String(more)), ' more']] : items },
    {
      is: 'small',
      line: [
        'A gap is more than ',
        seen(longest),
        ' between two readings. Nothing is guessed for what was not logged.',
      ],
    },
  ];
}

/** Colder than saturated steam at that pressure: air, or a false reading. Hotter: superheat. */
function saturationParts({ log }: RecordQuestion, { saturation }: RecordAnalysis, printing: Printing): readonly Part[] {
  const heading: Part = { is: 'heading', level: 2, line: ['Temperature against saturated steam'] };
  if (saturation === undefined) {
    const why =
      log.pressure === undefined
        ? 'The log has no pressure.'
        : log.pressure === 'unstated'
          ? 'The log does not say whether its pressure is absolute or gauge: write "kPa abs" or "kPa gauge" into its first line.'
          : 'There is no exposure to look at, or the air pressure here is not known.';
    return [heading, { is: 'text', line: [why] }];
  }
  const limit = siteLimit(printing.view.site(), 'pressure_temperature');
  const { lowestK, highestK, meanK } = saturation;
  const adopted: Line =
    limit === undefined
      ? ['No limit for it is adopted here.']
      : ['Adopted here: at most ', amount(limit.quantity, printing), ...sourceOf(limit)];
  const words: Line[] = [
    [
      'From ',
      seen(`${signed(lowestK)} K`),
      ' to ',
      seen(`${signed(highestK)} K`),
      ', ',
      seen(`${signed(meanK)} K`),
      ' on average.',
    ],
    adopted,
  ];
  if (limit !== undefined && lowestK < -limit.value)
    words.push(['Colder than saturated steam at this pressure: air in the chamber, or a sensor that reads wrong.']);
  if (limit !== undefined && highestK > limit.value)
    words.push(['Hotter than saturated steam at this pressure: superheat, or a sensor that reads wrong.']);
  return [heading, { is: 'list', items: words }];
}

function sourceOf({ source, at }: SiteLimit): Line {
  return source === '' ? ['.'] : [' (', { text: source, from: [`${originOf(at)}.src`] }, ').'];
}

function signed(value: number): string {
  return `${value >= 0 ? '+' : '−'}${Math.abs(value).toFixed(1)}`;
}

function inMinutes(seconds: number): string {
  return formatIn(seconds, unitNamed('time', 'min'));
}

function degrees(celsius: number): string {
  return Number.isFinite(celsius) ? formatIn(celsius, unitNamed('temperature', '°C')) : 'none';
}
