import { unzipSync, zipSync } from 'fflate';
import type { CellValue } from 'read-excel-file/universal';
import readXlsxFile from 'read-excel-file/universal';
import writeXlsxFile from 'write-excel-file/universal';
import { fromCell, toCell } from '../../sheet/cells.ts';
import type { GivenTable } from '../../sheet/take-in.ts';
import { harmlessArchive } from './archive.ts';

export interface WorkbookSheet {
  readonly title: string;
  /** In characters, one a column. */
  readonly widths: readonly number[];
  /** Headings first. */
  readonly rows: readonly (readonly string[])[];
}

export type WorkbookRead = { readonly tables: readonly GivenTable[] } | { readonly why: string };

/** The part of the program that knows workbooks: a bundle of its own, loaded by whoever has one to read or write. */
export interface WorkbookPart {
  /** A workbook in which every cell is text, headings stay in sight, and the bytes depend on nothing but the cells. */
  workbookOf(sheets: readonly WorkbookSheet[]): Promise<Uint8Array>;
  readWorkbook(bytes: Uint8Array): Promise<WorkbookRead>;
}

export async function workbookOf(sheets: readonly WorkbookSheet[]): Promise<Uint8Array> {
  const made = writeXlsxFile(
    sheets.map(({ title, widths, rows }) => ({
      sheet: title,
      stickyRowsCount: 1,
      columns: widths.map((width) => ({ width })),
      data: rows.map((row, index) => row.map((text) => textCell(text, index))),
    })),
  );
  return timeless(new Uint8Array(await (await made.toBlob()).arrayBuffer()));
}

/** Of the type text, so that nothing becomes a date, a number or a formula. */
function textCell(text: string, row: number) {
  if (text === '') return null;
  const cell = { type: String, value: escaped(toCell(text, 'text')), format: '@', wrap: true } as const;
  return row === 0 ? { ...cell, fontWeight: 'bold' as const } : cell;
}

/** Workbooks spell signs as _x0041_; text that looks so is kept from being read so. */
function escaped(text: string): string {
  return text.replace(/_(?=x[0-9A-Fa-f]{4}_)/g, '_x005F_');
}

/** Archives note when each part was made: here always the same day. */
function timeless(bytes: Uint8Array): Uint8Array {
  return zipSync(unzipSync(bytes), { mtime: new Date(2000, 0, 1) });
}

export async function readWorkbook(bytes: Uint8Array): Promise<WorkbookRead> {
  const archive = harmlessArchive(bytes);
  if ('why' in archive) return archive;
  try {
    const sheets = await readXlsxFile(archive.bytes.buffer, { trim: false, parseNumber: plainNumber });
    return {
      tables: sheets.map(({ sheet, data }) => ({ name: sheet, rows: data.map((row) => row.map(textOf)) })),
    };
  } catch {
    return { why: 'it is no workbook, or it is damaged' };
  }
}

/** As it is stored, but never in powers of ten. */
function plainNumber(stored: string): string {
  return /^-?\d{1,15}(?:\.\d{1,15})?$/.test(stored) ? stored : String(Number(stored));
}

function textOf(value: CellValue | null): string {
  if (value === null) return '';
  if (typeof value === 'string') return fromCell(value);
  return value instanceof Date ? value.toISOString().slice(0, 10) : String(value);
}
