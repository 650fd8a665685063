// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as accessoryNotListed } from './accessory-not-listed.ts';
import { rule as celluloseInPeroxide } from './cellulose-in-peroxide.ts';
import { rule as configurationNotInstructed } from './configuration-not-instructed.ts';
import { rule as containerDryGoverns } from './container-dry-governs.ts';
import { rule as containerLumenLimit } from './container-lumen-limit.ts';
import { rule as containerNotValidatedForCycle } from './container-not-validated-for-cycle.ts';
import { rule as containerPartsMismatch } from './container-parts-mismatch.ts';
import { rule as doublePouchUnsupported } from './double-pouch-unsupported.ts';
import { rule as memberListedTwice } from './member-listed-twice.ts';
import { rule as namedCaseOnly } from './named-case-only.ts';
import { rule as packagingNotListed } from './packaging-not-listed.ts';
import { rule as pouchInsideSet } from './pouch-inside-set.ts';
import { rule as setDataMissing } from './set-data-missing.ts';
import { rule as setMassUnmeasured } from './set-mass-unmeasured.ts';
import { rule as setOverweight } from './set-overweight.ts';
import { rule as validatedWithReadAsOnly } from './validated-with-read-as-only.ts';
import { rule as wrapGradeUnderLoad } from './wrap-grade-under-load.ts';

export const packagingRules: readonly AnyRule[] = [
  accessoryNotListed,
  celluloseInPeroxide,
  configurationNotInstructed,
  containerDryGoverns,
  containerLumenLimit,
  containerNotValidatedForCycle,
  containerPartsMismatch,
  doublePouchUnsupported,
  memberListedTwice,
  namedCaseOnly,
  packagingNotListed,
  pouchInsideSet,
  setDataMissing,
  setMassUnmeasured,
  setOverweight,
  validatedWithReadAsOnly,
  wrapGradeUnderLoad,
];
