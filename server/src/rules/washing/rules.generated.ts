// Generated from the files in this folder by `npm run generate`. Do not edit.
import type { AnyRule } from '../rule.ts';
import { rule as a0ClaimWrong } from './a0-claim-wrong.ts';
import { rule as a0Inadequate } from './a0-inadequate.ts';
import { rule as disinfectedCalledSterile } from './disinfected-called-sterile.ts';
import { rule as thermalAboveLocalBoiling } from './thermal-above-local-boiling.ts';
import { rule as ultrasonicDegasMissing } from './ultrasonic-degas-missing.ts';
import { rule as ultrasonicForbidden } from './ultrasonic-forbidden.ts';
import { rule as ultrasonicLumenNotIrrigated } from './ultrasonic-lumen-not-irrigated.ts';
import { rule as ultrasonicMixedMetals } from './ultrasonic-mixed-metals.ts';
import { rule as ultrasonicParametersOutside } from './ultrasonic-parameters-outside.ts';
import { rule as ultrasonicTestStale } from './ultrasonic-test-stale.ts';
import { rule as washWithoutDetergent } from './wash-without-detergent.ts';
import { rule as washerConnectorMissing } from './washer-connector-missing.ts';
import { rule as washerCycleDiffers } from './washer-cycle-differs.ts';
import { rule as washerDosedExtra } from './washer-dosed-extra.ts';
import { rule as washerHotterThanDevice } from './washer-hotter-than-device.ts';
import { rule as washerPhaseMissing } from './washer-phase-missing.ts';
import { rule as washerPhaseShortOrCool } from './washer-phase-short-or-cool.ts';
import { rule as washerPrewashHot } from './washer-prewash-hot.ts';
import { rule as washerRouteNone } from './washer-route-none.ts';
import { rule as washerVerificationStale } from './washer-verification-stale.ts';

export const washingRules: readonly AnyRule[] = [
  a0ClaimWrong,
  a0Inadequate,
  disinfectedCalledSterile,
  thermalAboveLocalBoiling,
  ultrasonicDegasMissing,
  ultrasonicForbidden,
  ultrasonicLumenNotIrrigated,
  ultrasonicMixedMetals,
  ultrasonicParametersOutside,
  ultrasonicTestStale,
  washWithoutDetergent,
  washerConnectorMissing,
  washerCycleDiffers,
  washerDosedExtra,
  washerHotterThanDevice,
  washerPhaseMissing,
  washerPhaseShortOrCool,
  washerPrewashHot,
  washerRouteNone,
  washerVerificationStale,
];
