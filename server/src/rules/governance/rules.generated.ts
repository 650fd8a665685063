// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as authorityUnsourced } from './authority-unsourced.ts';
import { rule as deferredToDepartmentUndefined } from './deferred-to-department-undefined.ts';
import { rule as procedureOverridesManufacturer } from './procedure-overrides-manufacturer.ts';
import { rule as procedureStageMissing } from './procedure-stage-missing.ts';
import { rule as procedureStepOrder } from './procedure-step-order.ts';
import { rule as stricterNotSafer } from './stricter-not-safer.ts';
import { rule as thresholdUnsourced } from './threshold-unsourced.ts';
import { rule as validationClaimedByDepartment } from './validation-claimed-by-department.ts';
import { rule as waiverInvalid } from './waiver-invalid.ts';

export const governanceRules: readonly AnyRule[] = [
  authorityUnsourced,
  deferredToDepartmentUndefined,
  procedureOverridesManufacturer,
  procedureStageMissing,
  procedureStepOrder,
  stricterNotSafer,
  thresholdUnsourced,
  validationClaimedByDepartment,
  waiverInvalid,
];
