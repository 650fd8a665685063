import type { EntityId, FileId } from '../base/brand.ts';
import { entityId } from '../base/brand.ts';
import { LineIndex } from '../base/line-index.ts';
import type { Problem } from '../base/problem.ts';
import type { AnyEntity } from '../model/entity.ts';
import { lower } from '../model/lower.ts';
import { inspect } from '../schema/inspect.ts';
import type { Kind } from '../schema/kinds.ts';
import { isKind } from '../schema/kinds.ts';
import { shapeOf } from '../schema/shapes.ts';
import { asToDo } from '../schema/to-do.ts';
import { readTree } from '../syntax/read.ts';
import type { MapTree } from '../syntax/tree.ts';
import { valueUnder } from '../syntax/value-under.ts';
import { exportsOf, exportsOfUnreadable } from './exports.ts';
import type { IndexKey } from './keys.ts';

/** All that the library keeps of one file. Depends on the file's text alone. */
export interface FileRecord {
  readonly file: FileId;
  readonly text: string;
  readonly kind?: Kind;
  /** Kept even when the rest can't be read, so that an unreadable file causes no false "unknown id" elsewhere. */
  readonly id?: EntityId;
  readonly entity?: AnyEntity;
  /** What is wrong with the file by itself: syntax and schema. */
  readonly problems: readonly Problem[];
  /** Each once. */
  readonly exports: readonly IndexKey[];
}

export function readRuleFile(file: FileId, text: string): FileRecord {
  const { tree, problems } = readTree(text);
  if (tree === undefined || tree.node !== 'map') return unreadableFile(file, text, problems);
  const all = withThoseOfForm(problems, tree, text);
  const said = saidIn(tree, file, text);
  return said === undefined ? unreadableFile(file, text, all) : { ...said, problems: all };
}

/**
 * The same for a file that others ask what it says and that is rarely judged itself: what is wrong with its form is found out when somebody
 * wants to know.
 */
export function readInPassing(file: FileId, text: string): FileRecord {
  const { tree, problems } = readTree(text);
  const said = tree?.node === 'map' ? saidIn(tree, file, text) : undefined;
  if (tree?.node !== 'map' || said === undefined) return readRuleFile(file, text);
  let all: readonly Problem[] | undefined;
  return {
    ...said,
    get problems() {
      all ??= withThoseOfForm(problems, tree, text);
      return all;
    },
  };
}

/** Undefined for a file of which it can't be told what it is about. */
function saidIn(tree: MapTree, file: FileId, text: string): Omit<FileRecord, 'problems'> | undefined {
  const kind = textUnder(tree, 'kind');
  const id = textUnder(tree, 'id');
  if (kind === undefined || !isKind(kind) || id === undefined) return undefined;
  const root = { file, kind, id: entityId(id) };
  const entity = lower(tree, shapeOf(kind), root) as AnyEntity;
  return { file, text, kind, id: root.id, entity, exports: exportsOf(entity) };
}

function withThoseOfForm(ofSyntax: readonly Problem[], tree: MapTree, text: string): readonly Problem[] {
  const ofForm = inspect(tree).map((problem) => asToDo(problem, text));
  return [...ofSyntax, ...withoutEchoes(ofForm, ofSyntax, text)];
}

/** A broken line misleads everything that is read from it: what the schema says about the same line is an echo. */
function withoutEchoes(ofForm: readonly Problem[], ofSyntax: readonly Problem[], text: string): readonly Problem[] {
  if (ofForm.length === 0 || ofSyntax.length === 0) return ofForm;
  const lines = new LineIndex(text);
  const broken = new Set(ofSyntax.map((problem) => lines.position(problem.span.start).line));
  return ofForm.filter((problem) => !broken.has(lines.position(problem.span.start).line));
}

function textUnder(tree: MapTree, key: string): string | undefined {
  const value = valueUnder(tree, key);
  return value?.node === 'scalar' && value.text !== '' ? value.text : undefined;
}

/** The record of a file whose content can't be read as an entity; kind and id are taken from its first lines where they can be made out. */
export function unreadableFile(file: FileId, text: string, problems: readonly Problem[]): FileRecord {
  const kind = /^kind: *([a-z-]{1,20})/m.exec(text)?.[1];
  const id = /^id: *["']?([A-Za-z0-9._:-]{1,64})/m.exec(text)?.[1];
  if (kind === undefined || !isKind(kind) || id === undefined) return { file, text, problems, exports: [] };
  return { file, text, kind, id: entityId(id), problems, exports: exportsOfUnreadable(kind, id) };
}
