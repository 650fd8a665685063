import { unitNamed } from '../judge/unit-named.ts';
import type { SterilizerCycle, WasherCycle } from '../library/view.ts';
import type { EntityOf } from '../model/entities.generated.ts';
import { methodWords } from '../model/method-names.ts';
import type { DateValue, Quantity, Requirement, Text } from '../model/node.ts';
import { formatInterval, formatQuantity } from '../quantity/format.ts';
import type { Interval } from '../quantity/interval.ts';
import type { QuantityValue } from '../quantity/quantity.ts';
import { byId, type Department, idOf, meansOf, type SterilizerMeans, type WasherMeans } from './equipment.ts';

/*
 * The department with one thing changed, so that a repair can be tried out before it is offered. Nothing here is ever written to a file.
 */

/** A cycle as it would be after a qualification today. */
export function withQualified(department: Department, means: SterilizerMeans): Department {
  return withCycle(department, means, qualifiedToday(means.cycle, department.setting.today), 'instead');
}

/** A further cycle like `means`, with other times, qualified today. */
export function withTimes(
  department: Department,
  means: SterilizerMeans,
  times: { exposure?: QuantityValue; dry?: QuantityValue },
): Department {
  const { cycle } = means;
  const changed: SterilizerCycle = {
    ...qualifiedToday(cycle, department.setting.today),
    ...(times.exposure && { exposure: quantityAt(cycle, times.exposure) }),
    ...(times.dry && { dry: quantityAt(cycle, times.dry) }),
  };
  const id: Text = { node: 'text', at: cycle.id?.at ?? cycle.at, text: newCycleName(means, changed) };
  return withCycle(department, means, { ...changed, id }, 'beside');
}

/** `S1 pre-vacuum steam 132 °C, 4 min, dry 40 min`. */
export function newCycleName(
  { machine, cycle }: SterilizerMeans,
  times: Pick<SterilizerCycle, 'exposure' | 'dry'>,
): string {
  const method = methodWords((cycle.modality ?? machine.modality)?.text ?? '');
  const parts = [cycle.temp, times.exposure].flatMap((one) => (one === undefined ? [] : [formatQuantity(one)]));
  return `${idOf(machine)} ${method} ${[...parts, times.dry === undefined ? '' : `dry ${formatQuantity(times.dry)}`].filter((part) => part !== '').join(', ')}`;
}

/** The cycle as it would be after a qualification on this day. */
export function qualifiedToday(cycle: SterilizerCycle, today: string): SterilizerCycle {
  const { qualified_until: _until, changed: _changed, withdrawn_on: _withdrawn, ...rest } = cycle;
  const qualified: DateValue = { node: 'date', at: cycle.qualified?.at ?? cycle.at, text: today };
  return { ...rest, qualified };
}

function quantityAt(cycle: SterilizerCycle, value: QuantityValue): Quantity {
  return { ...value, node: 'quantity', at: cycle.at, text: formatQuantity(value) };
}

function withCycle(
  department: Department,
  means: SterilizerMeans,
  cycle: SterilizerCycle,
  where: 'instead' | 'beside',
): Department {
  const { machine } = means;
  const made = meansOf(cycle.id?.text ?? means.id, machine, cycle, department.setting);
  const sterilizing = department.sterilizing.flatMap((one) =>
    one !== means ? [one] : where === 'instead' ? [made] : [one, made],
  );
  return { ...department, sterilizing };
}

/** The washer cycle with this detergent in place of its own; agents that do not clean stay. */
export function withDetergent(
  department: Department,
  means: WasherMeans,
  detergent: EntityOf['chemistry'],
  isDetergent: (word: string) => boolean,
): Department {
  const { cycle } = means;
  const at = cycle.doses?.at ?? cycle.at;
  const kept = (cycle.doses?.items ?? []).filter(({ text }) => !isDetergent(text));
  const word: Text = { node: 'text', at, text: idOf(detergent) };
  const phases = cycle.phases && {
    ...cycle.phases,
    items: cycle.phases.items.map(({ chemistry, ...phase }) =>
      chemistry === undefined || isDetergent(chemistry.text) ? phase : { ...phase, chemistry },
    ),
  };
  const changed: WasherCycle = {
    ...cycle,
    doses: { node: 'list', at, items: [word, ...kept] },
    ...(phases && { phases }),
  };
  const washing = department.washing.map((one) => (one === means ? { ...one, cycle: changed } : one));
  const chemistry = byId([...department.chemistry.filter((one) => idOf(one) !== idOf(detergent)), detergent]);
  const { stock } = department;
  const here = (id: string) => (id === idOf(detergent) ? detergent : stock.chemistry(id));
  return { ...department, washing, chemistry, stock: { ...stock, chemistry: here } };
}

/** A detergent that nobody has yet: for machines, of this pH as used. Everything else about it is left open. */
export function imaginedDetergent(like: EntityOf['chemistry'], ph: Interval): EntityOf['chemistry'] {
  const { at } = like;
  const end = (value: number): Quantity => ({
    node: 'quantity',
    at,
    text: String(value),
    dimension: 'ph',
    value,
    amount: value,
    unit: '',
    decimals: 1,
  });
  const between: Requirement = {
    node: 'record',
    at,
    dimension: 'ph',
    between: { node: 'list', at, items: [end(ph.low), end(ph.high)] },
  };
  const word = <Word extends string>(text: Word): Text<Word> => ({ node: 'text', at, text });
  return {
    node: 'record',
    at,
    id: word(`a detergent of pH ${formatInterval(ph, unitNamed('ph'))}`),
    class: word('neutral'),
    ph_in_use: between,
    methods: { node: 'list', at, items: [word('mechanical')] },
    foam: word('low'),
  };
}
