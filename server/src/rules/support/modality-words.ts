import type { Phrase } from './wording.ts';

/* What pages call the ways of sterilizing. An educator may read and lengthen this list; how it is read is told in wording.ts. */
export const modalityWords: ReadonlyMap<string, readonly Phrase[]> = new Map([
  [
    'steam-prevac',
    [
      ['prevac*'],
      ['pre', 'vac*'],
      ['dynamic', 'air'],
      ['fractionated'],
      ['vorvakuum*'],
      ['fraktioniert*'],
      ['prévide'],
      ['pré', 'vide'],
    ],
  ],
  ['steam-gravity', [['gravity*'], ['gravitation*'], ['strömungsverfahren'], ['gravité']]],
  ['steam-sfpp', [['flush', 'pulse']]],
  ['vh2o2', [['peroxide*'], ['h2o2'], ['wasserstoffperoxid*'], ['peroxyde*']]],
  ['eo', [['ethylene', 'oxide'], ['eo'], ['eto'], ['ethylenoxid*'], ['oxyde', 'éthylène']]],
]);

const names: ReadonlyMap<string, string> = new Map([
  ['steam-prevac', 'steam with air removal by vacuum'],
  ['steam-gravity', 'steam with air removal by gravity'],
  ['steam-sfpp', 'steam with flushes and pulses'],
  ['vh2o2', 'hydrogen peroxide'],
  ['eo', 'ethylene oxide'],
]);

export function modalityName(modality: string): string {
  return names.get(modality) ?? modality;
}
