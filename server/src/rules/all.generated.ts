// Generated from the files in this folder by `npm run generate`. Do not edit.
import { rule as rule1 } from './cleaning/detergent-discontinued.ts';
import { rule as rule2 } from './cleaning/disease-specific-cleaning.ts';
import { rule as rule3 } from './cleaning/flush-port-forgotten.ts';
import { rule as rule4 } from './cleaning/flush-short.ts';
import { rule as rule5 } from './cleaning/prion-routed-to-routine.ts';
import { rule as rule6 } from './cleaning/tse-note-encoded-as-routine.ts';
import { rule as rule7 } from './file/duplicate-id.ts';
import { rule as rule8 } from './file/reference-loop.ts';
import { rule as rule9 } from './file/unknown-id.ts';
import { rule as rule10 } from './point-of-use/loaner-document-missing.ts';
import { rule as rule11 } from './point-of-use/out-of-scope-device.ts';
import { rule as rule12 } from './point-of-use/set-line-unmapped.ts';
import { rule as rule13 } from './point-of-use/single-use-in-set.ts';
import { rule as rule14 } from './revision/device-no-document.ts';
import { rule as rule15 } from './revision/document-does-not-cover.ts';
import { rule as rule16 } from './revision/document-market-mismatch.ts';
import { rule as rule17 } from './revision/document-not-yet-effective.ts';
import { rule as rule18 } from './revision/documents-conflict-unresolved.ts';
import { rule as rule19 } from './revision/duplicate-family.ts';
import { rule as rule20 } from './revision/generic-beats-specific.ts';
import { rule as rule21 } from './revision/response-not-usable.ts';
import { rule as rule22 } from './revision/review-overdue.ts';
import { rule as rule23 } from './revision/revision-superseded.ts';
import { rule as rule24 } from './revision/revision-without-impact-sign-off.ts';
import { rule as rule25 } from './revision/source-locator-missing.ts';
import { rule as rule26 } from './washing/a0-claim-wrong.ts';
import { rule as rule27 } from './washing/a0-inadequate.ts';
import { rule as rule28 } from './washing/thermal-above-local-boiling.ts';
import type { AnyRule } from './rule.ts';

export const allRules: readonly AnyRule[] = [
  rule1,
  rule2,
  rule3,
  rule4,
  rule5,
  rule6,
  rule7,
  rule8,
  rule9,
  rule10,
  rule11,
  rule12,
  rule13,
  rule14,
  rule15,
  rule16,
  rule17,
  rule18,
  rule19,
  rule20,
  rule21,
  rule22,
  rule23,
  rule24,
  rule25,
  rule26,
  rule27,
  rule28,
];
