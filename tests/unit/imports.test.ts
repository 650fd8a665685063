import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = new URL('../..', import.meta.url).pathname;

/** Lower may not know higher. Folders in one row stand beside each other and may not know each other. */
const layers: readonly (readonly string[])[] = [
  ['base', 'panel'],
  ['quantity'],
  ['physics'],
  ['syntax'],
  ['schema'],
  ['model'],
  ['library'],
  ['judge'],
  ['route'],
  ['rules'],
  ['check'],
  ['revision'],
  ['print', 'editor', 'report', 'sheet'],
  ['host'],
  ['lsp', 'cli'],
];

/** The parts of the editor, lower ones first; the answers of the editor themselves stand in its folder and may know all of them. */
const partsOfEditor = ['writing', 'words', 'naming', 'page', 'completion', 'reading', 'items', 'walk', 'set-sheet', ''];

/** Who alone may import a package or a part of Node. Names ending in `*` are beginnings. */
const soleImporters: Readonly<Record<string, readonly string[]>> = {
  yaml: ['syntax'],
  ajv: ['schema'],
  'node:fs': ['host'],
  'node:child_process': ['host'],
  'vscode*': ['lsp', 'client'],
};

interface Import {
  readonly from: string;
  readonly to: string;
}

interface Source {
  readonly path: string;
  readonly text: string;
  /** `cli`, `base`, ... or `client`. */
  readonly folder: string;
  readonly imports: readonly Import[];
}

function sourcesUnder(folder: string): readonly Source[] {
  const entries = readdirSync(join(root, folder), { withFileTypes: true, recursive: true });
  return entries
    .filter((entry) => entry.isFile() && /\.(ts|js|mjs)$/.test(entry.name) && !/\.generated\./.test(entry.name))
    .map((entry) => posix.relative(root, join(entry.parentPath, entry.name)))
    .sort()
    .map(sourceAt);
}

const importLine =
  /^(?:import|export)\b[^'"\n;]*\bfrom\s*['"]([^'"\n]+)['"]|^import\s*['"]([^'"\n]+)['"]|\b(?:import|require)\(\s*['"]([^'"\n]+)['"]/gm;

function sourceAt(path: string): Source {
  const text = readFileSync(join(root, path), 'utf8');
  // Import lists over several lines are joined, so that each import is one line.
  const joined = text.replace(/\{[^{}]{0,4000}\}(?=\s*from\s)/g, (names) => names.replace(/\s+/g, ' '));
  const imports = [...joined.matchAll(importLine)].map((found) => ({
    from: path,
    to: found[1] ?? found[2] ?? found[3] ?? '',
  }));
  const folder = path.startsWith('client/') ? 'client' : (/^server\/src\/([^/]+)\//.exec(path)?.[1] ?? '');
  return { path, text, folder, imports };
}

const sources = [...sourcesUnder('server/src'), ...sourcesUnder('client/src'), ...sourcesUnder('client/page')];

function layerOf(folder: string): number {
  return layers.findIndex((row) => row.includes(folder));
}

/** The folder under server/src that a relative import leads to; undefined for packages. */
function targetFolder({ from, to }: Import): string | undefined {
  if (!to.startsWith('.')) return undefined;
  const path = posix.join(posix.dirname(from), to);
  return /^server\/src\/([^/]+)\//.exec(path)?.[1] ?? path.split('/').slice(0, 1).join('/');
}

/** Data outside the source folders that a file may take in. */
const data: readonly RegExp[] = [/^server\/src\/cli\/version\.ts .*package\.json$/, /\.md$/, /\.json$/];

function wrongArrow(source: Source, one: Import): string | undefined {
  const target = targetFolder(one);
  const arrow = `${one.from} imports ${one.to}`;
  if (target === undefined) return wrongPackage(source, one.to) ? arrow : undefined;
  if (target === source.folder || data.some((allowed) => allowed.test(`${one.from} ${one.to}`))) return undefined;
  // What server and panels tell each other has one definition.
  if (source.folder === 'client') return target === 'client' || target === 'panel' ? undefined : arrow;
  const from = layerOf(source.folder);
  const to = layerOf(target);
  if (from < 0 || to < 0 || to >= from) return arrow;
  return target === 'host' && source.folder !== 'lsp' && source.folder !== 'cli' ? arrow : undefined;
}

/** `undefined` outside the editor. */
function partOfEditor(path: string): number | undefined {
  const [, part = ''] = /^server\/src\/editor\/(?:([^/]+)\/)?[^/]+$/.exec(path) ?? [undefined, undefined];
  return path.startsWith('server/src/editor/') ? partsOfEditor.indexOf(part) : undefined;
}

function isUpwardInEditor({ from, to }: Import): boolean {
  const [part, target] = [partOfEditor(from), partOfEditor(posix.join(posix.dirname(from), to))];
  if (!to.startsWith('.') || part === undefined || target === undefined) return false;
  return part < 0 || target < 0 || target > part;
}

function wrongPackage(source: Source, name: string): boolean {
  for (const [owned, owners] of Object.entries(soleImporters)) {
    const is = owned.endsWith('*')
      ? name.startsWith(owned.slice(0, -1))
      : name === owned || name.startsWith(`${owned}/`);
    if (is) return !owners.includes(source.folder);
  }
  const isBelowHost = layerOf(source.folder) >= 0 && layerOf(source.folder) < layerOf('host');
  return isBelowHost && name.startsWith('node:');
}

/** Files that need each other, each path through them as one line; a file of types that both need breaks such a circle. */
function circles(): readonly string[] {
  const known = new Map(sources.map((source) => [source.path, source]));
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (path: string, way: readonly string[]): void => {
    const again = way.indexOf(path);
    if (again >= 0) found.push([...way.slice(again), path].join(' -> '));
    if (again >= 0 || done.has(path)) return;
    for (const { to } of known.get(path)?.imports ?? []) {
      const target = posix.join(posix.dirname(path), to);
      if (to.startsWith('.') && known.has(target)) visit(target, [...way, path]);
    }
    done.add(path);
  };
  for (const { path } of sources) visit(path, []);
  return found;
}

describe('imports', () => {
  it('are found at all', () => {
    expect(sources.length).toBeGreaterThan(50);
    expect(sources.flatMap(({ imports }) => imports).length).toBeGreaterThan(200);
  });

  it('lie in a folder whose place in the order is known', () => {
    const strangers = sources
      .filter(({ folder }) => folder !== 'client' && layerOf(folder) < 0)
      .map(({ path }) => path);
    expect(strangers).toEqual([]);
  });

  it('run downward only, and packages are imported by their one owner', () => {
    const wrong = sources.flatMap((source) => source.imports.map((one) => wrongArrow(source, one)));
    expect(wrong.filter((arrow) => arrow !== undefined)).toEqual([]);
  });

  it('run downward among the parts of the editor too', () => {
    expect(sources.flatMap(({ imports }) => imports.filter(isUpwardInEditor))).toEqual([]);
  });

  it('name their files with the ending', () => {
    const wrong = sources
      .flatMap(({ imports }) => imports)
      .filter(({ to }) => to.startsWith('.') && !/\.(ts|js|json|md)$/.test(to));
    expect(wrong).toEqual([]);
  });

  it('lead in no circle: no file needs another that needs it, not even by way of others', () => {
    expect(circles()).toEqual([]);
  });
});

describe('below host/', () => {
  const below = sources.filter(({ folder }) => layerOf(folder) >= 0 && layerOf(folder) < layerOf('host'));

  it('nothing asks the clock, the network or the process', () => {
    const reaching = /\bDate\.now\(|\bnew Date\(\)|\bperformance\.now\(|\bfetch\(|\bXMLHttpRequest\b|\bprocess\.\w/;
    expect(below.filter(({ text }) => reaching.test(withoutComments(text))).map(({ path }) => path)).toEqual([]);
  });
});

function withoutComments(text: string): string {
  return text.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|\s)\/\/.*$/gm, '$1');
}

/** A parameter typed boolean, in a parameter list (fields of interfaces end in a semicolon and follow one or a brace). */
const booleanParameter = /[(,]\s*(?:readonly\s+)?\w+\??:\s*boolean\s*[,)=]/;

describe('every source file', () => {
  const pathsWhere = (wrong: (source: Source) => boolean): readonly string[] =>
    sources.filter(wrong).map(({ path }) => path);

  it('has at most 400 lines', () => {
    expect(pathsWhere(({ text }) => text.trimEnd().split('\n').length > 400)).toEqual([]);
  });

  it('exports by name', () => {
    expect(
      pathsWhere(({ text }) => /^export default\b|\bexport \{[^}]*\bas default\b/m.test(withoutComments(text))),
    ).toEqual([]);
  });

  it('is no barrel', () => {
    expect(pathsWhere(({ text }) => /^export (\*|\{[^}]*\}) from /m.test(withoutComments(text)))).toEqual([]);
  });

  it('types everything: no any, no ignored errors', () => {
    const untyped = /(?::|<|\bas|\|)\s*any\b(?!\w)|@ts-ignore|@ts-expect-error|@ts-nocheck/;
    expect(pathsWhere(({ text }) => untyped.test(withoutStrings(withoutComments(text)) + directives(text)))).toEqual(
      [],
    );
  });

  it('takes no boolean parameters', () => {
    expect(pathsWhere(({ text }) => booleanParameter.test(withoutComments(text)))).toEqual([]);
  });
});

function directives(text: string): string {
  return (text.match(/@ts-\w+/g) ?? []).join(' ');
}

function withoutStrings(text: string): string {
  return text.replace(/'(?:[^'\\\n]|\\.)*'|"(?:[^"\\\n]|\\.)*"|`(?:[^`\\]|\\.)*`/g, "''");
}

describe('these tests themselves', () => {
  it('see a boolean parameter', () => {
    expect(booleanParameter.test('function f(a: string, on: boolean) {')).toBe(true);
    expect(booleanParameter.test('(on?: boolean) => 1')).toBe(true);
    expect(booleanParameter.test('interface A {\n  readonly on: boolean;\n}')).toBe(false);
    expect(booleanParameter.test('function is(a: string): boolean {')).toBe(false);
  });

  it('see an upward and a sideways arrow, and a foreign package', () => {
    const at = (from: string, to: string) => {
      const folder = /^server\/src\/([^/]+)\//.exec(from)?.[1] ?? 'client';
      return wrongArrow({ path: from, text: '', folder, imports: [] }, { from, to }) !== undefined;
    };
    expect(at('server/src/base/a.ts', '../model/b.ts')).toBe(true);
    expect(at('server/src/report/a.ts', '../editor/b.ts')).toBe(true);
    expect(at('server/src/editor/a.ts', '../host/b.ts')).toBe(true);
    expect(at('server/src/cli/a.ts', '../lsp/b.ts')).toBe(true);
    expect(at('server/src/rules/source/a.ts', 'yaml')).toBe(true);
    expect(at('server/src/cli/a.ts', 'node:fs')).toBe(true);
    expect(at('server/src/model/a.ts', 'node:path')).toBe(true);
    expect(at('client/src/a.ts', '../../server/src/base/span.ts')).toBe(true);
    expect(at('server/src/cli/a.ts', '../host/b.ts')).toBe(false);
    expect(at('server/src/rules/source/a.ts', '../../model/b.ts')).toBe(false);
    expect(isUpwardInEditor({ from: 'server/src/editor/reading/a.ts', to: '../walk/b.ts' })).toBe(true);
    expect(isUpwardInEditor({ from: 'server/src/editor/reading/a.ts', to: '../a.ts' })).toBe(true);
    expect(isUpwardInEditor({ from: 'server/src/editor/stranger/a.ts', to: '../walk/b.ts' })).toBe(true);
    expect(isUpwardInEditor({ from: 'server/src/editor/walk/a.ts', to: '../reading/b.ts' })).toBe(false);
  });
});
