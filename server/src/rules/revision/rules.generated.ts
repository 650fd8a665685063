// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as deviceNoDocument } from './device-no-document.ts';
import { rule as documentChecksumMissing } from './document-checksum-missing.ts';
import { rule as documentDoesNotCover } from './document-does-not-cover.ts';
import { rule as documentFileChanged } from './document-file-changed.ts';
import { rule as documentFileMissing } from './document-file-missing.ts';
import { rule as documentFileScan } from './document-file-scan.ts';
import { rule as documentFileUnreadable } from './document-file-unreadable.ts';
import { rule as documentMarketMismatch } from './document-market-mismatch.ts';
import { rule as documentNotYetEffective } from './document-not-yet-effective.ts';
import { rule as documentsConflictUnresolved } from './documents-conflict-unresolved.ts';
import { rule as duplicateFamily } from './duplicate-family.ts';
import { rule as genericBeatsSpecific } from './generic-beats-specific.ts';
import { rule as passageOfOtherRevision } from './passage-of-other-revision.ts';
import { rule as responseNotUsable } from './response-not-usable.ts';
import { rule as reviewOverdue } from './review-overdue.ts';
import { rule as revisionSuperseded } from './revision-superseded.ts';
import { rule as revisionWithoutImpactSignOff } from './revision-without-impact-sign-off.ts';
import { rule as signOffExpired } from './sign-off-expired.ts';
import { rule as signOffIncomplete } from './sign-off-incomplete.ts';
import { rule as signOffReopened } from './sign-off-reopened.ts';
import { rule as signOffUnused } from './sign-off-unused.ts';
import { rule as sourceLocatorMissing } from './source-locator-missing.ts';
import { rule as valueAfterFileChange } from './value-after-file-change.ts';

export const revisionRules: readonly AnyRule[] = [
  deviceNoDocument,
  documentChecksumMissing,
  documentDoesNotCover,
  documentFileChanged,
  documentFileMissing,
  documentFileScan,
  documentFileUnreadable,
  documentMarketMismatch,
  documentNotYetEffective,
  documentsConflictUnresolved,
  duplicateFamily,
  genericBeatsSpecific,
  passageOfOtherRevision,
  responseNotUsable,
  reviewOverdue,
  revisionSuperseded,
  revisionWithoutImpactSignOff,
  signOffExpired,
  signOffIncomplete,
  signOffReopened,
  signOffUnused,
  sourceLocatorMissing,
  valueAfterFileChange,
];
