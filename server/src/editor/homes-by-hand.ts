import type { Group, Home } from './home.ts';

/** Where the numbers of what is done by hand belong. */

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

export const byHand: readonly Group[] = [
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
];
