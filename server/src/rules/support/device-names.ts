import type { EntityOf } from '../../model/entities.generated.ts';
import { rootOfEntity } from '../../model/entity.ts';

type Device = EntityOf['device'];

/** What people call it: its name, and where it has none its id. */
export function deviceName(device: Device): string {
  return device.name?.text ?? rootOfEntity(device).id;
}

/** The names of several, each once; where two have the same one, with the id in brackets. */
export function deviceNames(devices: readonly Device[]): readonly string[] {
  const counts = new Map<string, Set<string>>();
  for (const device of devices) {
    const name = deviceName(device);
    counts.set(name, (counts.get(name) ?? new Set()).add(rootOfEntity(device).id));
  }
  return devices.map((device) => {
    const name = deviceName(device);
    return (counts.get(name)?.size ?? 0) > 1 ? `${name} (${rootOfEntity(device).id})` : name;
  });
}
