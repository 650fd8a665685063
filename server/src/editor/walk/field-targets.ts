import { plainName } from '../../model/plain-words.ts';
import type { Kind } from '../../schema/kinds.ts';
import type { Shape } from '../../schema/shape.ts';
import type { MapTree, Tree } from '../../syntax/tree.ts';
import { valueUnder } from '../../syntax/value-under.ts';
import type { Stage } from '../reading/quote-into-cleaning.ts';
import { cites, citesInside, stagesIn, stagesOfCleaning } from '../reading/quote-into-cleaning.ts';
import { shapeAt } from '../reading/told-fields.ts';
import { asValue } from '../writing/bare.ts';
import type { NewField } from '../writing/insert-fields.ts';
import { nodeAt } from './field-there.ts';

/**
 * Where what somebody chose for a sentence is written. A field may stand for more than one place of the file: that of each cycle, of each stage
 * of a sort, or of the step that the sentence itself made. What is said of one brush is never written where it holds for another.
 */
export interface Target {
  readonly fields: readonly NewField[];
  /** In the words of the file; empty where there is one place only. */
  readonly where: string;
}

export interface Into {
  readonly root: MapTree;
  readonly kind: Kind;
  readonly statement: string;
}

/** The first is meant most likely. */
export function targetsOf(fields: readonly NewField[], into: Into): readonly Target[] {
  const path = fields[0]?.path ?? '';
  if (path.includes(anyItem)) return inItems(fields, path, into);
  const steps = inOwnSteps(fields, into);
  if (steps.length > 0) return steps;
  const [own, stages] = [asOwnStep(fields, into), inStages(fields, into)];
  return own.length === 0
    ? stages
    : [...own, ...stages.map((one) => ({ ...one, where: one.where || 'for the whole stage' }))];
}

/** Stands in a path for the number of an item. */
export const anyItem = '.*';

function inItems(fields: readonly NewField[], path: string, { root, statement }: Into): readonly Target[] {
  const [list = ''] = path.split(anyItem);
  const node = nodeAt(root, list.split('.'));
  const items = node?.node === 'list' ? node.items : [];
  const at = (index: number): readonly NewField[] =>
    fields.map((field) => ({ ...field, path: field.path.replace(anyItem, `.${index}`) }));
  const all = {
    fields: items.flatMap((_item, index) => at(index)),
    where: `in all ${items.length}${list.endsWith('any_of') ? ' cycles' : ''}`,
  };
  const each = items.map((item, index) => ({ item, fields: at(index), where: `only in ${itemNamed(item)}` }));
  if (items.length < 2) return each.map((one) => ({ fields: one.fields, where: '' }));
  const own = each.filter(({ item }) => citesInside(item, statement));
  // Where the sentence is that of one of them, it is meant first.
  return own.length === items.length || own.length === 0
    ? [all, ...each]
    : [...own, all, ...each.filter((one) => !own.includes(one))];
}

/** `pre-vacuum steam, 134 °C`: as a person calls it. */
export function itemNamed(item: Tree): string {
  if (item.node !== 'map') return '';
  const keys = ['name', 'modality', 'do', 'what', 'temp', 'exposure'];
  const said = keys.flatMap((key) => firstText(valueUnder(item, key))).map(plainName);
  return said.length > 0 ? said.join(', ') : firstText(valueUnder(item, 'id')).join('');
}

function firstText(tree: Tree | undefined): readonly string[] {
  if (tree?.node === 'scalar') return [tree.text];
  if (tree?.node === 'list') return tree.items.flatMap(firstText);
  return tree?.node === 'map'
    ? tree.entries
        .filter(({ key }) => key.text !== 'src')
        .flatMap(({ value }) => firstText(value))
        .slice(0, 1)
    : [];
}

/** Steps that the sentence made, where a step has a place for the field. */
function inOwnSteps(fields: readonly NewField[], { root, kind, statement }: Into): readonly Target[] {
  const [head = '', ...rest] = fields[0]?.path.split('.') ?? [];
  if (rest.length === 0) return [];
  const found = groupsOf(root, head).flatMap(({ path, node }) =>
    node.entries.flatMap(({ key, value }) => {
      const shape = shapeAt(kind, `${head}.${key.text}[]`);
      if (value.node !== 'list' || shape?.form !== 'record' || rest[0] === `${key.text}[]`) return [];
      return value.items.flatMap((item, index) => {
        const keys = item.node === 'map' && cites(item, statement) ? keysInStep(rest, item, shape) : undefined;
        return keys === undefined ? [] : [{ item, path: [path, key.text, index, ...keys].join('.') }];
      });
    }),
  );
  const [own] = fields;
  if (own === undefined) return [];
  const done = found.filter(({ item }) => item.node === 'map' && isDone(item, rest[0] ?? ''));
  return (done.length > 0 ? done : found).map(({ item, path }) => ({
    fields: [{ ...own, path, value: withoutSource(own.value) }],
    where: found.length > 1 ? `in its step: ${itemNamed(item)}` : 'in its own step',
  }));
}

/** Where a stage has such a step of another sentence already, one more of its own: what holds for the stage would hold for both. */
function asOwnStep(fields: readonly NewField[], { root, kind, statement }: Into): readonly Target[] {
  const [own] = fields;
  const [head = '', ...rest] = own?.path.split('.') ?? [];
  const [does = ''] = rest;
  const shape = shapeAt(kind, `${head}.steps[]`);
  if (own === undefined || rest.length !== 2 || shape?.form !== 'record') return [];
  const [field, inner] = [...(holds(shape, rest) ? rest : rest.slice(1)), ''];
  if (field === undefined || !holds(shape, [field])) return [];
  const value = withoutSource(own.value);
  const said = inner === '' || inner === undefined ? `${field}: ${value}` : `${field}: {${inner}: ${value}}`;
  const groups = groupsOf(root, head).filter(({ node }) => stepsIn(node).some((step) => isDone(step, does)));
  return groups.map(({ path }) => ({
    fields: [
      { path: `${path}.steps[]`, value: `{do: ${does}, ${said}, src: ${asValue(statement)}}`, head: `do: ${does}` },
    ],
    where: groups.length > 1 ? `as a step of its own in ${path}` : 'as a step of its own',
  }));
}

function stepsIn(stage: MapTree): readonly MapTree[] {
  const steps = valueUnder(stage, 'steps');
  return steps?.node === 'list' ? steps.items.filter((item) => item.node === 'map') : [];
}

/** The step names the sentence already. */
function withoutSource(value: string): string {
  return value.replace(/, src: [^,{}[\]]+\}$/, '}');
}

/** How a step calls what stands beside the steps of a stage: `soak: 5 min` is the time of a step that soaks. */
const inStep: Readonly<Record<string, string>> = {
  soak: 'time',
  soak_temp: 'temp',
  actuate: 'times',
  strokes: 'times',
  brush_time: 'time',
};

function keysInStep(rest: readonly string[], step: MapTree, shape: Shape): readonly string[] | undefined {
  if (holds(shape, rest)) return rest;
  const [key = '', ...inner] = rest;
  if (!isDone(step, key)) return undefined;
  const own = inner.length > 0 ? inner : [inStep[key] ?? ''];
  return holds(shape, own) ? own : undefined;
}

function isDone(step: MapTree, key: string): boolean {
  const [does = ''] = firstText(valueUnder(step, 'do'));
  return (
    does !== '' &&
    (key === does.replace('-', '_') || key.startsWith(`${does}_`) || (key === 'strokes' && does === 'brush'))
  );
}

function holds(shape: Shape, [key = '', ...rest]: readonly string[]): boolean {
  const inner = shape.form === 'record' ? shape.fields.get(key.replace('[]', ''))?.shape : undefined;
  return inner !== undefined && (rest.length === 0 || holds(inner, rest));
}

interface Group {
  readonly path: string;
  readonly node: MapTree;
}

/** The group itself, or the stages of its sort. */
function groupsOf(root: MapTree, head: string): readonly Group[] {
  const own = valueUnder(root, head);
  return own?.node === 'map' ? [{ path: head, node: own }] : stagesOf(root, head);
}

function stagesOf(root: MapTree, head: string): readonly Stage[] {
  const cleaning = valueUnder(root, 'cleaning');
  return cleaning === undefined || !stagesOfCleaning.includes(head)
    ? []
    : stagesIn(cleaning, 'cleaning').filter(({ stage }) => stage === head);
}

/** Several stages of one sort: that of the sentence, else each of them. */
function inStages(fields: readonly NewField[], { root, statement }: Into): readonly Target[] {
  const [head = '', ...rest] = fields[0]?.path.split('.') ?? [];
  const own = valueUnder(root, head);
  const found = rest.length === 0 || own?.node === 'map' ? [] : stagesOf(root, head);
  if (found.length < 2) return [{ fields, where: '' }];
  const citing = found.filter(({ node }) => citesInside(node, statement));
  const chosen = citing.length === 1 ? citing : found;
  return chosen.map(({ path, node }) => ({
    fields: fields.map((field) => ({ ...field, path: [path, ...field.path.split('.').slice(1)].join('.') })),
    where: chosen.length === 1 ? '' : `in stage ${found.findIndex((one) => one.node === node) + 1}${stepsOf(node)}`,
  }));
}

/** `: soak, brush, flush`. */
function stepsOf(stage: MapTree): string {
  const done = stepsIn(stage).flatMap((step) => firstText(valueUnder(step, 'do')));
  return done.length === 0 ? '' : `: ${done.slice(0, 6).map(plainName).join(', ')}`;
}
