import { isSteam } from '../../judge/vocabulary.ts';
import type { LibraryView, SterilizerCycle } from '../../library/view.ts';
import type { EntityOf } from '../../model/entities.generated.ts';
import type { Place } from '../../model/node.ts';
import type { LoadCondensate, LoadPart } from '../../physics/condensate.ts';
import { condensateOfLoad } from '../../physics/condensate.ts';
import { demandOf } from './limits-of.ts';
import type { Site } from './site-limits.ts';
import { siteLimit } from './site-limits.ts';

/** A steam cycle on its machine. */
export interface Running {
  readonly machine: EntityOf['sterilizer'];
  readonly cycle: SterilizerCycle;
}

/** The cycle that the set's file names, where it is steam. */
export function steamCycleOf(set: EntityOf['set'], view: LibraryView): Running | undefined {
  const running = set.cycle === undefined ? undefined : view.sterilizerCycle(set.cycle.text);
  const modality = running?.cycle.modality ?? running?.machine.modality;
  return isSteam(modality?.text) ? running : undefined;
}

/** The room in which packs are made: the load begins as warm as that, at the coldest. */
export function packingRoom(site: Site | undefined): { readonly coldestC: number; readonly at: Place } | undefined {
  for (const { value: room } of site?.rooms?.rows.values() ?? []) {
    const coldest = demandOf(room.temp)?.low;
    const isPacking = room.stages?.items.some(({ text }) => text === 'packaging') === true;
    if (isPacking && coldest !== undefined && Number.isFinite(coldest)) return { coldestC: coldest, at: room.at };
  }
  return undefined;
}

/** Undefined where the physics gives no answer. Without a reading the steam is taken for dry, which gives the least water. */
export function waterIn(
  set: EntityOf['set'],
  { machine, cycle }: Running,
  startTemperatureC: number,
  site: Site | undefined,
): LoadCondensate | undefined {
  const parts: LoadPart[] = [];
  for (const [material, { value: mass }] of set.masses?.rows ?? [])
    if (mass.problem === undefined) parts.push({ material, massKg: mass.value });
  const { temp } = cycle;
  if (temp === undefined || temp.problem !== undefined || parts.length === 0) return undefined;
  const measured = machine.steam?.dryness;
  const dryness = measured?.problem === undefined ? measured?.value : undefined;
  const heating = {
    startTemperatureC,
    steamTemperatureC: temp.value,
    dryness: dryness ?? siteLimit(site, 'steam_dryness')?.value ?? 1,
  };
  const load = condensateOfLoad(parts, heating);
  return load.ok ? load.value : undefined;
}
