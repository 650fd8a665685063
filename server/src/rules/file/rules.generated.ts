// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as duplicateId } from './duplicate-id.ts';
import { rule as referenceLoop } from './reference-loop.ts';
import { rule as unknownId } from './unknown-id.ts';

export const fileRules: readonly AnyRule[] = [
  duplicateId,
  referenceLoop,
  unknownId,
];
