import type { PressureReference } from '../../quantity/quantity.ts';
import type { Unit } from '../../quantity/unit-list.ts';
import { findUnit, toBase } from '../../quantity/units.ts';

/** One line of a log in base units. NaN where a number could not be read. Several probes: the coldest one, as it decides. */
export interface LogRow {
  /** Line in the file, from 1. */
  readonly line: number;
  readonly timeS: number;
  readonly temperatureC: number;
  readonly hottestC: number;
  /** kPa as the log writes it. */
  readonly pressureKPa: number;
}

export interface CycleLog {
  readonly rows: readonly LogRow[];
  readonly probes: number;
  /** Undefined without a column of pressures. */
  readonly pressure?: PressureReference;
  /** Lines left out because nothing in them could be read. */
  readonly unread: readonly number[];
}

export type LogOrWhy = CycleLog | { readonly why: string };

const mostLines = 200_000;

interface Column {
  readonly at: number;
  readonly is: 'time' | 'temperature' | 'pressure';
  readonly unit: Unit | 'clock';
  readonly reference: PressureReference;
}

/**
 * A log as text: one header line that names time, temperatures and pressure with their units, then numbers. Cells are parted by commas,
 * semicolons or tabs; with semicolons or tabs the decimal sign may be a comma. Rows are taken in their order and never sorted.
 */
export function readLog(text: string): LogOrWhy {
  const lines = text.replace(/^\ufeff/, '').split(/\r\n|\n|\r/);
  if (lines.length > mostLines) return { why: `The log has more than ${mostLines} lines.` };
  const first = lines.findIndex((line) => line.trim() !== '');
  const header = lines[first];
  if (header === undefined) return { why: 'The log is empty.' };
  const separator = separatorOf(header);
  const columns = columnsOf(cellsOf(header, separator));
  if ('why' in columns) return columns;
  return rowsOf(lines, first + 1, separator, columns.columns);
}

function separatorOf(header: string): string {
  for (const separator of ['\t', ';', ',']) if (header.includes(separator)) return separator;
  return ',';
}

function cellsOf(line: string, separator: string): readonly string[] {
  return line.split(separator).map((cell) =>
    cell
      .trim()
      .replace(/^"(.*)"$/, '$1')
      .trim(),
  );
}

function columnsOf(names: readonly string[]): { readonly columns: readonly Column[] } | { readonly why: string } {
  const columns: Column[] = [];
  for (const [at, name] of names.entries()) {
    const is = kindOf(name);
    if (is === undefined) continue;
    const column = columnOf(name, at, is);
    if ('why' in column) return column;
    columns.push(column);
  }
  const missing = (['time', 'temperature'] as const).find((is) => !columns.some((column) => column.is === is));
  return missing === undefined
    ? { columns }
    : {
        why: `No column of the log is named "${missing}". Name it in the first line, with its unit: "${missing === 'time' ? 'time (s)' : 'temperature (°C)'}".`,
      };
}

function kindOf(name: string): Column['is'] | undefined {
  const lower = name.toLowerCase();
  if (/\btime\b|^t$|^zeit/.test(lower)) return 'time';
  if (/temp|probe|^t[0-9]/.test(lower)) return 'temperature';
  return /press|druck|^p\b/.test(lower) ? 'pressure' : undefined;
}

/** `temperature (°C)`, `pressure [kPa abs]`, `time s`. */
function columnOf(name: string, at: number, is: Column['is']): Column | { readonly why: string } {
  const inBrackets = /[([]([^)\]]{1,24})[)\]]/.exec(name)?.[1];
  const written = (inBrackets ?? name.split(/\s+/).at(-1) ?? '').trim();
  if (is === 'time' && /^h{1,2}:mm(:ss)?$/i.test(written)) return { at, is, unit: 'clock', reference: 'unstated' };
  const absolute = /\babs(olute)?\b|\(a\)/i.test(written);
  const gauge = /\bgauge\b|\(g\)/i.test(written);
  const bare = written.replace(/\s*\b(abs(olute)?|gauge)\b\.?/i, '').trim();
  const found = findUnit(bare, is);
  if (found.found !== 'unit')
    return {
      why: `Column "${name}" gives no unit that is known for a ${is}. Write it in brackets: "${is} (${is === 'time' ? 's' : is === 'temperature' ? '°C' : 'kPa abs'})".`,
    };
  const named = found.unit.name.endsWith('(a)')
    ? 'absolute'
    : found.unit.name.endsWith('(g)') || found.unit.name === 'psig'
      ? 'gauge'
      : 'unstated';
  return { at, is, unit: found.unit, reference: absolute ? 'absolute' : gauge ? 'gauge' : named };
}

function rowsOf(lines: readonly string[], from: number, separator: string, columns: readonly Column[]): CycleLog {
  const rows: LogRow[] = [];
  const unread: number[] = [];
  for (let index = from; index < lines.length; index++) {
    const line = lines[index] ?? '';
    if (line.trim() === '') continue;
    const row = rowOf(cellsOf(line, separator), index + 1, columns, separator === ',' ? '.' : ',');
    if (Number.isNaN(row.timeS) && Number.isNaN(row.temperatureC)) unread.push(index + 1);
    else rows.push(row);
  }
  const pressure = columns.find(({ is }) => is === 'pressure');
  return {
    rows,
    probes: columns.filter(({ is }) => is === 'temperature').length,
    ...(pressure && { pressure: pressure.reference }),
    unread,
  };
}

function rowOf(cells: readonly string[], line: number, columns: readonly Column[], decimal: '.' | ','): LogRow {
  let timeS = Number.NaN;
  let pressureKPa = Number.NaN;
  const temperatures: number[] = [];
  for (const { at, is, unit } of columns) {
    const value = numberIn(cells[at] ?? '', unit, decimal);
    if (is === 'time') timeS = value;
    else if (is === 'temperature') temperatures.push(value);
    else pressureKPa = value;
  }
  // A probe that can't be read makes the reading unreadable: the coldest may have been that one.
  return { line, timeS, temperatureC: Math.min(...temperatures), hottestC: Math.max(...temperatures), pressureKPa };
}

function numberIn(cell: string, unit: Column['unit'], decimal: '.' | ','): number {
  if (unit === 'clock') return clockSeconds(cell);
  const text = decimal === ',' ? cell.replace(',', '.') : cell;
  if (!/^[+-]?\d{1,9}(\.\d{1,9})?$/.test(text)) return Number.NaN;
  return toBase(Number(text), unit);
}

/** `12:05:30` or `12:05`, as seconds of the day. */
function clockSeconds(text: string): number {
  const parts = /^(\d{1,2}):([0-5]\d)(?::([0-5]\d(?:\.\d{1,3})?))?$/.exec(text);
  return parts === null ? Number.NaN : Number(parts[1]) * 3600 + Number(parts[2]) * 60 + Number(parts[3] ?? 0);
}
