// Generated from the files in this folder by `npm run generate`. Do not edit.
import { rule as rule1 } from './file/duplicate-id.ts';
import { rule as rule2 } from './file/unknown-id.ts';
import type { AnyRule } from './rule.ts';

export const allRules: readonly AnyRule[] = [
  rule1,
  rule2,
];
