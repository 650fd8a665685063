// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as delayLimitExceeded } from './delay-limit-exceeded.ts';
import { rule as keepMoistMissing } from './keep-moist-missing.ts';
import { rule as loanerDocumentMissing } from './loaner-document-missing.ts';
import { rule as loanerLeadTimeShort } from './loaner-lead-time-short.ts';
import { rule as loanerTrustedAsProcessed } from './loaner-trusted-as-processed.ts';
import { rule as lumenNotFlushedAtUse } from './lumen-not-flushed-at-use.ts';
import { rule as newDeviceNotCleaned } from './new-device-not-cleaned.ts';
import { rule as outOfScopeDevice } from './out-of-scope-device.ts';
import { rule as pointOfUseForbiddenFluid } from './point-of-use-forbidden-fluid.ts';
import { rule as pointOfUseMissing } from './point-of-use-missing.ts';
import { rule as setLineUnmapped } from './set-line-unmapped.ts';
import { rule as singleUseInSet } from './single-use-in-set.ts';
import { rule as transportNotContained } from './transport-not-contained.ts';

export const pointOfUseRules: readonly AnyRule[] = [
  delayLimitExceeded,
  keepMoistMissing,
  loanerDocumentMissing,
  loanerLeadTimeShort,
  loanerTrustedAsProcessed,
  lumenNotFlushedAtUse,
  newDeviceNotCleaned,
  outOfScopeDevice,
  pointOfUseForbiddenFluid,
  pointOfUseMissing,
  setLineUnmapped,
  singleUseInSet,
  transportNotContained,
];
