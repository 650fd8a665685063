// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as condensateVsDry } from './condensate-vs-dry.ts';
import { rule as cycleDryShort } from './cycle-dry-short.ts';
import { rule as cycleExposureLongerUnstated } from './cycle-exposure-longer-unstated.ts';
import { rule as cycleExposureShort } from './cycle-exposure-short.ts';
import { rule as cycleModalityMismatch } from './cycle-modality-mismatch.ts';
import { rule as cycleNameDiffers } from './cycle-name-differs.ts';
import { rule as cycleTemperatureDiffers } from './cycle-temperature-differs.ts';
import { rule as cycleUnqualified } from './cycle-unqualified.ts';
import { rule as dryTimeMissing } from './dry-time-missing.ts';
import { rule as eoAerationShort } from './eo-aeration-short.ts';
import { rule as extendedCycleForAll } from './extended-cycle-for-all.ts';
import { rule as flushPulseAssumedEqual } from './flush-pulse-assumed-equal.ts';
import { rule as lethalityImplausible } from './lethality-implausible.ts';
import { rule as lethalityUsedAsPermission } from './lethality-used-as-permission.ts';
import { rule as loadOverCycleLimit } from './load-over-cycle-limit.ts';
import { rule as modalityProhibited } from './modality-prohibited.ts';
import { rule as optionIncomplete } from './option-incomplete.ts';
import { rule as peroxideCycleNotListed } from './peroxide-cycle-not-listed.ts';
import { rule as peroxideLumenOutside } from './peroxide-lumen-outside.ts';
import { rule as pressureAsRequirement } from './pressure-as-requirement.ts';
import { rule as productTestMissing } from './product-test-missing.ts';
import { rule as steamQualityOut } from './steam-quality-out.ts';
import { rule as temperaturePressureInconsistent } from './temperature-pressure-inconsistent.ts';

export const sterilizationRules: readonly AnyRule[] = [
  condensateVsDry,
  cycleDryShort,
  cycleExposureLongerUnstated,
  cycleExposureShort,
  cycleModalityMismatch,
  cycleNameDiffers,
  cycleTemperatureDiffers,
  cycleUnqualified,
  dryTimeMissing,
  eoAerationShort,
  extendedCycleForAll,
  flushPulseAssumedEqual,
  lethalityImplausible,
  lethalityUsedAsPermission,
  loadOverCycleLimit,
  modalityProhibited,
  optionIncomplete,
  peroxideCycleNotListed,
  peroxideLumenOutside,
  pressureAsRequirement,
  productTestMissing,
  steamQualityOut,
  temperaturePressureInconsistent,
];
