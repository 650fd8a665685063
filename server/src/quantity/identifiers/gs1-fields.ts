/** What an application identifier's data may be. Lengths without the identifier itself. */
export interface Gs1Field {
  readonly ai: string;
  readonly name: string;
  readonly shortest: number;
  readonly longest: number;
  readonly holds: 'digits' | 'text' | 'date' | 'key';
}

function fixed(ai: string, name: string, length: number, holds: Gs1Field['holds']): Gs1Field {
  return { ai, name, shortest: length, longest: length, holds };
}

function upTo(ai: string, name: string, longest: number, holds: Gs1Field['holds'] = 'text'): Gs1Field {
  return { ai, name, shortest: 1, longest, holds };
}

/** Fields met on device labels. (01), (10), (11), (17), (21): FDA UDI formats v1.3; the others: GS1 General Specifications, from memory. */
const fields: readonly Gs1Field[] = [
  fixed('00', 'shipping container', 18, 'key'),
  fixed('01', 'device identifier', 14, 'key'),
  fixed('02', 'content', 14, 'key'),
  upTo('10', 'lot', 20),
  fixed('11', 'date of manufacture', 6, 'date'),
  fixed('13', 'packaging date', 6, 'date'),
  fixed('15', 'best before date', 6, 'date'),
  fixed('16', 'sell by date', 6, 'date'),
  fixed('17', 'expiry date', 6, 'date'),
  fixed('20', 'variant', 2, 'digits'),
  upTo('21', 'serial', 20),
  upTo('22', 'consumer variant', 20),
  upTo('30', 'count', 8, 'digits'),
  upTo('37', 'count of items', 8, 'digits'),
  upTo('235', 'serial extension', 28),
  upTo('240', 'additional item number', 30),
  upTo('241', 'customer part number', 30),
  upTo('250', 'secondary serial', 30),
  upTo('251', 'source reference', 30),
  fixed('410', 'ship to', 13, 'key'),
  fixed('414', 'location', 13, 'key'),
  upTo('8012', 'software version', 20),
  upTo('8013', 'model number', 25),
  ...['90', '91', '92', '93', '94', '95', '96', '97', '98', '99'].map((ai) =>
    upTo(ai, 'company information', ai === '90' ? 30 : 90),
  ),
];

const byIdentifier: ReadonlyMap<string, Gs1Field> = new Map(fields.map((field) => [field.ai, field]));

/** The field of an application identifier, such as `17`. */
export function gs1Field(ai: string): Gs1Field | undefined {
  return byIdentifier.get(ai);
}

/** The field whose application identifier starts at `offset` of a scanned text. No identifier of the list starts another. */
export function gs1FieldAt(text: string, offset: number): Gs1Field | undefined {
  for (let length = 2; length <= 4; length++) {
    const field = byIdentifier.get(text.slice(offset, offset + length));
    if (field?.ai.length === length) return field;
  }
  return undefined;
}
