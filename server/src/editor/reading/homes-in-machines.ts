import type { StageWord } from '../../quantity/prose/meaning.ts';
import type { Group, Home } from './home.ts';
import { elsewhere } from './home.ts';
import { preparing } from './homes-of-cycles.ts';

/** Where the numbers of baths and machines belong. */

const acting = ['contact time', 'einwirk', 'temps de contact'];
export const rinseFields: readonly Home[] = [
  { field: elsewhere, dimension: 'time', near: acting },
  { field: elsewhere, dimension: 'temperature', near: acting },
  { field: 'time', dimension: 'time', near: [] },
  { field: 'times', dimension: 'count', near: [] },
  { field: 'temp', dimension: 'temperature', near: [] },
  { field: 'volume', dimension: 'volume', near: [] },
];
const prewashWords = [
  ...['prewash', 'pre-wash', 'pre-rins', 'prerins', 'pre-clean', 'vorspül', 'vorwasch', 'vorreinig'],
  ...['prélav', 'pré-lav', 'prérinç', 'pré-rinç', 'prénettoy', 'pré-nettoy'],
];
const enzymeWashWords = ['enzyme wash', 'enzymatic wash', 'enzyme clean', 'enzymatische wäsche', 'lavage enzym'];
const lastRinseWords = [
  ...['final rins', 'last rins', 'final water rins', 'pure water rins', 'purified water rins', 'critical water rins'],
  ...['ionised water rins', 'ionized water rins', 'demineralised water rins', 'demineralized water rins'],
  ...['schlussspül', 'endspül', 'nachspül', 'letzte spül', 'rinçage final', 'dernier rinçage'],
];
const neutralWords = ['neutralis', 'neutraliz'];

/** A phase of a machine that its own name stands for, right beside its numbers. */
function phase(path: string, words: readonly string[], stages: readonly StageWord[] = []): Group {
  return {
    path,
    stages,
    words,
    besideStage: 'mechanical',
    fields: [
      { field: 'time', dimension: 'time', near: words },
      { field: 'temp', dimension: 'temperature', near: words },
    ],
  };
}

export const inMachines: readonly Group[] = [
  {
    path: 'ultrasonic',
    stages: ['ultrasonic'],
    words: [],
    fields: [
      { field: 'time', dimension: 'time', near: [] },
      { field: 'temp', dimension: 'temperature', near: [] },
      { field: 'frequency', dimension: 'frequency', near: [] },
      { field: 'degas', dimension: 'time', near: ['degas', 'entgas', 'dégaz'] },
      { field: elsewhere, dimension: 'time', near: preparing },
    ],
  },
  {
    path: 'mechanical.detergent',
    stages: ['mechanical'],
    words: ['washer'],
    fields: [{ field: 'ph', dimension: 'ph', near: ['ph'] }],
  },
  phase('mechanical.prewash', prewashWords, ['rinse']),
  phase('mechanical.enzyme_wash', enzymeWashWords),
  phase('mechanical.neutralise', neutralWords),
  phase('mechanical.final_rinse', lastRinseWords, ['rinse']),
  { path: 'mechanical.rinse', stages: ['rinse'], words: [], besideStage: 'mechanical', fields: rinseFields },
  {
    path: 'ultrasonic.rinse',
    stages: ['rinse'],
    words: [],
    besideStage: 'ultrasonic',
    follows: true,
    fields: rinseFields,
  },
  {
    path: 'mechanical.wash',
    stages: ['mechanical'],
    words: ['washer'],
    fields: [
      { field: 'temp', dimension: 'temperature', near: [] },
      { field: 'time', dimension: 'time', near: [] },
    ],
  },
  {
    path: 'mechanical.thermal',
    stages: ['disinfection'],
    words: ['a0', 'a₀'],
    besideStage: 'mechanical',
    fields: [
      { field: 'a0', dimension: 'a0', near: ['a0'] },
      { field: 'temp', dimension: 'temperature', near: [] },
      { field: 'time', dimension: 'time', near: [] },
    ],
  },
  {
    path: 'mechanical.dry',
    stages: ['dry'],
    words: [],
    besideStage: 'mechanical',
    fields: [
      { field: 'temp', dimension: 'temperature', near: [] },
      { field: 'time', dimension: 'time', near: [] },
    ],
  },
];
