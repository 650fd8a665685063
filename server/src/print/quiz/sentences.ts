import { unitNamed } from '../../judge/unit-named.ts';
import type { Quantity } from '../../model/node.ts';
import { formatIn } from '../../quantity/format.ts';
import { amount, demanded } from '../amounts.ts';
import { nameOf } from '../names.ts';
import type { Line, Value } from '../piece.ts';
import { originOf, plain } from '../piece.ts';
import { citationOf, quoteOf } from '../sayings.ts';
import type { AskableDemand } from './demands.ts';
import { askable, singleBound } from './demands.ts';
import type { Ground } from './ground.ts';
import type { Draft, QuizStage } from './question.ts';

/** What the small word of a sentence allows; and which of four lines does not stand on the page. */
export function sentenceDrafts(ground: Ground): readonly Draft[] {
  const demands = ground.devices.flatMap((device) => unmistakable(askable(device)));
  return [
    ...demands.flatMap((demand) => boundDraft(demand, ground)),
    ...demands.flatMap((demand) => errorDraft(demand, demands, ground)),
  ];
}

/** Where a page speaks twice of one thing, a line about it would not say which is meant. */
function unmistakable(demands: readonly AskableDemand[]): readonly AskableDemand[] {
  return demands.filter(({ what, path }) => !demands.some((other) => other.what === what && other.path !== path));
}

function boundDraft(demand: AskableDemand, { printing }: Ground): readonly Draft[] {
  const bound = singleBound(demand);
  if (bound === undefined) return [];
  const value = amount(bound.amount, printing);
  const more: Line = [value, ' or more'];
  const less: Line = [value, ' or less'];
  const exactly: Line = ['exactly ', value, ', nothing else'];
  const [right, wrong] = bound.word === 'at_least' ? [more, less] : [less, more];
  return [
    {
      key: `bound-words ${demand.path} ${originOf(demand.device.at)}`,
      template: 'bound-words',
      stage: stageOf(demand),
      text: [
        'The page of ',
        nameOf(demand.device, ''),
        ' says: “',
        quoteOf(demand.saying),
        `” What does it allow (${demand.what})?`,
      ],
      right,
      wrong: [wrong, exactly],
      asking: 'wrong',
      why: ['The page demands ', ...demanded(demand.requirement, printing), '.'],
      citation: citationOf(demand.saying),
      difficulty: 1,
    },
  ];
}

/** A line is spoilt by a number that the page does not allow as its limit; the three others are true as they stand. */
function errorDraft(demand: AskableDemand, all: readonly AskableDemand[], { printing }: Ground): readonly Draft[] {
  const bound = singleBound(demand);
  if (bound === undefined || bound.amount.value <= 0) return [];
  const spoilt = spoiltLine(demand, bound, printing);
  const others = all.filter((one) => one.device !== demand.device).map((one) => trueLine(one, printing));
  if (spoilt === undefined || others.length < 3) return [];
  return [
    {
      key: `spot-the-error ${demand.path} ${originOf(demand.device.at)}`,
      template: 'spot-the-error',
      stage: stageOf(demand),
      text: ['Three of these lines stand on the pages. Which one does not?'],
      right: spoilt,
      wrong: others.filter((line) => plain(line) !== plain(spoilt)),
      asking: 'not-offered',
      why: ['The page of ', nameOf(demand.device, ''), ' demands ', ...demanded(demand.requirement, printing), '.'],
      citation: citationOf(demand.saying),
      difficulty: 2,
    },
  ];
}

function trueLine({ device, what, requirement }: AskableDemand, printing: Ground['printing']): Line {
  return [nameOf(device, ''), `, ${what}: `, ...demanded(requirement, printing)];
}

/** Half of a least amount, or twice a largest: outside what the page allows in the direction that harms. */
function spoiltLine(
  { device, what }: AskableDemand,
  { word, amount: limit }: NonNullable<ReturnType<typeof singleBound>>,
  printing: Ground['printing'],
): Line | undefined {
  const value = spoiltValue(word, limit);
  const { bounds } = printing.words;
  return [nameOf(device, ''), `, ${what}: `, ...(word === 'at_least' ? bounds.atLeast(value) : bounds.atMost(value))];
}

function spoiltValue(word: 'at_least' | 'at_most', limit: Quantity): Value {
  const spoilt = word === 'at_least' ? limit.value / 2 : limit.value * 1.5;
  const text = formatIn(spoilt, unitNamed(limit.dimension, limit.unit));
  return { text, from: [originOf(limit.at)], how: 'computed' };
}

function stageOf({ path }: AskableDemand): QuizStage {
  if (path.startsWith('sterilization')) return 'sterilizing';
  return path.startsWith('inspection') || path.startsWith('limits.uses') ? 'inspection' : 'decontamination';
}
