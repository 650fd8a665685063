import type { StageWord } from '../../quantity/prose/meaning.ts';
import type { Group, Home } from './home.ts';
import { elsewhere } from './home.ts';

/** Where the numbers of a cycle of sterilization belong. */

const sterilizing: readonly StageWord[] = [
  'steam',
  'gravity',
  'prevac',
  'iuss',
  'vh2o2',
  'eo',
  'formaldehyde',
  'dry-heat',
];
const sterilizingWords = ['sterili', 'stérili', 'exposure', 'autoclav', 'dampf', 'vapeur', 'vacuum', 'vakuum'];
const aerating = ['aerat', 'belüft', 'ausgas', 'aérat', 'désorp'];
/** What comes before the step itself. */
export const preparing = ['degas', 'preheat', 'pre-heat', 'conditioning', 'entgas'];
const gases: readonly StageWord[] = ['eo', 'formaldehyde'];
const cycleFields: readonly Home[] = [
  { field: 'temp', dimension: 'temperature', near: [] },
  { field: 'exposure', dimension: 'time', near: [] },
  { field: 'dry', dimension: 'time', near: ['dry', 'trock', 'séch'] },
  { field: elsewhere, dimension: 'time', near: [...preparing, 'takes'] },
  { field: elsewhere, dimension: 'temperature', near: [...preparing, 'fall below'], reaches: true },
];
/** What a cycle with gas has besides. */
const gasFields: readonly Home[] = [
  { field: 'aeration.time', dimension: 'time', near: aerating },
  { field: 'aeration.temp', dimension: 'temperature', near: aerating, reaches: true },
  { field: 'concentration', dimension: 'concentration', near: [], ofStage: gases },
  { field: 'humidity', dimension: 'percentage', near: ['humid', 'feucht', '% rh', '%rh'], ofStage: gases },
];

export const cycles: readonly Group[] = [
  {
    path: 'sterilization.any_of[]',
    stages: sterilizing,
    words: sterilizingWords,
    fields: [
      ...cycleFields,
      ...gasFields,
      {
        field: 'pulses',
        dimension: 'count',
        near: ['pulse', ' phases', ' fractions', ' evacuations', ' phasen', 'fraktion', 'impuls', 'évacuation'],
      },
    ],
  },
];

export const cyclesOfPackaging: Group = {
  path: 'validated[]',
  stages: sterilizing,
  words: sterilizingWords,
  fields: cycleFields,
};
