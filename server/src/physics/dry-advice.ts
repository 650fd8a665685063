import { condensateOfLoad, flashOffG, type Heating, type LoadPart, type LoadReason } from './condensate.ts';
import { type Answer, answer } from './physics.ts';

/*
 * What to tell a reader about a set's dry time: figures and reasons for a sentence, never a pass or a fail. Only a product
 * test on the real set shows that it dries.
 */

/** A point of the site's own experience: sets with this much water came out dry after this long. */
export interface SiteCurvePoint {
  readonly dryMin: number;
  readonly waterG: number;
}

export interface DryQuestion {
  readonly parts: readonly LoadPart[];
  readonly heating: Heating;
  /** Absolute pressure to which the drying phase draws the chamber. */
  readonly vacuumKPa: number;
  readonly dryMin: number;
  /** In any order; empty when the site has none. */
  readonly siteCurve: readonly SiteCurvePoint[];
}

/** How the estimate lies to the site's curve at this dry time. Nothing is guessed beyond the curve's ends. */
export type SiteCurvePlace = 'above' | 'within' | 'dry-time-outside-curve' | 'no-curve';

/** Shares are of the heat, 0 to 1: aluminium takes much heat for its mass, and plastic gives little back to dry itself. */
export interface DryAdvice {
  readonly kind: 'advice';
  readonly massKg: number;
  readonly waterG: number;
  readonly lowWaterG: number;
  readonly highWaterG: number;
  readonly flashOffG: number;
  /** What must drain away: water less flash-off, never below 0. */
  readonly leftToDrainG: number;
  readonly aluminiumShare: number;
  readonly polymerShare: number;
  readonly siteCurve: SiteCurvePlace;
  /** Water at this dry time on the site's curve, where it reaches. */
  readonly siteCurveWaterG: number | undefined;
  readonly uncertainMaterials: readonly string[];
  readonly unknownParts: readonly LoadPart[];
}

/** Figures for advice on a dry time. */
export function dryAdvice(question: DryQuestion): Answer<DryAdvice, LoadReason> {
  const { parts, heating, vacuumKPa, dryMin, siteCurve } = question;
  const condensate = condensateOfLoad(parts, heating);
  if (!condensate.ok) return condensate;
  const flashed = flashOffG(parts, heating.steamTemperatureC, vacuumKPa);
  if (!flashed.ok) return flashed;
  const load = condensate.value;
  const onCurve = waterOnCurveG(siteCurve, dryMin);
  const share = (group: string): number =>
    load.parts.filter((part) => part.material.group === group).reduce((sum, part) => sum + part.share, 0);
  return answer({
    kind: 'advice',
    massKg: load.massKg,
    waterG: load.waterG,
    lowWaterG: load.lowWaterG,
    highWaterG: load.highWaterG,
    flashOffG: flashed.value,
    leftToDrainG: Math.max(0, load.waterG - flashed.value),
    aluminiumShare: share('aluminium'),
    polymerShare: share('polymer'),
    siteCurve: placeOnCurve(siteCurve, onCurve, load.waterG),
    siteCurveWaterG: onCurve,
    uncertainMaterials: load.uncertainMaterials,
    unknownParts: load.unknownParts,
  });
}

/** Water (g) on the site's curve at `dryMin`, straight between its points; undefined outside them or when a point is no number. */
export function waterOnCurveG(curve: readonly SiteCurvePoint[], dryMin: number): number | undefined {
  if (!Number.isFinite(dryMin)) return undefined;
  const points = [...curve].sort((a, b) => a.dryMin - b.dryMin || a.waterG - b.waterG);
  if (!points.every((point) => Number.isFinite(point.dryMin) && Number.isFinite(point.waterG))) return undefined;
  for (const [index, right] of points.entries()) {
    if (right.dryMin === dryMin) return right.waterG;
    const left = points[index - 1];
    if (left === undefined || dryMin <= left.dryMin || dryMin >= right.dryMin) continue;
    const along = (dryMin - left.dryMin) / (right.dryMin - left.dryMin);
    return left.waterG + along * (right.waterG - left.waterG);
  }
  return undefined;
}

function placeOnCurve(curve: readonly SiteCurvePoint[], onCurve: number | undefined, waterG: number): SiteCurvePlace {
  if (curve.length === 0) return 'no-curve';
  if (onCurve === undefined) return 'dry-time-outside-curve';
  return waterG > onCurve ? 'above' : 'within';
}
