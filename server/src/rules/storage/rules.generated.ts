// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as coolAimOnBareMetal } from './cool-aim-on-bare-metal.ts';
import { rule as coolAimWrongForPackaging } from './cool-aim-wrong-for-packaging.ts';
import { rule as coolCriterionMissing } from './cool-criterion-missing.ts';
import { rule as coolForced } from './cool-forced.ts';
import { rule as coolReleaseBelowRoom } from './cool-release-below-room.ts';
import { rule as coolShortOfPolicy } from './cool-short-of-policy.ts';
import { rule as coolTouchOrColdSurface } from './cool-touch-or-cold-surface.ts';
import { rule as storageLimitConflict } from './storage-limit-conflict.ts';
import { rule as wetPackReleased } from './wet-pack-released.ts';

export const storageRules: readonly AnyRule[] = [
  coolAimOnBareMetal,
  coolAimWrongForPackaging,
  coolCriterionMissing,
  coolForced,
  coolReleaseBelowRoom,
  coolShortOfPolicy,
  coolTouchOrColdSurface,
  storageLimitConflict,
  wetPackReleased,
];
