import type { Kind } from '../schema/kinds.ts';
import type { Group } from './home.ts';
import { byHand } from './homes-by-hand.ts';
import { inMachines, rinseFields } from './homes-in-machines.ts';
import { cycles, cyclesOfPackaging } from './homes-of-cycles.ts';

/** The places of numbers, by kind of file. */

const tooHot = [
  'temperature during re',
  'exceed',
  'heat above',
  'temperatures above',
  'hotter than',
  'überschreit',
  'dépass',
];
const device: readonly Group[] = [
  ...cycles,
  {
    path: 'limits',
    stages: [],
    words: [...tooHot],
    unlessStage: ['ultrasonic', 'manual', 'mechanical', 'soak', 'flush', 'rinse', 'disinfection', 'dry'],
    fields: [{ field: 'temp', dimension: 'temperature', near: tooHot, unlessAlso: 'time' }],
  },
  {
    path: 'limits',
    stages: [],
    words: ['limit', 'reus', 'reprocess', 'uses', 'service life', 'lifetime', 'lebensdauer', 'aufbereit', 'withstand'],
    fields: [
      { field: 'uses', dimension: 'count', near: ['use', 'reprocess', 'cycle', 'aufbereit', 'zykl'], counted: 'uses' },
    ],
  },
  {
    path: 'limits',
    stages: [],
    words: ['ph'],
    unlessStage: ['ultrasonic', 'manual', 'mechanical', 'soak', 'flush', 'disinfection'],
    fields: [{ field: 'ph', dimension: 'ph', near: ['ph'], unlessAlso: 'time' }],
  },
  {
    path: 'point_of_use',
    stages: [],
    words: [
      'after use',
      'point of use',
      'directly after',
      'immediately after',
      'gebrauch',
      'après utilisation',
      'within',
      'between use',
    ],
    fields: [
      { field: 'max_delay', dimension: 'time', near: ['within', 'after', 'between use', 'innerhalb', 'dans'] },
      { field: 'flush_now', dimension: 'volume', near: ['flush', 'spül', 'rinc', 'suction', 'aspirat', 'absaug'] },
    ],
  },
  ...byHand,
  ...inMachines,
  {
    path: 'disinfection',
    stages: ['disinfection'],
    words: ['a0', 'a₀'],
    fields: [
      { field: 'a0', dimension: 'a0', near: ['a0'] },
      { field: 'temp', dimension: 'temperature', near: [] },
      { field: 'time', dimension: 'time', near: [] },
    ],
  },
  {
    path: 'rinse',
    stages: ['rinse'],
    words: [],
    unlessStage: ['manual', 'ultrasonic', 'mechanical'],
    fields: rinseFields,
  },
  {
    path: 'drying',
    stages: ['dry'],
    words: ['cabinet', 'schrank'],
    fields: [
      { field: 'time', dimension: 'time', near: [] },
      { field: 'temp', dimension: 'temperature', near: [] },
    ],
  },
  {
    path: 'drying.air',
    stages: ['dry'],
    words: ['medical air', 'filtered air', 'compressed air', 'druckluft', 'air comprimé', 'air médical'],
    fields: [
      { field: 'pressure', dimension: 'pressure', near: [] },
      { field: 'time', dimension: 'time', near: [], beside: 'pressure' },
    ],
  },
  {
    path: 'inspection',
    stages: ['inspection'],
    words: ['magnif', 'vergröß', 'grossiss'],
    fields: [{ field: 'magnification', dimension: 'magnification', near: [] }],
  },
  {
    path: 'lubrication',
    stages: ['lubrication'],
    words: [],
    fields: [{ field: 'drops', dimension: 'count', near: ['drop', 'tropfen', 'goutte'] }],
  },
  {
    path: 'packaging',
    stages: ['packaging', 'container', 'wrap', 'pouch'],
    words: ['weigh', 'wieg', 'pèse'],
    fields: [{ field: 'max_mass', dimension: 'mass', near: [] }],
  },
  // Layers of a wrap beside a pouch as another way say nothing of the packaging as a whole.
  {
    path: 'packaging',
    stages: ['packaging', 'wrap'],
    words: ['wrap'],
    unlessStage: ['pouch'],
    fields: [{ field: 'layers', dimension: 'count', near: ['layer', 'lage', 'couche'] }],
  },
  {
    path: 'cooling',
    stages: [],
    words: ['cool', 'abkühl', 'refroid'],
    fields: [
      { field: 'time', dimension: 'time', near: ['cool', 'abkühl', 'refroid'] },
      { field: 'temp', dimension: 'temperature', near: ['cool', 'abkühl', 'refroid'], reaches: true },
    ],
  },
  {
    path: 'storage',
    stages: [],
    words: ['store', 'storage', 'lager', 'stock', 'shelf'],
    fields: [
      { field: 'time', dimension: 'time', near: [] },
      { field: 'temp', dimension: 'temperature', near: [] },
      { field: 'humidity', dimension: 'percentage', near: [] },
    ],
  },
];

const packaging: readonly Group[] = [
  cyclesOfPackaging,
  {
    path: '',
    stages: [],
    words: ['dry', 'trock', 'séch', 'store', 'shelf', 'lager', 'uses', 'cycles'],
    fields: [
      { field: 'dry', dimension: 'time', near: ['dry', 'trock', 'séch'] },
      { field: 'storage', dimension: 'time', near: ['store', 'storage', 'shelf', 'lager'] },
      { field: 'uses', dimension: 'count', near: ['use', 'cycle'] },
    ],
  },
];

const chemistry: readonly Group[] = [
  {
    path: '',
    stages: [],
    words: ['ph', 'solution', 'temperature', 'minutes', 'contact', 'use at', 'lösung'],
    fields: [
      { field: 'ph_in_use', dimension: 'ph', near: ['ph'] },
      { field: 'temp', dimension: 'temperature', near: [] },
      { field: 'time', dimension: 'time', near: [] },
    ],
  },
];

/** Homes by kind of file. Kinds that quote nothing about processing have none. */
export const homesOf: Partial<Record<Kind, readonly Group[]>> = { device, packaging, chemistry };
