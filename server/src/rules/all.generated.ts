// Generated from the files in this folder by `npm run generate`. Do not edit.

import type { AnyRule } from './rule.ts';

export const allRules: readonly AnyRule[] = [

];
