import type { Place, Quantity } from '../../model/node.ts';
import { boilingPointAtAltitudeC, standardAtmosphereKPa } from '../../physics/atmosphere.ts';
import { saturationTemperatureC } from '../../physics/steam.ts';
import type { Site } from './site-limits.ts';

const millimetresAMetre = 1000;

/** Where water boils at a site, and the field it is worked out from: the measured air pressure before the altitude. */
export function boilingHere(site: Site | undefined): { temperatureC: number; at: Place } | undefined {
  const pressure = usable(site?.atmosphere);
  const altitude = usable(site?.altitude);
  const from = pressure ?? altitude;
  if (from === undefined) return undefined;
  const answer =
    pressure === undefined
      ? boilingPointAtAltitudeC(from.value / millimetresAMetre)
      : saturationTemperatureC(from.value);
  return answer.ok ? { temperatureC: answer.value, at: from.at } : undefined;
}

/** Air pressure in kPa: as measured at the machine, at the site, or the mean of its altitude. */
export function airPressureKPa(
  machine: { readonly atmosphere?: Quantity },
  site: Site | undefined,
): { kPa: number; at: Place } | undefined {
  const measured = usable(machine.atmosphere) ?? usable(site?.atmosphere);
  if (measured !== undefined) return { kPa: measured.value, at: measured.at };
  const altitude = usable(site?.altitude);
  const answer = altitude === undefined ? undefined : standardAtmosphereKPa(altitude.value / millimetresAMetre);
  return altitude === undefined || answer === undefined || !answer.ok
    ? undefined
    : { kPa: answer.value, at: altitude.at };
}

function usable(quantity: Quantity | undefined): Quantity | undefined {
  return quantity?.problem === undefined ? quantity : undefined;
}
