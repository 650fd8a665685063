import type { Judgement, Parameter } from '../judge/outcome.ts';
import type { Node } from '../model/node.ts';
import { formatIn, formatInterval } from '../quantity/format.ts';
import type { Interval } from '../quantity/interval.ts';
import { intersectAll } from '../quantity/interval.ts';
import type { Unit } from '../quantity/unit-list.ts';
import type { Allowed } from './bounds-at.ts';
import { allowedBy } from './bounds-at.ts';
import type { Department } from './equipment.ts';
import { idOf } from './equipment.ts';
import { methodRow } from './governing-method.ts';
import type { GoverningRow, Governor, SterilizationFit } from './model.ts';
import type { Derivation } from './route.ts';

/** Rows of the table in the order in which they are shown, with the parameters each gathers. */
const rows: readonly { readonly title: string; readonly parameters: ReadonlySet<Parameter> }[] = [
  { title: 'Temperature', parameters: new Set<Parameter>(['steam-temperature']) },
  { title: 'Exposure', parameters: new Set<Parameter>(['exposure']) },
  { title: 'Drying time', parameters: new Set<Parameter>(['steam-dry', 'packaging-dry']) },
  { title: 'Highest temperature', parameters: new Set<Parameter>(['heat-limit']) },
  { title: 'Gas cycle', parameters: new Set<Parameter>(['ethylene-oxide']) },
  { title: 'Aeration', parameters: new Set<Parameter>(['aeration']) },
  { title: 'Mass', parameters: new Set<Parameter>(['mass', 'load']) },
  { title: 'Levels', parameters: new Set<Parameter>(['levels']) },
  { title: 'pH of the wash', parameters: new Set<Parameter>(['ph']) },
];

/** One demand as numbers. */
interface Demand {
  readonly judgement: Judgement;
  readonly interval: Interval;
  readonly unit: Unit;
}

/**
 * Who governs each parameter of the way that is shown: the chosen route, or the set as packed where there is none. Bounds are intersected: the lowest value is
 * the largest of the minima, the highest the smallest of the maxima, and never "the strictest".
 */
export function governingTable(
  derivation: Derivation,
  fit: SterilizationFit | undefined = fitShown(derivation),
): readonly GoverningRow[] {
  if (fit === undefined) return [];
  const judgements = [
    ...fit.common,
    ...fit.members.flatMap((member) => member.judgements),
    ...washJudgements(derivation),
  ];
  const table: GoverningRow[] = [...methodRow(derivation, fit)];
  for (const { title, parameters } of rows) {
    const demands = judgements
      .filter(({ parameter }) => parameters.has(parameter))
      .flatMap((one) => demandOf(one, derivation));
    if (demands.length > 0) table.push(rowOf(title, demands));
  }
  return table;
}

/** The chosen route; else the set as its file packs it; else what comes nearest. */
export function fitShown({ route }: Derivation): SterilizationFit | undefined {
  return route.chosen ?? route.asPacked ?? route.failing[0];
}

function washJudgements({ route }: Derivation): readonly Judgement[] {
  return route.members.flatMap(
    ({ cleaning }) =>
      cleaning?.stages.filter(({ stage }) => stage === 'mechanical').flatMap(({ judgements }) => judgements) ?? [],
  );
}

function demandOf(judgement: Judgement, derivation: Derivation): readonly Demand[] {
  const allowed = allowedIn(judgement, derivation);
  return allowed === undefined ? [] : [{ judgement, ...allowed }];
}

/** What the demand of a judgement allows, in the base unit; undefined where it is no number. */
export function allowedIn(judgement: Judgement, { subject, department }: Derivation): Allowed | undefined {
  const entity = entityOf(judgement.demandedBy, subject, department);
  return entity === undefined ? undefined : allowedBy(judgement, entity, department.setting);
}

function entityOf(who: string, subject: Derivation['subject'], department: Department): Node | undefined {
  const id = who.slice(who.indexOf('/') + 1);
  switch (who.slice(0, who.indexOf('/'))) {
    case 'device':
      return subject.members.find((member) => member.id === id)?.device;
    case 'packaging':
      return department.packagingById.get(id);
    case 'site':
      return department.setting.site;
    case 'sterilizer':
      return department.sterilizing.find(({ machine }) => idOf(machine) === id)?.machine;
    default:
      return undefined;
  }
}

function rowOf(title: string, demands: readonly Demand[]): GoverningRow {
  const common = intersectAll(demands.map(({ interval }) => interval));
  const unit = demands[0]?.unit as Unit;
  const governing = demands.filter(
    ({ interval }) =>
      (common.low > Number.NEGATIVE_INFINITY && interval.low === common.low) ||
      (Number.isFinite(common.high) && interval.high === common.high),
  );
  const governors = governorsOf(governing);
  const givenAt = demands.find(({ judgement }) => judgement.factAt !== undefined)?.judgement.factAt;
  return {
    parameter: title,
    required: intervalWords(common, unit),
    governedBy: governors,
    gives: demands[0]?.judgement.given ?? '',
    ...(givenAt && { givenAt }),
    slack: slackWords(common, demands, unit),
    ifLeft: ifLeftWords(demands, governors, common, unit),
  };
}

function governorsOf(demands: readonly Demand[]): readonly Governor[] {
  const governors = new Map<string, Governor>();
  for (const { judgement } of demands) {
    const { demandedBy: who, demandAt: at, says } = judgement;
    if (!governors.has(who)) governors.set(who, { who, at, says });
  }
  return [...governors.values()];
}

function intervalWords(interval: Interval, unit: Unit): string {
  const { low, high } = interval;
  return low <= high
    ? formatInterval(interval, unit)
    : `nothing: at least ${formatIn(low, unit)} and at most ${formatIn(high, unit)}`;
}

/** How far what is given lies from the nearer end. Negative distances are shortfalls, and said so. */
function slackWords({ low, high }: Interval, demands: readonly Demand[], unit: Unit): string {
  const given = givenValue(demands);
  if (given === undefined) return '';
  const below = given.low - low;
  const above = high - given.high;
  const least = Math.min(below, above);
  if (!Number.isFinite(least)) return '';
  return least < 0 ? `${distanceWords(-least, unit)} outside` : distanceWords(least, unit);
}

/** Distances of temperatures are differences: 5 K. */
function distanceWords(size: number, unit: Unit): string {
  return unit.dimension === 'temperature' ? `${Math.round(size * 10) / 10} K` : formatIn(size, unit);
}

/** Lowest and highest of what is given: the control band and every phase count. */
function givenValue(demands: readonly Demand[]): Interval | undefined {
  for (const { judgement } of demands) if (judgement.givenRange !== undefined) return judgement.givenRange;
  return undefined;
}

function ifLeftWords(demands: readonly Demand[], governors: readonly Governor[], common: Interval, unit: Unit): string {
  const [only] = governors;
  if (only === undefined || governors.length > 1) return '';
  const rest = demands.filter(({ judgement }) => judgement.demandedBy !== only.who).map(({ interval }) => interval);
  const left = intersectAll(rest);
  return left.low === common.low && left.high === common.high ? '' : intervalWords(left, unit);
}
