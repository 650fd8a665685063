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
const brushOf = [
  'brush,',
  'brush of',
  'brush with',
  'bürste von',
  'bürste mit',
  'brosse de',
  'écouvillon de',
  'souple de',
  'goupillon de',
];
const brushFields: readonly Home[] = [
  {
    field: 'brush.diameter',
    dimension: 'length',
    near: ['diameter', 'durchmesser', 'diamètre', 'ø', ...brushOf],
    behind: [' brush'],
  },
  { field: 'brush.length', dimension: 'length', near: ['length', 'reach', ' long', 'länge', ' lang', 'longueur'] },
];
const moving = [
  ...[
    'open and close',
    'open and shut',
    'actuat',
    'work the',
    'to and fro',
    'back and forth',
    'move the',
    'move all',
    'move each',
    'hin und her',
    'va-et-vient',
    'öffnen und schließen',
    'bewegen',
    'betätigen',
  ],
  ...['ouvrir et fermer', 'actionne', 'manœuvr'],
];
/** What something lies in is a bath, whatever the verb. */
const inBath = [
  ...[
    'leave for',
    'leave to act',
    'leave to soak',
    'leave it for',
    'soaking time',
    'contact time',
    'exposure time',
    'immersion time',
    'einwirkzeit',
    'einwirken lassen',
    'laisser agir',
    'temps de contact',
  ],
  ...['detergent solution', 'cleaning solution', 'enzymatic solution', 'detergent bath', 'lie in', 'in the solution'],
  ...['reiniger legen', 'reiniger einlegen', 'in ph-neutral', 'in a cleaning'],
  ...['in an enzymatic', 'in a neutral', 'in a mild', 'in an alkaline', 'in a detergent', 'in the detergent'],
  ...['reinigungslösung', 'in die lösung', 'in eine enzymatische', 'in einem enzymatischen', 'in eine neutrale'],
  ...['dans un détergent', 'dans une solution', 'dans la solution', 'dans un bain'],
];

/** What is done by hand. Rinsing and wiping are steps by hand only where the sentence or its heading says so. */
const manualSteps: readonly Group[] = [
  {
    does: 'flush',
    path: 'manual.steps[]',
    stages: ['flush'],
    words: ['syringe', 'suction', 'aspirat', 'jet gun', 'spray gun', 'spritze', 'seringue', 'sprühpistole', 'pistolet'],
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
  {
    does: 'soak',
    path: 'manual.steps[]',
    stages: [],
    words: inBath,
    besideStage: 'manual',
    unlessStage: ['soak', 'immersion', 'brush', 'flush', 'ultrasonic', 'rinse', 'wipe', 'mechanical'],
    fields: stepFields,
  },
  { does: 'rinse', path: 'manual.steps[]', stages: ['rinse'], words: [], besideStage: 'manual', fields: stepFields },
  {
    does: 'rinse',
    path: 'manual.steps[]',
    stages: [],
    words: ['running water', 'running tap water', 'fließendem wasser', 'laufendem wasser', 'eau courante'],
    besideStage: 'manual',
    unlessStage: ['rinse', 'flush', 'brush', 'soak', 'mechanical', 'ultrasonic'],
    fields: stepFields,
  },
  { does: 'wipe', path: 'manual.steps[]', stages: ['wipe'], words: [], besideStage: 'manual', fields: stepFields },
  {
    does: 'actuate',
    path: 'manual.steps[]',
    stages: [],
    words: moving,
    unlessStage: ['lubrication', 'inspection'],
    // How something moves is looked at there; nothing comes off by it.
    unlessAbove: /check|inspect|test|control|care|mainten|prüf|kontroll|pflege|wartung|contrôl|entretien/,
    fields: [{ field: 'times', dimension: 'count', near: moving }],
  },
];

/** What is laid into a solution soaks: its numbers are those of that step. */
const laidInto = /\b(?:lay|lie|leave|put|place)\b|legen\b|liegen\b|(?<!\p{L})(?:placer|laisser)(?!\p{L})/iu;

/** `Prepare the detergent`: its numbers are those of the solution. */
const preparing = /^(?:prepare|make up|mix|dilute|fill)\b|(?:ansetzen|zubereiten)\.?$|^(?:préparer|diluer)\s/i;

export const byHand: readonly Group[] = [
  ...manualSteps,
  {
    path: 'manual.detergent',
    stages: [],
    words: [],
    besideStage: 'manual',
    begins: preparing,
    fields: [
      { field: 'temp', dimension: 'temperature', near: [] },
      { field: 'ph', dimension: 'ph', near: [] },
      { field: 'dose', dimension: 'dose', near: [] },
    ],
  },
  {
    path: 'manual.detergent',
    stages: ['manual'],
    words: ['by hand', 'von hand', 'à la main'],
    unlessStage: ['ultrasonic'],
    unlessSaid: laidInto,
    fields: [
      { field: 'ph', dimension: 'ph', near: ['ph'] },
      { field: 'dose', dimension: 'dose', near: [] },
    ],
  },
  // The temperature of what something soaks in is that of the step.
  {
    path: 'manual.detergent',
    stages: ['manual'],
    words: ['by hand', 'von hand', 'à la main'],
    unlessStage: ['ultrasonic', 'soak', 'immersion'],
    unlessSaid: laidInto,
    fields: [
      {
        field: 'temp',
        dimension: 'temperature',
        near: ['detergent', 'solution', 'cleaner', 'reiniger', 'lösung', 'détergent'],
        reaches: true,
      },
    ],
  },
];
