import type { Problem } from '../base/problem.ts';
import type { Span } from '../base/span.ts';
import { span } from '../base/span.ts';
import type { MapTree, ScalarTree, Tree } from '../syntax/tree.ts';
import { kinds } from './kinds.ts';
import type { RecordShape, Shape } from './shape.ts';

function error(rule: string, at: Span, message: string): Problem {
  return { rule, message, span: at, severity: 'error' };
}

/** The first key of a map: a place small enough to underline for a fault of the whole. */
function headOf(tree: MapTree): Span {
  return tree.entries[0]?.key.span ?? span(tree.span.start, tree.span.start);
}

function didYouMean(suggestion: string | undefined): string {
  return suggestion === undefined ? '' : ` Did you mean "${suggestion}"?`;
}

function renaming(at: Span, suggestion: string | undefined): Pick<Problem, 'fixes'> {
  return suggestion === undefined
    ? {}
    : { fixes: [{ title: `Change to "${suggestion}"`, edits: [{ span: at, text: suggestion }] }] };
}

/** The words of every schema problem. Each names the field and what to write instead. */
export const words = {
  kindMissing: (tree: MapTree): Problem =>
    error(
      'kind-missing',
      headOf(tree),
      `The file does not say what it describes. Begin with "kind:", one of: ${kinds.join(', ')}.`,
    ),
  kindUnknown: (at: Tree, text: string, suggestion: string | undefined): Problem => ({
    ...error(
      'kind-unknown',
      at.span,
      `"${text}" is not a kind of rule file.${didYouMean(suggestion) || ` Kinds are: ${kinds.join(', ')}.`}`,
    ),
    ...renaming(at.span, suggestion),
  }),
  unknownKey: (key: ScalarTree, name: string, suggestion: string | undefined, known: readonly string[]): Problem => ({
    ...error(
      'unknown-field',
      key.span,
      `${capital(name)} has no field "${shortened(key.text)}".${didYouMean(suggestion) || listing(known)}`,
    ),
    ...renaming(key.span, suggestion),
  }),
  keyMissing: (tree: MapTree, name: string, key: string, description: string): Problem =>
    error(
      'field-missing',
      headOf(tree),
      `${capital(name)} needs "${key}"${description === '' ? '.' : `: ${lowerFirst(description)}`}`,
    ),
  requirementEmpty: (tree: MapTree, name: string): Problem =>
    error(
      'requirement-says-nothing',
      headOf(tree),
      `${capital(name)} says nothing yet. Give a number with its bound word (such as "at_least: 4 min"), or "silent: true" if the document says nothing.`,
    ),
  citation: (at: Tree, name: string): Problem =>
    error(
      'wrong-form',
      at.span,
      `${capital(name)} names a statement of this file, such as "s4", or several: [s4, s5].`,
    ),
  unknownWord: (
    at: ScalarTree,
    name: string,
    known: ReadonlyMap<string, string>,
    suggestion: string | undefined,
  ): Problem => ({
    ...error(
      'unknown-word',
      at.span,
      `${capital(name)} can't be "${shortened(at.text)}".${didYouMean(suggestion) || listing([...known.keys()])}`,
    ),
    ...renaming(at.span, suggestion),
  }),
  runTogether: (at: ScalarTree, parts: readonly string[]): Problem =>
    error(
      'words-run-together',
      at.span,
      `"${shortened(at.text)}" is read as one item. Make ${parts.length} of it: a comma after each between brackets, or a line and a dash for each.`,
    ),
  refused: (tree: MapTree, why: string): Problem =>
    error('does-not-fit', headOf(tree), `The file does not have the form its kind needs (${why}).`),
} as const;

const mostOffered = 6;

/** Of several known words the first are offered; a single one would be no choice and is left to be written. */
export function emptyValue(tree: Tree, name: string, known: readonly string[]): Problem {
  const problem = error('empty-value', tree.span, `${capital(name)} is empty. Write a value, or take the line out.`);
  if (known.length < 2) return problem;
  const before = tree.node === 'empty' ? ' ' : '';
  const fixes = known.slice(0, mostOffered).map((word) => ({
    title: `Write "${word}"`,
    edits: [{ span: tree.span, text: `${before}${word}` }],
  }));
  return { ...problem, fixes };
}

/** A value of another form than its field has: a list where one value belongs, text where fields belong, ... */
export function unfitting(tree: Tree, shape: Shape, name: string): Problem {
  const at = tree.node === 'map' ? headOf(tree) : tree.span;
  return error(
    'wrong-form',
    at,
    `${capital(name)} should be ${wanted(shape)}, but ${found(tree, shape)} stands here.${remedy(tree, shape)}`,
  );
}

function wanted(shape: Shape): string {
  switch (shape.form) {
    case 'record':
      return shape.dimension === undefined
        ? `fields of their own (${[...shape.fields.keys()].slice(0, 4).join(', ')}, ...)`
        : 'a bound word and a value, such as {at_least: 4 min, src: s4}';
    case 'list':
      return 'a list: one item a line, each after "- ", or [one, two]';
    case 'table':
      return 'named lines, each with a name, a colon and a value';
    case 'flag':
      return 'true or false';
    case 'quantity':
      return shape.dimension === 'number' ? 'a number' : 'a number with its unit';
    case 'words':
      return `one of: ${[...shape.words.keys()].join(', ')}`;
    case 'citation':
      return 'the id of a statement, such as s4';
    default:
      return 'plain text';
  }
}

function found(tree: Tree, shape: Shape): string {
  switch (tree.node) {
    case 'map':
      return 'a group of fields';
    case 'list':
      return shape.form === 'record' || shape.form === 'table'
        ? 'a list'
        : 'a list (square brackets or dashes make one; put quotation marks around text that holds them)';
    case 'scalar':
      return `"${shortened(tree.text)}"`;
    case 'empty':
      return 'nothing';
  }
}

/** What makes a list, or a word by itself, fit where fields of their own belong. */
function remedy(tree: Tree, shape: Shape): string {
  if (tree.node === 'scalar' && shape.form === 'record') return inAField(tree.text, shape);
  if (tree.node !== 'list' || shape.form !== 'record' || shape.dimension !== undefined) return '';
  const one = shape.fields.has('any_of') ? 'under "any_of:" when one of them is enough' : undefined;
  const all = shape.fields.has('all_of') ? 'under "all_of:" when each of them is done' : undefined;
  const places = [one, all].filter((place) => place !== undefined);
  return places.length === 0 ? ' Write its fields without dashes.' : ` Put the list ${places.join(', ')}.`;
}

/** `{grade: critical}`, `{do: "take the handle off"}`: the field that has this word, else the first that takes any text. */
function inAField(text: string, { fields, dimension }: RecordShape): string {
  if (dimension !== undefined) return '';
  for (const [key, { shape }] of fields)
    if (shape.form === 'words' && shape.words.has(text)) return ` Write {${key}: ${text}}.`;
  const use = fields.get('use')?.shape;
  if (use?.form === 'words' && (text === 'true' || text === 'yes'))
    return ` Say what the page says with one of: ${[...use.words.keys()].map((word) => `{use: ${word}}`).join(', ')}.`;
  const [first] = fields;
  return first?.[1].shape.form === 'text' ? ` Write {${first[0]}: "${shortened(text)}"}.` : '';
}

function listing(known: readonly string[]): string {
  const shown = known.slice(0, 12).join(', ');
  return ` It can be: ${shown}${known.length > 12 ? ` and ${known.length - 12} more` : ''}.`;
}

function shortened(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}...` : text;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
