import type { Kind } from '../../schema/kinds.ts';
import type { Group } from './home.ts';
import { byHand } from './homes-by-hand.ts';
import { inMachines, rinseFields } from './homes-in-machines.ts';
import { cycles, cyclesOfPackaging } from './homes-of-cycles.ts';

/** The places of numbers, by kind of file. */

const tooHot = [
  'temperature during re',
  'temperature during processing',
  'exceed',
  'heat above',
  'temperatures above',
  'heated above',
  'exposed to more than',
  'exposed to temperatures',
  'tolerates temperatures',
  'withstands temperatures',
  'heating above',
  'hotter than',
  'überschreit',
  'überschritt',
  'temperatures higher',
  'remain under',
  'remain below',
  'stay under',
  'stay below',
  'kept below',
  'rise above',
  'maximum sterilization temperature',
  'temperatures over',
  'temperaturen über',
  'erhitz',
  'dépass',
  'chauff',
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
    words: [
      ...[
        'limit',
        'reus',
        'reprocess',
        'processing cycles',
        'be processed',
        'be autoclaved',
        'be sterili',
        'uses',
        'exceed',
        'service life',
        'useful life',
        'lifetime',
        'withstand',
      ],
      ...[
        'lebensdauer',
        'aufbereit',
        'überschreit',
        'wiederverwend',
        'durée de vie',
        'dépass',
        'réutilis',
        'retraitement',
      ],
    ],
    unlessSaid: /guarantee|warrant|garanti|gewährleist|charges/i,
    fields: [
      {
        field: 'uses',
        dimension: 'count',
        near: [
          'use',
          'reprocess',
          'be processed',
          'be autoclaved',
          'be sterili',
          'procedure',
          'cycle',
          'aufbereit',
          'zykl',
          'réutilis',
          'retraitement',
        ],
        counted: 'uses',
      },
    ],
  },
  {
    path: 'limits',
    stages: [],
    words: [
      'service life',
      'useful life',
      'lifetime',
      'product life',
      'life span',
      'be used for',
      'lebensdauer',
      'durée de vie',
    ],
    unlessSaid: /guarantee|warrant|garanti|gewährleist|shelf|stor|steril/i,
    fields: [{ field: 'age', dimension: 'time', near: [], only: true }],
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
      ...['after use', 'after surgery', 'after the procedure', 'after the operation', 'after each use', 'point of use'],
      ...[
        'place of use',
        'until cleaning',
        'time to cleaning',
        'bis zur reinigung',
        'jusqu’au nettoyage',
        "jusqu'au nettoyage",
      ],
      ...[
        'directly after',
        'immediately after',
        'within',
        'between use',
        'theatre',
        'operating room',
        'bloc opératoire',
      ],
      ...['gebrauch', 'nach der anwendung', 'nach dem eingriff', 'nach der operation', 'anwendungsort'],
      ...['après utilisation', 'après l’utilisation', "après l'utilisation", 'après usage'],
      ...['après l’intervention', "après l'intervention", 'lieu d’utilisation', "lieu d'utilisation"],
    ],
    fields: [
      {
        field: 'max_delay',
        dimension: 'time',
        near: [
          ...[
            'within',
            'after',
            'between use',
            'no later than',
            'must start',
            'must begin',
            'until cleaning',
            'to cleaning',
            'dry disposal',
            'wet disposal',
            'disposal is allowed',
          ],
          ...['bis zur reinigung', 'jusqu'],
          ...['innerhalb', 'spätestens', 'nach der', 'nach dem', 'dans', 'au plus tard', 'après'],
        ],
      },
      {
        field: 'flush_now',
        dimension: 'volume',
        near: ['flush', 'draw', 'suck', 'spül', 'rinc', 'suction', 'aspirat', 'absaug'],
      },
    ],
  },
  {
    path: 'transport',
    stages: [],
    words: [],
    begins: /^(?:transport|carry|bring)\b/i,
    unlessSaid:
      /\b(?:clean\p{L}*|reprocess\p{L}*|process\p{L}*|disinfect\p{L}*)\s(?:must|should|has to|within|to begin)|begin|start/iu,
    fields: [
      {
        field: 'max_time',
        dimension: 'time',
        near: ['within', 'at most', 'no longer', 'not longer', 'maximum', 'max.'],
      },
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
    unlessAbove: /sterili|stérili|autoclav|stor(?:e|age|ing)|keeping|lager|aufbewahr|stock|conserv/,
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
    fields: [
      { field: 'drops', dimension: 'count', near: ['drop', 'tropfen', 'goutte'] },
      { field: 'run', dimension: 'time', near: ['run', 'operate', 'laufen', 'tourner'] },
    ],
  },
  {
    path: 'lubrication',
    stages: [],
    words: [],
    besideStage: 'lubrication',
    begins: /^(?:then\s)?(?:run|operate)\b|laufen lassen\.?$|^faire (?:tourner|fonctionner)\s/i,
    fields: [{ field: 'run', dimension: 'time', near: [] }],
  },
  {
    path: 'packaging',
    stages: ['packaging', 'container', 'wrap', 'pouch'],
    words: ['weigh', 'wieg', 'gewicht', 'pèse', 'poids'],
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
    words: [],
    begins:
      /^(?:allow|let|leave)\b.{0,60}\b(?:cool|(?:room|ambient) temperature)|abkühlen lassen\.?$|^laisser\b.{0,40}\brefroidir/i,
    fields: [
      { field: 'time', dimension: 'time', near: [], only: true },
      { field: 'temp', dimension: 'temperature', near: [], only: true },
    ],
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
    words: ['store', 'storage', 'storing', 'keeping', 'lager', 'aufbewahr', 'stock', 'conserv', 'shelf'],
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
