import type { Edit } from '../../base/problem.ts';
import { span } from '../../base/span.ts';
import { handBeforeMachine } from '../../quantity/prose/named/acts.ts';
import { fileForm } from '../../syntax/edits.ts';
import type { MapEntry, MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import { linesOfList } from '../writing/list-lines.ts';
import { sentencesOf } from './open-sentences.ts';

/**
 * `Manual steps 4.1 to 4.3 are required before automated cleaning`: the page has two ways, all steps by hand, or these steps and then the
 * machine. The steps that are named are written into the second way too.
 */

export interface TwoWays {
  readonly edit: Edit;
  readonly label: string;
}

const stepsNamed =
  /(?<![\d.])(\d{1,2}(?:\.\d{1,2}){0,2})\s*(?:to|through|until|-|–|bis|à)\s*(\d{1,2}(?:\.\d{1,2}){0,2})(?![\d.]*\d)/;

/** `Pre-clean according to 5.2 to 5.5`: these steps are done before what the section is about. */
const preCleaned =
  /^pre-?clean\p{L}*\b.{0,40}\b(?:according|as|following|in|per|steps?)\b|^vorreinig\p{L}*\b.{0,40}\b(?:gemäß|nach|schritte?)\b|^(?:pré-?nettoyer|effectuer un pré-?nettoyage)\b.{0,40}(?:selon|étapes?)/iu;

/** Undefined where no steps are named that the file has, or where the machine is not the last of its stages. */
export function twoWays(text: string, root: MapTree, quote: string, src: string): TwoWays | undefined {
  const isNamed = handBeforeMachine.test(quote) || preCleaned.test(quote);
  const [, from, to] = isNamed ? (stepsNamed.exec(quote) ?? []) : [];
  const cleaning = valueUnder(root, 'cleaning');
  const [entry, other] = cleaning?.node === 'map' ? cleaning.entries : [];
  if (from === undefined || to === undefined || entry?.key.text !== 'all_of' || other !== undefined) return undefined;
  if (entry.value.node !== 'list') return undefined;
  const stages = entry.value.items.flatMap((item) => (item.node === 'map' ? [item] : []));
  const own = linesOfList(text, entry.value);
  const named = namedBetween(root, from, to);
  const steps = stages.filter((one) => isStage(one, 'manual')).flatMap((one) => citing(stepsIn(one), named));
  const machines = stages.filter((one) => isStage(one, 'mechanical'));
  const [machine, another] = machines;
  if (own === undefined || steps.length === 0 || another !== undefined) return undefined;
  if (machine !== undefined && (machine !== entry.value.items.at(-1) || stages.length === 1)) return undefined;
  const dash = ' '.repeat(own.column);
  const byHand = machine === undefined ? own.lines : own.lines.slice(0, -linesFrom(text, machine, own.end));
  const inMachine =
    machine === undefined
      ? ['- stage: mechanical', `  src: ${src}`].map((line) => `${dash}${line}`)
      : own.lines.slice(byHand.length);
  const beside = stages.filter((one) => isStage(one, 'manual')).flatMap((one) => entriesCiting(one, named));
  const lines = [
    'any_of:',
    `${dash}- all_of:`,
    ...byHand.map((line) => `    ${line}`),
    `${dash}- all_of:`,
    ...[`- stage: manual`, '  needed: before-machine', `  src: ${src}`, '  steps:'].map((line) => `${dash}    ${line}`),
    ...steps.map((step) => `${dash}        - ${text.slice(step.span.start, step.span.end).trim()}`),
    ...beside.map(({ key, value }) => `${dash}      ${text.slice(key.span.start, value.span.end).trim()}`),
    ...inMachine.map((line) => `    ${line}`),
  ];
  const { lineEnd } = fileForm(text);
  return {
    edit: { span: span(entry.key.span.start, own.end), text: lines.join(lineEnd) },
    label: `Two ways of cleaning: by hand alone, or steps ${from} to ${to} and then the machine`,
  };
}

/** How many lines of the list the item begins and those below it have. */
function linesFrom(text: string, item: MapTree, end: number): number {
  return text.slice(item.span.start, end).split('\n').length;
}

/** The statements whose number lies between the two. */
function namedBetween(root: MapTree, from: string, to: string): ReadonlySet<string> {
  const between = sentencesOf(root).filter(({ quote }) => {
    const [, own] = /^\s*(\d{1,2}(?:\.\d{1,2}){0,2})[.)]?\s/.exec(quote) ?? [];
    return own !== undefined && order(own) >= order(from) && order(own) <= order(to);
  });
  return new Set(between.map(({ id }) => id));
}

function order(number: string): number {
  const [first = 0, second = 0, third = 0] = number.split('.').map(Number);
  return first * 10_000 + second * 100 + third;
}

function isStage(item: MapTree, name: string): boolean {
  const stage = valueUnder(item, 'stage');
  return stage?.node === 'scalar' && stage.text === name;
}

function stepsIn(stage: MapTree): readonly Tree[] {
  const steps = valueUnder(stage, 'steps');
  return steps?.node === 'list' ? steps.items : [];
}

function citing(trees: readonly Tree[], named: ReadonlySet<string>): readonly Tree[] {
  return trees.filter((tree) => cites(tree, named));
}

/** What stands beside the steps on one line: the detergent of a soak. */
function entriesCiting(stage: MapTree, named: ReadonlySet<string>): readonly MapEntry[] {
  return stage.entries.filter(({ key, value }) => key.text !== 'steps' && value.node === 'map' && cites(value, named));
}

function cites(tree: Tree, named: ReadonlySet<string>): boolean {
  if (tree.node !== 'map') return false;
  const src = valueUnder(tree, 'src');
  if (src?.node === 'scalar') return named.has(src.text);
  return tree.entries.some(({ value }) => cites(value, named));
}
