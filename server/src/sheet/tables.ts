/**
 * sheet/: what a library's files say as tables that an educator can work on in a spreadsheet, and the way back: cells that differ become the
 * smallest edits of the files. It must not know the disk, the form of workbooks, rules or editors: tables in, tables and texts out.
 */
import type { Kind } from '../schema/kinds.ts';

/** One column. `id` and `line` say which thing a row is about; `shown` helps the reader and is never taken back. */
export type Column = {
  readonly title: string;
  /** In characters. */
  readonly width: number;
} & (
  | { readonly is: 'id' | 'line' }
  | { readonly is: 'shown'; readonly shows: 'file' | 'device-name' }
  | { readonly is: 'text' | 'list'; readonly path: readonly (string | number)[] }
);

export interface TableSpec {
  /** Name of its file, without ending. */
  readonly name: string;
  /** Name of its sheet. */
  readonly title: string;
  readonly kind: Kind;
  /** `members`: a row for each line of a set's contents; paths are then those of a line. */
  readonly rows: 'things' | 'members';
  readonly columns: readonly Column[];
}

function text(title: string, width: number, ...path: (string | number)[]): Column {
  return { title, width, is: 'text', path };
}

function list(title: string, width: number, ...path: (string | number)[]): Column {
  return { title, width, is: 'list', path };
}

const file: Column = { title: 'File', width: 40, is: 'shown', shows: 'file' };

/** Every table, in the order of the sheets. The titles of `id` columns tell the tables apart. */
export const tableSpecs: readonly TableSpec[] = [
  {
    name: 'devices',
    title: 'Devices',
    kind: 'device',
    rows: 'things',
    columns: [
      { title: 'Device id', width: 32, is: 'id' },
      text('Name', 40, 'name'),
      text('Maker', 20, 'maker'),
      list('Catalogue numbers', 30, 'covers'),
      list('Except', 16, 'excludes'),
      text('Document', 18, 'sources', 0, 'doc'),
      text('Revision', 10, 'sources', 0, 'rev'),
      list('Market', 12, 'market'),
      text('Class', 16, 'class'),
      text('Pieces in stock', 14, 'stock'),
      file,
    ],
  },
  {
    name: 'sets',
    title: 'Sets',
    kind: 'set',
    rows: 'things',
    columns: [
      { title: 'Set id', width: 20, is: 'id' },
      text('Name', 36, 'name'),
      text('Owner', 18, 'owner'),
      text('Packaging', 22, 'packaging'),
      text('Sterilizer cycle', 20, 'cycle'),
      text('Washer cycle', 16, 'washer_cycle'),
      text('Measured mass', 14, 'mass'),
      text('Weighed on', 12, 'mass_measured'),
      text('Priority', 10, 'priority'),
      text('Uses a month', 12, 'in_use_month'),
      text('How many', 10, 'stock'),
      file,
    ],
  },
  {
    name: 'set-contents',
    title: 'Set contents',
    kind: 'set',
    rows: 'members',
    columns: [
      { title: 'Set', width: 20, is: 'id' },
      { title: 'Line', width: 6, is: 'line' },
      text('Device', 36, 'device'),
      { title: 'Name of the device', width: 40, is: 'shown', shows: 'device-name' },
      text('Quantity', 10, 'qty'),
      text('As on the count sheet', 30, 'text'),
      text('Catalogue number', 18, 'catalogue'),
      text('Level', 8, 'level'),
      text('Basket', 14, 'basket'),
      list('Prepared', 24, 'instructions'),
      list('Tests', 30, 'tests'),
      text('Note', 30, 'note'),
    ],
  },
  {
    name: 'documents',
    title: 'Documents',
    kind: 'document',
    rows: 'things',
    columns: [
      { title: 'Document id', width: 24, is: 'id' },
      text('Document number', 20, 'doc'),
      text('Revision', 10, 'rev'),
      text('Title', 44, 'title'),
      text('Issued by', 20, 'maker'),
      text('Type', 20, 'type'),
      text('Status', 12, 'status'),
      text('Issued on', 12, 'issued'),
      text('In force from', 12, 'effective'),
      text('Received on', 12, 'received'),
      text('Replaces revision', 12, 'supersedes'),
      list('Covers', 30, 'covers'),
      text('Pages', 8, 'pages'),
      file,
    ],
  },
];
