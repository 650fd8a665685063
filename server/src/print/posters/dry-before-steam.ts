import { unitNamed } from '../../judge/unit-named.ts';
import { isSteam } from '../../judge/vocabulary.ts';
import type { Quantity } from '../../model/node.ts';
import { condensateOfLoad } from '../../physics/condensate.ts';
import { formatIn } from '../../quantity/format.ts';
import { packingRoom } from '../../rules/support/set-condensate.ts';
import { amount, decimals, type Printing } from '../amounts.ts';
import { condensateDrawing } from '../drawings/condensate.ts';
import type { Line, Value } from '../piece.ts';
import { originOf } from '../piece.ts';
import type { PosterBody } from './poster.ts';
import { ownSources } from './sources.ts';

/** The water that steam leaves on a kilogram of steel and of aluminium, for our coldest packing room and our usual cycle. */
export function dryBeforeSteam(printing: Printing): PosterBody {
  const { dry, cautions, cautionAltitude } = printing.words.poster;
  const lines = (['steel', 'aluminium'] as const).flatMap((material) => waterLine(material, printing));
  return {
    figures: [{ drawing: condensateDrawing(dry.carried), caption: [dry.carried] }],
    lines: [...lines, ...dry.doThis.map((one): Line => [one])],
    sources: ownSources(printing, 'dry-before-steam'),
    cautions: [...cautions, cautionAltitude],
  };
}

function waterLine(material: 'steel' | 'aluminium', printing: Printing): readonly Line[] {
  const { words, view } = printing;
  const room = packingRoom(view.site());
  const temp = usualTemperature(printing);
  if (room === undefined || temp === undefined) return [];
  const heating = { startTemperatureC: room.coldestC, steamTemperatureC: temp.value, dryness: 1 };
  const load = condensateOfLoad([{ material, massKg: 1 }], heating);
  if (!load.ok) return [];
  const start: Value = {
    text: decimals(formatIn(room.coldestC, unitNamed('temperature', `°${printing.temperature}`)), words),
    from: [`${originOf(room.at)}.temp`],
    how: 'computed',
  };
  const water: Value = { text: `${Math.round(load.value.waterG)} g`, from: [originOf(temp.at)], how: 'computed' };
  return [words.poster.dry.water(words.poster.dry.materials[material], start, amount(temp, printing), water)];
}

/** Of the usual steam cycle, else of the first one. */
function usualTemperature({ view }: Printing): Quantity | undefined {
  const cycles = view
    .all('sterilizer')
    .flatMap((machine) =>
      (machine.cycles?.items ?? []).filter((cycle) => isSteam((cycle.modality ?? machine.modality)?.text)),
    );
  const usual = cycles.find((cycle) => cycle.default?.on === true) ?? cycles[0];
  return usual?.temp?.problem === undefined ? usual?.temp : undefined;
}
