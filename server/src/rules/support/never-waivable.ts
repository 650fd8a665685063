/**
 * Findings that nobody may waive: prohibitions of a manufacturer, items of single use or outside this library, a lost "not", immediate
 * use that is not offered, and claims that only a manufacturer can make.
 */
export const neverWaivable: ReadonlySet<string> = new Set([
  'iuss-cleaning-reduced',
  'iuss-containment-not-cleared',
  'iuss-derived-by-deleting-dry',
  'iuss-not-offered',
  'iuss-stored',
  'immersion-forbidden',
  'mechanical-where-manual-only',
  'modality-prohibited',
  'out-of-scope-device',
  'point-of-use-forbidden-fluid',
  'procedure-overrides-manufacturer',
  'prion-routed-to-routine',
  'quote-negation-lost',
  'single-use-in-set',
  'ultrasonic-forbidden',
  'validation-claimed-by-department',
  'waiver-invalid',
  'wet-into-steam',
  'wet-pack-released',
]);
