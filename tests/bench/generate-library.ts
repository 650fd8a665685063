import { Seeded } from './seeded.ts';
import type { Template, Templates } from './templates.ts';
import { instrumentMakers } from './templates.ts';

/**
 * A library of exactly `size` files, the same for the same size: the sample's files again and again with other makers, ids, catalogue
 * numbers and wordings, all of which still refer to each other. One file in fifty has a digit wrong, as real ones have.
 */
export function generateLibrary(
  templates: Templates,
  size: number,
  linesOfDepartment = usualLines,
): ReadonlyMap<string, string> {
  const files = new Map<string, string>();
  const seeded = new Seeded(20250303);
  const add = (template: Template, path: string, text: string): void => {
    if (files.size < size) files.set(path, template.kind === 'library' ? text : withMistake(text, seeded));
  };
  for (const template of templates.once) add(template, template.path, template.text);
  for (let line = 0; files.size < size; line++) {
    const department = Math.floor(line / linesOfDepartment);
    if (line % linesOfDepartment === 0) {
      const rename = renaming(departmentNames(templates, department));
      for (const template of templates.department) add(template, rename(template.path), rename(template.text));
    }
    const names = new Map([
      ...departmentNames(templates, department),
      ...lineNames(templates, line),
      ...makerNames(line),
    ]);
    const rename = renaming(names);
    const reword = rewording(line);
    for (const template of templates.line) add(template, rename(template.path), reword(rename(template.text)));
  }
  return files;
}

/** Lines of instruments that one department's machines serve. */
const usualLines = 40;

/** Every third line is of each maker's first name, so that some makers have hundreds of devices and others a few. */
function makerNames(line: number): ReadonlyMap<string, string> {
  const variant = line % 3 === 0 ? 0 : 1 + (line % 24);
  const letter = String.fromCharCode(65 + variant);
  const names = new Map<string, string>();
  for (const [maker, codes] of Object.entries(instrumentMakers)) {
    const other = variant === 0 ? maker : `${maker}${endings[variant % endings.length] ?? ''}`;
    names.set(maker, other);
    names.set(maker.toLowerCase(), other.toLowerCase());
    for (const code of codes) names.set(`${code}-`, line === 0 ? `${code}-` : `${code}${letter}${line}-`);
  }
  return names;
}

const endings = ['ton', 'by', 'ham', 'worth', 'ford', 'ley', 'wick', 'stead'];

function departmentNames({ department }: Templates, number: number): ReadonlyMap<string, string> {
  return suffixed(department, number === 0 ? '' : `-dep${number}`);
}

function lineNames({ line }: Templates, number: number): ReadonlyMap<string, string> {
  const named = line.filter(({ kind }) => kind !== 'device' && kind !== 'document');
  const names = new Map(suffixed(named, number === 0 ? '' : `-${number}`));
  for (const { kind, id } of line) {
    const [maker = ''] = id.split('-');
    if (kind === 'device')
      names.set(id.slice(maker.length), `${id.slice(maker.length)}${number === 0 ? '' : `-${number}`}`);
  }
  return names;
}

function suffixed(templates: readonly Template[], suffix: string): ReadonlyMap<string, string> {
  return new Map(templates.map(({ id }) => [id, `${id}${suffix}`]));
}

/** Replaces whole names only, the longest that fits, all in one pass, so that a new name is never renamed again. */
function renaming(names: ReadonlyMap<string, string>): (text: string) => string {
  const longestFirst = [...names.keys()].sort((a, b) => b.length - a.length);
  const pattern = longestFirst.map(
    (name) => `${name.startsWith('-') ? '' : '(?<![A-Za-z0-9])'}${name}${name.endsWith('-') ? '' : '(?![A-Za-z0-9])'}`,
  );
  const all = new RegExp(pattern.join('|'), 'g');
  return (text) => text.replace(all, (name) => names.get(name) ?? name);
}

/** Pages, volumes and names differ from line to line, alike in all files of the line. */
function rewording(line: number): (text: string) => string {
  const pages = line % 4;
  const volume = (line % 5) * 5;
  return (text) =>
    text
      .replace(/\b(pages?): (\d+)/g, (_, key: string, page: string) => `${key}: ${Number(page) + pages}`)
      .replace(/\b(\d+) mL(?!\/)/g, (_, amount: string) => `${Number(amount) + volume} mL`)
      .replace(/^(name|title): "?([^"\n]*)"?$/gm, (_, key: string, name: string) => `${key}: "${name}, line ${line}"`);
}

function withMistake(text: string, seeded: Seeded): string {
  if (seeded.next() > 0.02) return text;
  const from = seeded.below(text.length);
  const digit = String(seeded.below(10));
  return text.slice(0, from) + text.slice(from).replace(/\d/, digit);
}
