import type { EntityOf } from '../../model/entities.generated.ts';
import type { Quantity, Requirement } from '../../model/node.ts';
import { pathOf } from '../../model/node.ts';
import type { Saying } from '../../model/saying.ts';
import { sayingsOf } from '../../model/saying.ts';
import { isRequirement, nodesIn } from '../../model/walk.ts';
import { readQuote } from '../../quantity/prose/read-quote.ts';
import type { QuantityValue } from '../../quantity/quantity.ts';
import { isClear } from './ground.ts';

/** One demand of one page that can be asked about: clear, in numbers, with its sentence. */
export interface AskableDemand {
  readonly device: EntityOf['device'];
  readonly requirement: Requirement;
  /** `soak`, `ultrasonic time`: what it measures, in plain words. */
  readonly what: string;
  readonly path: string;
  readonly saying: Saying;
}

const titles: Readonly<Record<string, string>> = {
  soak: 'time in the solution',
  volume: 'volume of a flush',
  time: 'time',
  dry: 'drying in the sterilizer',
  exposure: 'exposure',
  temp: 'temperature',
  pressure: 'pressure',
  ph: 'pH of the solution',
  uses: 'number of uses',
  magnification: 'magnification',
  max_delay: 'time until cleaning begins',
};

const parts: Readonly<Record<string, string>> = {
  ultrasonic: 'ultrasonic bath: ',
  limits: 'limit: ',
  drying: 'drying by air: ',
  inspection: 'looking: ',
  sterilization: 'sterilizer: ',
  point_of_use: 'after use: ',
};

/** Every demand of a device of which a question can be made. */
export function askable(device: EntityOf['device']): readonly AskableDemand[] {
  const found: AskableDemand[] = [];
  for (const node of nodesIn(device)) {
    if (!isRequirement(node) || !isClear(node)) continue;
    const path = pathOf(node.at);
    const title = titles[String(node.at.key)];
    const [saying] = sayingsOf(device, node.src ?? citationAround(device, node));
    if (title === undefined || saying === undefined || !isQuoted(node, saying.quote)) continue;
    found.push({
      device,
      requirement: node,
      what: `${parts[path.split(/[.[]/)[0] ?? ''] ?? ''}${title}`,
      path,
      saying,
    });
  }
  return found;
}

/** The sentence itself gives each number: another sentence of the same record is nothing to ask about. */
function isQuoted({ at_least, at_most, between, exactly, stated }: Requirement, quote: string): boolean {
  const own = [at_least, at_most, exactly, stated, ...(between?.items ?? [])].filter((one) => one !== undefined);
  const said = own.length === 0 ? [] : readQuote(quote).numbers.flatMap(({ quantities }) => quantities);
  return own.length > 0 && own.every((one) => said.some((other) => isSameAmount(one, other)));
}

/** Half a percent leaves room for a number given in two units. */
function isSameAmount(one: QuantityValue, other: QuantityValue): boolean {
  return one.dimension === other.dimension && Math.abs(one.value - other.value) <= 0.005 * Math.abs(one.value);
}

/** The record around a requirement may cite for all of its fields. */
function citationAround(device: EntityOf['device'], requirement: Requirement): Requirement['src'] {
  const around = nodesIn(device).find((node) => node.at === requirement.at.parent);
  return around !== undefined && around.node === 'record' && 'src' in around
    ? (around as { src?: Requirement['src'] }).src
    : undefined;
}

/** The single number of a demand with one bound word; undefined for ranges. */
export function singleBound({
  requirement,
}: AskableDemand): { readonly word: 'at_least' | 'at_most'; readonly amount: Quantity } | undefined {
  const { at_least: least, at_most: most, between, exactly, stated } = requirement;
  if (between !== undefined || exactly !== undefined || stated !== undefined) return undefined;
  if (least !== undefined && most === undefined && least.problem === undefined)
    return { word: 'at_least', amount: least };
  if (most !== undefined && least === undefined && most.problem === undefined) return { word: 'at_most', amount: most };
  return undefined;
}
