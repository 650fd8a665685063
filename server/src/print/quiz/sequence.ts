import { cleaningAlternatives } from '../../judge/demands.ts';
import { sayingsOf } from '../../model/saying.ts';
import { nodesIn } from '../../model/walk.ts';
import { departmentOf } from '../../route/equipment.ts';
import { nameOf } from '../names.ts';
import type { Line } from '../piece.ts';
import { citationOf } from '../sayings.ts';
import type { Ground } from './ground.ts';
import type { Draft } from './question.ts';

const stageWords = {
  manual: 'by hand',
  ultrasonic: 'ultrasonic bath',
  mechanical: 'washer',
  disinfection: 'disinfection',
} as const;

/** In which order it is cleaned: only where the page gives one way, in order, with every stage needed. */
export function sequenceDrafts({ devices, printing }: Ground): readonly Draft[] {
  const { setting } = printing.view.ask(departmentOf, '');
  const drafts: Draft[] = [];
  for (const device of devices) {
    const { alternatives } = cleaningAlternatives(device, setting);
    const [only] = alternatives;
    const stages = only?.stages.map(({ stage }) => stageWords[stage]) ?? [];
    if (only === undefined || alternatives.length !== 1 || stages.length < 2 || isFree(device.cleaning)) continue;
    const [saying] = only.stages.flatMap(({ voices }) => voices.flatMap(({ src }) => sayingsOf(device, src)));
    drafts.push({
      key: `sequence device/${device.id?.text}`,
      template: 'sequence',
      stage: 'decontamination',
      text: ['How is ', nameOf(device, ''), ' cleaned, in order?'],
      right: lineOf(stages),
      wrong: wrongOrders(stages).map(lineOf),
      asking: 'wrong',
      why: ['All of these stages, in this order: none replaces another.'],
      citation: saying === undefined ? [] : citationOf(saying),
      difficulty: stages.length,
    });
  }
  return drafts;
}

function isFree(cleaning: Ground['devices'][number]['cleaning']): boolean {
  return cleaning === undefined || nodesIn(cleaning).some((node) => node.node === 'record' && 'unordered' in node);
}

/** Another order, or one stage left out: the page allows neither. */
function wrongOrders(stages: readonly string[]): readonly (readonly string[])[] {
  const orders: (readonly string[])[] = [stages.toReversed()];
  for (let index = 0; index < stages.length; index++) orders.push(stages.filter((_, other) => other !== index));
  for (let index = 0; index + 1 < stages.length; index++) {
    const swapped = [...stages];
    swapped.splice(index, 2, ...stages.slice(index, index + 2).toReversed());
    orders.push(swapped);
  }
  return orders;
}

function lineOf(stages: readonly string[]): Line {
  return [stages.length === 1 ? `only ${stages[0]}` : stages.join(', then ')];
}
