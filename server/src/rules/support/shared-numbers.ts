import type { Query } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Text } from '../../model/node.ts';
import type { CoverSet } from '../../quantity/covers.ts';
import { coverSetOf, sharedNumber } from '../../quantity/covers.ts';

type Device = EntityOf['device'];

/** Two device files that cover one catalogue number, with the entry of each and the number as an example. */
export interface SharedNumber {
  readonly first: Device;
  readonly second: Device;
  /** Entry of the second file's list. */
  readonly entry: Text;
  readonly firstEntry: Text;
  readonly number: string;
}

interface Entry {
  readonly device: Device;
  readonly text: Text;
  readonly set: CoverSet;
  readonly low: string;
  readonly high: string;
}

/**
 * All pairs among the devices whose catalogue numbers begin with the same letters, by the second of the two in file order: worked out
 * once for all of them. Entries are sorted, so that only neighbours are compared.
 */
export const sharedNumbers: Query<string, ReadonlyMap<Device, readonly SharedNumber[]>> = {
  name: 'devices that share a catalogue number',
  work(view, number) {
    const devices = view.devicesNear(number);
    const order = new Map(devices.map((device, index) => [device, index]));
    const found = new Map<Device, SharedNumber[]>();
    let open: Entry[] = [];
    for (const entry of entriesOf(devices)) {
      open = open.filter((before) => before.high >= entry.low);
      for (const before of open) addPair(before, entry, order, found);
      open.push(entry);
    }
    return found;
  },
  // That there is none is all there is to see.
  brief: { inWords: (found) => (found.size === 0 ? '' : undefined), fromWords: () => new Map() },
};

function entriesOf(devices: readonly Device[]): readonly Entry[] {
  const entries: Entry[] = [];
  for (const device of devices) {
    const excludes = device.excludes?.items.map((item) => item.text) ?? [];
    for (const text of device.covers?.items ?? []) {
      const set = coverSetOf([text.text], excludes);
      const lows = set.map((box) => box.low).sort();
      const highs = set.map((box) => box.high).sort();
      const low = lows[0];
      const high = highs[highs.length - 1];
      if (low !== undefined && high !== undefined) entries.push({ device, text, set, low, high });
    }
  }
  return entries.sort((a, b) => (a.low < b.low ? -1 : a.low > b.low ? 1 : 0));
}

function addPair(a: Entry, b: Entry, order: ReadonlyMap<Device, number>, found: Map<Device, SharedNumber[]>): void {
  if (a.device === b.device) return;
  const [first, second] = (order.get(a.device) ?? 0) < (order.get(b.device) ?? 0) ? [a, b] : [b, a];
  const pairs = found.get(second.device) ?? [];
  if (pairs.some((pair) => pair.first === first.device)) return;
  const number = sharedNumber(first.set, second.set);
  if (number === undefined) return;
  pairs.push({ first: first.device, second: second.device, entry: second.text, firstEntry: first.text, number });
  found.set(second.device, pairs);
}
