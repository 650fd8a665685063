// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as inspectionCriteriaMissing } from './inspection-criteria-missing.ts';
import { rule as insulationTestMissing } from './insulation-test-missing.ts';
import { rule as lubricantNotPermitted } from './lubricant-not-permitted.ts';
import { rule as lubricationMissing } from './lubrication-missing.ts';
import { rule as lumenInspectionMissing } from './lumen-inspection-missing.ts';
import { rule as magnificationShort } from './magnification-short.ts';
import { rule as sealNotReplaced } from './seal-not-replaced.ts';
import { rule as useLimitUncounted } from './use-limit-uncounted.ts';

export const inspectionRules: readonly AnyRule[] = [
  inspectionCriteriaMissing,
  insulationTestMissing,
  lubricantNotPermitted,
  lubricationMissing,
  lumenInspectionMissing,
  magnificationShort,
  sealNotReplaced,
  useLimitUncounted,
];
