import type { FileId } from '../base/brand.ts';
import type { Library } from '../library/library.ts';
import { portable } from './cells.ts';
import { changeField } from './change-field.ts';
import { addLine, cutLine } from './change-lines.ts';
import type { Column } from './tables.ts';
import { tableSpecs } from './tables.ts';
import type { SheetRow, SheetTable } from './tables-of.ts';
import { tablesOf } from './tables-of.ts';

/** A table as it was read: its name (of the sheet or file) and its cells as meant, headings first. */
export interface GivenTable {
  readonly name: string;
  readonly rows: readonly (readonly string[])[];
}

/** One difference between the sheet and the library, for people. */
export interface CellChange {
  /** `Devices, row 12, "Name"`. */
  readonly where: string;
  /** What it belongs to: the id of a device, set or document. */
  readonly of: string;
  readonly before: string;
  readonly after: string;
}

export interface TakenIn {
  /** New texts of the files that change. */
  readonly texts: ReadonlyMap<FileId, string>;
  readonly changes: readonly CellChange[];
  /** Each keeps everything from being written. */
  readonly mistakes: readonly string[];
  readonly notices: readonly string[];
}

/** What tables that came from `tablesOf` and went through a spreadsheet would change in the library. Nothing is written. */
export function takeIn(given: readonly GivenTable[], library: Library): TakenIn {
  const work = new TakingIn(library);
  for (const table of given) work.take(table);
  return work.taken();
}

interface Heading {
  readonly column: Column;
  /** Index among the columns of the spec, and among those of the sheet. */
  readonly own: number;
  readonly given: number;
}

class TakingIn {
  readonly #library: Library;
  readonly #tables: readonly SheetTable[];
  readonly #byId = new Map<SheetTable, ReadonlyMap<string, readonly SheetRow[]>>();
  readonly #texts = new Map<FileId, string>();
  readonly #changes: CellChange[] = [];
  readonly #mistakes: string[] = [];
  readonly #notices: string[] = [];

  constructor(library: Library) {
    this.#library = library;
    this.#tables = tablesOf(library);
  }

  taken(): TakenIn {
    return { texts: this.#texts, changes: this.#changes, mistakes: this.#mistakes, notices: this.#notices };
  }

  take({ name, rows }: GivenTable): void {
    const [head = [], ...body] = rows;
    const table = this.#tables.find(({ spec }) => headingsOf(spec.columns, head).keys === 'complete');
    if (table === undefined) {
      this.#mistakes.push(`"${name}" is no table of this library: its first row must hold ${wantedKeys()}.`);
      return;
    }
    const { headings, unknown } = headingsOf(table.spec.columns, head);
    for (const title of unknown) this.#notices.push(`"${name}": the column "${title}" is not taken over.`);
    if (table.spec.rows === 'members') this.#takeLines(name, table, headings, body);
    else this.#takeThings(name, table, headings, body);
  }

  #takeThings(name: string, table: SheetTable, headings: readonly Heading[], body: GivenTable['rows']): void {
    const seen = new Set<string>();
    for (const [index, cells] of body.entries()) {
      const id = keyCell('id', headings, cells);
      const place = `${name}, row ${index + 2}`;
      if (cells.every((cell) => cell.trim() === '')) continue;
      const row = this.#rowFor(table, id, place, seen);
      if (row !== undefined) this.#takeRow(place, row, headings, cells, []);
    }
  }

  #rowsOf(table: SheetTable, id: string): readonly SheetRow[] {
    let byId = this.#byId.get(table);
    if (byId === undefined) {
      byId = grouped(table.rows);
      this.#byId.set(table, byId);
    }
    return byId.get(id) ?? [];
  }

  #rowFor(table: SheetTable, id: string, place: string, seen: Set<string>): SheetRow | undefined {
    const rows = this.#rowsOf(table, id);
    const [row] = rows;
    if (seen.has(id)) this.#mistakes.push(`${place}: "${id}" stands in a second row. Leave one of them.`);
    else if (row === undefined)
      this.#mistakes.push(
        `${place}: the library has no ${table.spec.kind} "${id}". A new one gets a file of its own; an id is changed by renaming it there.`,
      );
    else if (rows.length > 1)
      this.#mistakes.push(`${place}: two files have the id "${id}", so it is not clear which is meant.`);
    else if (seen.add(id)) return row;
    return undefined;
  }

  /** `way`: from the root of the file to what the row is about. */
  #takeRow(
    place: string,
    row: SheetRow,
    headings: readonly Heading[],
    cells: readonly string[],
    way: readonly (string | number)[],
  ): void {
    for (const { column, own, given } of headings) {
      if (column.is !== 'text' && column.is !== 'list') continue;
      const before = row.cells[own];
      const after = portable(cells[given] ?? '');
      if (after === portable(before ?? '')) continue;
      const where = `${place}, "${column.title}"`;
      if (before === undefined) this.#mistakes.push(`${where}: what the file says here does not fit into a cell.`);
      else
        this.#change(row, where, { before, after }, (file, text) =>
          changeField(file, text, [...way, ...column.path], after),
        );
    }
  }

  #change(
    row: SheetRow,
    where: string,
    { before, after }: { before: string; after: string },
    make: (file: FileId, text: string) => { readonly text: string } | { readonly why: string },
  ): void {
    const text = this.#texts.get(row.file) ?? this.#library.record(row.file)?.text ?? '';
    const made = make(row.file, text);
    if ('why' in made) {
      this.#mistakes.push(`${where}: ${shown(before)} cannot become ${shown(after)}: ${made.why}`);
      return;
    }
    if (made.text === text) return;
    this.#texts.set(row.file, made.text);
    this.#changes.push({ where, of: row.id, before, after });
  }

  /** Sets of which no line is there are left alone; of the others a missing line is one taken out. */
  #takeLines(name: string, table: SheetTable, headings: readonly Heading[], body: GivenTable['rows']): void {
    const bySet = new Map<string, { place: string; cells: readonly string[] }[]>();
    for (const [index, cells] of body.entries()) {
      if (cells.every((cell) => cell.trim() === '')) continue;
      const id = keyCell('id', headings, cells);
      bySet.set(id, [...(bySet.get(id) ?? []), { place: `${name}, row ${index + 2}`, cells }]);
    }
    for (const [id, lines] of bySet) this.#takeSet(id, lines, table, headings);
  }

  #takeSet(
    id: string,
    lines: readonly { place: string; cells: readonly string[] }[],
    table: SheetTable,
    headings: readonly Heading[],
  ): void {
    const rows = this.#rowsOf(table, id);
    const [first] = rows;
    const place = lines[0]?.place ?? '';
    if (first === undefined || rows.some(({ file }) => file !== first.file)) {
      this.#mistakes.push(
        `${place}: the library has no one set "${id}" with contents. A new set gets a file of its own.`,
      );
      return;
    }
    const left = new Set(rows);
    const added: (typeof lines)[number][] = [];
    for (const one of lines) {
      const line = keyCell('line', headings, one.cells);
      const row = rows.find((known) => String(known.line) === line);
      if (line === '') added.push(one);
      else if (row === undefined || !left.delete(row))
        this.#mistakes.push(`${one.place}: set "${id}" has no line "${line}" left. Leave "Line" empty for a new line.`);
      else this.#takeRow(one.place, row, headings, one.cells, ['members', (row.line ?? 1) - 1]);
    }
    for (const { place: where, cells } of added) this.#add(where, first, headings, cells);
    for (const row of [...left].reverse()) this.#cut(place, row, headings);
  }

  #add(place: string, set: SheetRow, headings: readonly Heading[], cells: readonly string[]): void {
    const fields = headings.flatMap(({ column, given }): (readonly [string, string])[] => {
      const cell = portable(cells[given] ?? '');
      const key = column.is === 'text' || column.is === 'list' ? column.path[0] : undefined;
      return typeof key === 'string' && cell !== '' ? [[key, cell]] : [];
    });
    const after = fields.map(([, cell]) => cell).join(', ');
    if (fields.length === 0) this.#mistakes.push(`${place}: a new line needs a device or words.`);
    else this.#change(set, `${place}, new line`, { before: '', after }, (file, text) => addLine(file, text, fields));
  }

  #cut(place: string, row: SheetRow, headings: readonly Heading[]): void {
    const cells = headings.filter(({ column }) => column.is === 'text' || column.is === 'list');
    const before = cells.flatMap(({ own }) => row.cells[own] || []).join(', ');
    const where = `${place.split(', row')[0]}, set "${row.id}", line ${row.line} taken out`;
    this.#change(row, where, { before, after: '' }, (file, text) => cutLine(file, text, row.line ?? 0));
  }
}

function grouped(rows: readonly SheetRow[]): ReadonlyMap<string, readonly SheetRow[]> {
  const byId = new Map<string, SheetRow[]>();
  for (const row of rows) {
    const known = byId.get(row.id);
    if (known === undefined) byId.set(row.id, [row]);
    else known.push(row);
  }
  return byId;
}

function shown(cell: string): string {
  return cell === '' ? 'nothing' : `"${cell.slice(0, 100)}"`;
}

function keyCell(is: 'id' | 'line', headings: readonly Heading[], cells: readonly string[]): string {
  const heading = headings.find(({ column }) => column.is === is);
  return heading === undefined ? '' : (cells[heading.given] ?? '').trim();
}

function headingsOf(
  columns: readonly Column[],
  head: readonly string[],
): { headings: readonly Heading[]; unknown: readonly string[]; keys: 'complete' | 'lacking' } {
  const titles = head.map((title) => title.trim().toLowerCase());
  const headings = columns.flatMap((column, own) => {
    const given = titles.indexOf(column.title.toLowerCase());
    return given < 0 ? [] : [{ column, own, given }];
  });
  const known = new Set(headings.map(({ given }) => given));
  const unknown = head.filter((title, index) => title.trim() !== '' && !known.has(index));
  const keys = columns.filter(({ is }) => is === 'id' || is === 'line');
  const found = headings.filter(({ column }) => keys.includes(column));
  return { headings, unknown, keys: found.length === keys.length ? 'complete' : 'lacking' };
}

function wantedKeys(): string {
  const keys = tableSpecs.map(({ columns }) =>
    columns
      .filter(({ is }) => is === 'id' || is === 'line')
      .map(({ title }) => `"${title}"`)
      .join(' and '),
  );
  return `${keys.slice(0, -1).join(', ')} or ${keys.at(-1)}`;
}
