import { unitNamed } from '../../judge/unit-named.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { LoadCondensate } from '../../physics/condensate.ts';
import { formatIn } from '../../quantity/format.ts';
import { routeOfSet } from '../../route/route.ts';
import { allDevicesOf, membersOf } from '../../rules/support/applies.ts';
import { packingRoom, steamCycleOf, waterIn } from '../../rules/support/set-condensate.ts';
import { demandsOn } from '../../rules/support/set-demands.ts';
import { siteLimit, siteOf } from '../../rules/support/site-limits.ts';
import { amount, demanded, type Printing } from '../amounts.ts';
import { nameOf, nameOfWho, screenName } from '../names.ts';
import type { Paper } from '../paper.ts';
import type { Part } from '../paper-part.ts';
import type { Line, Value } from '../piece.ts';
import { originOf, plain, said, told } from '../piece.ts';
import { cautionParts } from './cautions.ts';
import type { TellingFinding } from './device-answer.ts';
import type { WetCause } from './wet-causes.ts';
import { wetCauses } from './wet-causes.ts';

type InstrumentSet = EntityOf['set'];

/** A recorded change before the wet load, as the history of the files tells it; none where there is no history. */
export interface ChangeBefore {
  readonly day: string;
  readonly commit: string;
  readonly subject: string;
  readonly paths: readonly string[];
}

export interface WetLoadQuestion {
  readonly set: InstrumentSet;
  readonly findings: readonly TellingFinding[];
  readonly changes: readonly ChangeBefore[];
  /** Why there is no history, where that is so. */
  readonly withoutHistory?: string;
}

interface Ranked {
  readonly cause: WetCause;
  readonly score: number;
  readonly evidence: readonly Line[];
}

/** An investigation sheet: likely causes in order, the figures behind them, what changed before. No verdict. */
export function wetLoadSheet(question: WetLoadQuestion, printing: Printing): Paper {
  const { set } = question;
  const id = set.id?.text ?? '';
  const ranked = rankedCauses(question, printing);
  const likely = ranked.filter(({ score }) => score > 0);
  const rest = ranked.filter(({ score }) => score === 0);
  return {
    title: `Wet load: ${set.name?.text ?? id}`,
    language: 'en',
    facts: { 'page-kind': 'wet-load', 'page-about': id },
    parts: [
      { is: 'heading', level: 1, line: ['Wet load: ', nameOf(set, id)] },
      {
        is: 'text',
        line: [
          'The load is not used: new packaging and the full process again. This sheet looks for the cause; it judges nothing.',
        ],
      },
      { is: 'heading', level: 2, line: ['Likely causes, first the one the files speak for most'] },
      ...(likely.length === 0
        ? [{ is: 'text', line: ['Nothing in the files speaks for any of them.'] } as const]
        : likely.flatMap(causeParts)),
      { is: 'heading', level: 2, line: ['Nothing in the files, so ask'] },
      { is: 'list', items: rest.map(({ cause }): Line => [`${cause.title}? ${cause.look}`]) },
      { is: 'heading', level: 2, line: ['Figures'] },
      { is: 'table', head: ['What', 'Here'], rows: figureRows(set, printing) },
      {
        is: 'small',
        line: ['The water is an estimate from masses and steam tables. It explains; it shows no load dry or wet.'],
      },
      ...historyParts(question),
      ...cautionParts(printing.view),
    ],
  };
}

function causeParts({ cause, evidence }: Ranked): readonly Part[] {
  return [
    { is: 'heading', level: 3, line: [cause.title] },
    { is: 'list', items: evidence },
    { is: 'text', line: [`Next: ${cause.look}`] },
  ];
}

const severityWeight: Readonly<Record<string, number>> = { error: 3, warning: 2, advice: 1 };

function rankedCauses({ set, findings }: WetLoadQuestion, printing: Printing): readonly Ranked[] {
  const around = namesAround(set, printing);
  const ranked = wetCauses.map((cause): Ranked => {
    const found = findings.filter(({ rule, entity }) => cause.rules.has(rule) && around.has(entity));
    const near = nearness(cause, set, printing);
    let score = 0;
    const heaviest = new Map<string, number>();
    for (const { rule, severity } of found)
      heaviest.set(rule, Math.max(heaviest.get(rule) ?? 0, severityWeight[severity] ?? 0));
    for (const weight of heaviest.values()) score += cause.weight * weight;
    const lines = new Map(
      found.map(({ message, entity }) => [`${message} ${entity}`, foundLine(message, entity, printing)]),
    );
    const evidence = [...lines.values(), ...(near?.evidence ?? [])];
    return { cause, score: score + (near?.score ?? 0), evidence };
  });
  return ranked.toSorted((a, b) => b.score - a.score || b.cause.weight - a.cause.weight);
}

function foundLine(message: string, entity: string, { view }: Printing): Line {
  return [told('check', message), ' (', nameOfWho(entity, view), ')'];
}

/** The files whose findings concern this load. */
function namesAround(set: InstrumentSet, { view }: Printing): ReadonlySet<string> {
  const names = new Set([`set/${set.id?.text ?? ''}`, `packaging/${set.packaging?.text ?? ''}`]);
  const running = set.cycle === undefined ? undefined : view.sterilizerCycle(set.cycle.text);
  if (running?.machine.id !== undefined) names.add(`sterilizer/${running.machine.id.text}`);
  const members = membersOf(set, view);
  for (const device of members) names.add(`device/${device.id?.text ?? ''}`);
  for (const procedure of view.all('procedure'))
    if (allDevicesOf(procedure, view).some((device) => members.includes(device)))
      names.add(`procedure/${procedure.id?.text ?? ''}`);
  return names;
}

/** How near a figure lies to its limit counts a little, so that a set without findings has an order too. */
function nearness(
  cause: WetCause,
  set: InstrumentSet,
  printing: Printing,
): { score: number; evidence: readonly Line[] } | undefined {
  const site = siteOf(set, printing.view);
  switch (cause.id) {
    case 'water': {
      const [water, limit] = [waterOf(set, printing), siteLimit(site, 'condensate_share')];
      if (water === undefined || limit === undefined) return undefined;
      return close(water.waterG / 1000 / limit.value, [
        'about ',
        waterValue(water, set),
        ' of water; a closer look is advised from ',
        amount(limit.quantity, printing),
      ]);
    }
    case 'heavy': {
      const limit = siteLimit(site, 'set_mass');
      if (set.mass === undefined || set.mass.problem !== undefined || limit === undefined) return undefined;
      return close(set.mass.value / limit.value, [
        amount(set.mass, printing),
        '; the limit is ',
        amount(limit.quantity, printing),
      ]);
    }
    case 'changed':
      return changedAfterTest(set);
    default:
      return undefined;
  }
}

/** From half of the limit on. */
function close(share: number, line: Line): { score: number; evidence: readonly Line[] } | undefined {
  return share < 0.5 ? undefined : { score: Math.min(share, 2), evidence: [line] };
}

function changedAfterTest({ product_test: test, changed, packaging_changed: packaging }: InstrumentSet) {
  const [tested] = [test?.on];
  if (tested === undefined) return undefined;
  const later = [changed, packaging]
    .filter((day) => day !== undefined && day.text > tested.text)
    .filter((day) => day !== undefined);
  const [first] = later;
  return first === undefined
    ? undefined
    : { score: 2, evidence: [['changed ', said(first), ', tested ', said(tested)] as Line] };
}

export function waterOf(set: InstrumentSet, { view }: Printing): LoadCondensate | undefined {
  const site = siteOf(set, view);
  const running = steamCycleOf(set, view);
  const start = packingRoom(site);
  return running === undefined || start === undefined ? undefined : waterIn(set, running, start.coldestC, site);
}

function waterValue({ waterG }: LoadCondensate, set: InstrumentSet): Value {
  return { text: inKg(waterG), from: set.masses === undefined ? [] : [originOf(set.masses.at)], how: 'computed' };
}

function inKg(grams: number): string {
  return `${(grams / 1000).toFixed(2)} kg`;
}

function figureRows(set: InstrumentSet, printing: Printing): readonly (readonly Line[])[] {
  const { mass, levels, mass_measured: day, product_test: test, packaging_changed: packaging, changed } = set;
  const rows: Line[][] = [];
  if (mass !== undefined)
    rows.push([['mass'], [amount(mass, printing), ...(day === undefined ? [] : [', weighed ', said(day)])]]);
  if (levels !== undefined) rows.push([['levels'], [amount(levels, printing)]]);
  if (mass !== undefined && mass.problem === undefined && levels !== undefined && levels.value > 0)
    rows.push([
      ['mass on each level, if shared equally'],
      [
        {
          text: formatIn(Math.round((100 * mass.value) / levels.value) / 100, unitNamed('mass', 'kg')),
          from: [originOf(mass.at), originOf(levels.at)],
          how: 'computed',
        },
      ],
    ]);
  for (const [material, { value }] of set.masses?.rows ?? []) rows.push([[material], [amount(value, printing)]]);
  rows.push(...waterRows(set, printing), ...dryRows(set, printing), ...steamRows(set, printing));
  if (test?.on !== undefined) rows.push([['last test with this set'], testLine(test)]);
  if (changed !== undefined) rows.push([['contents changed'], [said(changed)]]);
  if (packaging !== undefined) rows.push([['packaging changed'], [said(packaging)]]);
  return rows;
}

function testLine({ on, packaging, cycle }: NonNullable<InstrumentSet['product_test']>): Line {
  return [
    ...(on === undefined ? [] : [said(on)]),
    ...(packaging === undefined ? [] : [', in ', said(packaging)]),
    ...(cycle === undefined ? [] : [', on ', said(cycle)]),
  ];
}

function waterRows(set: InstrumentSet, printing: Printing): readonly Line[][] {
  const water = waterOf(set, printing);
  if (water === undefined) return [];
  const from = set.masses === undefined ? [] : [originOf(set.masses.at)];
  const value = (text: string): Value => ({ text, from, how: 'computed' });
  const share = (group: string): number =>
    Math.round(
      100 * water.parts.filter(({ material }) => material.group === group).reduce((sum, part) => sum + part.share, 0),
    );
  return [
    [
      ['water that steam leaves, estimated'],
      [value(inKg(water.waterG)), ' (', value(inKg(water.lowWaterG)), ' to ', value(inKg(water.highWaterG)), ')'],
    ],
    [
      ['share of the heat: aluminium, plastic'],
      [value(`${share('aluminium')} %`), ', ', value(`${share('polymer')} %`)],
    ],
  ];
}

/** What each member and the packaging ask of drying, and what the cycle gives. */
function dryRows(set: InstrumentSet, printing: Printing): readonly Line[][] {
  const { view } = printing;
  const route = view.ask(routeOfSet, set.id?.text ?? '');
  const fit = route?.asPacked ?? route?.chosen;
  const rows: Line[][] = [];
  if (fit === undefined) return rows;
  const seen = new Set<string>();
  for (const { by, who, requirement } of demandsOn('dry', fit, view)) {
    const words = `${who} ${plain(demanded(requirement, printing))}`;
    if (seen.has(words)) continue;
    seen.add(words);
    rows.push([['drying asked for by ', nameOf(by, who.slice(who.indexOf('/') + 1))], demanded(requirement, printing)]);
  }
  const running = view.sterilizerCycle(fit.cycle);
  if (running?.cycle.dry !== undefined)
    rows.push([['drying of cycle ', screenName(running.cycle, fit.cycle)], [amount(running.cycle.dry, printing)]]);
  return rows;
}

function steamRows(set: InstrumentSet, { view, ...rest }: Printing): readonly Line[][] {
  const steam = set.cycle === undefined ? undefined : view.sterilizerCycle(set.cycle.text)?.machine.steam;
  if (steam === undefined) return [[['steam readings'], ['none on file']]];
  const printing = { view, ...rest };
  const readings = (
    [
      ['dryness', steam.dryness],
      ['gases that do not condense', steam.ncg],
      ['superheat', steam.superheat],
    ] as const
  ).flatMap(([what, reading]): Line[][] =>
    reading === undefined ? [] : [[[`steam: ${what}`], [amount(reading, printing)]]],
  );
  return steam.measured === undefined ? readings : [...readings, [['steam measured'], [said(steam.measured)]]];
}

function historyParts({ changes, withoutHistory }: WetLoadQuestion): readonly Part[] {
  const heading: Part = { is: 'heading', level: 2, line: ['What changed in its files before'] };
  if (withoutHistory !== undefined) return [heading, { is: 'text', line: [withoutHistory] }];
  if (changes.length === 0) return [heading, { is: 'text', line: ['No recorded change.'] }];
  const rows = changes.map(({ day, commit, subject, paths }): Line[] => [
    [told('history', day)],
    [told('history', subject)],
    [told('history', paths.join(', '))],
    [told('history', commit)],
  ]);
  return [heading, { is: 'table', head: ['Day', 'Change', 'Files', 'Recorded as'], rows, narrow: [0, 3] }];
}
