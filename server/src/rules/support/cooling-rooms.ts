import type { Room } from '../../model/entities/site.generated.ts';
import type { Demand } from './limits-of.ts';
import { demandOf } from './limits-of.ts';
import type { Site } from './site-limits.ts';

export interface CoolingRoom {
  readonly room: Room;
  readonly name: string;
  readonly demand: Demand;
}

/** Rooms in which packs cool: those that say so, or where none does, those that give no stages. */
export function coolingRooms(site: Site): readonly CoolingRoom[] {
  const rooms = [...(site.rooms?.rows ?? [])].map(([key, { value }]) => ({
    room: value,
    name: value.name?.text ?? key,
  }));
  const cooling = rooms.filter(({ room }) => room.stages?.items.some(({ text }) => text === 'cooling') === true);
  const meant = cooling.length > 0 ? cooling : rooms.filter(({ room }) => room.stages === undefined);
  return meant.flatMap(({ room, name }) => {
    const demand = demandOf(room.temp);
    return demand === undefined ? [] : [{ room, name, demand }];
  });
}
