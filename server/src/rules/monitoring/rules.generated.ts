// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as airRemovalTestMissingOrLong } from './air-removal-test-missing-or-long.ts';
import { rule as implantReleaseEarly } from './implant-release-early.ts';
import { rule as indicatorLevelMissing } from './indicator-level-missing.ts';
import { rule as indicatorModalityMismatch } from './indicator-modality-mismatch.ts';
import { rule as indicatorPlaceUnsourced } from './indicator-place-unsourced.ts';
import { rule as indicatorPlaceWrongForPackaging } from './indicator-place-wrong-for-packaging.ts';
import { rule as indicatorStatedValueMismatch } from './indicator-stated-value-mismatch.ts';

export const monitoringRules: readonly AnyRule[] = [
  airRemovalTestMissingOrLong,
  implantReleaseEarly,
  indicatorLevelMissing,
  indicatorModalityMismatch,
  indicatorPlaceUnsourced,
  indicatorPlaceWrongForPackaging,
  indicatorStatedValueMismatch,
];
