// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as iussCleaningReduced } from './iuss-cleaning-reduced.ts';
import { rule as iussContainmentNotCleared } from './iuss-containment-not-cleared.ts';
import { rule as iussDerivedByDeletingDry } from './iuss-derived-by-deleting-dry.ts';
import { rule as iussForConvenience } from './iuss-for-convenience.ts';
import { rule as iussImplant } from './iuss-implant.ts';
import { rule as iussNotOffered } from './iuss-not-offered.ts';
import { rule as iussRecordMissing } from './iuss-record-missing.ts';
import { rule as iussStored } from './iuss-stored.ts';

export const immediateUseRules: readonly AnyRule[] = [
  iussCleaningReduced,
  iussContainmentNotCleared,
  iussDerivedByDeletingDry,
  iussForConvenience,
  iussImplant,
  iussNotOffered,
  iussRecordMissing,
  iussStored,
];
