import type { Judgement } from '../../../server/src/judge/outcome.ts';
import { routineSetting, type Stock } from '../../../server/src/judge/setting.ts';
import { judgeSterilization, optionsOf } from '../../../server/src/judge/sterilization.ts';
import type { EntityOf } from '../../../server/src/model/entities.generated.ts';
import { entityOf } from '../../support/entities.ts';

/** A small invented department, with machines, chemistry and packaging of the demonstration. */
export const site = entityOf(
  'site',
  'lanternfield',
  `
altitude: 1610 m
jurisdiction: US
thresholds:
  set_mass: {at_most: 11.3 kg, src: P-12}
  a0: {at_least: 600, src: P-14}
  boiling_margin: {at_least: 1 K, src: P-15}
  prewash_temp: {at_most: 45 C, src: P-16}
  first_rinse_temp: {at_most: 45 C, src: P-16}
  brush_oversize: {at_most: 1.3, src: P-17}
policies: {stated_exposure: treat-as-exact, stated_temp: setpoint, stated_dry: treat-as-minimum}
water_grades:
  critical: {conductivity: {at_most: 10 uS/cm}, endotoxin: {at_most: 10 EU/mL}, src: P-18}
review_periods: {water_result: {at_most: 90 d, src: P-19}, washer_cleaning_test: {at_most: 90 d, src: P-19}}
`,
);

export const today = '2025-03-03';
export const setting = routineSetting(today, site);

const machines = {
  S1: entityOf(
    'sterilizer',
    'S1',
    `
cycles:
  - {id: S1-pv132-4-20, modality: steam-prevac, context: terminal, temp: 132 C, band: {minus: 0 K, plus: 3 K}, exposure: 4 min, dry: 20 min, qualified: 2025-01-15}
  - {id: S1-pv132-4-30, modality: steam-prevac, context: terminal, temp: 132 C, band: {minus: 0 K, plus: 3 K}, exposure: 4 min, dry: 30 min, qualified: 2025-01-15}
  - {id: S1-pv132-10-30, modality: steam-prevac, context: terminal, temp: 132 C, exposure: 10 min, dry: 30 min, qualified: 2025-01-15}
`,
  ),
  S2: entityOf(
    'sterilizer',
    'S2',
    `
cycles:
  - {id: S2-gr121-30-30, modality: steam-gravity, context: terminal, temp: 121 C, exposure: 30 min, dry: 30 min, qualified: 2025-01-20}
  - {id: S2-pv134-4-30, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 30 min, qualified: 2025-01-20}
  - {id: S2-pv134-4-50, modality: steam-prevac, context: terminal, temp: 134 C, exposure: 4 min, dry: 50 min, qualified: null}
  - {id: S2-iuss132-4, modality: steam-prevac, context: iuss, temp: 132 C, exposure: 4 min, dry: 0 min, qualified: 2025-01-20}
`,
  ),
  S3: entityOf(
    'sterilizer',
    'S3',
    `
cycles:
  - {id: "S3:surface", modality: vh2o2, context: terminal, load_max: 9.0 kg, qualified: 2025-01-22}
  - {id: "S3:lumen", modality: vh2o2, context: terminal, load_max: 4.9 kg, lumens: {bore: {at_least: 1.0 mm}, length: {at_most: 300 mm}}, qualified: 2025-01-22}
`,
  ),
} as const;

export function cycleOf(id: string) {
  for (const machine of Object.values(machines)) {
    const cycle = machine.cycles?.items.find((one) => one.id?.text === id);
    if (cycle !== undefined) return { machine, cycle };
  }
  throw new Error(`no cycle ${id}`);
}

export const packagings = {
  P1: entityOf(
    'packaging',
    'P1-wrap-light',
    'type: wrap\nvalidated: [{modality: steam-prevac}, {modality: steam-gravity}]\nmass_max: 5.0 kg',
  ),
  P2: entityOf(
    'packaging',
    'P2-wrap-heavy',
    'type: wrap\nvalidated: [{modality: steam-prevac}, {modality: steam-gravity}]\nmass_max: 11.3 kg',
  ),
  P3: entityOf(
    'packaging',
    'P3-rigid-container',
    `
type: rigid-container
validated: [{modality: steam-prevac, context: terminal, temp: {between: [132 C, 135 C]}, exposure: {at_least: 4 min}, dry: {at_least: 30 min}}]
lumens: {bore: {at_least: 2.0 mm}, length: {at_most: 400 mm}}
mass_max: 11.3 kg
`,
  ),
  P4: entityOf(
    'packaging',
    'P4-paper-film-pouch',
    'type: pouch\nmaterials: [paper, film]\ncellulosic: true\nvalidated: [{modality: steam-prevac}, {modality: steam-gravity}, {modality: eo}]\nmass_max: 0.5 kg',
  ),
  P5: entityOf(
    'packaging',
    'P5-polyolefin-pouch',
    'type: pouch\nmaterials: [polyolefin, film]\nvalidated: [{modality: vh2o2}, {modality: eo}]\nmass_max: 1.0 kg',
  ),
} as const;

const chemistries: Readonly<Record<string, EntityOf['chemistry']>> = {
  C1: entityOf(
    'chemistry',
    'C1',
    'class: neutral-enzymatic\nph_in_use: {between: [7.0, 7.8]}\ntemp: {between: [20 C, 43 C]}\nmethods: [manual, ultrasonic]',
  ),
  C2: entityOf(
    'chemistry',
    'C2',
    'class: mild-alkaline\nph_in_use: {between: [10.2, 10.6]}\ntemp: {between: [50 C, 70 C]}\nmethods: [mechanical]',
  ),
  C3: entityOf(
    'chemistry',
    'C3',
    'class: strong-alkaline\nph_in_use: {between: [11.8, 12.2]}\ntemp: {between: [60 C, 80 C]}\nmethods: [mechanical]\ncouples: neutralise',
  ),
  C4: entityOf(
    'chemistry',
    'C4',
    'class: neutral\nph_in_use: {between: [6.8, 7.4]}\ntemp: {between: [30 C, 60 C]}\nmethods: [manual, mechanical, ultrasonic]\ndiscontinued_on: 2025-02-28',
  ),
  C5: entityOf(
    'chemistry',
    'C5',
    'class: neutral\nph_in_use: {between: [6.8, 7.4]}\ntemp: {between: [30 C, 60 C]}\nmethods: [manual, mechanical, ultrasonic]',
  ),
};

const waters: Readonly<Record<string, EntityOf['water']>> = {
  tap: entityOf('water', 'tap', 'grade: utility\nconductivity: 310 uS/cm'),
  'RO-1': entityOf(
    'water',
    'RO-1',
    'grade: critical\nconductivity: 4 uS/cm\nendotoxin: 1 EU/mL\nlast_result: 2025-02-10',
  ),
};

export const stock: Stock = { chemistry: (id) => chemistries[id], water: (id) => waters[id] };

export const washers = {
  W1: entityOf(
    'washer',
    'W1',
    `
rack: {ports: [luer, luer, luer, luer, luer, luer]}
cycles:
  - {id: W1-std, doses: [C2, instrument-milk], final_water: RO-1, last_cleaning_test: 2025-03-01, a0: 3000, phases: [{phase: prewash, temp: 20 C, time: 3 min}, {phase: wash, temp: 60 C, time: 5 min}, {phase: thermal, temp: 90 C, time: 5 min}, {phase: dry, temp: 95 C, time: 15 min}]}
  - {id: W1-gentle, doses: [C4], final_water: RO-1, last_cleaning_test: 2025-03-01, a0: 600, phases: [{phase: prewash, temp: 20 C, time: 3 min}, {phase: wash, temp: 45 C, time: 8 min}, {phase: thermal, temp: 82 C, time: 2 min}, {phase: dry, temp: 85 C, time: 20 min}]}
  - {id: W1-mended, doses: [C5], final_water: RO-1, last_cleaning_test: 2025-03-01, phases: [{phase: prewash, temp: 20 C, time: 3 min}, {phase: wash, temp: 45 C, time: 8 min}, {phase: thermal, temp: 90 C, time: 1 min}, {phase: dry, temp: 85 C, time: 20 min}]}
`,
  ),
  W2: entityOf(
    'washer',
    'W2',
    `
rack: {ports: []}
cycles:
  - {id: W2-std, doses: [C3], final_water: tap, last_cleaning_test: null, phases: [{phase: prewash, temp: 60 C, time: 2 min}, {phase: wash, temp: 70 C, time: 4 min}, {phase: neutralise, time: 1 min}, {phase: thermal, temp: 95 C, time: 1 min}, {phase: dry, temp: 115 C, time: 20 min}]}
`,
  ),
} as const;

export function washCycleOf(id: string) {
  for (const machine of Object.values(washers)) {
    const cycle = machine.cycles?.items.find((one) => one.id?.text === id);
    if (cycle !== undefined) return { machine, cycle };
  }
  throw new Error(`no washer cycle ${id}`);
}

export const U1 = entityOf(
  'ultrasonic',
  'U1',
  'frequency: 40 kHz\ntemp: 40 C\nirrigated_ports: 0\nprogram: 15 min\nchemistry: C1',
);

export function device(id: string, text: string): EntityOf['device'] {
  return entityOf('device', id, text);
}

/** Outcome and parameter of everything that is not simply met, worst last: `fails steam-dry`. */
export function shown(judgements: readonly Judgement[]): readonly string[] {
  return judgements
    .filter((one) => one.outcome !== 'meets')
    .map((one) => `${one.outcome} ${one.parameter}`)
    .sort();
}

/** What one option of a device gets in a cycle and a packaging. */
export function sterilized(
  one: EntityOf['device'],
  cycleId: string,
  packaging?: EntityOf['packaging'],
  option = 0,
  more = {},
): readonly string[] {
  const chosen = optionsOf(one)[option];
  if (chosen === undefined) throw new Error('no such option');
  const packed = packaging === undefined ? {} : { packed: { packaging } };
  return shown(judgeSterilization({ device: one, option: chosen, ...cycleOf(cycleId), ...packed, setting, ...more }));
}
