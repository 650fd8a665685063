// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as airPressureOverLimit } from './air-pressure-over-limit.ts';
import { rule as dryingHotterThanDevice } from './drying-hotter-than-device.ts';
import { rule as dryingMissing } from './drying-missing.ts';
import { rule as finalRinseGradeLow } from './final-rinse-grade-low.ts';
import { rule as intraocularControlsMissing } from './intraocular-controls-missing.ts';
import { rule as staticRinseForLumen } from './static-rinse-for-lumen.ts';
import { rule as waterResultStale } from './water-result-stale.ts';
import { rule as wetIntoLowTemperature } from './wet-into-low-temperature.ts';
import { rule as wetIntoSteam } from './wet-into-steam.ts';

export const rinsingRules: readonly AnyRule[] = [
  airPressureOverLimit,
  dryingHotterThanDevice,
  dryingMissing,
  finalRinseGradeLow,
  intraocularControlsMissing,
  staticRinseForLumen,
  waterResultStale,
  wetIntoLowTemperature,
  wetIntoSteam,
];
