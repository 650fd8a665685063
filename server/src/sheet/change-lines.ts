import type { FileId } from '../base/brand.ts';
import { appendItem, insertEntry } from '../syntax/edits.ts';
import { readTree } from '../syntax/read.ts';
import { applied, type Changed, newProblem, styles, valueFor } from './change-field.ts';
import { cutItem } from './cuts.ts';
import { treeAt } from './fields.ts';

const unclear = 'the contents are written in a way that cannot be changed from here; change them in the file';

/** Takes one line (from 1) out of a set's contents. */
export function cutLine(file: FileId, text: string, line: number): Changed {
  const { tree } = readTree(text);
  const members = tree === undefined ? undefined : treeAt(tree, ['members']);
  if (members?.node !== 'list') return { why: unclear };
  if (members.items.length === 1) return { why: 'a set keeps at least one line' };
  const edit = cutItem(text, members, line - 1);
  const made = edit === undefined ? { why: unclear } : applied(text, [edit]);
  if ('why' in made) return made;
  const fault = newProblem(file, text, made.text);
  if (fault !== undefined) return { why: fault };
  return countOf(made.text) === members.items.length - 1 ? made : { why: unclear };
}

/** Adds a line at the end of a set's contents: its fields in order, empty ones left out. */
export function addLine(file: FileId, text: string, fields: readonly (readonly [string, string])[]): Changed {
  let refusal: string | undefined;
  for (const style of styles) {
    const item = `{${fields.map(([key, cell]) => `${key}: ${valueFor(key, cell, style)}`).join(', ')}}`;
    const made = withItem(text, item);
    if ('why' in made) return made;
    const fault = newProblem(file, text, made.text);
    if (fault === undefined && countOf(made.text) === countOf(text) + 1) return made;
    refusal ??= fault;
  }
  return { why: refusal ?? unclear };
}

function withItem(text: string, item: string): Changed {
  const { tree } = readTree(text);
  if (tree?.node !== 'map') return { why: unclear };
  const members = treeAt(tree, ['members']);
  const edit =
    members?.node === 'list'
      ? appendItem(text, members, [item])
      : members === undefined
        ? insertEntry(text, tree, 'members', [`[${item}]`])
        : undefined;
  return edit === undefined ? { why: unclear } : applied(text, [edit]);
}

function countOf(text: string): number {
  const { tree } = readTree(text);
  const members = tree === undefined ? undefined : treeAt(tree, ['members']);
  return members?.node === 'list' ? members.items.length : 0;
}
