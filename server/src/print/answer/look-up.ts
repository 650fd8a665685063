import type { LibraryView } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import { coversNumber } from '../../quantity/covers.ts';
import { readGtin } from '../../quantity/identifiers/gtin.ts';
import type { IdentifierFault, Production } from '../../quantity/identifiers/identifier.ts';
import { isIdentifierFault } from '../../quantity/identifiers/identifier.ts';
import { readUdi, type Udi } from '../../quantity/identifiers/udi.ts';

type Device = EntityOf['device'];

/** What was typed or scanned, and the device families that it names. */
export interface Looked {
  /** As it was given. */
  readonly asked: string;
  /** The number that was looked for: the catalogue number, or the device identifier of a scan. */
  readonly number: string;
  readonly devices: readonly Device[];
  /** Lot, serial and dates of a scan. */
  readonly production?: Production;
  /** Why a scan could not be read. */
  readonly fault?: IdentifierFault;
}

/** Longer than any code on a label. */
const longest = 400;

/** Device families for an id, a catalogue number, or a scanned GS1 or HIBC code. `year` settles two-digit years. */
export function lookUp(view: LibraryView, asked: string, year: number): Looked {
  const text = asked.trim().slice(0, longest);
  const device = view.get('device', text);
  if (device !== undefined) return { asked, number: text, devices: [device] };
  const covering = coveredBy(view, text);
  if (covering.length > 0) return { asked, number: text, devices: covering };
  if (!looksScanned(text)) return { asked, number: text, devices: [] };
  const gtin = readGtin(text);
  if (!isIdentifierFault(gtin)) return { asked, number: gtin.gtin, devices: identifiedBy(view, gtin.gtin, year) };
  const udi = readUdi(text, year);
  return isIdentifierFault(udi) ? { asked, number: text, devices: [], fault: udi } : fromScan(view, asked, udi, year);
}

/** Labels begin with these; so do no catalogue numbers that people type. A bare number may be one of a trade item. */
function looksScanned(text: string): boolean {
  return /^[+*([\]<=&]/.test(text) || /^[0-9]{8,}/.test(text);
}

function fromScan(view: LibraryView, asked: string, udi: Udi, year: number): Looked {
  const production = productionOf(udi);
  const number = ('di' in udi ? udi.di : undefined) ?? '';
  const named = identifiedBy(view, number, year);
  const product = 'primary' in udi ? (udi.primary?.product ?? '') : '';
  const devices = named.length > 0 || product === '' ? named : coveredBy(view, product);
  return { asked, number: product === '' ? number : product, devices, production };
}

/** Codes of blood and tissue carry their production part in other fields; it is not read here. */
function productionOf(udi: Udi): Production {
  if (udi.agency === 'ICCBBA') return {};
  const { lot, serial, made, expires } = udi;
  return {
    ...(lot !== undefined && { lot }),
    ...(serial !== undefined && { serial }),
    ...(made !== undefined && { made }),
    ...(expires !== undefined && { expires }),
  };
}

/** Every family whose range covers the number as written. */
function coveredBy(view: LibraryView, number: string): readonly Device[] {
  return view
    .devicesNear(number)
    .filter(({ covers, excludes }) =>
      coversNumber(covers?.items.map(({ text }) => text) ?? [], excludes?.items.map(({ text }) => text) ?? [], number),
    );
}

/** Identifiers in files are written as printed: with or without the `(01)`, as 8 to 14 digits, or as the whole code on the label. */
function identifiedBy(view: LibraryView, number: string, year: number): readonly Device[] {
  if (number === '') return [];
  return view
    .all('device')
    .filter((device) => device.identifiers?.items.some(({ text }) => sameIdentifier(text, number, year)));
}

function sameIdentifier(written: string, number: string, year: number): boolean {
  const bare = written.trim().replace(/^\(01\)/, '');
  const gtin = readGtin(bare);
  if (bare === number || (!isIdentifierFault(gtin) && gtin.gtin === number)) return true;
  const udi = looksScanned(written.trim()) ? readUdi(written.trim().slice(0, longest), year) : undefined;
  return udi !== undefined && !isIdentifierFault(udi) && 'di' in udi && udi.di === number;
}

/** Why a scan can't be read, for the person who holds the scanner. */
export function faultWords(fault: IdentifierFault): string {
  switch (fault.fault) {
    case 'check-character':
      return `the check character is ${fault.found}, but ${fault.expected} is right: scan it again`;
    case 'length':
      return `${fault.field} has ${fault.found} characters; ${fault.allowed} is right`;
    case 'character':
      return `"${fault.found}" can't stand in ${fault.field}`;
    case 'field-unknown':
      return `"${fault.field}" starts no field that is known here`;
    case 'field-twice':
      return `${fault.field} stands in it twice`;
    case 'date-impossible':
      return `${fault.found} in ${fault.field} is no date`;
    case 'too-long':
      return 'it is longer than any label';
    case 'device-identifier-missing':
      return 'it holds no device identifier, only lot or serial';
    case 'agency-unknown':
      return 'it is no GS1 or HIBC code';
    case 'empty':
      return 'it is empty';
  }
}
