// Generated from the files in this folder by `npm run generate`. Do not edit.
import { cleaningRules } from './cleaning/rules.generated.ts';
import { fileRules } from './file/rules.generated.ts';
import { governanceRules } from './governance/rules.generated.ts';
import { immediateUseRules } from './immediate-use/rules.generated.ts';
import { inspectionRules } from './inspection/rules.generated.ts';
import { monitoringRules } from './monitoring/rules.generated.ts';
import { packagingRules } from './packaging/rules.generated.ts';
import { pointOfUseRules } from './point-of-use/rules.generated.ts';
import { revisionRules } from './revision/rules.generated.ts';
import { rinsingRules } from './rinsing/rules.generated.ts';
import { routeRules } from './route/rules.generated.ts';
import { sourceRules } from './source/rules.generated.ts';
import { sterilizationRules } from './sterilization/rules.generated.ts';
import { storageRules } from './storage/rules.generated.ts';
import { teachingRules } from './teaching/rules.generated.ts';
import { washingRules } from './washing/rules.generated.ts';
import type { AnyRule } from './rule.ts';

export const allRules: readonly AnyRule[] = [
  ...cleaningRules,
  ...fileRules,
  ...governanceRules,
  ...immediateUseRules,
  ...inspectionRules,
  ...monitoringRules,
  ...packagingRules,
  ...pointOfUseRules,
  ...revisionRules,
  ...rinsingRules,
  ...routeRules,
  ...sourceRules,
  ...sterilizationRules,
  ...storageRules,
  ...teachingRules,
  ...washingRules,
];
