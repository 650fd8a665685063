/**
 * bench/mutations: the corrected sample departments with one mistake of a tired person at a time, to see which mistakes are found. It
 * knows how people slip, and must not know any rule: no mistake is chosen or left out by whether a rule would find it.
 */
import type { FileId } from '../../../server/src/base/brand.ts';
import { readTree } from '../../../server/src/syntax/read.ts';
import type { ListTree, MapEntry, MapTree, ScalarTree, Tree } from '../../../server/src/syntax/tree.ts';

export interface RuleFile {
  /** Name of the sample library. */
  readonly library: string;
  readonly file: FileId;
  readonly text: string;
  readonly kind: string;
  readonly id: string;
  readonly tree: MapTree;
}

/** One value in a file, with the way to it. */
export interface Site {
  readonly of: RuleFile;
  readonly path: string;
  /** The key that holds the value; for an item, the key that holds its list. */
  readonly key: string;
  readonly value: Tree;
  readonly holder: MapTree | ListTree;
  readonly index: number;
  /** The value that holds the holder, one level up; undefined at the top. */
  readonly above: Site | undefined;
}

/** The other files of the library that the file belongs to, for mistakes that mix two of them up. */
export class Department {
  readonly files: readonly RuleFile[];

  constructor(library: string, texts: ReadonlyMap<FileId, string>) {
    this.files = [...texts].map(([file, text]) => ruleFile(library, file, text));
  }

  ids(kind: string): readonly string[] {
    return this.files.filter((file) => file.kind === kind).map(({ id }) => id);
  }

  file(kind: string, id: string): RuleFile | undefined {
    return this.files.find((file) => file.kind === kind && file.id === id);
  }

  /** Every cycle of the machines of a kind, as its map. */
  cycles(kind: string): readonly MapTree[] {
    return this.files
      .filter((file) => file.kind === kind)
      .flatMap(({ tree }) => itemsOf(valueAt(tree, 'cycles')))
      .filter((item) => item.node === 'map');
  }
}

function ruleFile(library: string, file: FileId, text: string): RuleFile {
  const { tree } = readTree(text);
  if (tree?.node !== 'map') throw new Error(`${library}/${file} is no map`);
  return { library, file, text, tree, kind: textAt(tree, 'kind') ?? '', id: textAt(tree, 'id') ?? '' };
}

export function valueAt(tree: Tree | undefined, key: string): Tree | undefined {
  return tree?.node === 'map' ? tree.entries.find((entry) => entry.key.text === key)?.value : undefined;
}

export function textAt(tree: Tree | undefined, key: string): string | undefined {
  const value = valueAt(tree, key);
  return value?.node === 'scalar' ? value.text : undefined;
}

export function itemsOf(tree: Tree | undefined): readonly Tree[] {
  return tree?.node === 'list' ? tree.items : [];
}

export function scalarsOf(tree: Tree | undefined): readonly ScalarTree[] {
  if (tree?.node === 'scalar') return [tree];
  return itemsOf(tree).filter((item) => item.node === 'scalar');
}

export function entryOf(site: Site): MapEntry | undefined {
  return site.holder.node === 'map' ? site.holder.entries[site.index] : undefined;
}

/** Every value of the file, outer ones first. */
export function sitesOf(of: RuleFile): readonly Site[] {
  const sites: Site[] = [];
  collect(of, of.tree, '', undefined, sites);
  return sites;
}

function collect(of: RuleFile, holder: Tree, path: string, above: Site | undefined, into: Site[]): void {
  if (holder.node === 'map') {
    for (const [index, { key, value }] of holder.entries.entries()) {
      const site = {
        of,
        path: path === '' ? key.text : `${path}.${key.text}`,
        key: key.text,
        value,
        holder,
        index,
        above,
      };
      into.push(site);
      collect(of, value, site.path, site, into);
    }
  } else if (holder.node === 'list') {
    for (const [index, value] of holder.items.entries()) {
      const site = { of, path: `${path}[${index}]`, key: above?.key ?? '', value, holder, index, above };
      into.push(site);
      collect(of, value, site.path, site, into);
    }
  }
}

/** True when the value lies below a key of that name. */
export function isBelow(site: Site, key: string): boolean {
  for (let at = site.above; at !== undefined; at = at.above) if (at.key === key) return true;
  return false;
}
