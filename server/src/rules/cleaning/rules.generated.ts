// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as abrasiveTool } from './abrasive-tool.ts';
import { rule as actuationMissing } from './actuation-missing.ts';
import { rule as assemblyStateUnstated } from './assembly-state-unstated.ts';
import { rule as brushDoesNotFit } from './brush-does-not-fit.ts';
import { rule as brushUndefined } from './brush-undefined.ts';
import { rule as detergentDiscontinued } from './detergent-discontinued.ts';
import { rule as detergentDoseMissing } from './detergent-dose-missing.ts';
import { rule as detergentPhBasisUnknown } from './detergent-ph-basis-unknown.ts';
import { rule as detergentPhOutside } from './detergent-ph-outside.ts';
import { rule as detergentTemperatureWindow } from './detergent-temperature-window.ts';
import { rule as detergentWrongMethod } from './detergent-wrong-method.ts';
import { rule as disassemblyMissing } from './disassembly-missing.ts';
import { rule as disassemblyPartLeft } from './disassembly-part-left.ts';
import { rule as diseaseSpecificCleaning } from './disease-specific-cleaning.ts';
import { rule as firstRinseHot } from './first-rinse-hot.ts';
import { rule as flushAmountUnsaid } from './flush-amount-unsaid.ts';
import { rule as flushPortForgotten } from './flush-port-forgotten.ts';
import { rule as flushShort } from './flush-short.ts';
import { rule as flushUndefined } from './flush-undefined.ts';
import { rule as immersionForbidden } from './immersion-forbidden.ts';
import { rule as manualOnlyWhereMechanicalRequired } from './manual-only-where-mechanical-required.ts';
import { rule as manualPrecleanDropped } from './manual-preclean-dropped.ts';
import { rule as materialChemistryConflict } from './material-chemistry-conflict.ts';
import { rule as mechanicalWhereManualOnly } from './mechanical-where-manual-only.ts';
import { rule as onlyManualStated } from './only-manual-stated.ts';
import { rule as prionBranchMissing } from './prion-branch-missing.ts';
import { rule as prionPolicyUnsourced } from './prion-policy-unsourced.ts';
import { rule as prionRoutedToRoutine } from './prion-routed-to-routine.ts';
import { rule as rinseAfterChemistryMissing } from './rinse-after-chemistry-missing.ts';
import { rule as soakOutsideLimits } from './soak-outside-limits.ts';
import { rule as solutionChangeMissing } from './solution-change-missing.ts';
import { rule as stepAgentUnsaid } from './step-agent-unsaid.ts';
import { rule as stepWaterLow } from './step-water-low.ts';
import { rule as tseNoteEncodedAsRoutine } from './tse-note-encoded-as-routine.ts';

export const cleaningRules: readonly AnyRule[] = [
  abrasiveTool,
  actuationMissing,
  assemblyStateUnstated,
  brushDoesNotFit,
  brushUndefined,
  detergentDiscontinued,
  detergentDoseMissing,
  detergentPhBasisUnknown,
  detergentPhOutside,
  detergentTemperatureWindow,
  detergentWrongMethod,
  disassemblyMissing,
  disassemblyPartLeft,
  diseaseSpecificCleaning,
  firstRinseHot,
  flushAmountUnsaid,
  flushPortForgotten,
  flushShort,
  flushUndefined,
  immersionForbidden,
  manualOnlyWhereMechanicalRequired,
  manualPrecleanDropped,
  materialChemistryConflict,
  mechanicalWhereManualOnly,
  onlyManualStated,
  prionBranchMissing,
  prionPolicyUnsourced,
  prionRoutedToRoutine,
  rinseAfterChemistryMissing,
  soakOutsideLimits,
  solutionChangeMissing,
  stepAgentUnsaid,
  stepWaterLow,
  tseNoteEncodedAsRoutine,
];
