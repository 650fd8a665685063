import type { FileId } from '../base/brand.ts';
import type { FileRecord } from '../library/file-record.ts';
import { entityKey, kindKey } from '../library/keys.ts';
import type { Library } from '../library/library.ts';
import { readTree } from '../syntax/read.ts';
import type { MapTree, Tree } from '../syntax/tree.ts';
import { portable } from './cells.ts';
import { cellOf, treeAt } from './fields.ts';
import { type Column, type TableSpec, tableSpecs } from './tables.ts';

/** One row of a table with where it comes from. */
export interface SheetRow {
  readonly file: FileId;
  readonly id: string;
  /** Of a set's contents: which line, from 1. */
  readonly line?: number;
  /** One a column; undefined where what the file says is too rich for a cell. */
  readonly cells: readonly (string | undefined)[];
}

export interface SheetTable {
  readonly spec: TableSpec;
  readonly rows: readonly SheetRow[];
}

/** All tables of a library, rows in the order of files. Files that can't be read have none. */
export function tablesOf(library: Library): readonly SheetTable[] {
  return tableSpecs.map((spec) => ({
    spec,
    rows: library.exporters(kindKey(spec.kind)).flatMap((record) => rowsOf(record, spec, library)),
  }));
}

/** Headings and cells as they stand in the sheet. */
export function cellsOf({ spec, rows }: SheetTable): readonly (readonly string[])[] {
  return [
    spec.columns.map(({ title }) => title),
    ...rows.map(({ cells }) => cells.map((cell) => portable(cell ?? ''))),
  ];
}

export function rowsOf(record: FileRecord, spec: TableSpec, library: Library): readonly SheetRow[] {
  const { tree } = readTree(record.text);
  const { id, file } = record;
  if (tree?.node !== 'map' || id === undefined || record.entity === undefined) return [];
  if (spec.rows === 'things')
    return [{ file, id, cells: spec.columns.map((column) => cellIn(tree, column, record, library)) }];
  const members = treeAt(tree, ['members']);
  const items = members?.node === 'list' ? members.items : [];
  return items.map((item, index) => ({
    file,
    id,
    line: index + 1,
    cells: spec.columns.map((column) =>
      column.is === 'line'
        ? String(index + 1)
        : cellIn(item.node === 'map' ? item : tree, column, record, library, item),
    ),
  }));
}

function cellIn(
  tree: MapTree,
  column: Column,
  { id, file }: FileRecord,
  library: Library,
  item?: Tree,
): string | undefined {
  switch (column.is) {
    case 'id':
      return id ?? '';
    case 'line':
      return '';
    case 'shown':
      return column.shows === 'file' ? file : deviceName(item, library);
    default:
      return item !== undefined && item.node !== 'map' ? undefined : cellOf(treeAt(tree, column.path));
  }
}

function deviceName(item: Tree | undefined, library: Library): string {
  const device = item === undefined ? undefined : cellOf(treeAt(item, ['device']));
  const [record] = device === undefined || device === '' ? [] : library.exporters(entityKey('device', device));
  const name = record?.entity as { readonly name?: { readonly text?: string } } | undefined;
  return name?.name?.text ?? '';
}
