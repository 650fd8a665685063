import { readdirSync, statSync } from 'node:fs';
import { basename, join } from 'node:path';
import { csvLimit, readCsv } from '../sheet/csv.ts';
import type { GivenTable } from '../sheet/take-in.ts';
import { decodeBytes } from '../syntax/decode.ts';
import { readBytes } from './read-text.ts';
import type { WorkbookPart } from './workbook/workbook.ts';

export type TablesRead = { readonly tables: readonly GivenTable[] } | { readonly why: string };

/** The CSV files in a folder, such as an export wrote; the path itself where it is no folder. */
export function tableFilesAt(path: string): readonly string[] {
  if (!statSync(path, { throwIfNoEntry: false })?.isDirectory()) return [path];
  const tables = readdirSync(path).filter((name) => name.toLowerCase().endsWith('.csv'));
  return tables.sort().map((name) => join(path, name));
}

/** The tables in a CSV file or a workbook at an absolute path. What can't be read is said in words. */
export async function tablesIn(path: string, workbooks: WorkbookPart | undefined): Promise<TablesRead> {
  const name = basename(path);
  const read = readBytes(path, csvLimit);
  if ('refused' in read) return { why: `"${name}" ${refusals[read.refused]}.` };
  if (isArchive(read.bytes)) {
    if (workbooks === undefined)
      return { why: `"${name}" is a workbook, and the part that reads them is not installed.` };
    const book = await workbooks.readWorkbook(read.bytes);
    return 'why' in book ? { why: `"${name}" was not taken in: ${book.why}.` } : book;
  }
  const decoded = decodeBytes(read.bytes);
  if (!('text' in decoded)) return { why: `"${name}" was not taken in: ${decoded.problem.message}` };
  const table = readCsv(decoded.text);
  return 'why' in table
    ? { why: `"${name}" was not taken in: ${table.why}.` }
    : { tables: [{ name, rows: table.rows }] };
}

const refusals = {
  gone: 'is not there',
  'not-ordinary': 'is no ordinary file (a link, a folder, a pipe or a device)',
  'too-large': 'is larger than 16 MB',
  unreadable: 'cannot be opened',
} as const;

/** Whatever its name: workbooks are archives. */
function isArchive(bytes: Uint8Array): boolean {
  return bytes[0] === 0x50 && bytes[1] === 0x4b;
}
