// Generated from the files in this folder by `npm run generate`. Do not edit.
import { rule as rule1 } from './file/duplicate-id.ts';
import { rule as rule2 } from './file/reference-loop.ts';
import { rule as rule3 } from './file/unknown-id.ts';
import { rule as rule4 } from './revision/device-no-document.ts';
import { rule as rule5 } from './revision/document-does-not-cover.ts';
import { rule as rule6 } from './revision/document-market-mismatch.ts';
import { rule as rule7 } from './revision/document-not-yet-effective.ts';
import { rule as rule8 } from './revision/documents-conflict-unresolved.ts';
import { rule as rule9 } from './revision/duplicate-family.ts';
import { rule as rule10 } from './revision/generic-beats-specific.ts';
import { rule as rule11 } from './revision/response-not-usable.ts';
import { rule as rule12 } from './revision/review-overdue.ts';
import { rule as rule13 } from './revision/revision-superseded.ts';
import { rule as rule14 } from './revision/revision-without-impact-sign-off.ts';
import { rule as rule15 } from './revision/source-locator-missing.ts';
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
];
