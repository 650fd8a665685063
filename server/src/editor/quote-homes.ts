import type { StageWord } from '../quantity/prose/meaning.ts';
import type { Dimension } from '../quantity/quantity.ts';
import type { Kind } from '../schema/kinds.ts';

/**
 * Where a number of a quote may belong: a table that an educator can read. It only proposes places; the bound word and the rest are the
 * reader's. A home counts when a stage or a word of its group is in the sentence; where it has `near`, one of these beginnings of words must stand beside the number.
 */
export interface Group {
  /** Keys from the top of the file; `[]` stands for a new item of the list. */
  readonly path: string;
  readonly stages: readonly StageWord[];
  /** Beginnings of words, in English, German and French. */
  readonly words: readonly string[];
  /** Stages whose sentences are not about this group, whatever their words. */
  readonly unlessStage?: readonly StageWord[];
  /** Only in sentences that name this stage as well, or stand under a heading that does. */
  readonly besideStage?: StageWord;
  /** Only where its stage is named after that one. */
  readonly follows?: true;
  /** What a new step of a list does. */
  readonly does?: string;
  /** Stages that this one item of a list is about, where the sentence has several items. */
  readonly named?: readonly StageWord[];
  readonly fields: readonly Home[];
}

export interface Home {
  /** A key, or two with a dot between: a group inside an item. */
  readonly field: string;
  readonly dimension: Dimension;
  readonly near: readonly string[];
  /** Only where the sentence has a number of this kind as well. */
  readonly beside?: Dimension;
  /** Not where the sentence has a number of this kind as well. */
  readonly unlessAlso?: Dimension;
  /** Its word may stand before a number of another kind. */
  readonly reaches?: true;
  /** Only in sentences that name one of these stages. */
  readonly ofStage?: readonly StageWord[];
  /** What is counted, where the page prints a bare number. */
  readonly counted?: string;
}

/** For numbers that the sentence has for something without a field: they are told to the reader. */
export const elsewhere = '';

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
const preparing = ['degas', 'preheat', 'pre-heat', 'conditioning', 'entgas'];
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

const tooHot = [
  'temperature during re',
  'exceed',
  'heat above',
  'temperatures above',
  'hotter than',
  'überschreit',
  'dépass',
];
const stepFields: readonly Home[] = [
  { field: 'volume', dimension: 'volume', near: [] },
  { field: 'times', dimension: 'count', near: [] },
  { field: 'pressure', dimension: 'pressure', near: [] },
  { field: 'time', dimension: 'time', near: [] },
  { field: 'temp', dimension: 'temperature', near: [] },
  { field: 'detergent.ph', dimension: 'ph', near: ['ph'] },
  { field: 'detergent.dose', dimension: 'dose', near: [] },
];
const brushFields: readonly Home[] = [
  { field: 'brush.diameter', dimension: 'length', near: ['diameter', 'durchmesser', 'diamètre', 'ø'] },
  { field: 'brush.length', dimension: 'length', near: ['length', 'reach', ' long', 'länge', ' lang', 'longueur'] },
];
const moving = ['open and close', 'actuat', 'öffnen und schließen', 'bewegen', 'ouvrir et fermer', 'actionne'];

/** What is done by hand. Rinsing and wiping are steps by hand only where the sentence or its heading says so. */
const manualSteps: readonly Group[] = [
  {
    does: 'flush',
    path: 'manual.steps[]',
    stages: ['flush'],
    words: ['syringe', 'suction', 'aspirat', 'spritze', 'seringue'],
    unlessStage: ['mechanical'],
    fields: stepFields,
  },
  {
    does: 'brush',
    path: 'manual.steps[]',
    stages: ['brush'],
    words: ['strokes'],
    fields: [...stepFields, ...brushFields],
  },
  { does: 'soak', path: 'manual.steps[]', stages: ['soak'], words: [], fields: stepFields },
  {
    does: 'soak',
    path: 'manual.steps[]',
    stages: ['immersion'],
    words: [],
    besideStage: 'manual',
    fields: stepFields,
  },
  { does: 'rinse', path: 'manual.steps[]', stages: ['rinse'], words: [], besideStage: 'manual', fields: stepFields },
  { does: 'wipe', path: 'manual.steps[]', stages: ['wipe'], words: [], besideStage: 'manual', fields: stepFields },
  {
    does: 'actuate',
    path: 'manual.steps[]',
    stages: [],
    words: moving,
    unlessStage: ['lubrication'],
    fields: [{ field: 'times', dimension: 'count', near: moving }],
  },
];

const acting = ['contact time', 'einwirk', 'temps de contact'];
const rinseFields: readonly Home[] = [
  { field: elsewhere, dimension: 'time', near: acting },
  { field: elsewhere, dimension: 'temperature', near: acting },
  { field: 'time', dimension: 'time', near: [] },
  { field: 'times', dimension: 'count', near: [] },
  { field: 'temp', dimension: 'temperature', near: [] },
  { field: 'volume', dimension: 'volume', near: [] },
];
const prewashWords = ['prewash', 'pre-wash', 'pre-rins', 'prerins', 'vorspül', 'vorwasch', 'prélav', 'prérinç'];
const lastRinseWords = ['final rins', 'last rins', 'final water rins', 'schlussspül', 'letzte spül', 'rinçage final'];
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

const device: readonly Group[] = [
  {
    path: 'sterilization.any_of[]',
    stages: sterilizing,
    words: sterilizingWords,
    fields: [
      ...cycleFields,
      ...gasFields,
      { field: 'pulses', dimension: 'count', near: ['pulse', 'fraktion', 'impuls'] },
    ],
  },
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
  ...manualSteps,
  {
    path: 'manual.detergent',
    stages: ['manual'],
    words: ['by hand', 'von hand', 'à la main'],
    unlessStage: ['ultrasonic'],
    fields: [
      { field: 'ph', dimension: 'ph', near: ['ph'] },
      { field: 'dose', dimension: 'dose', near: [] },
      { field: 'temp', dimension: 'temperature', near: ['detergent', 'solution', 'reiniger', 'lösung'], reaches: true },
    ],
  },
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
  { path: 'validated[]', stages: sterilizing, words: sterilizingWords, fields: cycleFields },
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
