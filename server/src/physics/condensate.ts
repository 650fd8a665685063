import { isUncertain, type LoadMaterial, loadMaterial } from './load-materials.ts';
import { type Answer, answer, outOfRange, type RangeReason, refuse } from './physics.ts';
import { saturatedSteam, saturationTemperatureC } from './steam.ts';

/*
 * Water that steam leaves behind when it heats a load, and how much of it the load's own heat can boil off again. An estimate that
 * explains why a heavy set comes out wet; it says nothing about whether one is dry.
 */

/** One material of the load; `material` as in the table of heat capacities. */
export interface LoadPart {
  readonly material: string;
  readonly massKg: number;
}

export interface Heating {
  readonly startTemperatureC: number;
  readonly steamTemperatureC: number;
  /** Vapour's share of the steam's mass, over 0 to 1. */
  readonly dryness: number;
}

export interface PartShare {
  readonly material: LoadMaterial;
  readonly massKg: number;
  readonly heatKJ: number;
  /** Of the load's heat, 0 to 1. */
  readonly share: number;
}

/** Grams are of water in all: the vapour that condensed, and the water that wet steam carried in with it. */
export interface LoadCondensate {
  readonly massKg: number;
  readonly heatKJ: number;
  readonly waterG: number;
  /** The same with the lowest and highest heat capacities of the table. */
  readonly lowWaterG: number;
  readonly highWaterG: number;
  readonly parts: readonly PartShare[];
  /** Materials whose heat capacity is from memory or spans a range. */
  readonly uncertainMaterials: readonly string[];
  /** Parts of a material that the table does not have; they are not in any figure above. */
  readonly unknownParts: readonly LoadPart[];
}

export type LoadReason = RangeReason | 'not-heated' | 'no-known-material';

/** Water left by heating the load from `startTemperatureC` to `steamTemperatureC`: m c dT / (x hfg). */
export function condensateOfLoad(parts: readonly LoadPart[], heating: Heating): Answer<LoadCondensate, LoadReason> {
  const { startTemperatureC, steamTemperatureC, dryness } = heating;
  const bad = outOfRange(
    { name: 'dryness', value: dryness, low: 0.01, high: 1, unit: '' },
    { name: 'load temperature', value: startTemperatureC, low: -50, high: 350, unit: ' °C' },
  );
  if (bad) return bad;
  const steam = saturatedSteam(steamTemperatureC);
  if (!steam.ok) return steam;
  const riseK = steamTemperatureC - startTemperatureC;
  if (riseK < 0) return refuse('not-heated', 'The load is already hotter than the steam.');
  const known = knownParts(parts);
  if (!known.ok) return known;
  const gramsPerKJ = 1000 / (dryness * steam.value.latentHeatKJPerKg);
  return answer(total(known.value, riseK, gramsPerKJ));
}

/**
 * Grams of water that the load's stored heat can boil off when the chamber is drawn to `toPressureKPa` absolute:
 * m c (T - Tsat(p)) / hfg at the mean temperature. 0 when the load is not hotter than that boiling point.
 */
export function flashOffG(
  parts: readonly LoadPart[],
  loadTemperatureC: number,
  toPressureKPa: number,
): Answer<number, LoadReason> {
  const boiling = saturationTemperatureC(toPressureKPa);
  if (!boiling.ok) return boiling;
  const mean = saturatedSteam((loadTemperatureC + boiling.value) / 2);
  if (!mean.ok) return mean;
  const known = knownParts(parts);
  if (!known.ok) return known;
  const heatKJ = heatOf(known.value.known, Math.max(0, loadTemperatureC - boiling.value), 'heatKJPerKgK');
  return answer((1000 * heatKJ) / mean.value.latentHeatKJPerKg);
}

interface KnownPart {
  readonly material: LoadMaterial;
  readonly massKg: number;
}

interface Sorted {
  readonly known: readonly KnownPart[];
  readonly unknownParts: readonly LoadPart[];
}

function knownParts(parts: readonly LoadPart[]): Answer<Sorted, LoadReason> {
  const known: KnownPart[] = [];
  const unknownParts: LoadPart[] = [];
  for (const part of parts) {
    const bad = outOfRange({ name: `mass of ${part.material}`, value: part.massKg, low: 0, high: 1e5, unit: ' kg' });
    if (bad) return bad;
    const material = loadMaterial(part.material);
    if (material === undefined) unknownParts.push(part);
    else known.push({ material, massKg: part.massKg });
  }
  if (known.length === 0)
    return refuse('no-known-material', 'The load names no material whose heat capacity is known.');
  return answer({ known, unknownParts });
}

function total({ known, unknownParts }: Sorted, riseK: number, gramsPerKJ: number): LoadCondensate {
  const heatKJ = heatOf(known, riseK, 'heatKJPerKgK');
  const parts = known.map(({ material, massKg }) => {
    const own = massKg * material.heatKJPerKgK * riseK;
    return { material, massKg, heatKJ: own, share: heatKJ > 0 ? own / heatKJ : 0 };
  });
  return {
    massKg: sum(known.map((part) => part.massKg)),
    heatKJ,
    waterG: heatKJ * gramsPerKJ,
    lowWaterG: heatOf(known, riseK, 'lowKJPerKgK') * gramsPerKJ,
    highWaterG: heatOf(known, riseK, 'highKJPerKgK') * gramsPerKJ,
    parts,
    uncertainMaterials: [...new Set(known.filter((p) => isUncertain(p.material)).map((p) => p.material.id))].sort(),
    unknownParts,
  };
}

type Capacity = 'heatKJPerKgK' | 'lowKJPerKgK' | 'highKJPerKgK';

function heatOf(known: readonly KnownPart[], riseK: number, capacity: Capacity): number {
  return sum(known.map(({ material, massKg }) => massKg * material[capacity] * riseK));
}

/** Adds from the smallest up, so that the order of a set's list never changes an answer. */
function sum(numbers: readonly number[]): number {
  let total = 0;
  for (const number of [...numbers].sort((a, b) => a - b)) total += number;
  return total;
}
